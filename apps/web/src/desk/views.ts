import type { SheetNo } from '@eaveline/plan';
import { arrayView } from '../array/arrayView.ts';
import { backupView } from '../backup/backupView.ts';
import { boardView } from '../board/boardView.ts';
import { checksView } from '../checks/checksView.ts';
import { dayView } from '../day/dayView.ts';
import { energyView } from '../energy/energyView.ts';
import { handoverView } from '../handover/handoverView.ts';
import { kitView } from '../kit/kitView.ts';
import { roofView } from '../roof/roofView.ts';
import { siteView } from '../site/siteView.ts';
import { testsView } from '../tests/testsView.ts';
import { trunksView } from '../trunks/trunksView.ts';
import type { SheetView } from './sheetView.ts';

/** Every sheet by its number; a new one is entered here and in the register. */
export const VIEWS: Readonly<Record<SheetNo, SheetView>> = {
  '01': siteView,
  '02': roofView,
  '03': arrayView,
  '04': trunksView,
  '05': boardView,
  '06': backupView,
  '07': energyView,
  '08': checksView,
  '09': kitView,
  '10': dayView,
  '11': testsView,
  '12': handoverView,
};
