import { type ReactNode, type RefObject, useCallback, useEffect, useRef, useState } from 'react';
import styles from './Sideways.module.css';

export interface SidewaysProps {
  /** Measures the room there is, not what is drawn in it. */
  readonly room: RefObject<HTMLDivElement | null>;
  readonly children: ReactNode;
}

/**
 * A drawing that may be wider than its sheet: it runs sideways inside its own edges, and where it goes on
 * the edge is the cut line of a drawing, so that nobody takes the cut for the end.
 */
export function Sideways({ room, children }: SidewaysProps) {
  const inner = useRef<HTMLDivElement>(null);
  const [more, setMore] = useState({ left: false, right: false });
  const look = useCallback(() => {
    const element = inner.current;
    if (element === null) return;
    const { scrollLeft, scrollWidth, clientWidth } = element;
    const left = scrollLeft > 2;
    const right = scrollLeft + clientWidth < scrollWidth - 2;
    setMore((now) => (now.left === left && now.right === right ? now : { left, right }));
  }, []);
  useEffect(() => {
    const element = inner.current;
    if (element === null) return;
    look();
    const watch = new ResizeObserver(look);
    watch.observe(element);
    if (element.firstElementChild !== null) watch.observe(element.firstElementChild);
    return () => watch.disconnect();
  }, [look]);
  return (
    <div ref={room} className={styles.room}>
      <div ref={inner} className={styles.inner} onScroll={look}>
        {children}
      </div>
      {more.left && <CutEdge side="left" />}
      {more.right && <CutEdge side="right" />}
    </div>
  );
}

/** The long break line of ISO 128, beyond which the sheet shows through. */
function CutEdge({ side }: { readonly side: 'left' | 'right' }) {
  const marks = Array.from({ length: 12 }, (_, i) => `V${40 + i * 90}l-4 4 8 6-4 4`);
  return (
    <svg className={styles.cut} data-side={side} width="14" aria-hidden="true">
      <rect className="on-film" width="14" height="100%" />
      <path className="pen35" d={`M7 0${marks.join('')}V2000`} />
    </svg>
  );
}
