import type { Json } from './shape.ts';

/** A check of a reference file as a quantity of ours: its name, and the row in the file's own keys. */
export interface Mapped {
  readonly calc: string;
  readonly row: Json;
}

type Mapping = (inputs: Json, check: Json) => Mapped;

const as =
  (calc: string, more: Json = {}): Mapping =>
  (inputs) => ({ calc, row: { ...inputs, ...more } });

/** What the files call their checks, and what we call them. */
const BY_KIND: Readonly<Record<string, Mapping>> = {
  'single-phase two-wire': as('voltage-change', { kind: 'two-wire' }),
  'three-phase balanced': as('voltage-change', { kind: 'three-phase' }),
  'distributed injection, single-phase trunk': as('voltage-change', { kind: 'distributed' }),
  'three-phase four-wire, unbalanced, constant current': as('voltage-change', { kind: 'four-wire' }),
  adiabatic: as('adiabatic'),
  'continuous 125 percent': as('breaker'),
  'most module inverters on a branch, 125 percent rule': as('units-per-branch'),
  'NEC 705.12 busbar': as('bus-rating'),
  'NEC 690.7(A) maximum voltage, one module': as('cold-voltage'),
  'maximum voltage by the module coefficient': as('cold-voltage'),
  'earth-fault-loop impedance': as('fault-loop'),
  'volt-var and volt-watt': as('response-curve'),
  'IEEE 1547 volt-var': ({ category, v_pu }) => ({
    calc: 'response-curve',
    row: { region: `IEEE 1547 ${category}`, terminal_pu: v_pu },
  }),
  'phase balance': as('phase-balance'),
  'insulation resistance': as('test-limit', { test: 'insulation' }),
  'PV d.c. insulation resistance': as('test-limit', { test: 'pv-insulation' }),
  'RCD trip time': as('test-limit', { test: 'rcd' }),
  'earth continuity': as('test-limit', { test: 'earth-continuity' }),
  'loop impedance, BS 7671, 80 % rule when measured cold': as('test-limit', { test: 'loop', standard: 'BS 7671' }),
  'loop impedance, AS/NZS 3000': as('test-limit', { test: 'loop', standard: 'AS/NZS 3000' }),
  'continuity against calculation': as('test-limit', { test: 'continuity' }),
};

/** Checks without a kind are known by their standard. */
function byStandard(inputs: Json, check: Json): Mapped | undefined {
  const standard = check.standard ?? inputs.standard;
  if (typeof standard !== 'string') return undefined;
  if ('route_length_m' in inputs) return { calc: 'conductor-resistance', row: { ...inputs, standard } };
  if ('ambient_c' in inputs) return { calc: 'cable-capacity', row: { ...inputs, standard } };
  return undefined;
}

/** The quantity that answers a check; undefined where we have none. */
export function mapCheck(check: Json, inputs: Json): Mapped | undefined {
  return typeof check.kind === 'string' ? BY_KIND[check.kind]?.(inputs, check) : byStandard(inputs, check);
}
