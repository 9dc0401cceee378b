import type { Choices, Facts, Job, Records, SupplyFacts } from '@eaveline/job';
import { byKey } from '../byKey.ts';
import { packFor } from '../rules/index.ts';
import type { Stage } from '../stage.ts';
import { backupTests } from './backupTests.ts';
import { deadTests } from './deadTests.ts';
import type { GeneratingInput } from './generatingInput.ts';
import { generatingTests } from './generatingTests.ts';
import { liveTests } from './liveTests.ts';
import { group } from './row.ts';
import type { TestsPlan } from './types.ts';
import { withReadings } from './withReadings.ts';

interface View {
  readonly supply: SupplyFacts;
  readonly network: Facts['network'];
  readonly rules: Choices['rules'];
  readonly equipment: Choices['equipment'];
  readonly rows: Choices['rows'];
  readonly modules: Choices['modules'];
  readonly units: Choices['units'];
  readonly batteries: Choices['batteries'];
  readonly backup: Choices['backup'];
  readonly exportLimitSetVA: number | undefined;
  readonly readings: Records['readings'];
}

/** The test sheet: what every reading should be, what it may be, and whom to suspect when it is not. */
export const testsStage: Stage<'tests', 'array' | 'trunks' | 'board' | 'backup', View> = {
  name: 'tests',
  before: ['array', 'trunks', 'board', 'backup'],
  view: (job: Job): View => ({
    supply: job.facts.supply,
    network: job.facts.network,
    rules: job.choices.rules,
    equipment: job.choices.equipment,
    rows: job.choices.rows,
    modules: job.choices.modules,
    units: job.choices.units,
    batteries: job.choices.batteries,
    backup: job.choices.backup,
    exportLimitSetVA: job.choices.exportLimitSetVA,
    readings: job.records.readings,
  }),

  run(view, { array, trunks, board, backup }): TestsPlan {
    const pack = packFor(view.rules);
    const exportLimit = exportLimitOf(view);
    const modulesOf = byKey(Object.values(view.modules), ({ unitId }) => unitId);
    const rows = [
      ...group('dead', deadTests({ ...view, pack, array, trunks, board })),
      ...group('live', liveTests({ ...view, pack, board })),
      ...group(
        'generating',
        generatingTests({ ...view, modulesOf, pack, trunks, ...(exportLimit === undefined ? {} : { exportLimit }) }),
      ),
      ...group('backup', backupTests({ ...view, pack, choice: view.backup, backup })),
    ];
    return {
      rows: withReadings(rows, view.readings),
      workings: [],
      leavesOut: [
        'Bands are common practice. They do not yet grow and shrink with the instrument in hand.',
        'Currents and rises are printed for one sun. The row says how to scale them.',
        'Suspects are in the order of practice, not yet ranked from the readings.',
      ],
    };
  },
};

/** The limit that has to hold: as set where it was set, else as the network says it. */
function exportLimitOf({ network, exportLimitSetVA }: View): GeneratingInput['exportLimit'] {
  const perLine = network.exportLimitVAPerLine !== undefined;
  if (exportLimitSetVA !== undefined) return { va: exportLimitSetVA, perLine, at: 'choices.exportLimitSetVA' };
  if (network.exportLimitVAPerLine !== undefined) {
    return { va: network.exportLimitVAPerLine, perLine: true, at: 'facts.network.exportLimitVAPerLine' };
  }
  if (network.exportLimitVATotal !== undefined) {
    return { va: network.exportLimitVATotal, perLine: false, at: 'facts.network.exportLimitVATotal' };
  }
  return undefined;
}
