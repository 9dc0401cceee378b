import { EventEmitter } from 'node:events';
import { expect, test } from 'vitest';
import { endWithReader } from './endWithReader.ts';

const trouble = (code: string) => Object.assign(new Error(code), { code });

test('a reader that has seen enough ends the command; a full disk is still an error', () => {
  const stream = new EventEmitter();
  let ended = 0;
  endWithReader(stream, () => ended++);
  stream.emit('error', trouble('EPIPE'));
  expect(ended).toBe(1);
  expect(() => stream.emit('error', trouble('ENOSPC'))).toThrow('ENOSPC');
  expect(ended).toBe(1);
});
