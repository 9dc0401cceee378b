import { useEffect, useState } from 'react';

/** True once something has lasted so long. What comes and goes within a few frames is not shown: it would only flicker. */
export function useLate(lasts: boolean, afterMs: number): boolean {
  const [late, setLate] = useState(false);
  useEffect(() => {
    if (!lasts) return;
    const timer = setTimeout(() => setLate(true), afterMs);
    return () => {
      clearTimeout(timer);
      setLate(false);
    };
  }, [lasts, afterMs]);
  return lasts && late;
}
