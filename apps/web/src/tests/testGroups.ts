import type { TestRow } from '@eaveline/plan';

/** Groups of the test sheet in the order they are done. */
export const GROUPS: readonly { readonly group: TestRow['group']; readonly title: string; readonly word: string }[] = [
  { group: 'dead', title: 'Dead: everything off and proved', word: 'Dead' },
  { group: 'live', title: 'Live, before the sun is let in', word: 'Live' },
  { group: 'generating', title: 'Generating', word: 'Generating' },
  { group: 'backup', title: 'In island', word: 'Island' },
];

/** The first test that has no reading; undefined where every one is read. */
export function firstUnread(rows: readonly TestRow[]): TestRow | undefined {
  return rows.find(({ reading }) => reading === undefined);
}

/** `Dead 3 of 27`: where in its group a test stands. */
export function placeInGroup(rows: readonly TestRow[], row: TestRow): string {
  const mine = rows.filter(({ group }) => group === row.group);
  const word = GROUPS.find(({ group }) => group === row.group)?.word ?? row.group;
  return `${word}, ${mine.indexOf(row) + 1} of ${mine.length}`;
}
