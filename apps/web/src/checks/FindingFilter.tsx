import { type Finding, type SheetNo, tally as tallyOf } from '@eaveline/plan';
import { sheetName } from '../frame/sheetNames.ts';
import { Act } from '../parts/Act.tsx';
import { PickFrom } from '../parts/PickFrom.tsx';
import { PickOne } from '../parts/PickOne.tsx';
import styles from './FindingFilter.module.css';
import { EVERYTHING, type Filter, pickable } from './filter.ts';

export interface FindingFilterProps {
  readonly findings: readonly Finding[];
  readonly filter: Filter;
  readonly onFilter: (filter: Filter) => void;
}

/** Which findings sheet 08 shows: by state, by sheet, by the thing judged. */
export function FindingFilter({ findings, filter, onFilter }: FindingFilterProps) {
  const { fails, ask, meets } = tallyOf(findings);
  const { sheets, things } = pickable(findings, filter.sheet);
  return (
    <search className={styles.filter} aria-label="Findings shown">
      <PickOne
        label="State"
        value={filter.state}
        options={[
          { value: 'all', words: 'all' },
          { value: 'fails', words: `fails ${fails}` },
          { value: 'ask', words: `ask ${ask}` },
          { value: 'meets', words: `meets ${meets}` },
        ]}
        onPick={(state) => onFilter({ ...filter, state })}
      />
      <PickFrom
        label="On"
        none="every sheet"
        value={filter.sheet}
        options={sheets.map((no) => ({ value: no, words: `${no} ${sheetName(no)}` }))}
        onPick={(sheet) => onFilter({ ...filter, sheet: sheet as SheetNo | '', thing: '' })}
      />
      <PickFrom
        label="About"
        none="every thing"
        value={filter.thing}
        options={things.map((name) => ({ value: name, words: name }))}
        onPick={(thing) => onFilter({ ...filter, thing })}
      />
      {filter !== EVERYTHING && (
        <Act look="plain" onPress={() => onFilter(EVERYTHING)}>
          Show all
        </Act>
      )}
    </search>
  );
}
