import type { Finding, SheetNo } from '@eaveline/plan';
import { useJob } from '../job/JobContext.tsx';
import { Part } from '../parts/Part.tsx';
import { FindingRow } from './FindingRow.tsx';

export interface FindingsHereProps {
  readonly findings: readonly Finding[];
  readonly sheet: SheetNo;
  readonly selected: string | undefined;
  readonly onSelect: (id: string) => void;
}

/** What fails or asks beside the things of one sheet; nothing where all of it meets. */
export function FindingsHere({ findings, sheet, selected, onSelect }: FindingsHereProps) {
  const { mend } = useJob();
  const here = findings.filter((finding) => finding.sheet === sheet && finding.state !== 'meets');
  if (here.length === 0) return null;
  return (
    <Part title="Judged here, and open" count={here.length} ruled>
      <ul>
        {here.map((finding) => (
          <FindingRow
            key={finding.id}
            finding={finding}
            selected={selected === finding.id}
            main={false}
            onSelect={onSelect}
            onMend={mend}
          />
        ))}
      </ul>
    </Part>
  );
}
