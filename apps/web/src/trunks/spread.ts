/** Labels beside their curves, moved apart so that none lies on another: heights by id, each at least `gap` from the next. */
export function spread(
  wanted: readonly { readonly id: string; readonly y: number }[],
  gap: number,
  lowest: number,
): ReadonlyMap<string, number> {
  const sorted = [...wanted].sort((a, b) => a.y - b.y);
  const placed: { id: string; y: number }[] = [];
  for (const { id, y } of sorted) {
    const above = placed.at(-1);
    placed.push({ id, y: above === undefined ? y : Math.max(y, above.y + gap) });
  }
  // pushed past the foot: back up again from below
  for (let i = placed.length - 1, limit = lowest; i >= 0; i--) {
    const each = placed[i] as { id: string; y: number };
    each.y = Math.min(each.y, limit);
    limit = each.y - gap;
  }
  return new Map(placed.map(({ id, y }) => [id, y]));
}
