import type { SheetProps } from '../desk/sheetView.ts';
import { Part } from '../parts/Part.tsx';
import { useNarrow } from '../parts/useNarrow.ts';
import { latestReading } from './reading.ts';
import { TestLine } from './TestLine.tsx';
import { TestPhone } from './TestPhone.tsx';
import { firstUnread, GROUPS } from './testGroups.ts';

/** Sheet 11: every test with what the design expects, the lawful limit apart from it, and the reading where there is one. */
export function TestsSheet({ plan: { tests }, job, selected, onSelect }: SheetProps) {
  const narrow = useNarrow();
  const { rows } = tests;
  const { readings } = job.records;
  const recordOf = (test: string) => {
    const id = latestReading(readings, test);
    return id === undefined ? undefined : readings[id];
  };
  const now = rows.find(({ id }) => id === selected) ?? firstUnread(rows) ?? rows[0];
  if (now === undefined) return null;
  if (narrow) return <TestPhone row={now} rows={rows} record={recordOf(now.id)} onSelect={onSelect} />;
  return GROUPS.map(({ group, title }) => {
    const mine = rows.filter((row) => row.group === group);
    if (mine.length === 0) return null;
    const read = mine.filter(({ reading }) => reading !== undefined).length;
    return (
      <Part key={group} title={title} count={mine.length} ruled aside={read === 0 ? 'none read' : `${read} read`}>
        <ol>
          {mine.map((row, i) => (
            <TestLine
              key={row.id}
              row={row}
              rows={rows}
              record={recordOf(row.id)}
              asAbove={mine[i - 1]?.name === row.name && mine[i - 1]?.instrument === row.instrument}
              selected={selected === row.id}
              onSelect={onSelect}
            />
          ))}
        </ol>
      </Part>
    );
  });
}
