import type { SheetProps } from '../desk/sheetView.ts';
import { Ledger } from '../parts/Ledger.tsx';
import { Part } from '../parts/Part.tsx';
import { WorkingRows } from '../parts/WorkingRows.tsx';
import { figure } from '../words/figure.ts';
import { EnergyMonths } from './EnergyMonths.tsx';
import { energySubjects } from './energySubjects.ts';
import { ModuleStrip } from './ModuleStrip.tsx';

/** Sheet 07: twelve months with their range, and the chain from sun to socket of one module. */
export function EnergySheet({ plan, selected, onSelect }: SheetProps) {
  const { energy, array } = plan;
  const picked = energy.modules.find(({ moduleId }) => selected === `energy:${moduleId}`) ?? energy.modules[0];
  const name = array.modules.find(({ id }) => id === picked?.moduleId)?.name;
  const last = picked?.ledger.at(-1);
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
      {picked && last && (
        <Part title={`${name ?? picked.moduleId}, from sun to socket`}>
          <Ledger
            label={`Ledger of ${name ?? picked.moduleId}`}
            lines={picked.ledger.map(({ what, factor, value, unit }, i, all) => ({
              what,
              factor: factor === undefined ? '' : factorWords(factor),
              value: i === 0 || unit !== all[i - 1]?.unit ? `${figure(value)} ${unit}` : figure(value),
            }))}
            total={{ what: 'at the board in a year', value: `${figure(picked.annualKwh, 0)} kWh` }}
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
    </>
  );
}

/** A loss reads as a loss, a gain as a factor: 0.974 is − 2.6 %. */
function factorWords(factor: number): string {
  return factor < 1 ? `\u2212 ${figure((1 - factor) * 100, 1)} %` : `× ${figure(factor, 3)}`;
}
