import type { Choices } from '@eaveline/job';
import { sheetOf } from '../equipment.ts';
import type { TrunkPlan } from '../trunks/types.ts';
import { given, type Working, worked } from '../working.ts';
import type { GeneratingInput } from './generatingInput.ts';
import { band, predicted, type RowDraft } from './row.ts';

/** The sun the printed predictions are for. A reading under another sun scales with it; the row says how. */
export const PRINTED_SUN = { wM2: 620, cellC: 42 } as const;

const SUN = `Write sun in the plane and cell temperature. Printed for ${PRINTED_SUN.wM2} W/m² and ${PRINTED_SUN.cellC} °C.`;

/**
 * Power of one unit under the printed sun: P = Σ P_mp · G/1000 · (1 + γ(T − 25)) · η, not above its rating.
 * Linear in sun and temperature: good to 2 % above 400 W/m². Source: IEC 60891, translated to one point.
 */
function unitPower(unitId: string, input: GeneratingInput): Working & { readonly value: number } {
  const { units, modulesOf, rows, equipment } = input;
  const sheetId = units[unitId]?.sheet ?? '';
  const unit = sheetOf(equipment, sheetId, 'unit');
  const sheets = modulesOf(unitId).map((module) => rows[module.rowId]?.moduleSheet ?? '');
  const share = (PRINTED_SUN.wM2 / 1000) * unit.efficiency;
  const each = sheets.map((id) => {
    const sheet = sheetOf(equipment, id, 'module');
    return sheet.pmpW * (1 + (sheet.pmpPctPerK / 100) * (PRINTED_SUN.cellC - 25)) * share;
  });
  const value = Math.min(
    unit.ratedVA,
    each.reduce((sum, w) => sum + w, 0),
  );
  const inputs = [...new Set(sheets)].flatMap((id) => moduleInputs(id, equipment));
  return {
    ...worked(
      'One unit under the printed sun',
      value,
      'W',
      'P = P_mp · G/1000 · (1 + γ · (T − 25)) · η, not above its rating',
      'IEC 60891, one point',
      [
        ...inputs,
        { name: 'sun in the plane', symbol: 'G', value: PRINTED_SUN.wM2, unit: 'W/m²', source: 'printed sun' },
        { name: 'cell', symbol: 'T', value: PRINTED_SUN.cellC, unit: '°C', source: 'printed sun' },
        given('efficiency', unit.efficiency, '', `choices.equipment.${sheetId}.efficiency`, 'equipment sheet'),
        given('rating', unit.ratedVA, 'VA', `choices.equipment.${sheetId}.ratedVA`, 'equipment sheet'),
      ],
      { symbol: 'P', decimals: 0 },
    ),
    value,
  };
}

function moduleInputs(id: string, equipment: Choices['equipment']): Working[] {
  const sheet = sheetOf(equipment, id, 'module');
  const at = `choices.equipment.${id}`;
  return [
    given(`${sheet.name}, full sun`, sheet.pmpW, 'W', `${at}.pmpW`, 'equipment sheet'),
    given('γ', sheet.pmpPctPerK, '%/K', `${at}.pmpPctPerK`, 'equipment sheet'),
  ];
}

/** Share of its rated current a trunk carries under the printed sun. */
function printedShare(
  trunk: TrunkPlan,
  input: GeneratingInput,
): { readonly share: number; readonly powers: readonly Working[] } {
  const powers = trunk.drops.flatMap(({ unitId }) => (unitId === undefined ? [] : [unitPower(unitId, input)]));
  const sum = powers.reduce((total, power) => total + power.value, 0);
  return { share: trunk.ratedVA === 0 ? 0 : sum / trunk.ratedVA, powers: powers.slice(0, 1) };
}

/** Clamp reading of a trunk at the board. */
export function trunkCurrentRow(trunk: TrunkPlan, input: GeneratingInput): RowDraft {
  const { share, powers } = printedShare(trunk, input);
  const line = trunk.lines[0] ?? 'L1';
  const surveyed = trunk.lines.length === 1 ? input.supply.measuredV[line] : undefined;
  const volts = surveyed ?? input.supply.nominalV;
  // rated current is at nominal; the same power under the surveyed volts draws less
  const value = (trunk.currentA * share * input.supply.nominalV) / volts;
  const working = worked(
    `Trunk ${trunk.name} at the board`,
    value,
    'A',
    'units · P ÷ U on its busiest line',
    'sum of the units',
    [
      ...powers,
      { name: 'units', value: trunk.unitCount, unit: '', source: 'the job' },
      given('volts', volts, 'V', surveyed === undefined ? 'facts.supply.nominalV' : `facts.supply.measuredV.${line}`),
    ],
    { symbol: 'I', decimals: 2 },
  );
  const one = trunk.unitCount === 0 ? 0 : 100 / trunk.unitCount;
  return {
    id: `current:${trunk.id}`,
    name: 'Trunk current',
    point: `breaker of trunk ${trunk.name}`,
    instrument: 'clamp, and a reference cell in the plane',
    conditions: [SUN, 'Another sun: multiply by it over the printed one. By eye, the band is twice as wide.'],
    predicted: predicted(working, 'A', band(value, 0.1)),
    suspects: [`One unit out: ${one.toFixed(0)} % low.`, 'Shade on some.', 'Held at its rating.', 'Clamp not closed.'],
  };
}

/** Volts between the far unit and the board under the printed sun, both read at one second. */
export function trunkRiseRow(trunk: TrunkPlan, input: GeneratingInput): RowDraft {
  const { share } = printedShare(trunk, input);
  const rated = trunk.rise.trunkV + trunk.rise.homeRunV;
  const value = rated * share;
  const working = worked(
    `Trunk ${trunk.name}, far unit above the board`,
    value,
    'V',
    'rise at rating · current ÷ rated current',
    'linear in the current',
    [
      worked(
        'Rise at rating, to the board',
        rated,
        'V',
        'trunk + home run',
        'sheet 04',
        trunk.riseWorking.inputs ?? [],
        { decimals: 2 },
      ),
      { name: 'current over rated', value: share, unit: '', source: 'the row above' },
    ],
    { symbol: 'ΔU', decimals: 2 },
  );
  return {
    id: `rise:${trunk.id}`,
    name: 'Voltage rise, unit to board',
    point: `drop ${trunk.drops[trunk.farDrop - 1]?.name ?? ''} or roof box, and board, same second`,
    instrument: 'two meters, first put on one terminal and the difference taken off',
    conditions: [SUN, `At full power it is ${rated.toFixed(2)} V.`],
    predicted: predicted(working, 'V', band(value, 0.25, 0.14)),
    suspects: ['Hot joint.', 'Thinner cable.', 'Longer run than drawn.', 'Meters not nulled.'],
  };
}
