import { useEffect, useState } from 'react';
import { TypedField } from '../parts/TypedField.tsx';
import type { ReadPlace, TypedPlace } from './typedPlace.ts';

interface Town {
  readonly words: string;
  readonly latitudeDeg: number;
  readonly longitudeDeg: number;
}

/** Towns whose climate is known, fetched when a place is asked for. */
async function readTowns(): Promise<readonly Town[]> {
  const { climatePlaces } = await import('@eaveline/formats');
  return climatePlaces.map(({ name, country, latitudeDeg, longitudeDeg }) => ({
    words: `${name}, ${country}`,
    latitudeDeg,
    longitudeDeg,
  }));
}

export interface PlaceFieldsProps {
  readonly place: TypedPlace;
  readonly onType: (place: TypedPlace) => void;
  /** What is wrong, once it was tried. */
  readonly wrong: ReadPlace | undefined;
}

/** Where a house stands: by the name of a town near it, or by its own coordinates. */
export function PlaceFields({ place, onType, wrong }: PlaceFieldsProps) {
  const [towns, setTowns] = useState<readonly Town[]>([]);
  const [near, setNear] = useState('');
  useEffect(() => {
    let left = false;
    // without them the coordinates can be typed all the same
    readTowns().then(
      (read) => !left && setTowns(read),
      () => {},
    );
    return () => {
      left = true;
    };
  }, []);
  const take = (words: string) => {
    setNear(words);
    const town = towns.find((each) => each.words === words);
    if (town !== undefined) onType({ latitude: shown(town.latitudeDeg), longitude: shown(town.longitudeDeg) });
  };
  const said = wrong !== undefined && !('latitudeDeg' in wrong) ? wrong : {};
  return (
    <>
      <TypedField
        label="Town near it"
        value={near}
        onType={take}
        placeholder="or leave it empty"
        offered={towns.map(({ words }) => words)}
      />
      <TypedField
        label="Latitude"
        value={place.latitude}
        onType={(latitude) => onType({ ...place, latitude })}
        unit="° north"
        inputMode="decimal"
        refusal={said.latitude}
      />
      <TypedField
        label="Longitude"
        value={place.longitude}
        onType={(longitude) => onType({ ...place, longitude })}
        unit="° east"
        inputMode="decimal"
        refusal={said.longitude}
      />
    </>
  );
}

const shown = (deg: number) => String(deg).replace('-', '\u2212');
