import { Act } from '../parts/Act.tsx';
import { takeNewerApp } from './appUpdate.ts';
import styles from './NewerApp.module.css';
import { useAppUpdate } from './useAppUpdate.ts';

export interface NewerAppProps {
  /**
   * `newer app` waits to be taken; `newer store`: a newer one in another tab has taken the jobs of this device over;
   * `held`: an older one in another tab does not let go of them.
   */
  readonly kind: 'newer app' | 'newer store' | 'held';
  /** Called where a person would rather go on for now; left out where that cannot be. */
  readonly onLater?: () => void;
}

const WORDS = {
  'newer app': 'A newer Eaveline is ready. Your edits are kept.',
  'newer store': 'A newer Eaveline is open in another tab. This one keeps nothing more; reload it.',
  held: 'An older Eaveline in another tab holds the jobs of this device. Close that tab; this one goes on by itself.',
} as const;
const TAKES = { 'newer app': 'Take it now', 'newer store': 'Reload', held: undefined } as const;

/** Two versions of the app meet on one device: what that means for the work, and the way out. */
export function NewerApp({ kind, onLater }: NewerAppProps) {
  const taken = useAppUpdate() === 'taken';
  const take = TAKES[kind];
  return (
    <div className={styles.newer} role={kind === 'newer app' ? 'status' : 'alert'}>
      <p>{taken ? 'The newer Eaveline comes as soon as the last edit is kept.' : WORDS[kind]}</p>
      {!taken && take !== undefined && (
        <div className={styles.acts}>
          <Act look={kind === 'newer app' ? 'edge' : 'main'} onPress={() => void takeNewerApp()}>
            {take}
          </Act>
          {onLater !== undefined && (
            <Act look="plain" onPress={onLater}>
              Later
            </Act>
          )}
        </div>
      )}
    </div>
  );
}
