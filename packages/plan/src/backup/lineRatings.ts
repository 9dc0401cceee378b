import type { BatteryChoice, Choices } from '@eaveline/job';
import { type SheetOf, sheetOf } from '../equipment.ts';
import type { Line } from '../trunks/types.ts';

/** A battery that feeds the backed-up side. */
export interface FeedingBattery {
  readonly id: string;
  readonly sheetId: string;
  readonly sheet: SheetOf<'battery'>;
  /** Its lines that are kept alive. */
  readonly lines: readonly Line[];
  /** Of how many lines its ratings are the sum. */
  readonly of: number;
}

/** What the batteries give on one line. */
export interface LineRating {
  readonly line: Line;
  readonly batteries: readonly FeedingBattery[];
  readonly continuousVA: number;
  readonly peakVA: number;
  readonly faultA: number;
}

/** Batteries with a line on the backed-up side; the others go dark with the grid. */
export function feedingBatteries(
  batteries: Readonly<Record<string, BatteryChoice>>,
  equipment: Choices['equipment'],
  kept: readonly Line[],
): readonly FeedingBattery[] {
  return Object.entries(batteries)
    .map(([id, battery]) => ({
      id,
      sheetId: battery.sheet,
      sheet: sheetOf(equipment, battery.sheet, 'battery'),
      lines: battery.lines.filter((line) => kept.includes(line)),
      of: battery.lines.length,
    }))
    .filter(({ lines }) => lines.length > 0);
}

/**
 * Ratings by line: a battery on several lines gives each an equal part. Where its sheet states no fault current, its
 * short-time rating over the volts of the line stands for it.
 */
export function lineRatings(
  batteries: readonly FeedingBattery[],
  kept: readonly Line[],
  nominalV: number,
): readonly LineRating[] {
  return kept.map((line) => {
    const here = batteries.filter(({ lines }) => lines.includes(line));
    const sum = (of: (battery: FeedingBattery) => number) => here.reduce((all, battery) => all + of(battery), 0);
    return {
      line,
      batteries: here,
      continuousVA: sum(({ sheet, of }) => sheet.continuousVA / of),
      peakVA: sum(({ sheet, of }) => sheet.peakVA / of),
      faultA: sum(({ sheet, of }) => sheet.faultA ?? sheet.peakVA / of / nominalV),
    };
  });
}
