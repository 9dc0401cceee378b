/** What an open job needs, as one part: its frame and its sheets are never shown apart. */
export { JobDesk } from './JobDesk.tsx';
export { JobPage } from './JobPage.tsx';
export { openEarly } from './useSession.ts';
