import type { BatteryChoice, WallFacts } from '@eaveline/job';
import { type SheetOf, sheetOf } from '../equipment.ts';
import type { About } from '../finding.ts';
import { abouts } from './abouts.ts';
import type { CheckContext } from './context.ts';

/** A rectangle on a wall, mm from its left end and the floor, as seen from in front of it. */
export interface WallBox {
  readonly leftMm: number;
  readonly bottomMm: number;
  readonly widthMm: number;
  readonly heightMm: number;
}

/** A battery, its sheet, and the wall it hangs on where one was chosen. */
export interface HungBattery {
  readonly id: string;
  readonly about: About;
  readonly choice: BatteryChoice;
  readonly sheet: SheetOf<'battery'>;
  readonly on?: { readonly wallId: string; readonly wall: WallFacts; readonly box: WallBox };
}

/** Every battery with the place it hangs at. */
export function hungBatteries({ facts, choices }: Pick<CheckContext, 'facts' | 'choices'>): readonly HungBattery[] {
  return Object.entries(choices.batteries).map(([id, choice]): HungBattery => {
    const sheet = sheetOf(choices.equipment, choice.sheet, 'battery');
    const one = { id, about: abouts.battery(id, sheet.name), choice, sheet };
    const wall = choice.place && facts.walls[choice.place.wallId];
    if (choice.place === undefined || wall === undefined) return one;
    const { leftMm, bottomMm, wallId } = choice.place;
    const box = { leftMm, bottomMm, widthMm: sheet.widthMm, heightMm: sheet.heightMm };
    return { ...one, on: { wallId, wall, box } };
  });
}

/** Free space between two rectangles, sideways and up; negative where they lie over one another that way. */
export function apartMm(a: WallBox, b: WallBox): { readonly sideMm: number; readonly upMm: number } {
  return {
    sideMm: Math.max(b.leftMm - (a.leftMm + a.widthMm), a.leftMm - (b.leftMm + b.widthMm)),
    upMm: Math.max(b.bottomMm - (a.bottomMm + a.heightMm), a.bottomMm - (b.bottomMm + b.heightMm)),
  };
}

/** What is asked where no wall was chosen. */
export function askPlace({ id, about }: HungBattery) {
  return {
    about,
    state: 'ask' as const,
    title: `Which wall does ${about.name} hang on?`,
    needs: [`choices.batteries.${id}.place`],
  };
}
