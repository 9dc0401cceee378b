/** `sun_zenith_deg` → `sunZenithDeg`, `I_L_ref_a` → `ILRefA`. */
export const camelKey = (key: string) => key.replace(/_([a-z0-9])/gi, (_, c: string) => c.toUpperCase());

/** Keys that name nodes and segments of a network: what lies under them is called as the case calls it. */
const NAMED_INSIDE = new Set(['node_voltage_v', 'phase_to_neutral_v', 'neutral_shift_v', 'segment_current_a']);

/** A value of a reference file with its keys as `eaveline calc` has them, all the way down. */
export function camelKeys(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(camelKeys);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value).map(([key, inner]) => [camelKey(key), NAMED_INSIDE.has(key) ? inner : camelKeys(inner)]),
  );
}
