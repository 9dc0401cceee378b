import { sheetOf } from '../equipment.ts';
import type { TrunkPlan } from '../trunks/types.ts';
import { given } from '../working.ts';
import { countBy } from './arrayLines.ts';
import type { KitInput } from './kitInput.ts';
import { kitLine, PRACTICE, part, partFor } from './kitLine.ts';
import type { KitLine } from './types.ts';

/** One clip to each half metre of trunk, and two a module for its own leads: common practice, no source. */
const CLIP_EVERY_M = 0.5;
const CLIPS_A_MODULE = 2;

/** Trunk cable in drops, extensions between drops, joints, caps, boxes, clips and the release tool. */
export function trunkLines(input: KitInput): KitLine[] {
  const { view, trunks } = input;
  return [
    ...cableInDrops(input),
    ...extensions(input),
    ...counted('feed-joint', 'trunks', (trunk) => trunk.caps.feedJoints, 'where the home run enters'),
    ...counted('end-cap', 'trunks', (trunk) => trunk.caps.end, 'one at each end the home run does not enter'),
    ...counted('drop-cap', 'trunks', (trunk) => trunk.caps.drop, 'one on each drop without a unit'),
    ...counted('roof-box', 'trunks', () => 1, 'one a trunk'),
    ...fastening(input),
    ...kitLine({
      id: 'drop-release-tool',
      ...partFor('drop-release-tool', view),
      group: 'tools and tests',
      count: trunks.trunks.length > 0 ? 1 : 0,
      formula: 'one on the roof',
      source: PRACTICE,
    }),
  ];

  function counted(
    use: 'feed-joint' | 'end-cap' | 'drop-cap' | 'roof-box',
    group: KitLine['group'],
    of: (trunk: TrunkPlan) => number,
    formula: string,
  ): KitLine[] {
    return kitLine({
      id: use,
      ...partFor(use, view),
      group,
      count: trunks.trunks.reduce((sum, trunk) => sum + of(trunk), 0),
      formula,
      inputs: trunks.trunks.map((trunk) => part(trunk.name, of(trunk))),
    });
  }
}

/** Drops bought: those with a unit, the idle ones between them, and the spare ones past the last. */
function cableInDrops({ view, trunks }: KitInput): KitLine[] {
  return [...countBy(trunks.trunks.map(({ cableSheetId }) => cableSheetId)).keys()].flatMap((sheetId) => {
    const own = trunks.trunks.filter((trunk) => trunk.cableSheetId === sheetId);
    const drops = (trunk: TrunkPlan) => trunk.drops.length + (view.trunks[trunk.id]?.spareDrops ?? 0);
    const { name, dropPitchMm } = sheetOf(view.equipment, sheetId, 'trunk-cable');
    return kitLine({
      id: `trunk:${sheetId}`,
      sheetId,
      name: `${name}, drops`,
      group: 'trunks',
      count: own.reduce((sum, trunk) => sum + drops(trunk), 0),
      formula: 'drops with a unit, idle and spare',
      inputs: [
        ...own.map((trunk) => part(trunk.name, drops(trunk))),
        given('pitch', dropPitchMm, 'mm', `choices.equipment.${sheetId}.dropPitchMm`, 'equipment sheet'),
      ],
    });
  });
}

/** Cable let in between two drops, one line for each length and kind. */
function extensions({ view }: KitInput): KitLine[] {
  const all = Object.entries(view.trunks).flatMap(([trunkId, { name, cableSheet, jumpers }]) =>
    Object.entries(jumpers).map(([id, { lengthM, afterDrop }]) => ({
      key: `${cableSheet}:${lengthM}`,
      cableSheet,
      lengthM,
      working: given(
        `${name}, after drop ${afterDrop}`,
        lengthM,
        'm',
        `choices.trunks.${trunkId}.jumpers.${id}.lengthM`,
      ),
    })),
  );
  return [...countBy(all.map(({ key }) => key))].flatMap(([key, count]) => {
    const own = all.filter((jumper) => jumper.key === key);
    const { cableSheet, lengthM } = own[0] as (typeof all)[number];
    return kitLine({
      id: `trunk-extension:${key}`,
      sheetId: cableSheet,
      name: `${sheetOf(view.equipment, cableSheet, 'trunk-cable').name}, extension of ${lengthM.toFixed(2)} m`,
      group: 'trunks',
      count,
      formula: 'one for each longer way between two drops',
      inputs: own.map(({ working }) => working),
    });
  });
}

function fastening({ view, array, trunks }: KitInput): KitLine[] {
  const cableM = trunks.trunks.reduce((sum, trunk) => sum + trunk.cableM, 0);
  const modules = array.modules.length;
  const units = Object.keys(view.units).length;
  return [
    ...kitLine({
      id: 'cable-clip',
      ...partFor('cable-clip', view),
      group: 'trunks',
      count: Math.ceil(cableM / CLIP_EVERY_M - 1e-9) + CLIPS_A_MODULE * modules,
      formula: 'trunk ÷ 0.5 m, rounded up, + 2 a module for its leads',
      source: PRACTICE,
      inputs: [part('trunk', cableM, 'm'), part('modules', modules)],
    }),
    ...kitLine({
      id: 'tie-wire',
      ...partFor('tie-wire', view),
      group: 'trunks',
      count: units,
      formula: 'one a unit, for the slack',
      source: PRACTICE,
      inputs: [part('units', units)],
    }),
  ];
}
