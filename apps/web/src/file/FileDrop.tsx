import { useNavigate, useRouterState } from '@tanstack/react-router';
import { useEffect, useRef, useState } from 'react';
import styles from './FileDrop.module.css';
import { filesDesk } from './filesDesk.ts';

/** The page, over which job files can be let go anywhere: they are read, and the Book says what became of them. */
export function FileDrop() {
  const [over, setOver] = useState(false);
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
  if (!over) return null;
  return (
    <div className={styles.over} aria-hidden="true">
      <p>Let go: a job file is opened in the Book.</p>
    </div>
  );
}
