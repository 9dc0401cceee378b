import type { Keeping } from '../job/keeping.ts';
import { clock } from '../words/clock.ts';

function hour(date: Date): string {
  return clock(date.getHours() + date.getMinutes() / 60);
}

/** Where the newest edits are, said plainly: the device first, then the server. */
export function keepingWords({ device, server, apart }: Keeping): string {
  if (device.kind === 'refused') {
    if (server.kind === 'agreed')
      return `Not kept on this device: ${device.words} Your edits stand on this page and on the server. Save the job file too.`;
    return `Not kept: ${device.words} Your edits stand on this page alone. Save the job file.`;
  }
  if (apart !== undefined) return `${apart.words} Both are kept. Pick one.`;
  if (device.kind === 'keeping') return 'Being kept.';
  switch (server.kind) {
    case 'asking':
      return 'Kept on this device. The server is being asked.';
    case 'agreed':
      return 'All kept, on this device and on the server.';
    case 'sending':
      return 'Kept on this device. Going to the server.';
    case 'waiting':
      return `Kept on this device. Not on the server since ${hour(server.since)}: ${server.words}`;
  }
}

/** A notice as it is read in the foot: what a library said in brackets of a damaged history helps nobody there. */
export function noticeWords(words: string): string {
  return words.replace(/^(The history of this job does not read) \(.*\)\. (?=The job stands )/s, '$1: it is damaged. ');
}

/** How it stands, for its look: nothing to do, or something waits for a person. */
export function keepingState({ device, server, apart }: Keeping): 'kept' | 'waiting' {
  return device.kind === 'refused' || apart !== undefined || server.kind === 'waiting' ? 'waiting' : 'kept';
}
