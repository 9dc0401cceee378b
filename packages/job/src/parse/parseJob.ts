import { liftJob } from '../migrate/liftJob.ts';
import { JOB_VERSION, type Job, jobSchema } from '../schema/job.ts';
import { inOrder } from '../write/inOrder.ts';
import { isRaw, type Raw } from './gather.ts';
import { issueRemark } from './issueRemark.ts';
import { type JsonMember, placesOf, readThroughJson } from './jsonText.ts';
import { brokenLinks } from './links.ts';
import { type JobRemark, type Remarked, shown, stop } from './remark.ts';
import { sums } from './sums.ts';
import { supplyLines } from './supplyLines.ts';
import { takenPlaces } from './takenPlaces.ts';
import { unitTerminals } from './unitTerminals.ts';
import { unknownFields } from './unknownFields.ts';

/** Longest text read. A job of 5,000 modules has about one million letters. */
export const LONGEST_TEXT = 20_000_000;

/** Names with a meaning of their own in the language: as keys they could reach past the document. */
const HOSTILE = new Set(['__proto__', 'constructor', 'prototype']);

export interface ParsedJob {
  /** There when nothing stops it. */
  readonly job?: Job;
  /** Everything noticed, in the order of the file where that is known. */
  readonly remarks: readonly JobRemark[];
}

/**
 * Opens a job document from its text.
 *
 * Collects every problem rather than the first: text, JSON, format, version, each field's shape, and then what
 * names what, which place is taken twice, which line the supply does not have. A job is returned when no remark
 * stops it; never half of one.
 *
 * @param fileName stands in the remarks.
 */
export function parseJob(text: string, fileName?: string): ParsedJob {
  const finish = (remarks: readonly (Remarked | JobRemark)[]) =>
    remarks.map((remark) => (fileName === undefined ? remark : { file: fileName, ...remark }));

  const early = wrongText(text);
  if (early) return { remarks: finish([early]) };

  const body = text.startsWith('\uFEFF') ? text.slice(1) : text;
  const suspects: JsonMember[] = [];
  const fault = readThroughJson(body, (member) => {
    if (member.repeated || HOSTILE.has(member.key)) suspects.push(member);
  });
  if (fault) {
    const { line, column, found, wanted } = fault;
    return {
      remarks: finish([
        { ...stop('', found, wanted, 'Mend the text there, or take the last copy that opened.'), line, column },
      ]),
    };
  }
  if (suspects.length > 0) return { remarks: finish(wrongKeys(body, suspects)) };

  const read = readRaw(JSON.parse(body));
  const remarks = read.lifted ? read.remarks : withLines(body, read.remarks);
  return read.job && !remarks.some(({ severity }) => severity === 'stop')
    ? { job: read.job, remarks: finish(remarks) }
    : { remarks: finish(remarks) };
}

function wrongText(text: string): Remarked | undefined {
  if (text.length > LONGEST_TEXT) {
    return stop(
      '',
      `${(text.length / 1e6).toFixed(1)} million letters`,
      `at most ${LONGEST_TEXT / 1e6} million`,
      'This is no job, or something was pasted into it. Photographs stay beside the job, not in it.',
    );
  }
  // what a reader of UTF-8 makes of UTF-16, of an archive, of a picture
  if (text.startsWith('\uFFFD') || text.slice(0, 4).includes('\0')) {
    return stop(
      '',
      'a file that is not UTF-8 text',
      'a job document in UTF-8',
      'Save it as UTF-8 where it was edited, or take the last copy that opened.',
    );
  }
  if (text.trim() === '') {
    return stop('', 'an empty file', 'a job document', 'Take the last copy that opened, or begin with a new job.');
  }
  return undefined;
}

function wrongKeys(text: string, members: readonly JsonMember[]): JobRemark[] {
  const places = placesOf(
    text,
    members.map(({ offset }) => offset),
  );
  return members.map(({ path, key }, k) => {
    const remark = HOSTILE.has(key)
      ? stop(
          path,
          `the name ${shown(key)}`,
          'a name without a meaning of its own',
          'Rename it. A file that holds it was not written by Eaveline.',
        )
      : stop(
          path,
          `${shown(key)} named twice`,
          'each name once in a group',
          'Keep the right one: only the last would count.',
        );
    return { ...remark, ...places[k] };
  });
}

interface ReadRaw {
  readonly job?: Job;
  readonly remarks: readonly Remarked[];
  /** True where the document was of an older version, so that its lines are no longer those of the text. */
  readonly lifted: boolean;
}

function readRaw(raw: unknown): ReadRaw {
  if (!isRaw(raw)) {
    return {
      lifted: false,
      remarks: [stop('', shown(raw), 'a job document, in braces', 'This is another sort of file.')],
    };
  }
  const wrong = wrongHead(raw);
  if (wrong) return { lifted: false, remarks: [wrong] };

  const { document, remarks: lifting } = liftJob(raw);
  const result = jobSchema.safeParse(document);
  const remarks = [
    ...lifting,
    ...(result.success ? [] : result.error.issues.map((issue) => issueRemark(issue, document))),
    ...brokenLinks(document),
    ...takenPlaces(document),
    ...supplyLines(document),
    ...unitTerminals(document),
    ...sums(document),
    ...unknownFields(document),
  ];
  const lifted = document !== raw;
  // a store of documents keeps no order of names: the same job is worked out and drawn in the same order from anywhere
  return result.success ? { job: inOrder(jobSchema, result.data) as Job, remarks, lifted } : { remarks, lifted };
}

function wrongHead({ format, version }: Raw): Remarked | undefined {
  if (format !== 'eaveline-job') {
    return stop(
      'format',
      shown(format),
      'eaveline-job',
      'This is not a job document. Look for a file that ends in .job.json.',
    );
  }
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 0) {
    return stop(
      'version',
      shown(version),
      `a whole number from 0 to ${JOB_VERSION}`,
      'Take the last copy that opened.',
    );
  }
  if (version > JOB_VERSION) {
    return stop(
      'version',
      `version ${version}`,
      `version ${JOB_VERSION} or older`,
      `Open it with a newer Eaveline, or have it saved as version ${JOB_VERSION}. Nothing of it was taken over.`,
    );
  }
  return undefined;
}

/** Adds the line each path begins on; where the field is missing, the line of the group it is missing from. */
function withLines(text: string, remarks: readonly Remarked[]): JobRemark[] {
  const wanted = new Set(remarks.flatMap(({ at }) => ancestors(at)));
  if (wanted.size === 0) return [...remarks];
  const paths: string[] = [];
  const offsets: number[] = [];
  readThroughJson(text, ({ path, offset }) => {
    if (!wanted.has(path)) return;
    paths.push(path);
    offsets.push(offset);
  });
  const lineOf = new Map(placesOf(text, offsets).map(({ line }, k) => [paths[k], line]));
  return remarks
    .map((remark) => {
      const known = ancestors(remark.at).find((path) => lineOf.has(path));
      return known === undefined ? remark : { ...remark, line: lineOf.get(known) as number };
    })
    .sort((a: JobRemark, b: JobRemark) => (a.line ?? 0) - (b.line ?? 0));
}

/** A path and the groups around it, innermost first. */
function ancestors(path: string): string[] {
  const steps = path.split('.');
  return steps.map((_, k) => steps.slice(0, steps.length - k).join('.')).filter((step) => step !== '');
}
