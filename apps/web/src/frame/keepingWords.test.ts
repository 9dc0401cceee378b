import { expect, test } from 'vitest';
import type { OnServer } from '../job/keeping.ts';
import { keepingWords, noticeWords } from './keepingWords.ts';

const words = (server: OnServer) =>
  keepingWords({ device: { kind: 'refused', words: 'This device has no more room.' }, server, apart: undefined });

test('a device without room: the edits stand on this page alone only while the server has not agreed', () => {
  const at = new Date('2026-05-15T06:00:00Z');
  expect(words({ kind: 'agreed', at })).toBe(
    'Not kept on this device: This device has no more room. Your edits stand on this page and on the server. Save the job file too.',
  );
  const alone = 'Not kept: This device has no more room. Your edits stand on this page alone. Save the job file.';
  expect(words({ kind: 'sending' })).toBe(alone);
  expect(words({ kind: 'waiting', words: 'The server does not answer.', since: at })).toBe(alone);
});

test('a history that does not read is said in plain words; other notices stand as they are', () => {
  expect(
    noticeWords(
      'The history of this job does not read (error loading change 0: unable to parse (x). Invalid magic bytes). The job stands as it was last kept, and a new history begins here.',
    ),
  ).toBe(
    'The history of this job does not read: it is damaged. The job stands as it was last kept, and a new history begins here.',
  );
  expect(noticeWords('Somebody (Nia) changed it.')).toBe('Somebody (Nia) changed it.');
});
