import type { Assumption, Reading, Remark } from './remark.ts';

/** A long file with one fault in every row needs the fault told, not eight thousand times. */
export const REMARKS_OF_A_KIND = 20;

/** Collects remarks and assumptions while a file is read, and closes them into a Reading. */
export interface RemarkLog {
  add(remark: Remark): void;
  assume(assumption: Assumption): void;
  count(code: string): number;
  /** True once a `stop` was added. */
  stopped(): boolean;
  close<T>(what: string, data: T | undefined): Reading<T>;
}

/** A new, empty log. Keeps the first {@link REMARKS_OF_A_KIND} remarks of each code and counts the rest. */
export function remarkLog(): RemarkLog {
  const remarks: Remark[] = [];
  const assumptions: Assumption[] = [];
  const counts = new Map<string, number>();
  let stopped = false;
  return {
    add(remark) {
      const seen = (counts.get(remark.code) ?? 0) + 1;
      counts.set(remark.code, seen);
      stopped ||= remark.severity === 'stop';
      if (seen <= REMARKS_OF_A_KIND) remarks.push(remark);
    },
    assume: (assumption) => void assumptions.push(assumption),
    count: (code) => counts.get(code) ?? 0,
    stopped: () => stopped,
    close: (what, data) => ({
      what,
      data: stopped ? undefined : data,
      remarks,
      counts: Object.fromEntries(counts),
      assumptions,
    }),
  };
}
