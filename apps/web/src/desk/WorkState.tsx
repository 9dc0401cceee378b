import { Act } from '../parts/Act.tsx';
import { Progress } from '../plan/Progress.tsx';
import { useDesk } from './DeskContext.tsx';

/** Where long work on the plan stands, or where a person stopped it; nothing while plans come at once. */
export function WorkState() {
  const { session, open } = useDesk();
  return (
    <>
      <Progress progress={open.progress} onStop={session.stopWork} />
      {open.stopped !== undefined && (
        <p role="status">
          {open.stopped} <Act onPress={() => void session.workOutAgain()}>Work it out now</Act>
        </p>
      )}
    </>
  );
}
