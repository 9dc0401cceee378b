import type { Keeping } from '../job/jobSession.ts';
import { clock } from '../words/clock.ts';

/** Where the newest edits are, said plainly. */
export function keepingWords(keeping: Keeping): string {
  switch (keeping.kind) {
    case 'kept':
      return 'All kept.';
    case 'keeping':
      return 'Being kept.';
    case 'waiting': {
      const { since, words } = keeping;
      return `Not saved: ${words} Kept in this browser since ${clock(since.getHours() + since.getMinutes() / 60)}.`;
    }
    case 'two versions':
      return 'Not saved: somebody else saved this job meanwhile. Yours is kept in this browser. Pick one.';
  }
}
