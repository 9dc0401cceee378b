import {
  type Asked,
  asksOf,
  factAt,
  INSTRUMENTS,
  type Job,
  nameOf,
  type SurveyStep,
  seenAt,
  type ThingList,
  thingsAt,
} from '@eaveline/job';
import { type SurveyHole, type SurveyStanding, surveyStanding, usualAnswer } from '@eaveline/plan';
import { text } from '../drawing/make.ts';
import { mark, tickBox } from '../drawing/marks.ts';
import { capital, civilTime, counted } from '../pack/figures.ts';
import { headed } from '../pack/pagesOf.ts';
import {
  bodyOf,
  caution,
  flow,
  gap,
  headline,
  makeDocument,
  type Part,
  paragraph,
  type Row,
  type Sheet,
  type TableColumn,
  table,
  whole,
} from '../page/index.ts';
import type { Fonts } from '../type/index.ts';
import { knownWords } from './knownWords.ts';

/** What the survey form is drawn from. */
export interface SurveyFormInputs {
  readonly job: Job;
  /** Instant of drawing, ISO 8601: the form has no clock of its own. */
  readonly drawnAt: string;
  /** Of the program that draws, where it knows it. */
  readonly version?: string;
}

/** Things of a list that stand side by side in one table. */
const SIDE_BY_SIDE = 4;
/** Columns a list has at least, so that there is room for what is found. */
const ROOM_FOR: Readonly<Record<string, number>> = { 'loads.circuits': 8 };
const ROOM_FOR_OTHERS = 4;

/**
 * The survey as a form to write on, in the walking order of the screen and of the same questions: known facts printed,
 * what is open on grey with the rules that need it, strokes for reading, instrument and time.
 */
export function surveySheets({ job, drawnAt, version }: SurveyFormInputs): Sheet[] {
  const standing = surveyStanding(job);
  const { holes, steps } = standing;
  const kind = { size: 'A4-portrait', title: 'Survey form' } as const;
  const banners = job.invented ? [{ kind: 'invented', words: 'Invented. Not for construction.' } as const] : [];
  const parts = [
    headline(
      holes.length === 0 ? `Survey of ${job.name}. Nothing is open.` : `Survey of ${job.name}. ${holes.length} open.`,
      'In walking order, photograph first. Grey is open. Write the reading, the instrument and the hour.',
    ),
    gap(2),
    whoTable(),
    gap(2),
    instrumentTable(),
    ...steps.flatMap((step, k) => stepParts(step, steps[k - 1], standing, job)),
  ];
  const bodies = flow(parts, bodyOf(kind.size, banners.length, false));
  const when = civilTime(drawnAt, job.facts.site.zone);
  return bodies.map((body, k) => ({
    size: kind.size,
    title: `${kind.title}, ${k + 1} of ${bodies.length}`,
    banners,
    block: {
      firm: job.firm.name,
      job: job.name,
      ...(job.facts.site.address === job.name ? {} : { jobLine: job.facts.site.address }),
      sheet: '01.S',
      drawnFrom: counted(holes.length, 'open fact'),
      drawnAt: when.replace(/ \d{4}/, ''),
      rules: job.choices.rules.variant.toUpperCase(),
      edition: 'editions: sheet 08',
      signed: 'surveyed and signed',
      pack: 'survey form',
      issue: when.replace(/,.*/, ''),
    },
    notice: `Eaveline${version === undefined ? '' : ` ${version}`}. Readings are taken by whoever may take them; local codes and the licensed person decide.`,
    body,
  }));
}

/** The survey form as one PDF, and its pages as SVG. */
export function surveyForm(inputs: SurveyFormInputs & { readonly fonts: Fonts }) {
  const { job, drawnAt, fonts } = inputs;
  return makeDocument(surveySheets(inputs), {
    title: `${job.name}: survey form`,
    author: job.firm.name,
    fonts,
    createdAt: new Date(drawnAt),
    lang: 'en',
  });
}

const stroke = { stroke: true } as const;

function whoTable(): Part {
  const head = (words: string, share: number): TableColumn => ({ head: words, share });
  return table({
    label: 'who surveys',
    columns: [head('surveyed by', 3), head('date', 2), head('licence', 2), head('somebody of the house', 3)],
    rows: [{ cells: [stroke, stroke, stroke, stroke] }],
  });
}

/** Two instruments a row, with room for the number of the one in hand. */
function instrumentTable(): Part {
  const cells = Object.values(INSTRUMENTS).map((name) => [name, stroke] as const);
  const columns: TableColumn[] = [
    { head: 'instrument', share: 3.2, face: 'close' },
    { head: 'its name and number', share: 3 },
  ];
  return table({
    label: 'instruments',
    columns: [...columns, ...columns],
    rows: cells.flatMap((left, k) => (k % 2 === 0 ? [{ cells: [...left, ...(cells[k + 1] ?? ['', ''])] }] : [])),
  });
}

/** One place of the walk. Things of a list stand in the table of their list, not in a step of their own. */
function stepParts(step: SurveyStep, before: SurveyStep | undefined, standing: SurveyStanding, job: Job): Part[] {
  if (step.thing !== undefined) return [];
  // what may be photographed hangs on it
  const asked = step.asks.filter(({ path }) => path === step.photo?.after);
  const others = step.asks.filter((ask) => !asked.includes(ask));
  const blocks: Part[] = [
    // one stands under the last attic still in the same roof: the caution was read a moment ago
    ...(before?.part === step.part ? [] : step.cautions.map(({ head, body }) => caution(head, body))),
    ...(asked.length === 0 ? [] : [askTable(asked, standing.holes, job)]),
    ...(step.photo === undefined ? [] : [photoLine(step.photo.what, seenAt(job, step.photo.of)?.photo !== undefined)]),
    ...(others.length === 0 ? [] : [askTable(others, standing.holes, job)]),
    ...step.lists.flatMap((list) => listParts(list, standing, job)),
  ];
  const [first, ...rest] = blocks;
  if (first === undefined) return [];
  return [gap(5), headed(step.name, first), ...rest.flatMap((part) => [gap(1.5), part])];
}

/** A photograph to take: a box to tick, or that it was taken. */
function photoLine(what: string, taken: boolean): Part {
  const LINE = 7;
  return whole(LINE, ([x, top]) => [
    ...(taken ? [mark('meets', [x + 1.7, top - LINE / 2])] : [tickBox([x + 0.1, top - LINE / 2 - 1.6])]),
    text(taken ? `Photograph taken. ${what}` : `Photograph. ${what}`, [x + 6, top - LINE / 2 - 1.25], { weight: 700 }),
  ]);
}

/** Holes of a fact, whichever sort. */
const holeAt = (holes: readonly SurveyHole[], path: string) =>
  holes.find((hole) => hole.path === path && (hole.kind === 'fact' || hole.kind === 'not seen'));

/** How it is measured, and which rules need it. */
function belowOf({ how }: Asked, hole: SurveyHole | undefined): string {
  const rules = hole === undefined || hole.rules.length === 0 ? '' : `Needed: ${hole.rules.join(', ')}.`;
  return [how, rules].filter((words) => words !== undefined && words !== '').join(' ');
}

function questionCell(asked: Asked, hole: SurveyHole | undefined) {
  const below = belowOf(asked, hole);
  return { words: asked.ask, weight: 700, ...(below === '' ? {} : { below }) } as const;
}

/** Where something is chosen, the words to ring; else a stroke to write on. */
function writeCell({ answer, later }: Asked) {
  if (later !== undefined && answer.kind === 'brought') return `${later} brings it`;
  if (answer.kind === 'pick') return `ring: ${answer.options.map(({ words }) => words).join(' / ')}`;
  if (answer.kind === 'yes-no') return `ring: ${answer.yes} / ${answer.no}`;
  if (answer.kind === 'lines') return 'ring: L1 / L2 / L3';
  if (answer.kind === 'number' && answer.unit !== '') return { stroke: true, unit: answer.unit } as const;
  return stroke;
}

function askTable(asks: readonly Asked[], holes: readonly SurveyHole[], job: Job): Part {
  return table({
    label: 'questions',
    columns: [
      { head: 'what', share: 4.2 },
      { head: 'known', share: 1.8 },
      { head: 'found', share: 3.1, face: 'close' },
      { head: 'with', share: 1.2 },
      { head: 'time', share: 0.9 },
    ],
    rows: asks.map((asked): Row => {
      const hole = holeAt(holes, asked.path);
      const known = knownWords(asked.answer, factAt(job, asked.path), job);
      const seen = seenAt(job, asked.path);
      const usual = known === '' ? usualAnswer(job, asked.path) : undefined;
      const unknown = usual === undefined ? '' : `usual here: ${knownWords(asked.answer, usual, job)}`;
      const words = seen?.notMeasured === undefined ? known || unknown : `not measured: ${seen.notMeasured}`;
      return {
        label: asked.ask,
        marked: hole !== undefined,
        cells: [
          questionCell(asked, hole),
          hole?.kind === 'not seen' ? { words: known, below: 'not seen yet' } : words,
          writeCell(asked),
          asked.with === undefined ? '' : stroke,
          stroke,
        ],
      };
    }),
  });
}

/** Things side by side, known ones first, then room for more; those inside each after it. */
function listParts(list: ThingList, standing: SurveyStanding, job: Job): Part[] {
  const known = Object.entries(thingsAt(job, list.at));
  const room = ROOM_FOR[list.at] ?? ROOM_FOR_OTHERS;
  const count = SIDE_BY_SIDE * Math.ceil(Math.max(known.length, room) / SIDE_BY_SIDE);
  const columns = Array.from({ length: count }, (_, k) => known[k]);
  const groups = Array.from({ length: count / SIDE_BY_SIDE }, (_, k) =>
    columns.slice(k * SIDE_BY_SIDE, (k + 1) * SIDE_BY_SIDE),
  );
  const none = seenAt(job, list.at);
  const words =
    known.length === 0 && list.none !== undefined
      ? none === undefined
        ? [paragraph(`If there is none, write so and sign: “${list.none}”.`, { capMm: 2.1, ink: 'quiet' })]
        : [paragraph(`${list.none}: ${none.by}.`, { capMm: 2.1, ink: 'quiet' })]
      : [];
  return [
    ...words,
    ...groups.flatMap((group, k) => [gap(k === 0 ? 0.5 : 2.5), thingTable(list, group, standing.holes, job)]),
    ...known.flatMap(([id, thing]) =>
      (list.inside ?? []).flatMap((inner) => [
        gap(2),
        headed(
          `${nameOf(thing, list)}: ${inner.many}`,
          thingTable(
            { ...inner, at: `${list.at}.${id}.${inner.at}` },
            [
              ...Object.entries(thingsAt(job, `${list.at}.${id}.${inner.at}`)),
              ...Array(SIDE_BY_SIDE).fill(undefined),
            ].slice(0, SIDE_BY_SIDE),
            standing.holes,
            job,
          ),
        ),
      ]),
    ),
  ];
}

type Held = readonly [id: string, thing: unknown] | undefined;

/** Questions down, things across. A question that no thing of the group is asked is asked of the empty ones. */
function thingTable(list: ThingList, group: readonly Held[], holes: readonly SurveyHole[], job: Job): Part {
  const asksOfThing = group.map((held) =>
    held === undefined
      ? undefined
      : new Map(asksOf(list.questions, held[1], `${list.at}.${held[0]}`, '', job).map((ask) => [ask.ask, ask])),
  );
  // everything that may be asked of a thing: whether it is, only the thing says
  const every: readonly Asked[] = list.questions.map((question) => ({
    ...(question as unknown as Asked),
    path: '',
    of: '',
  }));
  return table({
    label: list.many,
    columns: [
      { head: list.one, share: 3.4 },
      ...group.map(
        (held): TableColumn => ({ head: held === undefined ? '' : nameOf(held[1], list), share: 2.1, face: 'close' }),
      ),
    ],
    rows: [
      ...every.map((asked): Row => {
        const holesOf = asksOfThing.map((asks) => {
          const own = asks?.get(asked.ask);
          return own === undefined ? undefined : holeAt(holes, own.path);
        });
        const hole = holesOf.find((one) => one !== undefined);
        return {
          label: asked.ask,
          marked: hole !== undefined,
          cells: [
            { ...questionCell(asked, hole), ...optionsBelow(asked, hole) },
            ...group.map((_, k) => {
              const asks = asksOfThing[k];
              if (asks === undefined) return unitStroke(asked);
              const own = asks.get(asked.ask);
              if (own === undefined) return '';
              const known = knownWords(own.answer, factAt(job, own.path), job);
              const why = seenAt(job, own.path)?.notMeasured;
              return known !== '' ? known : why !== undefined ? `not measured: ${why}` : unitStroke(asked);
            }),
          ],
        };
      }),
      { cells: [{ words: 'With, and the hour', weight: 700 }, ...group.map(() => stroke)], rule: 'heavy' },
      ...(list.photo === undefined
        ? []
        : [{ cells: [{ words: `Photograph: ${list.photo}` }, ...group.map(() => ({ boxes: 1 }) as const)] }]),
    ],
  });
}

function unitStroke({ answer }: Asked) {
  return answer.kind === 'number' && answer.unit !== '' ? ({ stroke: true, unit: answer.unit } as const) : stroke;
}

/** Under a question with things across: its options, for there is no room in the columns. */
function optionsBelow(asked: Asked, hole: SurveyHole | undefined): { readonly below?: string } {
  const { answer } = asked;
  const options =
    answer.kind === 'pick'
      ? answer.options.map(({ words }) => words).join(' / ')
      : answer.kind === 'yes-no'
        ? `${answer.yes} / ${answer.no}`
        : '';
  const below = [capital(options), belowOf(asked, hole)].filter((words) => words !== '').join('. ');
  return below === '' ? {} : { below };
}
