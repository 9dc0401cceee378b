import { sheetNoOf } from '../frame/sheetNames.ts';
import { JobDesk } from './JobDesk.tsx';
import { Lost } from './Lost.tsx';
import { Plainly } from './Plainly.tsx';
import { useSession } from './useSession.ts';

export interface JobPageProps {
  readonly id: string;
  /** As the address has it; undefined for the list of all sheets. */
  readonly sheet: string | undefined;
  readonly at: string | undefined;
}

/** A job by its address: opened, or plainly said why not. */
export function JobPage({ id, sheet, at }: JobPageProps) {
  const { session, state } = useSession(id);
  const no = sheet === undefined ? undefined : sheetNoOf(sheet);
  if (sheet !== undefined && no === undefined) return <Lost />;
  switch (state.kind) {
    case 'opening':
      return <Plainly sentence="The job is being opened." lines={[]} />;
    case 'missing':
      return <Plainly sentence="No job of this name is in the Book." lines={[`It was looked for as ${id}.`]} />;
    case 'unreadable':
      return <Plainly sentence="This job does not open. It is kept as it is." lines={state.words} />;
    case 'away':
      return (
        <Plainly
          sentence="The job cannot be fetched."
          lines={[state.words, 'It is not on this device either. Start the server, then open it again.']}
        />
      );
    case 'open':
      return <JobDesk session={session} open={state} sheet={no} at={at} />;
  }
}
