import type { Drawing } from '../drawing/model.ts';
import { pdfOf } from '../pens/pdfPen.ts';
import { type SvgOptions, svgOf } from '../pens/svgPen.ts';
import type { Fonts } from '../type/faces.ts';
import { layOut, type Sheet } from './sheet.ts';

export interface DocumentOptions {
  readonly title: string;
  readonly author?: string;
  readonly fonts: Fonts;
  /** The hour the PDF states; the same sheets and hour give the same bytes. */
  readonly createdAt: Date;
  readonly lang?: string;
  /** How the SVG pages are made. */
  readonly svg?: SvgOptions;
}

export interface PaperDocument {
  /** One file a page. */
  readonly svg: readonly string[];
  readonly pdf: Uint8Array;
}

/** Sheets as a document in both pens. Pages are numbered here: a sheet cannot know how many there are. */
export async function makeDocument(sheets: readonly Sheet[], options: DocumentOptions): Promise<PaperDocument> {
  const { svg, ...rest } = options;
  const drawings = drawingsOf(sheets);
  const lang = options.lang === undefined ? {} : { lang: options.lang };
  return { svg: drawings.map((drawing) => svgOf(drawing, { ...lang, ...svg })), pdf: await pdfOf(drawings, rest) };
}

/** The pages as drawings, numbered `4 of 11`. */
export function drawingsOf(sheets: readonly Sheet[]): Drawing[] {
  return sheets.map((sheet, k) => layOut(sheet, `${k + 1} of ${sheets.length}`));
}
