/** Screen pixels in one millimetre of paper, 96 to the inch. */
export const PX_PER_MM = 96 / 25.4;

/** Scales a drawing may have; never one in between. */
export const SCALES = [10, 20, 40, 50, 75, 100, 125, 200, 500] as const;

/** The largest drawing of a thing that fits a room; the smallest scale there is where none fits. */
export function scaleFor(
  thing: { readonly wideM: number; readonly highM: number },
  room: { readonly width: number; readonly height: number },
): number {
  const fits = SCALES.find(
    (scale) => thing.wideM * pxPerM(scale) <= room.width && thing.highM * pxPerM(scale) <= room.height,
  );
  return fits ?? 500;
}

/** Pixels of one metre drawn at a scale. */
export function pxPerM(scale: number): number {
  return (1000 / scale) * PX_PER_MM;
}
