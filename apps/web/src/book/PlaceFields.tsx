import { useRef, useState } from 'react';
import { Act } from '../parts/Act.tsx';
import { TypedField } from '../parts/TypedField.tsx';
import styles from './BookPage.module.css';
import { type Town, townNamed } from './towns.ts';
import { NO_PLACE, type ReadPlace, type TypedPlace } from './typedPlace.ts';

export interface PlaceFieldsProps {
  readonly place: TypedPlace;
  readonly onType: (place: TypedPlace) => void;
  readonly towns: readonly Town[];
  readonly onTown: (town: Town) => void;
  /** What is wrong, once it was tried. */
  readonly wrong: ReadPlace | undefined;
}

/** Where a house stands: by the name of a town near it, by where this device is, or by its own coordinates. */
export function PlaceFields({ place, onType, towns, onTown, wrong }: PlaceFieldsProps) {
  const [near, setNear] = useState('');
  const [located, setLocated] = useState<string>();
  const byTown = useRef(false);
  const named = townNamed(towns, near);
  const take = (words: string) => {
    setNear(words);
    const town = townNamed(towns, words);
    if (typeof town === 'object') {
      byTown.current = true;
      onType({ latitude: shown(town.latitudeDeg), longitude: shown(town.longitudeDeg) });
      onTown(town);
    } else if (byTown.current) {
      // the place of a town that is no longer named is nobody's
      byTown.current = false;
      onType(NO_PLACE);
    }
  };
  const type = (typed: TypedPlace) => {
    byTown.current = false;
    onType(typed);
  };
  const locate = () => {
    setLocated('The device is asked where it is.');
    navigator.geolocation.getCurrentPosition(
      ({ coords }) => {
        setNear('');
        type({ latitude: shown(round(coords.latitude)), longitude: shown(round(coords.longitude)) });
        setLocated(`Where this device is, to ${Math.ceil(coords.accuracy)} m.`);
      },
      ({ code }) => setLocated(NOT_LOCATED[code] ?? 'The device does not say where it is. Type the coordinates.'),
      { enableHighAccuracy: true, timeout: 20_000 },
    );
  };
  const said = wrong !== undefined && !('latitudeDeg' in wrong) ? wrong : {};
  const words = typeof named === 'string' ? named : located;
  return (
    <>
      <TypedField
        label="Town near it"
        value={near}
        onType={take}
        placeholder="or leave it empty"
        offered={towns.map((town) => town.words)}
      />
      <TypedField
        label="Latitude"
        value={place.latitude}
        onType={(latitude) => type({ ...place, latitude })}
        unit="° north"
        inputMode="decimal"
        refusal={said.latitude}
      />
      <TypedField
        label="Longitude"
        value={place.longitude}
        onType={(longitude) => type({ ...place, longitude })}
        unit="° east"
        inputMode="decimal"
        refusal={said.longitude}
      />
      <div className={styles.wide}>
        {'geolocation' in navigator && isSecureContext && <Act onPress={locate}>I stand at the house</Act>}
        <p className="quiet small" role="status" id="place-said">
          {words}
        </p>
      </div>
    </>
  );
}

/** By the codes of the Geolocation API. */
const NOT_LOCATED: Readonly<Record<number, string>> = {
  1: 'This device may not say where it is: allow it in the browser, or type the coordinates.',
  2: 'The device does not know where it is. Type the coordinates.',
  3: 'The device did not find out in 20 seconds. Type the coordinates, or try again under open sky.',
};

/** To a hundred-thousandth of a degree, about a metre. */
const round = (deg: number) => Number(deg.toFixed(5));
const shown = (deg: number) => String(deg).replace('-', '\u2212');
