import { useState } from 'react';
import { saveBytes } from '../job/saveBytes.ts';
import { saveText } from '../job/saveText.ts';
import { Act } from '../parts/Act.tsx';
import { asText } from './asText.ts';
import styles from './BookPage.module.css';
import { removeLaidAside } from './layAside.ts';
import { keepParts } from './useBook.ts';

export interface LaidAsideActsProps {
  readonly id: string;
  readonly name: string;
  readonly document: unknown;
  /** Called once it is removed, with what is to be said of it. */
  readonly onDone: (words: string) => void;
}

/** The ways out of what was laid aside: save it, its history with it, and then remove it. */
export function LaidAsideActs({ id, name, document, onDone }: LaidAsideActsProps) {
  const [saved, setSaved] = useState(false);
  const [refused, setRefused] = useState<string>();
  const file = id.replaceAll(':', '-');
  const save = async () => {
    saveText(`${file}.as-kept.json`, asText(document));
    try {
      for (const [n, { bytes }] of (await keepParts.store.aside(id)).entries())
        saveBytes(`${file}.history-${n + 1}.bin`, new Uint8Array(bytes));
      setSaved(true);
    } catch (error) {
      setRefused(`Its history cannot be read: ${String(error)} It stays on this device.`);
    }
  };
  const remove = async () => {
    const { done, words } = await removeLaidAside(id, keepParts);
    if (done) onDone(words);
    else setRefused(words);
  };
  return (
    <>
      <div className={styles.bar}>
        <Act onPress={() => void save()} label={`Save what is there of ${name}`}>
          Save what is there
        </Act>
        {saved && (
          <Act onPress={() => void remove()} label={`Remove ${name}, laid aside, from this device`}>
            Remove it from this device
          </Act>
        )}
      </div>
      {saved && <p className="small">Removed, it is nowhere but in the files you saved.</p>}
      {refused !== undefined && <p role="alert">{refused}</p>}
    </>
  );
}
