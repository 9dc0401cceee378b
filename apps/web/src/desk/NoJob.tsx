import { LayAsideActs } from '../book/LayAsideActs.tsx';
import type { OpenJob, SessionState } from '../job/jobSession.ts';
import { Plainly } from './Plainly.tsx';

export interface NoJobProps {
  readonly id: string;
  readonly state: Exclude<SessionState, OpenJob>;
}

/** Why a job is not on the desk, and the way out. */
export function NoJob({ id, state }: NoJobProps) {
  switch (state.kind) {
    case 'opening':
      return <Plainly sentence="The job is being opened." lines={[]} />;
    case 'missing':
      return <Plainly sentence="No job of this name is in the Book." lines={[`It was looked for as ${id}.`]} />;
    case 'away':
      return (
        <Plainly
          sentence="The job cannot be fetched."
          lines={[state.words, 'It is not on this device either. Start the server, then open it again.']}
        />
      );
    case 'unreadable':
      return (
        <Plainly sentence="This job does not open. It is kept as it is." lines={state.words}>
          {state.raw !== undefined && (
            <LayAsideActs id={id} name="this job" document={state.raw} onDone={() => location.reload()} />
          )}
        </Plainly>
      );
  }
}
