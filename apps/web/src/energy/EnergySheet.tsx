import { skyOver } from '@eaveline/plan';
import { FindingsHere } from '../checks/FindingsHere.tsx';
import type { SheetProps } from '../desk/sheetView.ts';
import { Part } from '../parts/Part.tsx';
import { useSelectedInView } from '../parts/useSelectedInView.ts';
import { WorkingRows } from '../parts/WorkingRows.tsx';
import { figure } from '../words/figure.ts';
import { EnergyMonths } from './EnergyMonths.tsx';
import { energySubjects } from './energySubjects.ts';
import { MeanDayChart } from './MeanDayChart.tsx';
import { ModuleStrip } from './ModuleStrip.tsx';
import { bestMonth, dayKwh, meanDay } from './meanDay.ts';
import { moduleUnderSky } from './moduleUnderSky.ts';
import { MONTH_NAMES } from './monthNames.ts';
import { PlaneTable } from './PlaneTable.tsx';
import { planeYears } from './planeYears.ts';
import { SunOverModule } from './SunOverModule.tsx';
import { summerHours } from './summerHours.ts';
import { WeatherUsed } from './WeatherUsed.tsx';

/** Sheet 07: twelve months with their range, a mean day beside what the house uses, planes, modules, the weather used. */
export function EnergySheet({ plan, job, selected, onSelect }: SheetProps) {
  // the year is what the pad shows before anything is chosen: nobody asked to be taken to its row
  useSelectedInView(selected === 'year' ? undefined : selected);
  const { energy, sun, site } = plan;
  const [low, high] = energy.rangeKwh;
  const picked = /^(?:month|day):(\d+)$/.exec(selected ?? '')?.[1];
  const month = picked === undefined ? bestMonth(energy.monthlyKwh) : Number(picked) - 1;
  const day = meanDay(energy, month, summerHours(site.zone)[month] ?? 0);
  const { made, used, atOnce } = dayKwh(day);
  const title = `A mean day in ${MONTH_NAMES[month]}`;
  const words =
    used === undefined
      ? `${figure(made, 1)} kWh made; what the house uses is not known`
      : `${figure(made, 1)} kWh made, ${figure(used, 1)} used, at most ${figure(atOnce ?? 0, 1)} of it as it is made`;
  const { module: over, words: overWords } = moduleUnderSky(plan, selected);
  if (energy.modules.length === 0) return <WeatherUsed climate={sun.climate} />;
  return (
    <>
      <Part title="At the board, month by month" aside="band: the year, nine in ten; one month alone spreads wider">
        <EnergyMonths
          monthlyKwh={energy.monthlyKwh}
          spread={energy.annualKwh === 0 ? [1, 1] : [low / energy.annualKwh, high / energy.annualKwh]}
          selected={selected}
          onSelect={onSelect}
        />
      </Part>
      <Part title={title} aside={words}>
        <MeanDayChart
          id={`day:${month + 1}`}
          label={`${title}: ${words}`}
          day={day}
          selected={selected === `day:${month + 1}`}
          onSelect={onSelect}
        />
      </Part>
      <Part title="Planes" ruled>
        <PlaneTable planes={planeYears(plan)} selected={selected} onSelect={onSelect} />
      </Part>
      <Part title="Modules, kWh a year" count={energy.modules.length}>
        <ModuleStrip plan={plan} selected={selected} onSelect={onSelect} />
      </Part>
      {over !== undefined && (
        <Part title={`The sky over ${over.name}`} aside={overWords}>
          <SunOverModule
            id={`energy:${over.id}`}
            label={`The sky over ${over.name}: ${overWords}`}
            latitudeDeg={sun.latitudeDeg}
            sky={skyOver(over, plan.roof.planes, {
              objects: Object.values(job.facts.site.objects),
              horizon: job.facts.site.horizon,
            })}
            selected={selected === `energy:${over.id}`}
            onSelect={onSelect}
          />
        </Part>
      )}
      <Part title="Figures of the year">
        <WorkingRows
          subjects={energySubjects(plan).filter(({ id }) => id === 'year' || id.startsWith('energy-stage'))}
          selected={selected}
          onSelect={onSelect}
        />
      </Part>
      <Part title="Weather used" ruled aside="how far off, and how much each counts">
        <WeatherUsed climate={sun.climate} />
      </Part>
      <FindingsHere findings={plan.checks.findings} sheet="07" selected={selected} onSelect={onSelect} />
    </>
  );
}
