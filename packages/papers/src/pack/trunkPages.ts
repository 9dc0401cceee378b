import type { Drop, TrunkPlan } from '@eaveline/plan';
import { group, type Item, ruleGauge } from '../drawing/index.ts';
import { caution, gap, headline, type Part, paragraph, picture, type Sheet, table, whole } from '../page/index.ts';
import { against, apart, counted, figure, withUnit } from './figures.ts';
import { mixedColoursPart } from './mixedColoursPart.ts';
import { lineLetters, type Pack, sheetOf, wireColoursFrom, wireOf } from './packContext.ts';
import { headed, pagesOf } from './pagesOf.ts';
import { trunkHeightMm, trunkItems, trunkScale } from './trunkItems.ts';

/** One sheet for each trunk: unrolled, with its sizes, and the table its units are hung by. */
export function trunkPages(pack: Pack): Sheet[] {
  return pack.plan.trunks.trunks.flatMap((trunk) => {
    const scale = trunkScale(trunk);
    const kind = {
      no: `04.${trunk.name}`,
      title: `Trunk ${trunk.name}`,
      ...(scale === undefined ? {} : { scale: `1:${scale} along it` }),
    };
    return pagesOf(pack, kind, trunkParts(pack, trunk));
  });
}

function trunkParts(pack: Pack, trunk: TrunkPlan): Part[] {
  const drawn = whole(trunkHeightMm, (topLeft, widthMm): Item[] => [
    group(`trunk ${trunk.name}`, trunkItems(pack, trunk, topLeft, widthMm), {
      role: 'figure',
      of: trunk.id,
      label: `Trunk ${trunk.name} unrolled, ${counted(trunk.unitCount, 'unit')}, fed at drop ${trunk.feedDrop}`,
    }),
  ]);
  const { end, drop, feedJoints } = trunk.caps;
  return [
    headline(riseSentence(pack, trunk), quietLine(pack, trunk)),
    gap(3),
    ...mixedColoursPart(pack),
    drawn,
    ...gaugePart(pack, trunk),
    caution(
      `Lock ${pack.words.breaker} ${trunk.name} before you touch a drop. Prove the trunk dead at the roof box.`,
      'Never open a d.c. plug under load. The licensed person decides.',
    ),
    gap(3),
    dropTable(pack, trunk),
    gap(2),
    headed(
      'Count before you come down',
      paragraph(
        `Units: ${trunk.unitCount}.  End caps: ${end}.  Spare drops to cap: ${drop}.  Feed joints: ${feedJoints}.  Trunk cable: ${withUnit(trunk.cableM, 'm', 2)}, of it slack ${withUnit(trunk.slackM, 'm', 2)}.  ${wireColoursFrom(pack)}`,
      ),
    ),
  ];
}

/** The rule's limit for this trunk, where the checks judged it. */
function riseFinding(pack: Pack, trunk: TrunkPlan) {
  return pack.plan.checks.findings.find((one) => one.rule === 'trunk-rise' && one.about.id === trunk.id);
}

function riseSentence(pack: Pack, trunk: TrunkPlan): string {
  const finding = riseFinding(pack, trunk);
  if (finding !== undefined) return finding.title;
  const whereTo = trunk.mainsKnown ? 'the point of supply' : 'the board; the mains are not known';
  return `Trunk ${trunk.name} rises ${withUnit(trunk.rise.totalV, 'V', 2)} above ${whereTo}.`;
}

function quietLine(pack: Pack, trunk: TrunkPlan): string {
  const cable = sheetOf(pack, trunk.cableSheetId, 'trunk-cable');
  const far = trunk.drops.find((drop) => drop.number === trunk.farDrop)?.name ?? `drop ${trunk.farDrop}`;
  return `${cable.name}, ${lineLetters(trunk.lines)}. Highest at ${far}: trunk ${figure(trunk.rise.trunkV, 2)}, ${pack.words.homeRun} ${figure(trunk.rise.homeRunV, 2)}, mains ${trunk.mainsKnown ? figure(trunk.rise.mainsV, 2) : 'not known'} V.`;
}

/** Volts at the highest unit against the limit. */
function gaugePart(pack: Pack, trunk: TrunkPlan): Part[] {
  const finding = riseFinding(pack, trunk);
  if (finding?.limit === undefined || finding.value === undefined) return [gap(2)];
  const { limit, value } = finding;
  const top = Math.ceil(Math.max(limit, value) * 1.25);
  const fails = finding.state === 'fails';
  const shown = apart(value, limit, 2, fails);
  return [
    picture(21, ([x, y], widthMm) => [
      ruleGauge({
        at: [x + 6, y + 12],
        widthMm: widthMm - 24,
        from: 0,
        to: top,
        unit: 'V',
        limit: { value: limit, forbidden: 'above', text: `limit ${shown.limit}` },
        reading: { value, text: shown.value },
        of: finding.id,
        label: `${against(value, limit, 'V', fails)} above the point of supply`,
      }),
    ]),
    gap(2),
  ];
}

function dropTable(pack: Pack, trunk: TrunkPlan): Part {
  return table({
    label: `drops of trunk ${trunk.name}`,
    columns: [
      { head: 'place', share: 1.7, weight: 700 },
      { head: 'drop', share: 1.1 },
      { head: 'from end of rail, mm', share: 1.7, align: 'end' },
      { head: 'V up', share: 1.1, align: 'end' },
      { head: 'line', share: 1.7 },
      { head: 'serial, last eight', share: 4.6 },
      { head: 'clicked, tugged', share: 1.9 },
    ],
    rows: trunk.drops.map((drop) => ({
      of: drop.unitId ?? drop.name,
      label: drop.name,
      cells: drop.unitId === undefined ? spareCells(drop) : unitCells(pack, trunk, drop),
    })),
  });
}

function unitCells(pack: Pack, trunk: TrunkPlan, drop: Drop) {
  const lines = drop.line === undefined ? trunk.lines : [drop.line];
  const { wire, conductor } = wireOf(pack, lines);
  return [
    placesOf(drop),
    drop.name,
    drop.alongRailMm === undefined ? 'not known' : figure(Math.round(drop.alongRailMm), 0),
    figure(drop.aboveSupplyV, 2),
    conductor === 'ALL' ? lineLetters(lines) : { wire, conductor },
    { write: [4, 4] },
    { boxes: 2 },
  ];
}

/** `N1·7`, or the first and the last where a unit has several modules. */
export function placesOf(drop: Drop): string {
  const [first = 'none', ...more] = drop.moduleNames;
  return more.length === 0 ? first : `${first} to ${more.at(-1)}`;
}

function spareCells(drop: Drop) {
  return ['spare', drop.name, '', '', '', 'cap it and photograph it', { boxes: 1 }];
}
