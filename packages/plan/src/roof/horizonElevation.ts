/** A measured point of the horizon. */
export interface HorizonPoint {
  readonly azimuthDeg: number;
  readonly elevationDeg: number;
}

/**
 * Height of the surveyed horizon for every whole degree of azimuth, 0 to 360: straight between the points, round
 * the circle. Undefined where no horizon was taken: then nothing is hidden.
 */
export function horizonElevation(points: readonly HorizonPoint[]): Float64Array | undefined {
  if (points.length === 0) return undefined;
  const sorted = [...points].sort((a, b) => a.azimuthDeg - b.azimuthDeg);
  const first = sorted[0] as HorizonPoint;
  const last = sorted.at(-1) as HorizonPoint;
  const round = [
    { ...last, azimuthDeg: last.azimuthDeg - 360 },
    ...sorted,
    { ...first, azimuthDeg: first.azimuthDeg + 360 },
  ];
  return Float64Array.from({ length: 361 }, (_, azimuthDeg) => {
    const k = round.findIndex((point) => point.azimuthDeg > azimuthDeg);
    const [from, to] = [round[k - 1], round[k]];
    if (from === undefined || to === undefined) return (from ?? to ?? last).elevationDeg;
    const share = (azimuthDeg - from.azimuthDeg) / (to.azimuthDeg - from.azimuthDeg);
    return from.elevationDeg + share * (to.elevationDeg - from.elevationDeg);
  });
}
