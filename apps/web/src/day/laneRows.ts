import type { DayTask } from '@eaveline/plan';

type Placed = Pick<DayTask, 'parts'>;

function overlap(a: Placed, b: Placed): boolean {
  return a.parts.some((p) =>
    b.parts.some((q) => p.day === q.day && p.startH < q.endH - 1e-9 && q.startH < p.endH - 1e-9),
  );
}

/** Tasks of one lane in as few rows as they need, so that no two lie on one another; those not placed are left out. */
export function laneRows<T extends Placed>(tasks: readonly T[]): T[][] {
  const rows: T[][] = [];
  const placed = tasks.filter(({ parts }) => parts.length > 0);
  const key = ({ parts: [first] }: T) => (first === undefined ? 0 : first.day * 100 + first.startH);
  for (const task of [...placed].sort((a, b) => key(a) - key(b))) {
    const row = rows.find((each) => each.every((other) => !overlap(other, task)));
    if (row === undefined) rows.push([task]);
    else row.push(task);
  }
  return rows;
}
