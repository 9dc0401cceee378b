import type { KeyboardEvent } from 'react';
import { ledBy } from './spots.ts';
import type { GridState } from './useGrid.ts';

/**
 * What a key does on a cell that is not being typed in. Every key that does something here is kept from the page:
 * letters begin a cell, and call no sheet.
 */
export function pressOnCell(event: KeyboardEvent, { at, range, column, size, acts }: GridState, undo: () => void) {
  const ctrl = event.ctrlKey || event.metaKey;
  const to = event.altKey ? undefined : ledBy(event.key, ctrl, at, size);
  if (to !== undefined) acts.goTo(to, event.shiftKey);
  else if (ctrl && event.key.toLowerCase() === 'd') acts.fillDown();
  else if (ctrl && event.key.toLowerCase() === 'z' && !event.shiftKey) undo();
  else if (ctrl && event.key.toLowerCase() === 'a')
    acts.pickTo({ row: 0, column: 0 }, { row: size.rows - 1, column: size.columns - 1 });
  else if (ctrl || event.altKey || event.key === 'Tab') return;
  else if (event.key === 'Enter' || event.key === 'F2') acts.begin('opened');
  else if (event.key === ' ') acts.begin('opened');
  else if (event.key === 'Delete' || event.key === 'Backspace') acts.clear();
  else if (event.key === 'Escape' && range) acts.letGo();
  else if (event.key.length === 1)
    column?.kind === 'tick' ? acts.say('Space ticks it.') : acts.begin('typed', event.key);
  else return;
  event.preventDefault();
  event.stopPropagation();
}
