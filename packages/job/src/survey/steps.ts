import type { Job } from '../schema/job.ts';
import { boardQuestions, liveQuestions } from './boardQuestions.ts';
import { surveyCautions } from './cautions.ts';
import { arrivalQuestions, networkQuestions, recordQuestions, wishQuestions } from './houseQuestions.ts';
import type { Question, SurveyCaution, ThingList, WantedPhoto } from './question.ts';
import { atticQuestions, objectQuestions, obstructionQuestions, planeQuestions } from './roofQuestions.ts';
import {
  circuitQuestions,
  existingQuestions,
  loadQuestions,
  wallItemQuestions,
  wallQuestions,
} from './thingQuestions.ts';

/** A question asked of one thing of this job. */
export interface Asked extends Omit<Question, 'at' | 'when' | 'or'> {
  /** Path below `facts`, with dots: `supply.loopOhm`. */
  readonly path: string;
  /** Path below `facts` of the fact that answers in its place. */
  readonly or?: string;
  /** Name of the thing it is asked of; empty for the house. */
  readonly of: string;
}

/** One place one stands at, with what is asked there. */
export interface SurveyStep {
  /** `board`; of a thing its path below `facts`: `roof.planes.west`. */
  readonly id: string;
  readonly name: string;
  /** Step of the house it belongs to; of a step of the house its own id. */
  readonly part: string;
  readonly cautions: readonly SurveyCaution[];
  readonly photo?: WantedPhoto;
  readonly asks: readonly Asked[];
  readonly lists: readonly ThingList[];
  /** The thing it is about, where it is one of a list. */
  readonly thing?: { readonly path: string; readonly list: ThingList };
}

const wallItems: ThingList = {
  at: 'items',
  one: 'opening or appliance',
  many: 'openings and appliances',
  none: 'No opening or appliance near',
  because: 'a battery keeps its distance from each',
  questions: wallItemQuestions,
};

/** Lists by their path below `facts`. */
export const surveyLists = {
  walls: {
    at: 'walls',
    one: 'wall',
    many: 'walls',
    none: 'No wall could take a battery',
    because: 'where a battery may stand',
    questions: wallQuestions,
    photo: 'The wall, with a tape standing on it',
    inside: [wallItems],
  },
  existing: {
    at: 'existing',
    one: 'source or load',
    many: 'sources and loads',
    none: 'None of these here: no solar, generator inlet, car charger, controlled load, second board',
    because: 'solar and generators are summed with what is fitted; loads are on record',
    questions: existingQuestions,
    photo: 'Its plate, legible',
  },
  planes: {
    at: 'roof.planes',
    one: 'plane',
    many: 'planes',
    because: 'without a plane there is no array',
    questions: planeQuestions,
    photo: 'The whole plane, from where all of it is seen',
  },
  obstructions: {
    at: 'roof.obstructions',
    one: 'thing on the roof',
    many: 'things on the roof',
    none: 'Nothing stands out of these planes',
    because: 'modules go round them',
    questions: obstructionQuestions,
  },
  objects: {
    at: 'site.objects',
    one: 'tree, building or pole',
    many: 'trees, buildings and poles',
    none: 'Nothing near throws a shadow',
    because: 'shade, module by module and hour by hour',
    questions: objectQuestions,
  },
  circuits: {
    at: 'loads.circuits',
    one: 'circuit',
    many: 'circuits',
    none: 'No circuit is asked for in an outage',
    because: 'backup is sized from them',
    questions: circuitQuestions,
  },
} as const satisfies Readonly<Record<string, ThingList>>;

/**
 * The survey of this job, in walking order: street, meter, board, walls, what stands there, roof, attic, round about,
 * loads, wishes; last what is looked up. Each thing of a list is a step of its own, right after its list.
 */
export function surveySteps(job: Job): SurveyStep[] {
  const { facts } = job;
  const { walls, existing, planes, obstructions, objects, circuits } = surveyLists;
  return [
    house('arrival', 'Arrival', arrivalQuestions, job, { of: 'site', what: 'The house from the street' }),
    house('network', 'Street and meter', networkQuestions, job, {
      of: 'network.meterNumber',
      what: 'The meter, its number legible',
    }),
    house('board', 'Board', boardQuestions, job, {
      ...{ of: 'board', after: 'board.backing' },
      what: boardPhoto(facts.board.backing),
    }),
    house('live', 'Measured live', liveQuestions, job),
    ...listed('walls', 'Battery walls', walls, job),
    ...listed('existing', 'Already there', existing, job),
    ...listed('roof', 'Roof', planes, job),
    ...Object.entries(facts.roof.planes).map(([id, plane]) => attic(id, plane, job)),
    ...listed('things', 'On the roof', obstructions, job),
    ...listed('around', 'Round about', objects, job),
    ...listed('loads', 'Loads and motors', circuits, job, loadQuestions),
    house('wishes', 'Wishes', wishQuestions, job),
    house('records', 'Looked up', recordQuestions, job),
  ];
}

/** Questions of a thing, with their whole paths, as far as they are asked of it. */
export function asksOf(
  questions: readonly Question<never>[],
  thing: unknown,
  path: string,
  name: string,
  job: Job,
): Asked[] {
  const whole = (at: string) => (path === '' ? at : `${path}.${at}`);
  return (questions as readonly Question[])
    .filter(({ when }) => when === undefined || when(thing, job))
    .map(({ at, when: _when, or, ...question }) => ({
      ...question,
      path: whole(at),
      of: name,
      ...(or === undefined ? {} : { or: whole(or) }),
    }));
}

function house(
  id: string,
  name: string,
  questions: readonly Question<Job['facts']>[],
  job: Job,
  photo?: WantedPhoto,
): SurveyStep {
  return {
    id,
    name,
    part: id,
    cautions: surveyCautions[id] ?? [],
    asks: asksOf(questions, job.facts, '', '', job),
    lists: [],
    ...(photo === undefined ? {} : { photo }),
  };
}

/** A cover comes off only a board that surely holds no asbestos; until then the photograph is of the board as it hangs. */
function boardPhoto(backing: Job['facts']['board']['backing']): string {
  if (backing === undefined) return 'The board closed; open only once its backing is surely no asbestos';
  if (backing === 'unknown' || backing === 'asbestos') return 'The board closed, its plate legible: the cover stays on';
  return 'The board with its cover off, ratings legible';
}

function attic(id: string, plane: Job['facts']['roof']['planes'][string], job: Job): SurveyStep {
  const path = `roof.planes.${id}`;
  return {
    id: `attic.${id}`,
    name: `Attic under ${plane.name}`,
    part: 'attic',
    cautions: surveyCautions.attic ?? [],
    photo: { of: `${path}.rafters`, what: `Rafters under ${plane.name}, in focus, tape across two of them` },
    asks: asksOf(atticQuestions, plane, path, plane.name, job),
    lists: [],
  };
}

function listed(
  id: string,
  name: string,
  list: ThingList,
  job: Job,
  questions: readonly Question<never>[] = [],
): SurveyStep[] {
  const own: SurveyStep = {
    id,
    name,
    part: id,
    cautions: surveyCautions[id] ?? [],
    asks: asksOf(questions, job.facts, '', '', job),
    lists: [list],
  };
  return [own, ...thingSteps(id, list, list.at, job)];
}

/** A step for each thing of a list, those inside it right after it. */
function thingSteps(part: string, list: ThingList, at: string, job: Job): SurveyStep[] {
  return Object.entries(thingsAt(job, at)).flatMap(([key, thing]) => {
    const path = `${at}.${key}`;
    const name = nameOf(thing, list);
    const inside = list.inside ?? [];
    const step: SurveyStep = {
      id: path,
      name,
      part,
      cautions: surveyCautions[part] ?? [],
      asks: asksOf(list.questions, thing, path, name, job),
      lists: inside.map((inner) => ({ ...inner, at: `${path}.${inner.at}` })),
      thing: { path, list: { ...list, at } },
      ...(list.photo === undefined ? {} : { photo: { of: path, what: list.photo } }),
    };
    return [step, ...inside.flatMap((inner) => thingSteps(part, inner, `${path}.${inner.at}`, job))];
  });
}

/** The things of a list, by id. */
export function thingsAt(job: Job, at: string): Readonly<Record<string, unknown>> {
  const found = factAt(job, at);
  return typeof found === 'object' && found !== null ? (found as Readonly<Record<string, unknown>>) : {};
}

/** What a thing is called; one without a name is called by its kind. */
export function nameOf(thing: unknown, list: Pick<ThingList, 'one'>): string {
  const { name, kind } = thing as { readonly name?: unknown; readonly kind?: unknown };
  return [name, kind].find((words): words is string => typeof words === 'string' && words !== '') ?? list.one;
}

/** The fact at a path below `facts`, with dots; undefined where the path leads nowhere. */
export function factAt(job: Job, path: string): unknown {
  return valueBelow(job.facts, path);
}

/** The value at a path with dots below a thing. */
export function valueBelow(thing: unknown, path: string): unknown {
  return path
    .split('.')
    .reduce<unknown>(
      (at, key) =>
        typeof at === 'object' && at !== null && Object.hasOwn(at, key)
          ? (at as Readonly<Record<string, unknown>>)[key]
          : undefined,
      thing,
    );
}
