import { type RefObject, useLayoutEffect, useRef, useState } from 'react';

/** What a sheet keeps free on both sides of a drawing, px, beside a register and on a phone. */
const MARGINS = { wide: 80, phone: 32 };
const PHONE = '(max-width: 760px)';

/** No page a drawing stands on is narrower; where a phone lists the sheets, what stands there is out of sight. */
const NARROWEST = 300;

/**
 * The width most drawings have on the page that stands: one that is drawn for it at first need not be drawn a second
 * time before it is ever seen.
 */
function likelyWidth(): number {
  const main = typeof document === 'undefined' ? null : document.querySelector('main');
  if (main === null || main.clientWidth < NARROWEST) return 744;
  return main.clientWidth - (matchMedia(PHONE).matches ? MARGINS.phone : MARGINS.wide);
}

/** The room a drawing has, px, as it changes; a likely one until it is known. */
export function useWidth<E extends HTMLElement>(): { readonly ref: RefObject<E | null>; readonly width: number } {
  const ref = useRef<E>(null);
  const [width, setWidth] = useState(likelyWidth);
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
