import type { KeyboardEvent } from 'react';
import { expect, test } from 'vitest';
import { pressOnCell } from './gridKeys.ts';
import { TABLE_KEYS } from './tableKeys.ts';
import type { GridState } from './useGrid.ts';

/** The acts a press on a cell in the middle of a block of a table of 30 rows leads to; none where it is left alone. */
function actsOf(press: string): readonly string[] {
  const held = press.split('+');
  const done: string[] = [];
  const acts = new Proxy({}, { get: (_, name) => () => done.push(String(name)) }) as GridState['acts'];
  const event = {
    key: held.at(-1),
    ctrlKey: held.includes('Control'),
    shiftKey: held.includes('Shift'),
    altKey: held.includes('Alt'),
    metaKey: false,
    preventDefault: () => {},
    stopPropagation: () => {},
  } as unknown as KeyboardEvent;
  const at = { row: 15, column: 2 };
  const column = { kind: 'text', id: 'name', title: 'name', path: () => [] } as unknown as GridState['column'];
  pressOnCell(event, { at, range: true, column, size: { rows: 30, columns: 5 }, acts } as GridState, () => {
    done.push('undo');
  });
  return done;
}

const listed = TABLE_KEYS.flatMap(({ presses }) => presses);

test('every press on a cell that is listed does something', () => {
  expect(listed.filter((press) => actsOf(press).length === 0)).toEqual([]);
  expect(listed.length).toBeGreaterThan(20);
});

test('every press on a cell that does something is listed, or is a letter or figure', () => {
  const named = ['Enter', 'Escape', 'Tab', 'Delete', 'Backspace', 'Insert', 'F1', 'F2', 'F5', 'F10', 'Home', 'End'];
  const moves = ['ArrowUp', 'ArrowDown', 'ArrowLeft', 'ArrowRight', 'PageUp', 'PageDown', ' '];
  const letters = [...'abcdefghijklmnopqrstuvwxyz'];
  const presses = [...named, ...moves, ...letters.map((letter) => `Control+${letter}`)];
  const works = presses.filter((press) => actsOf(press).length > 0);
  expect(works.filter((press) => !listed.includes(press))).toEqual([]);
  // what the browser itself is to do is left to it
  expect(works).not.toContain('Tab');
  expect(works).not.toContain('Control+c');
});
