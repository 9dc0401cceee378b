import { type RefObject, useEffect, useRef } from 'react';

/** Brings a row into view when it becomes the one selected, from an address or by a key; where it is seen, nothing moves. */
export function useInView<E extends HTMLElement>(selected: boolean): RefObject<E | null> {
  const ref = useRef<E>(null);
  useEffect(() => {
    if (selected) ref.current?.scrollIntoView({ block: 'nearest' });
  }, [selected]);
  return ref;
}
