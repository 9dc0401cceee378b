import { type RefObject, useLayoutEffect, useRef, useState } from 'react';

/** The room a drawing has, px, as it changes; `before` until it is known. */
export function useWidth<E extends HTMLElement>(
  before = 744,
): { readonly ref: RefObject<E | null>; readonly width: number } {
  const ref = useRef<E>(null);
  const [width, setWidth] = useState(before);
  useLayoutEffect(() => {
    const element = ref.current;
    if (element === null) return;
    setWidth(element.clientWidth);
    const watch = new ResizeObserver(() => setWidth(element.clientWidth));
    watch.observe(element);
    return () => watch.disconnect();
  }, []);
  return { ref, width };
}
