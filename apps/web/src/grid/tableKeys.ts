/** Keys of a table, as the list of keys tells them. */
export interface TableKey {
  readonly keys: string;
  readonly does: string;
  /** The presses on a cell that is not being typed in, as a browser names them; none where the browser itself takes them. */
  readonly presses: readonly string[];
}

/** What a table takes from the keyboard: on a cell in `gridKeys.ts`, in an open one in `CellInput.tsx`. */
export const TABLE_KEYS: readonly TableKey[] = [
  {
    keys: 'arrows, Page Up, Page Down',
    does: 'from cell to cell; ten rows at once',
    presses: ['ArrowUp', 'ArrowDown', 'ArrowLeft', 'ArrowRight', 'PageUp', 'PageDown'],
  },
  {
    keys: 'Home, End',
    does: 'first and last cell of the row; with Ctrl, of the table',
    presses: ['Home', 'End', 'Control+Home', 'Control+End'],
  },
  {
    keys: 'Ctrl and an arrow',
    does: 'to the edge of the table',
    presses: ['Control+ArrowUp', 'Control+ArrowDown', 'Control+ArrowLeft', 'Control+ArrowRight'],
  },
  {
    keys: 'Shift and any of these',
    does: 'pick a block of cells; Ctrl A picks them all',
    presses: ['Shift+ArrowRight', 'Shift+End', 'Control+Shift+ArrowDown', 'Control+a'],
  },
  { keys: 'letters and figures', does: 'begin the cell anew', presses: ['b', '4', '-', '/'] },
  {
    keys: 'Enter, F2, Space',
    does: 'open the cell with what stands in it; a tick is set or taken away',
    presses: ['Enter', 'F2', ' '],
  },
  {
    keys: 'Enter, Tab in an open cell',
    does: 'take it and go down, or to the right; with Shift up, or to the left',
    presses: [],
  },
  { keys: 'Esc in an open cell', does: 'put it back as it was; of a picked block, let it go', presses: ['Escape'] },
  { keys: 'Tab', does: 'out of the table: it is one stop', presses: [] },
  { keys: 'Delete, Backspace', does: 'empty what may be empty', presses: ['Delete', 'Backspace'] },
  { keys: 'Ctrl C, Ctrl X, Ctrl V', does: 'copy, cut, paste: one cell, a block, or from a spreadsheet', presses: [] },
  {
    keys: 'Ctrl D',
    does: 'fill down: the top cells of the block, or into one cell the one above',
    presses: ['Control+d'],
  },
  { keys: 'Ctrl Z', does: 'take the last change back', presses: ['Control+z'] },
];
