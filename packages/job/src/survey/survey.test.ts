import { expect, test } from 'vitest';
import type { z } from 'zod';
import { demoJobs, kestrelRise } from '../demo/index.ts';
import { anatomy } from '../schema/anatomy.ts';
import { factsSchema } from '../schema/facts.ts';
import { measuresOf, ridgeMeasures, slopeMeasures } from './closing.ts';
import type { Answer } from './question.ts';
import { type Asked, surveyLists, surveySteps } from './steps.ts';

/** What stands at a path of the schema; undefined where it knows no such field. */
function schemaAt(path: string): z.core.$ZodType | undefined {
  return path.split('.').reduce<z.core.$ZodType | undefined>((schema, key) => {
    if (schema === undefined) return undefined;
    const parts = anatomy(schema, undefined);
    if (parts.kind === 'group') return parts.fields[key];
    return parts.kind === 'map' ? parts.of : undefined;
  }, factsSchema);
}

/** The type of a field without the leave to be absent. */
function bare(schema: z.core.$ZodType): z.core.$ZodTypes['_zod']['def'] {
  const { def } = (schema as z.core.$ZodTypes)._zod;
  return def.type === 'optional' || def.type === 'default' ? bare(def.innerType) : def;
}

const FIELD_OF: Readonly<Partial<Record<Answer['kind'], string>>> = {
  number: 'number',
  pick: 'enum',
  'yes-no': 'boolean',
  text: 'string',
  date: 'string',
  lines: 'array',
  plane: 'string',
  conductor: 'object',
};
const asked: readonly Asked[] = demoJobs.flatMap((job) => surveySteps(job).flatMap(({ asks }) => asks));

test('every question of every demo job asks for a field the schema knows, in its own sort', () => {
  expect(asked.length).toBeGreaterThan(500);
  for (const { path, answer } of asked) {
    const field = schemaAt(path);
    expect(field, path).toBeDefined();
    const wanted = FIELD_OF[answer.kind];
    if (wanted !== undefined) expect(bare(field as z.core.$ZodType).type, path).toBe(wanted);
  }
});

test('a question with options offers every value the schema takes, and no other', () => {
  let looked = 0;
  for (const { path, answer } of asked) {
    if (answer.kind !== 'pick') continue;
    const def = bare(schemaAt(path) as z.core.$ZodType);
    if (def.type !== 'enum') throw new Error(`${path} is no enum`);
    const takes = Object.values(def.entries).map(String);
    const offered = answer.options.map(({ value }) => value);
    // an edge of a plane is never its own eave or ridge
    const left = takes.filter((value) => !offered.includes(value) && !(/edges/.test(path) && /eave|ridge/.test(value)));
    expect([path, left, offered.filter((value) => !takes.includes(value))]).toEqual([path, [], []]);
    looked += 1;
  }
  expect(looked).toBeGreaterThan(50);
});

test('a field a thing cannot be kept without is asked for, and said to be', () => {
  for (const list of Object.values(surveyLists)) {
    const map = anatomy(schemaAt(list.at) as z.core.$ZodType, undefined);
    if (map.kind !== 'map') throw new Error(`${list.at} is no map`);
    expect(missingMusts(map.of, '', list.questions as readonly { at: string; must?: true }[]), list.at).toEqual([]);
  }
});

/** Required leaves of a schema that no question marked as a must asks for. */
function missingMusts(
  schema: z.core.$ZodType,
  path: string,
  questions: readonly { readonly at: string; readonly must?: true }[],
): string[] {
  const { def } = (schema as z.core.$ZodTypes)._zod;
  if (def.type === 'optional' || def.type === 'default') return [];
  const parts = anatomy(schema, undefined);
  if (parts.kind === 'group') {
    return Object.entries(parts.fields).flatMap(([key, field]) =>
      missingMusts(field, path === '' ? key : `${path}.${key}`, questions),
    );
  }
  return questions.some(({ at, must }) => at === path && must) ? [] : [path];
}

test('the walk goes street, meter, board, walls, what is there, roof, attic, round about, loads, wishes, papers', () => {
  const parts = [...new Set(surveySteps(kestrelRise).map(({ part }) => part))];
  expect(parts).toEqual([
    ...['arrival', 'network', 'board', 'live', 'walls', 'existing'],
    ...['roof', 'attic', 'things', 'around', 'loads', 'wishes', 'records'],
  ]);
  const ids = surveySteps(kestrelRise).map(({ id }) => id);
  expect(new Set(ids).size).toBe(ids.length);
});

test('before a board, a live measurement, a roof and an attic stand the hazard and what to do', () => {
  for (const part of ['board', 'live', 'roof', 'attic']) {
    const step = surveySteps(kestrelRise).find((each) => each.part === part);
    expect(step?.cautions.length, part).toBeGreaterThan(0);
  }
});

test('two measures of a slope, by hand', () => {
  // 5.400 m on plan at 22.5°: 5.400 ÷ cos 22.5° = 5.400 ÷ 0.92388 = 5.845 m; taped 5.900: 0.94 in 100 apart
  const near = slopeMeasures({ slopeLengthM: 5.9, planWidthM: 5.4, pitchDeg: 22.5 });
  expect(near?.secondM).toBeCloseTo(5.845, 3);
  expect(near?.apart).toBeCloseTo(0.0094, 4);
  // taped 5.910: 1.11 in 100
  expect(slopeMeasures({ slopeLengthM: 5.91, planWidthM: 5.4, pitchDeg: 22.5 })?.apart).toBeCloseTo(0.0111, 4);
  expect(slopeMeasures({ slopeLengthM: 5.9, pitchDeg: 22.5 })).toBeUndefined();
});

test('between two verges ridge and eave are one length; a hip may be shorter', () => {
  const gable = { eaveLengthM: 8.4, ridgeFromM: 0, ridgeToM: 8.2, edges: { left: 'verge', right: 'wall' } } as const;
  // 8.200 against 8.400: 2.4 in 100
  expect(ridgeMeasures(gable)?.apart).toBeCloseTo(0.0238, 4);
  expect(ridgeMeasures({ ...gable, edges: { left: 'verge', right: 'hip' } })).toBeUndefined();
  expect(measuresOf({ ...gable, slopeLengthM: 5, planWidthM: 5, pitchDeg: 0 }).map(({ what }) => what)).toEqual([
    'slope',
    'ridge against eave',
  ]);
});

test('what is photographed at a board hangs on its backing, which is asked first: a cover stays on until no asbestos is sure', () => {
  const wanted = (backing: 'metal' | 'unknown' | 'asbestos' | undefined) => {
    const { backing: _, ...board } = kestrelRise.facts.board;
    const facts = { ...kestrelRise.facts, board: backing === undefined ? board : { ...board, backing } };
    const step = surveySteps({ ...kestrelRise, facts }).find(({ id }) => id === 'board');
    expect(step?.photo?.after).toBe('board.backing');
    expect(step?.asks.map(({ path }) => path)).toContain('board.backing');
    return step?.photo?.what;
  };
  // HSE guidance on asbestos in old switchboards, from memory: presume it until a sample says no
  expect(wanted('metal')).toMatch(/cover off/);
  for (const unsure of ['unknown', 'asbestos', undefined] as const) {
    expect(wanted(unsure)).toMatch(/^The board closed/);
    expect(wanted(unsure)).not.toMatch(/cover off/);
  }
});
