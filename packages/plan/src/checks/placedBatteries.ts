import type { BatterySheet, WallFacts } from '@eaveline/job';
import { sheetOf } from '../equipment.ts';
import type { CheckContext } from './context.ts';

/** A rectangle on a wall, mm from its left end and from the floor. */
export interface OnWall {
  readonly left: number;
  readonly bottom: number;
  readonly width: number;
  readonly height: number;
}

/** A battery with its sheet, and its wall where it has a place. */
export interface PlacedBattery {
  readonly id: string;
  readonly name: string;
  readonly sheet: BatterySheet;
  readonly barrier: boolean;
  readonly bollard: boolean;
  readonly place?: { readonly wallId: string; readonly wall: WallFacts; readonly at: OnWall };
}

/** Batteries of the job. A wall that the job does not know counts as no place. */
export function placedBatteries({ choices, facts }: Pick<CheckContext, 'choices' | 'facts'>): readonly PlacedBattery[] {
  return Object.entries(choices.batteries).map(([id, battery]) => {
    const sheet = sheetOf(choices.equipment, battery.sheet, 'battery');
    const wall = battery.place === undefined ? undefined : facts.walls[battery.place.wallId];
    return {
      id,
      name: sheet.name,
      sheet,
      barrier: battery.barrier,
      bollard: battery.bollard,
      ...(battery.place === undefined || wall === undefined
        ? {}
        : {
            place: {
              wallId: battery.place.wallId,
              wall,
              at: {
                left: battery.place.leftMm,
                bottom: battery.place.bottomMm,
                width: sheet.widthMm,
                height: sheet.heightMm,
              },
            },
          }),
    };
  });
}

/** Gap along the wall, and up or down it, between two rectangles; negative where they overlap in that direction. */
export function gaps(a: OnWall, b: OnWall): { readonly along: number; readonly above: number; readonly below: number } {
  return {
    along: Math.max(b.left - (a.left + a.width), a.left - (b.left + b.width)),
    /** From the top of `a` up to `b`. */
    above: b.bottom - (a.bottom + a.height),
    /** From the top of `b` up to `a`. */
    below: a.bottom - (b.bottom + b.height),
  };
}
