import {
  type Asked,
  type AskedStanding,
  factAt,
  type Job,
  lookedFor,
  measuresOf,
  photoStands,
  type SurveyStep,
  standingOf,
  surveying,
  surveySteps,
  type TwoMeasures,
} from '@eaveline/job';
import { packFor } from '../rules/index.ts';
import { goesInto } from './goesInto.ts';
import { type WantedFact, wantedFacts } from './wantedFacts.ts';

/** One hole that keeps the survey open. */
export interface SurveyHole {
  readonly kind: 'fact' | 'not seen' | 'no instrument' | 'two measures' | 'list' | 'photo';
  /** Id of the step where it is filled. */
  readonly step: string;
  /** Path below `facts`. */
  readonly path: string;
  /** `West, rafters, middle to middle`. */
  readonly what: string;
  /** Rules that need it; empty where a sheet, a paper or the crew does. */
  readonly rules: readonly string[];
  /** The sheet, paper or step that needs it beside or in place of a rule: `sheet 05, the bars of the board`. */
  readonly goesInto: string;
  readonly because: string;
  /** The pair that does not close. */
  readonly measures?: TwoMeasures;
}

/** A fact that was closed without a value. */
export interface NotMeasured {
  readonly step: string;
  readonly path: string;
  readonly what: string;
  readonly why: string;
  readonly by: string;
  readonly rules: readonly string[];
}

/** How far the survey of a job is. */
export interface SurveyStanding {
  /** Every step in walking order. */
  readonly steps: readonly SurveyStep[];
  readonly holes: readonly SurveyHole[];
  readonly notMeasured: readonly NotMeasured[];
  /** What somebody else brings, and who: the survey closes without. */
  readonly later: readonly { readonly what: string; readonly from: string; readonly rules: readonly string[] }[];
}

/**
 * What keeps the survey of this job from closing, step by step.
 *
 * A hole is a wanted fact without a value and without a stated reason; a value that only the region brought; a reading without
 * its instrument; two measures of a plane farther apart than the rule lets pass; a sort of thing nobody looked for; a photograph nobody
 * took. The last, the region's values and the looking count while the job is in survey: a job that is past it was
 * surveyed by other means. A fact answered `nobody is sure` was asked: it is no hole, and its rule goes on asking.
 */
export function surveyStanding(job: Job): SurveyStanding {
  const steps = surveySteps(job);
  const wanted = new Map(wantedFacts(job).map((want) => [want.at.replace(/^facts\./, ''), want]));
  const strict = surveying(job);
  const asked = steps.flatMap((step) => step.asks.map((ask) => ({ step, ask, want: wanted.get(ask.path) })));
  const limit = measuresMayDiffer(job);
  return {
    steps,
    holes: steps.flatMap((step) => [
      ...(strict && step.photo !== undefined && !photoStands(job, step.photo) ? [photoHole(step)] : []),
      ...step.asks.flatMap((ask) => factHole(job, step, ask, wanted.get(ask.path))),
      ...measureHoles(job, step, limit),
      ...listHoles(job, step, wanted, strict),
    ]),
    notMeasured: asked.flatMap(({ step, ask, want }) => {
      const standing = standingOf(job, ask);
      if (standing.kind !== 'not measured') return [];
      const { why, seen } = standing;
      return [{ step: step.id, path: ask.path, what: whatOf(ask), why, by: seen.by, rules: want?.rules ?? [] }];
    }),
    later: asked.flatMap(({ ask, want }) =>
      ask.later !== undefined && want !== undefined && !want.present
        ? [{ what: whatOf(ask), from: ask.later, rules: want.rules }]
        : [],
    ),
  };
}

/** How far two measures of one length of a plane may be apart, a share. */
export function measuresMayDiffer({ choices }: Pick<Job, 'choices'>): number {
  const limit = packFor(choices.rules).rules['roof-measures'];
  if (limit === undefined) throw new Error('roof-measures is a rule of every region');
  return limit.value;
}

/** What the region would have where nobody has looked, for show beside the question; most have nothing usual. */
export function usualAnswer({ choices }: Pick<Job, 'choices'>, path: string): string | undefined {
  return path === 'board.wiring' ? packFor(choices.rules).wiring : undefined;
}

/** `West, rafters, middle to middle`: what is asked, of which thing. */
function whatOf({ ask, of }: Pick<Asked, 'ask' | 'of'>): string {
  return of === '' ? ask : `${of}: ${ask.charAt(0).toLowerCase()}${ask.slice(1)}`;
}

function factHole(job: Job, step: SurveyStep, ask: Asked, want: WantedFact | undefined): SurveyHole[] {
  const hole = {
    step: step.id,
    path: ask.path,
    what: whatOf(ask),
    rules: want?.rules ?? [],
    goesInto: goesInto(step, ask.path),
    because: ask.because,
  };
  const standing = standingOf(job, ask);
  if (standing.kind === 'assumed') return [{ ...hole, kind: 'not seen' }];
  if (readWithNothing(job, ask, standing))
    return [{ ...hole, kind: 'no instrument', what: `${hole.what}, what it was read with`, because: NO_INSTRUMENT }];
  if (standing.kind !== 'open' || want === undefined || ask.later !== undefined) return [];
  const answeredElsewhere = want.present || (ask.or !== undefined && factAt(job, ask.or) !== undefined);
  return answeredElsewhere ? [] : [{ ...hole, kind: 'fact' }];
}

const NO_INSTRUMENT = 'a reading is worth what it was taken with';

/** A reading somebody took in this survey and did not say with what. What was filled in by other means is no reading. */
function readWithNothing(job: Job, ask: Asked, standing: AskedStanding): boolean {
  if (!surveying(job) || ask.with === undefined || standing.kind !== 'answered') return false;
  return standing.seen !== undefined && (standing.seen.with ?? '').trim() === '';
}

function photoHole(step: SurveyStep): SurveyHole {
  const { of, what } = step.photo as NonNullable<SurveyStep['photo']>;
  return {
    kind: 'photo',
    step: step.id,
    path: of,
    what: `Photograph. ${what}`,
    rules: [],
    goesInto: goesInto(step, of),
    because: 'whoever draws it is not here',
  };
}

function measureHoles(job: Job, step: SurveyStep, limitShare: number): SurveyHole[] {
  const { id, thing } = step;
  if (thing?.list.at !== 'roof.planes') return [];
  const plane = factAt(job, thing.path) as Job['facts']['roof']['planes'][string];
  return measuresOf(plane)
    .filter(({ apart }) => apart > limitShare)
    .map((measures) => ({
      kind: 'two measures',
      step: id,
      path: thing.path,
      what: `${plane.name}: two measures of ${measures.what === 'slope' ? 'the slope' : 'ridge and eave'}`,
      rules: ['roof-measures'],
      goesInto: goesInto(step, thing.path),
      because: 'one of them is wrong, and only the place can say which',
      measures,
    }));
}

function listHoles(job: Job, step: SurveyStep, wanted: ReadonlyMap<string, WantedFact>, strict: boolean): SurveyHole[] {
  return step.lists
    .filter((list) => !lookedFor(job, list) && (strict || list.none === undefined))
    .map((list) => ({
      kind: 'list',
      step: step.id,
      path: list.at,
      what: list.none === undefined ? `The first ${list.one}` : `Nobody has looked for ${list.many}`,
      rules: wanted.get(list.at)?.rules ?? [],
      goesInto: goesInto(step, list.at),
      because: list.because,
    }));
}
