import type { TestRow } from '@eaveline/plan';
import type { SheetProps } from '../desk/sheetView.ts';
import { Part } from '../parts/Part.tsx';
import { TestLine } from './TestLine.tsx';

const GROUPS: readonly { readonly group: TestRow['group']; readonly title: string }[] = [
  { group: 'dead', title: 'Dead: everything off and proved' },
  { group: 'live', title: 'Live, before the sun is let in' },
  { group: 'generating', title: 'Generating' },
  { group: 'backup', title: 'In island' },
];

/** Sheet 11: every test with what the design expects, the lawful limit apart from it, and the reading where there is one. */
export function TestsSheet({ plan: { tests }, selected, onSelect }: SheetProps) {
  return (
    <>
      <p className="quiet small">
        Readings cannot be typed in here yet; they come in with the job file, each with who, when and which instrument.
      </p>
      {GROUPS.map(({ group, title }) => {
        const rows = tests.rows.filter((row) => row.group === group);
        if (rows.length === 0) return null;
        return (
          <Part key={group} title={title} count={rows.length} ruled>
            <ol>
              {rows.map((row) => (
                <TestLine key={row.id} row={row} selected={selected === row.id} onSelect={onSelect} />
              ))}
            </ol>
          </Part>
        );
      })}
    </>
  );
}
