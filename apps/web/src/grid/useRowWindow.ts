import { type RefObject, useEffect, useRef, useState } from 'react';
import { flushSync } from 'react-dom';

/** Shorter tables are drawn whole: then the browser's own find sees every row. */
const WHOLE = 200;
const ROW_PX = 33;
/** Rows drawn above and below what is seen. */
const SPARE = 12;

/** A run of rows that are drawn, ends as in `slice`. */
export interface Run {
  readonly from: number;
  readonly to: number;
}

/** The rows drawn of a long table: those seen, and the one with the focus wherever it is. */
export function runsOf(count: number, seen: Run, focused: number): readonly Run[] {
  const from = Math.max(seen.from - SPARE, 0);
  const to = Math.min(seen.to + SPARE, count);
  if (focused >= from && focused < to) return [{ from, to }];
  const alone = { from: focused, to: focused + 1 };
  return focused < from ? [alone, { from, to }] : [{ from, to }, alone];
}

export interface RowWindow {
  readonly ref: RefObject<HTMLDivElement | null>;
  /** True where only some rows are drawn. */
  readonly some: boolean;
  readonly runs: readonly Run[];
  readonly rowPx: number;
  readonly onScroll: () => void;
}

/** Draws only the rows of a table that are seen, once it has more than two hundred. */
export function useRowWindow(count: number, focused: number): RowWindow {
  const ref = useRef<HTMLDivElement>(null);
  const printing = usePrinting();
  const some = count > WHOLE && !printing;
  const [seen, setSeen] = useState<Run>({ from: 0, to: 40 });
  const [rowPx, setRowPx] = useState(ROW_PX);

  const look = () => {
    const box = ref.current;
    if (!some || box === null) return;
    const px = box.querySelector<HTMLElement>('tr[data-row]')?.offsetHeight || ROW_PX;
    setRowPx(px);
    const from = Math.floor(box.scrollTop / px);
    const to = Math.ceil((box.scrollTop + box.clientHeight) / px);
    setSeen((now) => (now.from === from && now.to === to ? now : { from, to }));
  };

  useEffect(() => {
    const box = ref.current;
    if (!some || box === null) return;
    const top = focused * rowPx;
    if (top < box.scrollTop) box.scrollTop = top;
    else if (top + 2 * rowPx > box.scrollTop + box.clientHeight) box.scrollTop = top + 2 * rowPx - box.clientHeight;
  }, [some, focused, rowPx]);

  return { ref, some, runs: some ? runsOf(count, seen, focused) : [{ from: 0, to: count }], rowPx, onScroll: look };
}

/** True while the page is being printed: on paper every row is drawn. */
function usePrinting(): boolean {
  const [printing, setPrinting] = useState(false);
  useEffect(() => {
    // drawn before the browser lays the page out, not after
    const begin = () => flushSync(() => setPrinting(true));
    const end = () => setPrinting(false);
    addEventListener('beforeprint', begin);
    addEventListener('afterprint', end);
    return () => {
      removeEventListener('beforeprint', begin);
      removeEventListener('afterprint', end);
    };
  }, []);
  return printing;
}
