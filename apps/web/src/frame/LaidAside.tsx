import { useEffect, useState } from 'react';
import { when } from '../history/when.ts';
import { deviceStore } from '../job/deviceStore.ts';
import { saveBytes } from '../job/saveBytes.ts';

export interface LaidAsideProps {
  readonly id: string;
  /** What was said of the job: where that changes it is looked for anew. */
  readonly notices: readonly string[];
}

type Laid = Awaited<ReturnType<ReturnType<typeof deviceStore>['aside']>>;

/** Histories of a job that did not read and were laid aside on this device: each can be saved as a file, as it lay there. */
export function LaidAside({ id, notices }: LaidAsideProps) {
  const [laid, setLaid] = useState<Laid>([]);
  const [refused, setRefused] = useState<string>();
  // biome-ignore lint/correctness/useExhaustiveDependencies: what is said anew may have laid something aside
  useEffect(() => {
    let left = false;
    deviceStore()
      .aside(id)
      .then(
        (found) => !left && setLaid(found),
        (error: unknown) => !left && setRefused(`What was laid aside cannot be read: ${String(error)}`),
      );
    return () => {
      left = true;
    };
  }, [id, notices]);
  return (
    <>
      {refused !== undefined && <p>{refused}</p>}
      {laid.map(({ at, bytes }) => (
        <div key={at}>
          <button
            type="button"
            onClick={() => saveBytes(`${id}.history-laid-aside.${at.replaceAll(':', '-')}.bin`, new Uint8Array(bytes))}
          >
            Save the history laid aside {when(new Date(at), new Date())}
          </button>
        </div>
      ))}
    </>
  );
}
