import { useState } from 'react';

const KEPT_AS = 'eaveline-person';

/** Who works with this device, remembered on it: named once, then offered wherever somebody has to be named. */
export function useDevicePerson(): readonly [string, (name: string) => void] {
  const [name, setName] = useState(() => localStorage.getItem(KEPT_AS) ?? '');
  const remember = (next: string) => {
    localStorage.setItem(KEPT_AS, next);
    setName(next);
  };
  return [name, remember];
}
