import { expect, test } from 'vitest';
import type { Draft } from './addRow.ts';
import { readDraft, writeDraft } from './keptDraft.ts';

function storage() {
  const items = new Map<string, string>();
  return {
    getItem: (key: string) => items.get(key) ?? null,
    setItem: (key: string, text: string) => void items.set(key, text),
    removeItem: (key: string) => void items.delete(key),
  };
}

const draft: Draft = {
  row: { id: 'object-2', name: 'the new object', subject: 'object-2' },
  changes: [{ path: ['facts', 'objects', 'object-2', 'heightM'], value: 4 }],
};

test('a row half filled in is there again, and gone when it is dropped or in the job', () => {
  const tab = storage();
  expect(readDraft(tab, 'a table')).toBeUndefined();
  writeDraft(tab, 'a table', draft);
  expect(readDraft(tab, 'a table')).toEqual(draft);
  expect(readDraft(tab, 'another table')).toBeUndefined();
  writeDraft(tab, 'a table', undefined);
  expect(readDraft(tab, 'a table')).toBeUndefined();
});

test('what does not read is no draft, and a browser that remembers nothing is no fault', () => {
  const tab = storage();
  for (const text of ['', '{', 'null', '[]', '{"row":{},"changes":[]}', '{"row":{"id":"a"}}']) {
    tab.setItem('a table', text);
    expect(readDraft(tab, 'a table'), text).toBeUndefined();
  }
  const closed = {
    getItem: () => {
      throw new DOMException('Access is denied for this document.', 'SecurityError');
    },
    setItem: () => {
      throw new DOMException('Access is denied for this document.', 'SecurityError');
    },
    removeItem: () => {},
  };
  writeDraft(closed, 'a table', draft);
  expect(readDraft(closed, 'a table')).toBeUndefined();
});
