import type { Plan, SheetNo } from '@eaveline/plan';

/** What one stage of the plan leaves out, and the sheet that shows the stage. */
export interface LeftOut {
  readonly stage: string;
  readonly sheet: SheetNo;
  readonly lines: readonly string[];
}

/** Everything the plan leaves out, stage by stage along the road; a line two stages share is said once. */
export function leftOut(plan: Plan): LeftOut[] {
  const { site, sun, roof, array, trunks, board, energy, backup, structure, checks, kit, day, tests } = plan;
  const stages: readonly (readonly [string, SheetNo, readonly string[]])[] = [
    ['Site', '01', site.leavesOut],
    ['Sun', '01', sun.leavesOut],
    ['Roof', '02', roof.leavesOut],
    ['Array', '03', array.leavesOut],
    ['Trunks', '04', trunks.leavesOut],
    ['Board', '05', board.leavesOut],
    ['Energy', '07', energy.leavesOut],
    ['Backup', '06', backup.leavesOut],
    ['Structure', '03', structure.leavesOut],
    ['Checks', '08', checks.leavesOut],
    ['Kit', '09', kit.leavesOut],
    ['Day', '10', day.leavesOut],
    ['Tests', '11', tests.leavesOut],
  ];
  const said = new Set<string>();
  return stages.flatMap(([stage, sheet, all]) => {
    const lines = all.filter((words) => !said.has(words) && said.add(words));
    return lines.length === 0 ? [] : [{ stage, sheet, lines }];
  });
}
