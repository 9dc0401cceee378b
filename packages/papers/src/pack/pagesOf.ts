import { designSignature, signedWords } from '@eaveline/job';
import { bodyOf, flow, type Part, type Sheet, type SheetSize, stacked, subhead } from '../page/index.ts';
import { civilTime, counted } from './figures.ts';
import type { Pack } from './packContext.ts';

/** What a kind of page says about itself. */
export interface PageKind {
  /** Number as the sheets on screen have it: `04.A`. */
  readonly no: string;
  readonly title: string;
  readonly size?: SheetSize;
  /** `1:50`, where something is drawn to a scale. */
  readonly scale?: string;
}

const countries = {
  au: 'Australia',
  nz: 'New Zealand',
  gb: 'Great Britain',
  ie: 'Ireland',
  eu: 'Europe',
  us: 'United States',
} as const;

/** Room for the body of a page of a kind. */
export function roomOf(pack: Pack, kind: Pick<PageKind, 'size' | 'scale'>) {
  return bodyOf(kind.size ?? 'A4-portrait', pack.banners.length, kind.scale !== undefined);
}

/** Parts as finished sheets, as many as they need. */
export function pagesOf(pack: Pack, kind: PageKind, parts: readonly Part[]): Sheet[] {
  const { job, plan, drawnAt, version } = pack;
  const { present, wanted } = plan.site.survey;
  const signedBy = signedWords(designSignature(job));
  const bodies = flow(parts, roomOf(pack, kind));
  return bodies.map((body, k) => ({
    size: kind.size ?? 'A4-portrait',
    title: bodies.length === 1 ? kind.title : `${kind.title}, ${k + 1} of ${bodies.length}`,
    banners: pack.banners,
    block: {
      firm: job.firm.name,
      job: job.name,
      jobLine: `${counted(plan.array.modules.length, 'module')}, ${counted(plan.trunks.trunks.length, 'trunk')}`,
      sheet: kind.no,
      drawnFrom: `${present} of ${wanted} facts`,
      drawnAt: civilTime(drawnAt, job.facts.site.zone).replace(/ \d{4}/, ''),
      rules: countries[job.choices.rules.variant],
      edition: 'editions: sheet 08',
      ...(kind.scale === undefined ? {} : { scale: kind.scale }),
      signed: 'checked and signed',
      signedBy,
      pack: 'install pack',
      issue: civilTime(drawnAt, job.facts.site.zone).replace(/,.*/, ''),
    },
    notice: `Eaveline ${version}. Confirm against the current edition; local codes and the licensed person decide.`,
    body,
  }));
}

/** A heading that does not stay behind alone at the foot of a page. */
export function headed(words: string, part: Part): Part {
  const head = subhead(words);
  const own: Part = (at, widthMm, roomMm) => {
    const alone = stacked([head], at, widthMm, roomMm);
    if (alone.rest !== undefined) return { items: [], heightMm: 0, rest: own };
    const below = part([at[0], at[1] - alone.heightMm - 1], widthMm, roomMm - alone.heightMm - 1);
    if (below.items.length === 0 && below.rest !== undefined) return { items: [], heightMm: 0, rest: own };
    const heightMm = alone.heightMm + 1 + below.heightMm;
    const items = [...alone.items, ...below.items];
    return below.rest === undefined ? { items, heightMm } : { items, heightMm, rest: below.rest };
  };
  return own;
}
