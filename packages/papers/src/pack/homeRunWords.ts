import type { TrunkPlan } from '@eaveline/plan';
import { withUnit } from './figures.ts';
import { type Pack, sheetOf, sizeName } from './packContext.ts';

/** Size of a trunk's home run with its name: `31.0 m, 6 mm²`. */
export function homeRunWords(pack: Pack, { homeRun }: TrunkPlan): readonly [string, string] {
  const { conductor } = sheetOf(pack, homeRun.cableSheetId, 'cable');
  return [withUnit(homeRun.lengthM, 'm', 1), sizeName(conductor)];
}
