import type { ExistingFacts, LineName } from '@eaveline/job';
import { addPhasors, exportPhasors, type Phasors, type Terminal } from '@eaveline/physics';
import { given, type Working } from '../working.ts';

const TERMINAL: Record<LineName, Terminal> = { L1: 0, L2: 1, L3: 2 };

/** Sources that stood at the place before this job. */
export interface ExistingSources {
  /** Solar: it feeds together with everything else. */
  readonly solar: Phasors;
  /** Of it, what stands on an element of the meter of its own. */
  readonly solarApart: Phasors;
  /** Generators that nothing keeps from the network: taken as feeding beside it, the worst that can be. */
  readonly besideNetwork: Phasors;
  /** The largest generator behind a changeover, A on a line: it feeds in place of the network. */
  readonly inPlaceOfNetworkA: number;
  readonly givens: readonly {
    readonly kind: ExistingFacts['kind'];
    readonly lines: readonly LineName[];
    readonly working: Working;
  }[];
}

/**
 * Currents of the solar and the generator inlets that were there, each at its rating, line to neutral.
 *
 * Whether a changeover keeps a generator from the network is a fact of the survey; until it is known, none does.
 */
export function existingSources(existing: Readonly<Record<string, ExistingFacts>>, voltage: Phasors): ExistingSources {
  const sources = Object.entries(existing).filter(([, { kind }]) => kind === 'solar' || kind === 'generator inlet');
  const sum = (of: (thing: ExistingFacts) => boolean) =>
    sources
      .filter(([, thing]) => of(thing))
      .map(([, thing]) => lineToNeutral(thing, voltage))
      .reduce(addPhasors, new Float64Array(8));
  const behind = sources.filter(([, { kind, changeover }]) => kind === 'generator inlet' && changeover === true);
  return {
    solar: sum(({ kind }) => kind === 'solar'),
    solarApart: sum(({ kind, meterElement }) => kind === 'solar' && meterElement === true),
    besideNetwork: sum(({ kind, changeover }) => kind === 'generator inlet' && changeover !== true),
    inPlaceOfNetworkA: Math.max(0, ...behind.map(([, { ratedA }]) => ratedA)),
    givens: sources.map(([id, { name, kind, ratedA, lines }]) => ({
      kind,
      lines,
      working: given(name, ratedA, 'A', `facts.existing.${id}.ratedA`, 'survey'),
    })),
  };
}

function lineToNeutral({ ratedA, lines }: ExistingFacts, voltage: Phasors): Phasors {
  const sources = lines.map((line) => {
    const at = 2 * (TERMINAL[line] as number);
    const volts = Math.hypot(voltage[at] ?? 0, voltage[at + 1] ?? 0);
    return { from: TERMINAL[line], to: 'N' as const, powerW: ratedA * volts };
  });
  return exportPhasors(sources, voltage);
}
