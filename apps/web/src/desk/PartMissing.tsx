import type { ErrorComponentProps } from '@tanstack/react-router';
import { wordsOf } from '../job/keeping.ts';
import { Act } from '../parts/Act.tsx';
import { Plainly } from './Plainly.tsx';

/** A page whose part could not be fetched, or that fell over: what is known, and the way on. Jobs are kept as they are. */
export function PartMissing({ error }: ErrorComponentProps) {
  return (
    <Plainly
      sentence="This page could not be shown. What was kept is kept."
      lines={[wordsOf(error), 'Where the server does not answer, start it, then try again.']}
    >
      <Act onPress={() => location.reload()}>Try again</Act>
    </Plainly>
  );
}
