import { useEffect, useState } from 'react';
import { type Town, townOf } from './towns.ts';

/** Towns whose climate is known, fetched when a place is asked for; none until they are there. */
export function useTowns(): readonly Town[] {
  const [towns, setTowns] = useState<readonly Town[]>([]);
  useEffect(() => {
    let left = false;
    import('@eaveline/formats').then(
      ({ climatePlaces }) => !left && setTowns(climatePlaces.map(townOf)),
      () => {}, // without them the coordinates can be typed all the same
    );
    return () => {
      left = true;
    };
  }, []);
  return towns;
}
