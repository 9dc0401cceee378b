import { useEffect, useState } from 'react';
import { saveText } from '../job/saveText.ts';
import { Act } from '../parts/Act.tsx';
import { asText } from './asText.ts';
import styles from './BookPage.module.css';
import { layAside, type ServerCopy, serverCopyOf } from './layAside.ts';
import { keepParts } from './useBook.ts';

export interface LayAsideActsProps {
  readonly id: string;
  readonly name: string;
  /** As it is kept here. */
  readonly document: unknown;
  /** Called once it is laid aside; its words say what became of it. */
  readonly onDone: (words: string) => void;
}

/** The ways out of a job kept on this device that does not open: save it, lay it aside, take the server's. */
export function LayAsideActs({ id, name, document, onDone }: LayAsideActsProps) {
  const [copy, setCopy] = useState<ServerCopy>('asking');
  const [saved, setSaved] = useState(false);
  const [refused, setRefused] = useState<string>();
  useEffect(() => {
    let left = false;
    void serverCopyOf(id, keepParts.server).then((found) => {
      if (!left) setCopy(found);
    });
    return () => {
      left = true;
    };
  }, [id]);
  const lay = async () => {
    const { done, words } = await layAside(id, keepParts);
    if (done) onDone(words);
    else setRefused(words);
  };
  return (
    <>
      <p className="small">{COPY_WORDS[copy]}</p>
      <div className={styles.bar}>
        <Act
          onPress={() => {
            saveText(`${id}.as-kept.json`, asText(document));
            setSaved(true);
          }}
          label={`Save what is there of ${name}`}
        >
          Save what is there
        </Act>
        {copy === 'opens' && (
          <Act onPress={() => void lay()} label={`Lay ${name} aside and take the server’s`}>
            Lay it aside and take the server’s
          </Act>
        )}
        {copy !== 'opens' && copy !== 'asking' && saved && (
          <Act onPress={() => void lay()} label={`Lay ${name} aside`}>
            Lay it aside
          </Act>
        )}
      </div>
      {refused !== undefined && <p role="alert">{refused}</p>}
    </>
  );
}

const COPY_WORDS: Readonly<Record<ServerCopy, string>> = {
  asking: 'The server is being asked for its copy.',
  opens:
    'The server has this job, and its copy opens. What is here is kept aside first, whole, and can be saved later.',
  'does not open': 'The server’s copy does not open either. Save what is there; then it can be laid aside.',
  none: 'The server does not have this job. Save what is there; then it can be laid aside.',
  away: 'The server does not answer: whether it has this job is not known. Save what is there; then it can be laid aside.',
};
