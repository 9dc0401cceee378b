import { useNavigate, useRouterState } from '@tanstack/react-router';
import { useEffect, useRef, useState } from 'react';
import { Act } from '../parts/Act.tsx';
import styles from './FileDrop.module.css';
import { filesDesk } from './filesDesk.ts';
import { otherKind, WANTED } from './otherKind.ts';

/** The page, over which job files can be let go anywhere: they are read, and the Book says what became of them. */
export function FileDrop() {
  const [over, setOver] = useState(false);
  const [said, setSaid] = useState<string>();
  const inBook = useRouterState({ select: ({ location }) => location.pathname === '/' });
  const navigate = useNavigate();
  const latest = useRef({ inBook, navigate });
  latest.current = { inBook, navigate };
  useEffect(() => {
    const brings = (event: DragEvent) => event.dataTransfer?.types.includes('Files') === true;
    const drag = (event: DragEvent) => {
      if (!brings(event)) return;
      event.preventDefault(); // else the browser leaves the page for the file
      setOver(true);
    };
    const leave = (event: DragEvent) => {
      if (event.relatedTarget === null) setOver(false);
    };
    const drop = (event: DragEvent) => {
      setOver(false);
      const taken = event.defaultPrevented; // by a field that reads files of its own
      if (brings(event)) event.preventDefault();
      if (taken) return;
      const files = [...(event.dataTransfer?.files ?? [])];
      const wanted = latest.current.inBook ? files : files.filter(({ name }) => /\.json$/i.test(name));
      const others = files.filter((file) => !wanted.includes(file));
      setSaid(others.length === 0 ? undefined : notTaken(others.map(({ name }) => name)));
      if (wanted.length === 0) return;
      void filesDesk.bring(wanted);
      if (!latest.current.inBook) void latest.current.navigate({ to: '/' });
    };
    addEventListener('dragover', drag);
    addEventListener('dragleave', leave);
    addEventListener('drop', drop);
    return () => {
      removeEventListener('dragover', drag);
      removeEventListener('dragleave', leave);
      removeEventListener('drop', drop);
    };
  }, []);
  if (!over && said !== undefined)
    return (
      <div className={styles.said} role="alert">
        <p>{said}</p>
        <Act onPress={() => setSaid(undefined)}>Put away</Act>
      </div>
    );
  if (!over) return null;
  return (
    <div className={styles.over} aria-hidden="true">
      <p>Let go: a job file is opened in the Book.</p>
    </div>
  );
}

/** Why files that were let go over a sheet were not taken. */
function notTaken(names: readonly string[]): string {
  const [first = ''] = names;
  const kind = otherKind(first) ?? 'no job file';
  const more = names.length === 1 ? '' : ` Neither were ${names.length - 1} more.`;
  return `${first} was not taken: it is ${kind}. Wanted is ${WANTED}.${more}`;
}
