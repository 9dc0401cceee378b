import { Refusal } from '@eaveline/physics';
import PDFDocument from 'pdfkit';
import type { Drawing } from '../drawing/model.ts';
import { type SettledDrawing, settle } from '../drawing/settle.ts';
import { type Fonts, fontNames } from '../type/faces.ts';
import { PdfPage, pt } from './pdfPage.ts';
import { sfntOf } from './sfntOf.ts';

export interface PdfOptions {
  readonly fonts: Fonts;
  readonly title: string;
  readonly author?: string;
  /** The hour the document states it was made: the same drawings and hour give the same bytes. */
  readonly createdAt: Date;
  /** Language of the words, BCP 47. */
  readonly lang?: string;
}

/**
 * Drawings as one PDF, a page each: fonts embedded as subsets, an outline of page titles, and tags
 * that keep headings, tables and figures for a screen reader.
 *
 * @throws {Refusal} `missing` for no pages, `not-finite` for a date that is none.
 */
export async function pdfOf(drawings: readonly Drawing[], options: PdfOptions): Promise<Uint8Array> {
  check(drawings, options);
  const doc = await open(options);
  const bytes = collected(doc);
  const root = doc.struct('Document', { title: options.title });
  doc.addStructure(root);
  for (const drawing of drawings) {
    const sheet = settle(drawing);
    doc.addPage({ size: [pt(sheet.widthMm), pt(sheet.heightMm)], margin: 0 });
    doc.outline.addItem(sheet.title);
    root.add(page(doc, sheet));
  }
  root.end();
  doc.end();
  return bytes;
}

function page(doc: PDFKit.PDFDocument, sheet: SettledDrawing): PDFKit.PDFStructureElement {
  const section = doc.struct('Sect', { title: sheet.title });
  const pen = new PdfPage(doc, sheet.heightMm);
  pen.draw(sheet.items, section);
  pen.close();
  return section;
}

function check(drawings: readonly Drawing[], { createdAt }: PdfOptions): void {
  if (drawings.length === 0) {
    throw new Refusal({
      code: 'missing',
      at: 'drawings',
      got: 0,
      want: 'at least one page',
      mend: 'Put a sheet into the document.',
    });
  }
  if (!Number.isFinite(createdAt.getTime())) {
    throw new Refusal({
      code: 'not-finite',
      at: 'createdAt',
      got: createdAt,
      want: 'an hour of the calendar',
      mend: 'Pass the hour the facts were read.',
    });
  }
}

async function open({ fonts, title, author, createdAt, lang }: PdfOptions): Promise<PDFKit.PDFDocument> {
  const plain = await sfntOf(fonts['plain-400']);
  const doc = new PDFDocument({
    // given here, so that the library never looks for a font of its own on a disk
    font: plain as unknown as string,
    autoFirstPage: false,
    margin: 0,
    pdfVersion: '1.7',
    tagged: true,
    lang: lang ?? 'en',
    displayTitle: true,
    info: {
      Title: title,
      ...(author === undefined ? {} : { Author: author }),
      Creator: 'Eaveline',
      Producer: 'Eaveline',
      CreationDate: createdAt,
      ModDate: createdAt,
    },
  });
  for (const name of fontNames) doc.registerFont(name, (await sfntOf(fonts[name])) as unknown as string);
  return doc;
}

function collected(doc: PDFKit.PDFDocument): Promise<Uint8Array> {
  return new Promise((done, failed) => {
    const parts: Uint8Array[] = [];
    doc.on('data', (part: Uint8Array) => parts.push(part));
    doc.on('error', failed);
    doc.on('end', () => {
      const bytes = new Uint8Array(parts.reduce((sum, part) => sum + part.length, 0));
      let at = 0;
      for (const part of parts) {
        bytes.set(part, at);
        at += part.length;
      }
      done(bytes);
    });
  });
}
