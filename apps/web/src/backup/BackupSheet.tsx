import { FindingsHere } from '../checks/FindingsHere.tsx';
import type { SheetProps } from '../desk/sheetView.ts';
import { NumberField } from '../parts/NumberField.tsx';
import { Part } from '../parts/Part.tsx';
import { PickField } from '../parts/PickField.tsx';
import { TickField } from '../parts/TickField.tsx';
import fields from '../trunks/TrunkFields.module.css';
import { withUnit } from '../words/figure.ts';
import { BackedGrid } from './BackedGrid.tsx';
import { LinesOnBattery } from './LinesOnBattery.tsx';
import { MotorStarts } from './MotorStarts.tsx';
import { NightHours } from './NightHours.tsx';

/** Sheet 06: what stays on, line by line, which motors start, how long a night is lit. */
export function BackupSheet({ plan, job, selected, onSelect }: SheetProps) {
  const { backup } = plan;
  if (!backup.present)
    return <p>A battery and a changeover are chosen first; then what stays on is worked out here.</p>;
  const batteries = Object.keys(job.choices.batteries);
  return (
    <>
      <Part title="Running on each line, against the battery">
        <LinesOnBattery backup={backup} selected={selected} onSelect={onSelect} />
      </Part>
      {backup.starts.length > 0 && (
        <Part title="Starts, each with everything else running" ruled count={backup.starts.length}>
          <MotorStarts starts={backup.starts} findings={plan.checks.findings} selected={selected} onSelect={onSelect} />
        </Part>
      )}
      {backup.night && (
        <Part title="A night without sun" aside={`mean load ${withUnit(backup.night.loadW, 'W', 0)}`}>
          <NightHours
            night={backup.night}
            usableKwh={backup.usableKwh}
            reserve={backup.reserve}
            selected={selected}
            onSelect={onSelect}
          />
        </Part>
      )}
      <Part title="Circuits moved to the backed-up side" count={backup.circuits.filter(({ moved }) => moved).length}>
        <BackedGrid plan={plan} job={job} selected={selected} onSelect={onSelect} />
      </Part>
      {batteries.map((id) => (
        <Part
          key={id}
          title={`${job.choices.equipment[job.choices.batteries[id]?.sheet ?? '']?.name ?? id}, its place`}
        >
          <div className={fields.fields}>
            {job.choices.batteries[id]?.place !== undefined && (
              <>
                <NumberField
                  label="From the wall's left"
                  path={['choices', 'batteries', id, 'place', 'leftMm']}
                  unit="mm"
                />
                <NumberField label="Above ground" path={['choices', 'batteries', id, 'place', 'bottomMm']} unit="mm" />
                <PickField
                  label="Wall"
                  path={['choices', 'batteries', id, 'place', 'wallId']}
                  options={Object.entries(job.facts.walls).map(([value, { name }]) => ({ value, words: name }))}
                />
              </>
            )}
            <NumberField label="Cable to it" path={['choices', 'batteries', id, 'lengthM']} unit="m" />
            <TickField label="Board behind it that does not burn" path={['choices', 'batteries', id, 'barrier']} />
            <TickField label="Bollard before it" path={['choices', 'batteries', id, 'bollard']} />
          </div>
        </Part>
      ))}
      <FindingsHere findings={plan.checks.findings} sheet="06" selected={selected} onSelect={onSelect} />
    </>
  );
}
