import { makeDocument, type Sheet } from '../page/index.ts';
import type { Fonts } from '../type/index.ts';
import { cautionPages } from './cautionPages.ts';
import { circuitPages } from './circuitPages.ts';
import { coverPages } from './coverPages.ts';
import { csvFiles } from './csvFiles.ts';
import { dayPages } from './dayPages.ts';
import { energyPages } from './energyPages.ts';
import { findingPages } from './findingPages.ts';
import { kitPages } from './kitPages.ts';
import { leftOutPages } from './leftOutPages.ts';
import { type Pack, type PackInputs, packOf } from './packContext.ts';
import { planePages } from './planePages.ts';
import { planJson } from './planJson.ts';
import { roofPlanPages } from './roofPlanPage.ts';
import { testPages } from './testPages.ts';
import { trunkPages } from './trunkPages.ts';
import { workingPages } from './workingPages.ts';

export interface InstallPackInputs extends PackInputs {
  /** The shipped font files: the core reads none itself. */
  readonly fonts: Fonts;
}

/** Everything that leaves for one job: the papers, and the same data for other programs. */
export interface InstallPack {
  readonly pdf: Uint8Array;
  /** One picture a page, the same geometry as in the PDF. */
  readonly svg: readonly string[];
  /** Tables by file name. */
  readonly csv: Readonly<Record<string, string>>;
  readonly json: string;
}

/** Kinds of pages in the order of the pack. */
const kinds: readonly ((pack: Pack) => readonly Sheet[])[] = [
  coverPages,
  findingPages,
  roofPlanPages,
  planePages,
  trunkPages,
  circuitPages,
  energyPages,
  kitPages,
  dayPages,
  testPages,
  cautionPages,
  workingPages,
  leftOutPages,
];

/** The pages of the pack, laid out and not yet drawn by any pen. */
export function packSheets(inputs: PackInputs): Sheet[] {
  const pack = packOf(inputs);
  return kinds.flatMap((pages) => pages(pack));
}

/**
 * The install pack of a job: one PDF, its pages as SVG, the same data as CSV and JSON.
 *
 * Every page bears the banners of the whole job: what was invented, how many figures fail, are open, rest on a limit
 * nobody has confirmed. The same inputs give the same bytes; the hour of drawing is told, never asked.
 *
 * @throws {RangeError} where `drawnAt` is no instant.
 */
export async function installPack(inputs: InstallPackInputs): Promise<InstallPack> {
  const { job, plan, drawnAt, version, fonts } = inputs;
  const { svg, pdf } = await makeDocument(packSheets(inputs), {
    title: `${job.name}: install pack`,
    author: job.firm.name,
    fonts,
    createdAt: new Date(drawnAt),
    lang: 'en',
  });
  return { pdf, svg, csv: csvFiles(inputs), json: planJson({ plan, drawnAt, version }) };
}
