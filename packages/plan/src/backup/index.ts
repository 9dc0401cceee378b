import type { BackupChoice, BoardFacts, Choices, Facts, Job, SupplyFacts } from '@eaveline/job';
import { sheetOf } from '../equipment.ts';
import { packFor } from '../rules/index.ts';
import type { RulePack } from '../rules/pack.ts';
import type { Stage } from '../stage.ts';
import type { TrunkPlan } from '../trunks/types.ts';
import { given, type Working, worked } from '../working.ts';
import { backedCircuits, leftDark, lineVA, runningOf } from './backedCircuits.ts';
import { changeoverNeed } from './changeoverNeed.ts';
import { islandFaults } from './islandFaults.ts';
import { type FeedingBattery, feedingBatteries, type LineRating, lineRatings } from './lineRatings.ts';
import { motorStarts } from './motorStarts.ts';
import { nightHours } from './nightHours.ts';
import type { BackedCircuit, BackupPlan } from './types.ts';

/** What the backup depends on. */
export interface BackupView {
  readonly supply: SupplyFacts;
  readonly mainSwitchA?: NonNullable<BoardFacts['mainSwitchA']>;
  readonly circuits: Facts['loads']['circuits'];
  readonly backup?: BackupChoice;
  readonly batteries: Choices['batteries'];
  readonly equipment: Choices['equipment'];
  readonly rules: Choices['rules'];
}

/** What stays alive when the grid is gone: running and starting power by line, hours of a night, faults, changeover. */
export const backupStage: Stage<'backup', 'trunks', BackupView> = {
  name: 'backup',
  before: ['trunks'],
  view: ({ facts, choices }: Job): BackupView => ({
    supply: facts.supply,
    ...(facts.board.mainSwitchA === undefined ? {} : { mainSwitchA: facts.board.mainSwitchA }),
    circuits: facts.loads.circuits,
    ...(choices.backup && { backup: choices.backup }),
    batteries: choices.batteries,
    equipment: choices.equipment,
    rules: choices.rules,
  }),

  run(view, { trunks }): BackupPlan {
    const { backup } = view;
    if (backup === undefined) return noBackup(view);
    const pack = packFor(view.rules);
    const circuits = backedCircuits(view.circuits, backup);
    const running = runningOf(circuits);
    const batteries = feedingBatteries(view.batteries, view.equipment, backup.lines);
    const ratings = lineRatings(batteries, backup.lines, view.supply.nominalV);
    const onBackup = trunks.trunks.filter(({ id }) => backup.trunks[id] === true);
    const faults = islandFaults(ratings, circuits, view.circuits);
    const need = changeoverNeed({
      supply: view.supply,
      mainSwitchA: view.mainSwitchA,
      backup,
      circuits,
      ratings,
      trunks: onBackup,
    });
    const night = nightHours(batteries, circuits, backup.reserve);
    const solar = solarWorking(onBackup, batteries);
    return {
      present: true,
      lines: backup.lines,
      circuits,
      byLine: ratings.map((rating) => runningOn(rating, running, pack)),
      starts: motorStarts({ facts: view.circuits, running, ratings }),
      usableKwh: batteries.reduce((sum, { sheet }) => sum + sheet.usableKwh, 0),
      reserve: backup.reserve,
      ...(night && { night }),
      leftDark: leftDark(circuits, view.circuits),
      solarOnBackupVA: onBackup.reduce((sum, trunk) => sum + trunk.ratedVA, 0),
      ...(solar && { solarShare: solar.value }),
      ...(faults.islandFaultA === undefined ? {} : { islandFaultA: faults.islandFaultA }),
      islandTrips: faults.islandTrips,
      changeoverA: sheetOf(view.equipment, backup.changeoverSheet, 'changeover').ratedA,
      changeoverNeedA: need.value,
      workings: [...(solar ? [solar] : []), ...(faults.working ? [faults.working] : []), need],
      leavesOut,
    };
  },
};

const leavesOut = [
  'Running watts count as volt-amperes: power factor one.',
  'A battery between two lines of a split-phase board is taken to give each half, whatever the other draws.',
  'A car charger, controlled load or second board listed as already there is in these sums only where it is entered among the circuits.',
  'Two motors starting at once are not promised.',
  'A moved circuit whose own line is not kept alive goes to the kept line with the least load.',
  'Night hours are without sun, at the mean night load. What battery and gateway use themselves is not in them.',
  'A fault in island is judged by a type B breaker at the battery’s own limit. The loop may hold it lower.',
  'The battery’s rating is not reduced for heat, cold or age.',
] as const;

/** Without a backup everything that must stay on is left dark. */
function noBackup({ circuits, batteries, equipment }: BackupView): BackupPlan {
  const all = Object.entries(circuits);
  return {
    present: false,
    lines: [],
    circuits: all.map(([id, { name, lines, runW, nightW }]) => ({
      id,
      name,
      lines,
      standsOn: lines,
      runW,
      nightW,
      moved: false,
      shed: false,
      fed: false,
    })),
    byLine: [],
    starts: [],
    usableKwh: Object.values(batteries).reduce(
      (sum, { sheet }) => sum + sheetOf(equipment, sheet, 'battery').usableKwh,
      0,
    ),
    reserve: 0,
    leftDark: all.filter(([, { wanted }]) => wanted === 'must stay on').map(([id]) => id),
    solarOnBackupVA: 0,
    islandTrips: [],
    workings: [],
    leavesOut: ['No changeover is chosen: nothing stays on when the grid is gone.'],
  };
}

function runningOn(
  rating: LineRating,
  running: readonly BackedCircuit[],
  pack: RulePack,
): BackupPlan['byLine'][number] {
  const { line, continuousVA } = rating;
  const { value: share, clause } = pack.backup.runningShare;
  const runningVA = lineVA(running, line);
  const limitVA = share * continuousVA;
  const loads = running
    .filter(({ lines }) => lines.includes(line))
    .map(({ id, name, runW, lines }) => {
      const whole = given(name, runW, 'W', `facts.loads.circuits.${id}.runW`, 'survey');
      if (lines.length === 1) return whole;
      return worked(`${name}, on ${line}`, runW / lines.length, 'VA', `P ÷ ${lines.length} lines`, 'shared evenly', [
        whole,
      ]);
    });
  const limit = worked(`Battery on ${line}, in the long run`, limitVA, 'VA', 'share · rating', clause, [
    { name: 'share', value: share, unit: '', source: clause },
    worked(
      'rating',
      continuousVA,
      'VA',
      'sum of the batteries on that line',
      'equipment sheets',
      rating.batteries.map(({ sheet, sheetId, of }) =>
        given(
          of === 1 ? sheet.name : `${sheet.name}, one of ${of} lines`,
          sheet.continuousVA,
          'VA',
          `choices.equipment.${sheetId}.continuousVA`,
          'equipment sheet',
        ),
      ),
    ),
  ]);
  const working = worked(
    `Running in island, ${line}`,
    runningVA,
    'VA',
    'sum of the circuits that are not shed',
    'survey',
    [...loads, limit],
  );
  return { line, runningVA, ratedVA: continuousVA, limitVA, working };
}

/** Solar on the backed-up side over the batteries that have to hold it back. */
function solarWorking(
  trunks: readonly TrunkPlan[],
  batteries: readonly FeedingBattery[],
): (Working & { readonly value: number }) | undefined {
  const batteryVA = batteries.reduce((sum, { sheet, lines, of }) => sum + (sheet.continuousVA * lines.length) / of, 0);
  if (batteryVA === 0) return undefined;
  const solarVA = trunks.reduce((sum, trunk) => sum + trunk.ratedVA, 0);
  const value = solarVA / batteryVA;
  const working = worked(
    'Solar on the backed-up side',
    value,
    '',
    'solar ÷ battery, at their ratings',
    'equipment sheets',
    [
      ...trunks.map(({ id, name, ratedVA }) =>
        given(`${name} on the backed-up side`, ratedVA, 'VA', `choices.backup.trunks.${id}`, 'sum of its units'),
      ),
      { name: 'batteries', value: batteryVA, unit: 'VA', source: 'equipment sheets' },
    ],
  );
  return { ...working, value };
}
