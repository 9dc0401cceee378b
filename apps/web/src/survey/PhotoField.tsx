import type { Provenance } from '@eaveline/job';
import { useEffect, useId, useState } from 'react';
import { Icon } from '../frame/Icon.tsx';
import { whoIsHere } from '../job/whoIsHere.ts';
import { Mark } from '../parts/Mark.tsx';
import { useFactDesk } from './factDesk.ts';
import styles from './Photo.module.css';
import { type KeptPhoto, NotKept, photos } from './photoStore.ts';
import { seenWords } from './seenWords.ts';
import { photoId, shrunk } from './takePhoto.ts';

export interface PhotoFieldProps {
  /** Path below `facts` the photograph belongs to. */
  readonly of: string;
  readonly what: string;
  readonly seen: Provenance | undefined;
  /** Beside a reading rather than at the head of a step. */
  readonly small?: boolean;
}

/** A photograph: taken with the camera, kept on this phone first, named in the job only once it is kept. */
export function PhotoField({ of, what, seen, small = false }: PhotoFieldProps) {
  const desk = useFactDesk();
  const id = useId();
  const [said, setSaid] = useState<string>();
  const [busy, setBusy] = useState(false);
  const shown = useKept(seen?.photo);

  async function take(file: File | undefined) {
    if (file === undefined) return;
    const by = whoIsHere();
    if (by === '') return setSaid('Nobody is named. A photograph stands with who took it: say above who is here.');
    setBusy(true);
    setSaid(undefined);
    try {
      const at = new Date();
      const picture = await shrunk(file);
      const photo: KeptPhoto = {
        id: photoId(at, Math.random()),
        jobId: desk.job.id,
        of,
        what,
        by,
        at: at.toISOString(),
        picture,
      };
      await photos.keep(photo);
      const { notMeasured: _gone, ...before } = seen ?? {};
      // a photograph beside a reading leaves the reading's own hour alone
      const whole = { by, at: photo.at, ...before, photo: photo.id };
      setSaid(desk.take({ facts: {}, seen: { [of]: whole } }, `Photograph. ${what}`));
    } catch (error) {
      if (!(error instanceof NotKept)) throw error;
      setSaid(error.message);
    } finally {
      setBusy(false);
    }
  }
  return (
    <div className={styles.photo} data-small={small || undefined}>
      {shown.kind === 'here' && <img src={shown.address} alt={what} />}
      <input
        id={id}
        className="out-of-sight"
        type="file"
        accept="image/*"
        capture="environment"
        disabled={busy}
        aria-label={`Photograph. ${what}`}
        onChange={(event) => {
          const input = event.currentTarget;
          void take(input.files?.[0]).finally(() => {
            input.value = ''; // the same file may be picked again
          });
        }}
      />
      <label htmlFor={id} data-taken={seen?.photo !== undefined || undefined}>
        <Icon name="photo" />
        <span>
          <b>{seen?.photo === undefined ? 'Photograph' : 'Take it again'}</b>
          <span>{what}</span>
        </span>
      </label>
      {seen?.photo !== undefined && (
        <p className={styles.kept}>
          {shown.kind === 'gone'
            ? 'Taken, and kept on another phone.'
            : 'Kept on this phone. The job names it; the picture itself goes out with “Save the photographs”.'}{' '}
          {seenWords(seen, desk.job.facts.site.zone, new Date())}
        </p>
      )}
      {busy && <p className={styles.kept}>Being kept.</p>}
      {said !== undefined && (
        <p className={styles.refused} role="alert">
          <Mark state="fails" size={15} /> {said}
        </p>
      )}
    </div>
  );
}

type Shown = { readonly kind: 'none' | 'looking' | 'gone' } | { readonly kind: 'here'; readonly address: string };

/** The picture of an id as this device has it. */
function useKept(id: string | undefined): Shown {
  const [shown, setShown] = useState<Shown>({ kind: id === undefined ? 'none' : 'looking' });
  useEffect(() => {
    if (id === undefined) return setShown({ kind: 'none' });
    let address: string | undefined;
    let left = false;
    const look = async () => {
      const photo = await photos.get(id).catch(() => undefined); // a browser without a database has none
      if (left) return;
      if (photo === undefined) return setShown({ kind: 'gone' });
      address = URL.createObjectURL(photo.picture);
      setShown({ kind: 'here', address });
    };
    void look();
    return () => {
      left = true;
      if (address !== undefined) URL.revokeObjectURL(address);
    };
  }, [id]);
  return shown;
}
