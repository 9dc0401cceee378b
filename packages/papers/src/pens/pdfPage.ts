import type { Arc, GroupRole, Leaf, Marked, Point, Text, Tube } from '../drawing/model.ts';
import type { Settled, SettledGroup } from '../drawing/settle.ts';
import { signStroke } from '../type/drawnSigns.ts';
import { metrics } from '../type/metrics.ts';
import { type Run, runsOf } from '../type/runs.ts';
import { casingMm, dashes, haloPart, printInks, stripeDash, stripeInk, wireInks } from './inks.ts';

type Doc = PDFKit.PDFDocument;
type Struct = PDFKit.PDFStructureElement;

/** Points of 1/72 inch. */
export function pt(mm: number): number {
  return (mm * 72) / 25.4;
}

/** Layout measured plain advance widths, so the pen letters without kerning and ligatures. */
const PLAIN = { kern: false, liga: false, clig: false, calt: false, ccmp: false, mark: false, mkmk: false };

const tags: Readonly<Record<Exclude<GroupRole, 'symbol'>, string>> = {
  figure: 'Figure',
  table: 'Table',
  row: 'TR',
  cell: 'TD',
  'head-cell': 'TH',
};

/**
 * Draws the items of one page and tags what it draws: letters are content, lines are not
 * (an artifact), unless they stand in a figure, whose label then speaks for them.
 */
export class PdfPage {
  readonly #doc: Doc;
  readonly #heightMm: number;
  /** Whether an artifact or a figure is open; both take lines one after another. */
  #open: 'none' | 'artifact' | 'figure' = 'none';

  constructor(doc: Doc, heightMm: number) {
    this.#doc = doc;
    this.#heightMm = heightMm;
  }

  draw(items: readonly Settled[], into: Struct): void {
    for (const item of items) {
      if (item.kind === 'group') this.#group(item, into);
      else if (item.kind === 'text') this.#tagged(item, into);
      else {
        this.#asLines();
        this.#lines(item);
      }
    }
  }

  /** Ends whatever marking is still open. */
  close(): void {
    if (this.#open !== 'none') this.#doc.endMarkedContent();
    this.#open = 'none';
  }

  #asLines(): void {
    if (this.#open !== 'none') return;
    this.#doc.markContent('Artifact', { type: 'Layout' });
    this.#open = 'artifact';
  }

  #group(item: SettledGroup, into: Struct): void {
    if (item.role === 'symbol' || this.#open === 'figure') {
      this.draw(item.items, into);
      return;
    }
    this.close();
    const struct = this.#doc.struct(tags[item.role] as 'Figure', item.label === undefined ? {} : { alt: item.label });
    into.add(struct);
    if (item.role === 'figure') this.#figure(item, struct);
    else {
      this.draw(item.items, struct);
      this.close();
    }
  }

  /** A figure is one piece of content: its lines and its letters, described by its label. */
  #figure(item: SettledGroup, struct: Struct): void {
    struct.add(this.#doc.markStructureContent('Figure'));
    this.#open = 'figure';
    this.draw(item.items, struct);
    this.close();
  }

  #tagged(item: Text, into: Struct): void {
    if (this.#open === 'figure') {
      this.#text(item);
      return;
    }
    this.close();
    const tag = item.heading ? 'H1' : 'P';
    const struct = this.#doc.struct(tag);
    into.add(struct);
    struct.add(this.#doc.markStructureContent(tag));
    this.#text(item);
    this.#doc.endMarkedContent();
  }

  #lines(item: Exclude<Leaf, Text>): void {
    switch (item.kind) {
      case 'line':
        this.#trace([item.from, item.to], false);
        this.#stroke(item);
        break;
      case 'polyline':
        this.#trace(item.points, item.closed);
        this.#stroke(item);
        break;
      case 'arc':
        this.#arc(item);
        this.#stroke(item);
        break;
      case 'fill':
        for (const outline of item.outlines) this.#trace(outline, true);
        this.#doc.fillColor(printInks[item.ink]).fill('even-odd');
        break;
      case 'tube':
        this.#tube(item);
        break;
      default: {
        const never: never = item;
        throw new Error(`No pen for ${String(never)}.`);
      }
    }
  }

  #tube(item: Tube): void {
    const pass = (colour: string, widthMm: number, dash: readonly number[]): void => {
      this.#trace(item.points, false);
      this.#strokeWith(colour, widthMm, dash);
    };
    pass(printInks.ink, item.coreMm + 2 * casingMm, []);
    pass(wireInks[item.wire], item.coreMm, []);
    if (item.wire === 'green-yellow') pass(stripeInk, item.coreMm, stripeDash);
  }

  #stroke({ ink, pen, line }: Marked): void {
    this.#strokeWith(printInks[ink], pen, dashes[line]);
  }

  #strokeWith(colour: string, widthMm: number, dash: readonly number[]): void {
    const doc = this.#doc;
    if (dash.length > 0) doc.dash(dash.map(pt) as unknown as number, {});
    else doc.undash();
    doc.lineWidth(pt(widthMm)).strokeColor(colour).stroke();
  }

  #trace(points: readonly Point[], closed: boolean): void {
    points.forEach(([x, y], k) => {
      if (k === 0) this.#doc.moveTo(pt(x), this.#down(y));
      else this.#doc.lineTo(pt(x), this.#down(y));
    });
    if (closed) this.#doc.closePath();
  }

  /** Béziers of a quarter turn at most, 2.7e-4 of the radius off the true arc. */
  #arc({ at: [x, y], radiusMm, startDeg, endDeg }: Arc): void {
    const parts = Math.max(1, Math.ceil(Math.abs(endDeg - startDeg) / 90 - 1e-9));
    const step = ((endDeg - startDeg) * Math.PI) / 180 / parts;
    const reach = (4 / 3) * Math.tan(step / 4) * radiusMm;
    const on = (turn: number, along: number): [number, number] => [
      pt(x + radiusMm * Math.cos(turn) - along * Math.sin(turn)),
      this.#down(y + radiusMm * Math.sin(turn) + along * Math.cos(turn)),
    ];
    const start = (startDeg * Math.PI) / 180;
    this.#doc.moveTo(...on(start, 0));
    for (let k = 0; k < parts; k++) {
      const [from, to] = [start + k * step, start + (k + 1) * step];
      this.#doc.bezierCurveTo(...on(from, reach), ...on(to, -reach), ...on(to, 0));
    }
    if (endDeg - startDeg >= 360) this.#doc.closePath();
  }

  #text(item: Text): void {
    const doc = this.#doc;
    const width = metrics.widthMm(item.text, item);
    const lead = item.anchor === 'start' ? 0 : item.anchor === 'middle' ? width / 2 : width;
    const runs = runsOf(item.text, item);
    const [x, y] = [pt(item.at[0]), this.#down(item.at[1])];
    doc.save();
    if (item.rotateDeg !== 0) doc.rotate(-item.rotateDeg, { origin: [x, y] });
    if (item.halo) for (const run of runs) this.#run(run, x - pt(lead), y, item, 'halo');
    for (const run of runs) this.#run(run, x - pt(lead), y, item, 'letters');
    doc.restore();
  }

  #run(run: Run, startPt: number, y: number, item: Text, pass: 'halo' | 'letters'): void {
    const doc = this.#doc;
    const x = startPt + pt(run.xMm);
    if (run.font === 'drawn') {
      if (pass === 'letters') this.#sign(run, x, y, item);
      return;
    }
    doc.font(run.font).fontSize(pt(run.emMm));
    if (pass === 'halo')
      doc
        .undash()
        .lineWidth(pt(item.capMm * haloPart))
        .lineJoin('round')
        .strokeColor(printInks.film);
    else doc.fillColor(printInks[item.ink]);
    doc.text(run.text, x, y, {
      lineBreak: false,
      baseline: 'alphabetic',
      features: PLAIN as unknown as PDFKit.Mixins.OpenTypeFeatures[],
      ...(pass === 'halo' ? { stroke: true, fill: false } : {}),
    });
  }

  /** A sign without a font: strokes, with the sign itself as their text for whoever copies or listens. */
  #sign(run: Extract<Run, { font: 'drawn' }>, x: number, y: number, item: Text): void {
    if (run.sign.strokes.length === 0) return; // a space: its width alone tells it
    const cap = pt(item.capMm);
    this.#doc.markContent('Span', { actual: run.text });
    for (const points of run.sign.strokes) {
      points.forEach(([sx, sy], k) => {
        if (k === 0) this.#doc.moveTo(x + sx * cap, y - sy * cap);
        else this.#doc.lineTo(x + sx * cap, y - sy * cap);
      });
    }
    this.#strokeWith(printInks[item.ink], item.capMm * signStroke, []);
    this.#doc.endMarkedContent();
  }

  /** The PDF library counts y downwards from the top of the page. */
  #down(yMm: number): number {
    return pt(this.#heightMm - yMm);
  }
}
