/** Words that tell of a value nobody looked at. */
const LEAKED = /\b(undefined|NaN|Infinity|null)\b|\[object /;

/**
 * Every place of a plan where a figure is not finite or a text shows a hole; empty where the plan is sound.
 * Columns of hours are walked too, and told once each.
 */
export function figureFaults(value: unknown, at = 'plan'): string[] {
  if (typeof value === 'number') return Number.isFinite(value) ? [] : [`${at} is ${value}`];
  if (typeof value === 'string') return LEAKED.test(value) ? [`${at} reads "${value}"`] : [];
  if (ArrayBuffer.isView(value)) {
    const bad = (value as Float64Array).findIndex((figure) => !Number.isFinite(figure));
    return bad < 0 ? [] : [`${at}[${bad}] is ${(value as Float64Array)[bad]}`];
  }
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) => figureFaults(inner, `${at}.${key}`));
}
