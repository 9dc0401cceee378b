import { type ReactNode, useSyncExternalStore } from 'react';
import { createPortal } from 'react-dom';
import styles from './OverKeyboard.module.css';

function subscribe(listener: () => void): () => void {
  const view = window.visualViewport;
  view?.addEventListener('resize', listener);
  view?.addEventListener('scroll', listener);
  return () => {
    view?.removeEventListener('resize', listener);
    view?.removeEventListener('scroll', listener);
  };
}

/** Height at the foot of the page that the keys on the glass cover, px. */
function coveredPx(): number {
  const view = window.visualViewport;
  return view === null ? 0 : Math.max(0, Math.round(window.innerHeight - view.height - view.offsetTop));
}

export interface OverKeyboardProps {
  readonly children: ReactNode;
}

/** Lays something close above the keys on the glass; the sheet below it stays where it is. */
export function OverKeyboard({ children }: OverKeyboardProps) {
  const bottom = useSyncExternalStore(subscribe, coveredPx);
  return createPortal(
    <div className={styles.over} data-over-keyboard style={{ bottom }}>
      {children}
    </div>,
    document.body,
  );
}
