import { useEffect } from 'react';

/** Brings the thing selected into view when it changes, from an address, the pad or a key; where it is seen nothing moves. */
export function useSelectedInView(selected: string | undefined): void {
  useEffect(() => {
    if (selected === undefined) return;
    const thing = document.querySelector(`main [data-subject="${CSS.escape(selected)}"]`);
    thing?.scrollIntoView({ block: 'nearest' });
  }, [selected]);
}
