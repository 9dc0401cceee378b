import type { Plan } from '@eaveline/plan';

/**
 * A plan as JSON. Series with a value for every hour of the year are left out and named with their length, unless
 * asked for: they make a file of megabytes that nobody reads.
 */
export function planJson(plan: Plan, series: boolean): string {
  return JSON.stringify(
    plan,
    (_key, value: unknown) => {
      if (!ArrayBuffer.isView(value)) return value;
      const list = value as unknown as ArrayLike<number>;
      return series ? Array.from(list) : { series: list.length, note: 'left out; --series writes it' };
    },
    2,
  );
}
