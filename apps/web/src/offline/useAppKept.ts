import { useEffect, useState } from 'react';

/**
 * Is a copy of the app itself on this device, so that it opens without its server? Undefined where this browser, or a
 * page under work, keeps none.
 */
export function useAppKept(): boolean | undefined {
  const keeps = import.meta.env.PROD && 'serviceWorker' in navigator;
  const [kept, setKept] = useState(() => keeps && navigator.serviceWorker.controller !== null);
  useEffect(() => {
    if (!keeps) return;
    let shown = true;
    void navigator.serviceWorker.ready.then(() => {
      if (shown) setKept(true);
    });
    return () => {
      shown = false;
    };
  }, [keeps]);
  return keeps ? kept : undefined;
}
