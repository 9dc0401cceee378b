import { useState } from 'react';
import { FindingsHere } from '../checks/FindingsHere.tsx';
import type { SheetProps } from '../desk/sheetView.ts';
import { stepsOf } from '../job/path.ts';
import { NumberField } from '../parts/NumberField.tsx';
import { Part } from '../parts/Part.tsx';
import { PickField } from '../parts/PickField.tsx';
import { SurveyEntry } from '../survey/SurveyEntry.tsx';
import { TWO_COUNTS } from '../survey/surveyWords.ts';
import { withUnit } from '../words/figure.ts';
import { ExistingGrid } from './ExistingGrid.tsx';
import { MissingFacts } from './MissingFacts.tsx';
import { MonthBars } from './MonthBars.tsx';
import { ObjectGrid } from './ObjectGrid.tsx';
import styles from './SiteSheet.module.css';
import { WeatherDrop } from './WeatherDrop.tsx';

const fact = (at: string) => stepsOf(`facts.${at}`);

/** Sheet 01: the place, its weather, its supply, and what is still to be found out. */
export function SiteSheet({ plan, job, selected, onSelect }: SheetProps) {
  const { site, sun } = plan;
  const { mains } = job.facts.supply;
  const waiting = (at: string) => site.missing.find((missing) => missing.at === `facts.${at}`)?.rules.length ?? 0;
  const [every, setEvery] = useState(false);
  return (
    <>
      <SurveyEntry job={job} />
      <p className={`quiet small ${styles.counts}`}>{TWO_COUNTS}</p>
      <div className={styles.two}>
        <Part title="The place">
          <dl className={styles.given}>
            <dt>Address</dt>
            <dd>{job.facts.site.address}</dd>
            <dt>Where</dt>
            <dd>
              {Math.abs(site.latitudeDeg).toFixed(2)}° {site.latitudeDeg < 0 ? 'S' : 'N'},{' '}
              {Math.abs(site.longitudeDeg).toFixed(2)}° {site.longitudeDeg < 0 ? 'W' : 'E'},{' '}
              {Math.round(site.elevationM)} m{site.elevationGuessed && ', height from the weather places'}
            </dd>
            <dt>Clock</dt>
            <dd>{site.zone}</dd>
          </dl>
          <NumberField
            label="Record low"
            path={fact('site.recordLowC')}
            unit="°C"
            optional
            waiting={waiting('site.recordLowC')}
          />
          <NumberField
            label="Record high"
            path={fact('site.recordHighC')}
            unit="°C"
            optional
            waiting={waiting('site.recordHighC')}
          />
          <NumberField
            label="Wind speed"
            path={fact('site.wind.basicSpeedMS')}
            unit="m/s"
            optional
            waiting={waiting('site.wind.basicSpeedMS')}
            note="Basic, as the region's map gives it."
          />
        </Part>
        <Part title="The supply">
          <PickField
            label="Phases"
            path={fact('supply.system')}
            options={[
              { value: 'single-phase', words: 'one' },
              { value: 'split-phase', words: 'split' },
              { value: 'three-phase', words: 'three' },
            ]}
          />
          <NumberField label="Line to neutral" path={fact('supply.nominalV')} unit="V" />
          <NumberField label="Service" path={fact('supply.serviceA')} unit="A" />
          <NumberField
            label="Loop at the board"
            path={fact('supply.loopOhm')}
            unit="Ω"
            optional
            waiting={waiting('supply.loopOhm')}
          />
          <NumberField
            label="Mains, one way"
            path={fact('supply.mains.lengthM')}
            unit="m"
            optional
            waiting={waiting('supply.mains.lengthM')}
          />
          {mains.conductor?.areaMm2 !== undefined && (
            <NumberField label="Mains size" path={fact('supply.mains.conductor.areaMm2')} unit="mm²" />
          )}
          <NumberField label="Export, each line" path={fact('network.exportLimitVAPerLine')} unit="VA" optional />
        </Part>
      </div>
      <Part
        title="Sun on the level, kWh/m² on a mean day of each month"
        aside={`${withUnit(sun.annualGhiKwhM2, 'kWh/m²', 0)} a year`}
      >
        <MonthBars
          id="ghi"
          values={site.climate.ghiKwhM2Day}
          second={site.climate.meanC}
          selected={selected === 'climate'}
          onSelect={() => onSelect('climate')}
        />
      </Part>
      <Part title="Near objects" count={Object.keys(job.facts.site.objects).length}>
        <ObjectGrid plan={plan} job={job} selected={selected} onSelect={onSelect} />
      </Part>
      <Part title="Already there" count={Object.keys(job.facts.existing).length}>
        <ExistingGrid plan={plan} job={job} selected={selected} onSelect={onSelect} />
      </Part>
      <Part title="Weather" ruled>
        <WeatherDrop climate={site.climate} />
      </Part>
      <FindingsHere findings={plan.checks.findings} sheet="01" selected={selected} onSelect={onSelect} />
      {site.missing.length > 0 && (
        <Part title="Facts not known, to be found out" count={site.missing.length} ruled>
          <MissingFacts missing={every ? site.missing : site.missing.slice(0, 8)} />
          {site.missing.length > 8 && !every && (
            <button type="button" className={styles.more} onClick={() => setEvery(true)}>
              All {site.missing.length}
            </button>
          )}
        </Part>
      )}
    </>
  );
}
