import type { SheetProps } from '../desk/sheetView.ts';
import { Ledger } from '../parts/Ledger.tsx';
import { Part } from '../parts/Part.tsx';
import { WorkingRows } from '../parts/WorkingRows.tsx';
import { EnergyMonths } from './EnergyMonths.tsx';
import { energySubjects } from './energySubjects.ts';
import { ModuleStrip } from './ModuleStrip.tsx';
import { moduleSum } from './moduleSum.ts';

/** Sheet 07: twelve months with their range, and the chain from sun to socket of one module. */
export function EnergySheet({ plan, selected, onSelect }: SheetProps) {
  const { energy, array } = plan;
  const picked = energy.modules.find(({ moduleId }) => selected === `energy:${moduleId}`) ?? energy.modules[0];
  const name = array.modules.find(({ id }) => id === picked?.moduleId)?.name;
  return (
    <>
      <Part title="Alternating current at the board, month by month" aside="band: nine years in ten">
        <EnergyMonths
          monthlyKwh={energy.monthlyKwh}
          spread={
            energy.annualKwh === 0
              ? [1, 1]
              : [energy.rangeKwh[0] / energy.annualKwh, energy.rangeKwh[1] / energy.annualKwh]
          }
          selected={selected === 'year'}
          onSelect={() => onSelect('year')}
        />
      </Part>
      <Part title="Every module, kWh a year" count={energy.modules.length}>
        <ModuleStrip plan={plan} selected={selected} onSelect={onSelect} />
      </Part>
      {picked && (
        <Part title={`${name ?? picked.moduleId}, from sun to socket`}>
          <Ledger label={`Ledger of ${name ?? picked.moduleId}`} {...moduleSum(picked)} />
        </Part>
      )}
      <Part title="Figures of the year">
        <WorkingRows
          subjects={energySubjects(plan).filter(({ id }) => id === 'year' || id.startsWith('energy-stage'))}
          selected={selected}
          onSelect={onSelect}
        />
      </Part>
    </>
  );
}
