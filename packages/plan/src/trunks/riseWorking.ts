import type { TrunkChoice } from '@eaveline/job';
import { given, type Working, worked } from '../working.ts';
import type { LaidDrop } from './layDrops.ts';
import type { RiseAlong, RiseRoad } from './riseAlong.ts';

export interface RiseWorkingInput {
  readonly trunkId: string;
  readonly trunk: TrunkChoice;
  readonly drops: readonly LaidDrop[];
  readonly rise: RiseAlong;
  readonly road: RiseRoad;
  readonly unitA: number;
  readonly trunkOhm: Working;
  readonly homeRunOhm: Working;
  readonly mainsOhm?: Working;
  /** Solar that stood there before: the mains carry it too. */
  readonly there: readonly Working[];
  /** `with every battery giving too`, where the mains carry that. */
  readonly also?: string;
}

const SOURCE = "Kirchhoff's laws; each unit a constant current at nominal voltage";

/** The derivation of a trunk's rise: one unit, trunk, home run, mains, and their sum. */
export function riseWorking(input: RiseWorkingInput): Working {
  const { trunk, trunkId, rise, road, drops } = input;
  const at = `choices.trunks.${trunkId}`;
  const unit = drops[rise.far]?.sheet;
  const lineToLine = unit?.connection === 'line-line';
  const volts = lineToLine && road.system === 'split-phase' ? 2 * road.nominalV : road.nominalV;
  const shape = unit?.connection === 'three-phase' ? 'ΔU = r · I · L' : 'ΔU = 2 · r · I · L';
  const parts: Working[] = [
    worked(
      'One unit',
      input.unitA,
      'A',
      unit?.connection === 'three-phase' ? 'I = S ÷ 3 ÷ U' : 'I = S ÷ U',
      SOURCE,
      [
        {
          ...given(
            'rating',
            unit?.ratedVA ?? 0,
            'VA',
            `choices.equipment.${unitSheetId(input)}.ratedVA`,
            'equipment sheet',
          ),
          symbol: 'S',
        },
        {
          name: 'nominal',
          symbol: 'U',
          value: volts,
          unit: 'V',
          source: 'the job',
          at: 'facts.supply.nominalV',
        },
      ],
      { symbol: 'I' },
    ),
    worked(
      `Trunk, from the joint to drop ${rise.far + 1}`,
      rise.trunkV,
      'V',
      `${shape}, each span with the units beyond it`,
      SOURCE,
      [input.trunkOhm, given('feed enters at drop', trunk.feedDrop, '', `${at}.feedDrop`), ...spanWorkings(input)],
      { symbol: 'ΔU₁', decimals: 3 },
    ),
    worked(
      'Home run',
      rise.homeRunV,
      'V',
      shape,
      SOURCE,
      [
        input.homeRunOhm,
        { ...given('length, one way', trunk.homeRun.lengthM, 'm', `${at}.homeRun.lengthM`), symbol: 'L' },
        worked('current', rise.currentA, 'A', 'sum of the units on its busiest line', SOURCE, [], { symbol: 'I' }),
      ],
      { symbol: 'ΔU₂', decimals: 3 },
    ),
  ];
  if (input.mainsOhm !== undefined && road.mains !== undefined) {
    parts.push(
      worked(
        `Mains${input.also === undefined ? '' : `, ${input.also}`}`,
        rise.mainsV,
        'V',
        `r · L · (line current + its share of the neutral’s), all trunks${input.there.length > 0 ? ' and the solar already there' : ''} together`,
        SOURCE,
        [
          input.mainsOhm,
          given('length, one way', road.mains.lengthM, 'm', 'facts.supply.mains.lengthM'),
          ...input.there,
        ],
        { symbol: 'ΔU₃', decimals: 3 },
      ),
    );
  }
  const name = road.mains === undefined ? 'above the board' : 'above the point of supply';
  return worked(`Far unit of trunk ${trunk.name} ${name}`, rise.totalV, 'V', 'ΔU = ΔU₁ + ΔU₂ + ΔU₃', SOURCE, parts, {
    symbol: 'ΔU',
    decimals: 2,
  });
}

function unitSheetId(input: RiseWorkingInput): string {
  return input.drops[input.rise.far]?.sheetId ?? '';
}

function spanWorkings({ rise, drops, trunk, road }: RiseWorkingInput): Working[] {
  const far = rise.far + 1;
  const onTheWay = rise.spans.filter(({ fromDrop, toDrop }) =>
    far >= trunk.feedDrop ? toDrop > fromDrop && toDrop <= far : toDrop < fromDrop && toDrop >= far,
  );
  return onTheWay.map((span) => {
    const lengthM = Math.abs((drops[span.toDrop - 1]?.atM ?? 0) - (drops[span.fromDrop - 1]?.atM ?? 0));
    return worked(
      `drop ${span.fromDrop} to ${span.toDrop}`,
      span.riseV,
      'V',
      'r · I · L, there and back',
      SOURCE,
      [
        { name: 'length', value: lengthM, unit: 'm', source: 'drop pitch and jumpers' },
        { name: 'carries', value: span.currentA, unit: 'A', source: `units beyond it at ${road.nominalV} V` },
      ],
      { decimals: 3 },
    );
  });
}
