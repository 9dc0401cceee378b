import { makeDocument, type Sheet } from '../page/index.ts';
import type { Fonts } from '../type/index.ts';
import { circuitPages } from './circuitPages.ts';
import { type Pack, type PackInputs, packOf } from './packContext.ts';
import { planePages } from './planePages.ts';
import { roofPlanPages } from './roofPlanPage.ts';
import { trunkPages } from './trunkPages.ts';

export interface InstallPackInputs extends PackInputs {
  /** The shipped font files: the core reads none itself. */
  readonly fonts: Fonts;
}

/** Kinds of pages in the order of the pack. */
const kinds: readonly ((pack: Pack) => readonly Sheet[])[] = [roofPlanPages, planePages, trunkPages, circuitPages];

/** The pages of the pack, laid out and not yet drawn by any pen. */
export function packSheets(inputs: PackInputs): Sheet[] {
  const pack = packOf(inputs);
  return kinds.flatMap((pages) => pages(pack));
}

export async function installPack(inputs: InstallPackInputs) {
  const sheets = packSheets(inputs);
  return makeDocument(sheets, {
    title: `${inputs.job.name}: install pack`,
    author: inputs.job.firm.name,
    fonts: inputs.fonts,
    createdAt: new Date(inputs.drawnAt),
    lang: 'en',
  });
}
