import { counted, countWord, sentence } from '../words/count.ts';
import type { Answered, Book } from './bookDesk.ts';
import type { BookEntry } from './entry.ts';

/** Where one job is kept, said no surer than it is known. */
export function whereWords({ where, differs }: Pick<BookEntry, 'where' | 'differs'>, server: Answered): string {
  switch (where) {
    case 'both':
      return differs ? 'on this device; the server holds another state' : 'on this device and the server';
    case 'server':
      return 'on the server, not on this device yet';
    case 'device':
      return server.kind === 'answered' ? 'on this device only' : 'on this device';
  }
}

/** Where the jobs of the Book are kept, each count by itself. */
export function keptWords({ entries, server }: Pick<Book, 'entries' | 'server'>): string {
  const count = (where: BookEntry['where']) => entries.filter((entry) => entry.where === where).length;
  const [device, both, there] = [count('device'), count('both'), count('server')];
  if (entries.length === 0) return 'No job yet';
  if (device === entries.length) return `${jobs(device)}, on this device${server.kind === 'answered' ? ' only' : ''}`;
  if (both === entries.length) return `${jobs(both)}, on this device and the server`;
  if (there === entries.length) return `${jobs(there)}, on the server only`;
  const parts = [
    both > 0 && `${countWord(both)} on this device and the server`,
    device > 0 && `${countWord(device)} on this device${server.kind === 'answered' ? ' only' : ''}`,
    there > 0 && `${countWord(there)} on the server only`,
  ].filter((words) => words !== false);
  return `${jobs(entries.length)}: ${parts.join(', ')}`;
}

const jobs = (count: number) => sentence(counted(count, 'job'));

/** What does not answer, and what that means for the jobs shown; undefined where both places have answered. */
export function awayWords({
  device,
  server,
  entries,
}: Pick<Book, 'device' | 'server' | 'entries'>): string | undefined {
  if (device.kind === 'away' && server.kind === 'away')
    return `Neither this device nor the server gives its jobs. ${device.words} ${server.words}`;
  if (device.kind === 'away') return `This device does not give its jobs: ${device.words} These are the server’s.`;
  if (server.kind !== 'away') return undefined;
  if (entries.length === 0) return `${server.words} No job is kept on this device.`;
  return `${server.words} These are the jobs kept on this device.`;
}
