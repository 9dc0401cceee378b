import type { Plan, Working } from '@eaveline/plan';
import { sheetWorking } from '../pad/sheetWorking.ts';
import { type Subject, workingSubjects } from '../pad/subject.ts';
import { moduleSum } from './moduleSum.ts';
import { monthSubjects } from './monthSubjects.ts';
import { planeYears } from './planeYears.ts';

/** The year, each module's year, and what else the stage worked out. */
export function energySubjects(plan: Plan): Subject[] {
  const { energy, array } = plan;
  const names = new Map(array.modules.map(({ id, name }) => [id, name]));
  return [
    { id: 'year', name: 'The year of the array', working: energy.working },
    // the first working of the stage is the year itself
    ...workingSubjects('energy-stage', [...energy.workings.slice(1), perKw(plan), clipped(plan)]),
    ...(energy.modules.length === 0 ? [] : monthSubjects(plan)),
    ...planeYears(plan).map(({ planeId, name, working }) => ({
      id: `plane:${planeId}`,
      name: `${name} plane, a year`,
      working,
    })),
    ...energy.modules.map((module) => ({
      id: `energy:${module.moduleId}`,
      name: `${names.get(module.moduleId) ?? module.moduleId}, a year`,
      working: module.working,
      ledger: moduleSum(module),
    })),
  ];
}

function perKw({ energy, array }: Plan): Working {
  const kw = sheetWorking('modules', array.stcW / 1000, 'kW', 'Σ of their ratings', 'equipment sheets', [], {
    decimals: 2,
  });
  return sheetWorking(
    'For each kW of modules',
    energy.kwhPerKw,
    'kWh',
    'the year ÷ modules',
    'sheet 07',
    [energy.working, kw],
    {
      decimals: 0,
    },
  );
}

function clipped({ energy }: Plan): Working {
  return sheetWorking(
    'Taken by the units at their rating',
    energy.clippedKwh,
    'kWh',
    'Σ max(0, power − rating) · step, unit by unit',
    'hour by hour',
    [],
    { decimals: 1, note: 'Of hourly means: minutes above the rating within an hour are not in it.' },
  );
}
