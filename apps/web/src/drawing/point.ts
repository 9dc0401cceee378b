/** A point of a drawing, px: x to the right, y down. */
export type Px = readonly [x: number, y: number];

export const plus = ([ax, ay]: Px, [bx, by]: Px, times = 1): Px => [ax + bx * times, ay + by * times];
export const minus = ([ax, ay]: Px, [bx, by]: Px): Px => [ax - bx, ay - by];
export const distance = (a: Px, b: Px): number => Math.hypot(a[0] - b[0], a[1] - b[1]);

/** Of length one; a vector of no length stays as it is. */
export function unit([x, y]: Px): Px {
  const length = Math.hypot(x, y);
  return length === 0 ? [0, 0] : [x / length, y / length];
}

/** Points as a path, to a tenth of a pixel. */
export function pathOf(points: readonly Px[], closed = false): string {
  return `M${points.map(([x, y]) => `${round(x)} ${round(y)}`).join('L')}${closed ? 'Z' : ''}`;
}

export const round = (value: number): number => Math.round(value * 10) / 10;

/** Whether a point lies inside a polygon. */
export function inside([x, y]: Px, polygon: readonly Px[]): boolean {
  let within = false;
  polygon.forEach(([ax, ay], i) => {
    const [bx, by] = polygon[(i + 1) % polygon.length] as Px;
    if (ay > y !== by > y && x < ((bx - ax) * (y - ay)) / (by - ay) + ax) within = !within;
  });
  return within;
}
