/** `07:30` as hours of the day. */
export function hoursOf(clockTime: string): number {
  const [h = 0, m = 0] = clockTime.split(':').map(Number);
  return h + m / 60;
}
