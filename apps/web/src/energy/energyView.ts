import type { SheetView } from '../desk/sheetView.ts';
import { EnergySheet } from './EnergySheet.tsx';
import { energySubjects } from './energySubjects.ts';
import { headOfEnergy } from './headOfEnergy.ts';

/** Sheet 07. */
export const energyView: SheetView = {
  head: headOfEnergy,
  subjects: energySubjects,
  first: () => 'year',
  leavesOut: ({ energy }) => energy.leavesOut,
  shows: 'months, modules',
  Body: EnergySheet,
};
