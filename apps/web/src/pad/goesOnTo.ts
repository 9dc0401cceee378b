import type { Working } from '@eaveline/plan';
import type { PlacedSubject } from './subject.ts';

/** Same figure: same name, value and unit. Workings come from a worker, so they are other objects each time. */
export function sameFigure(a: Working, b: Working): boolean {
  return a.name === b.name && a.value === b.value && a.unit === b.unit;
}

/** Whether a figure was made of another, at any depth; a figure is not made of itself. */
export function madeOf(whole: Working, part: Working): boolean {
  return (whole.inputs ?? []).some((input) => sameFigure(input, part) || madeOf(input, part));
}

/** The working a subject stands on: its own, or that of its finding. */
export function workingOf({ working, finding }: Pick<PlacedSubject, 'working' | 'finding'>): Working | undefined {
  return working ?? finding?.working;
}

/**
 * Where a figure is used next: subjects of all sheets whose working has it among its inputs, and findings that
 * judge it as it is. Most direct first is not known; the order is that of the sheets.
 */
export function goesOnTo(of: PlacedSubject, all: readonly PlacedSubject[], most = 4): PlacedSubject[] {
  const figure = workingOf(of);
  if (figure === undefined) return [];
  const next = all.filter((other) => {
    if (other.sheet === of.sheet && other.id === of.id) return false;
    const whole = workingOf(other);
    if (whole === undefined) return false;
    return (
      madeOf(whole, figure) || (other.finding !== undefined && of.finding === undefined && sameFigure(whole, figure))
    );
  });
  return next.slice(0, most);
}
