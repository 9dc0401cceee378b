import { useDesk } from '../desk/DeskContext.tsx';
import { Act } from '../parts/Act.tsx';
import styles from './History.module.css';
import { when } from './when.ts';

/** Over a sheet of the past: which moment it shows, and the ways out. */
export function PastStrip() {
  const { session, open, say } = useDesk();
  const { past } = open;
  if (past === undefined) return null;
  const then = when(past.at, new Date());
  const goBack = () => {
    const refusal = session.goBackTo(past);
    say(refusal === undefined ? `The job is again as it was ${then}. Z takes that back.` : `Not gone back. ${refusal}`);
  };
  return (
    <div className={styles.past} role="status">
      <p>
        <b>The job as it was {then}</b>, after “{past.what}”. It can be read, not changed.
      </p>
      <Act look="main" onPress={() => session.look(undefined)}>
        Back to now
      </Act>
      <Act onPress={goBack}>Go back to this</Act>
    </div>
  );
}
