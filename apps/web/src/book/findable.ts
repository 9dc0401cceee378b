import type { Job } from '@eaveline/job';
import type { SheetNo } from '@eaveline/plan';
import { closedUp, folded } from './folded.ts';

/** Where a job is opened: a sheet, and what is selected on it. */
export interface Goes {
  readonly sheet: SheetNo;
  readonly at?: string;
}

/** One thing a job may be found by. */
export interface Field {
  /** What it is, in words: `address`, `serial`, `customer’s phone`. */
  readonly what: string;
  readonly text: string;
  readonly folded: string;
  /** Letters and figures alone, for what is copied off a label or a letter in groups; else undefined. */
  readonly closedUp?: string;
  /** The unit a serial is of. */
  readonly unitId?: string;
  readonly goes?: Goes;
}

/** Everything a job may be found by, made ready once. */
export interface Findable {
  readonly fields: readonly Field[];
  /** All of it in one text: most jobs are told apart by this alone. */
  readonly all: string;
  /** Words of five letters and more that a slip of one letter may be mended to. */
  readonly long: readonly string[];
}

/** Makes a job ready to be found by name, address, customer, state, serials, numbers of its papers, and equipment. */
export function findableOf(job: Job): Findable {
  const { facts, customer, choices, records } = job;
  const plain = (what: string, text: string | undefined): Field[] =>
    text === undefined || text === '' ? [] : [{ what, text, folded: folded(text) }];
  const number = (what: string, text: string | undefined, more: Pick<Field, 'unitId' | 'goes'> = {}): Field[] =>
    plain(what, text).map((field) => ({ ...field, closedUp: closedUp(field.text), ...more }));
  const named = [
    ...plain('name', job.name),
    ...plain('address', facts.site.address),
    ...plain('customer', customer.name),
    ...equipmentOf(job),
  ];
  const fields = [
    ...named,
    ...plain('state', job.state),
    ...(job.archived === undefined ? [] : plain('state', 'archived')),
    ...serialsOf(records, choices).flatMap(({ what, serial, ...more }) => number(what, serial, more)),
    ...number('customer’s phone', customer.phone),
    ...plain('customer’s mail', customer.email),
    ...number('meter', facts.network.meterNumber),
    ...number('approval', facts.network.approvalNumber),
    ...plain('network', facts.network.name),
    ...plain('what it is about', job.about),
    ...plain('id', job.id),
  ];
  const words = named.flatMap((field) => field.folded.split(' '));
  return {
    fields,
    all: fields.map((field) => `${field.folded}\n${field.closedUp ?? closedUp(field.text)}`).join('\n'),
    long: [...new Set(words)].filter((word) => /^\p{L}{5,}$/u.test(word)),
  };
}

/** Equipment that was chosen; sheets that only lie in the job are not in it. */
function equipmentOf({ choices }: Job): Field[] {
  const { equipment, rows, units, trunks, batteries, backup, mounting } = choices;
  const chosen = new Set([
    ...Object.values(rows).map(({ moduleSheet }) => moduleSheet),
    ...Object.values(units).map(({ sheet }) => sheet),
    ...Object.values(trunks).flatMap(({ cableSheet, homeRun, breakerSheet }) => [
      cableSheet,
      homeRun.cableSheet,
      breakerSheet,
    ]),
    ...Object.values(batteries).flatMap(({ sheet, cableSheet, breakerSheet }) => [sheet, cableSheet, breakerSheet]),
    ...(backup === undefined ? [] : [backup.changeoverSheet]),
    ...(mounting === undefined
      ? []
      : [mounting.railSheet, mounting.fixingSheet, mounting.midClampSheet, mounting.endClampSheet]),
  ]);
  return [...chosen].flatMap((id) => {
    const sheet = equipment[id];
    if (sheet === undefined) return [];
    return [{ what: 'equipment', text: sheet.name, folded: folded(`${sheet.name} ${id} ${sheet.kind}`) }];
  });
}

interface FoundSerial extends Pick<Field, 'unitId' | 'goes'> {
  readonly what: string;
  readonly serial: string;
}

/** Serials on record, those that a later one superseded too: the label may still be in somebody's hand. */
function serialsOf({ serials }: Job['records'], { units, modules, batteries }: Job['choices']): FoundSerial[] {
  const gone = new Set(Object.values(serials).flatMap(({ supersedes }) => supersedes ?? []));
  return Object.entries(serials).map(([id, { of, serial }]): FoundSerial => {
    const what = gone.has(id) ? 'serial, superseded' : 'serial';
    if (units[of] !== undefined) {
      const module = Object.entries(modules).find(([, { unitId }]) => unitId === of)?.[0];
      const at = module === undefined ? {} : { at: `module:${module}` };
      return { what, serial, unitId: of, goes: { sheet: '03', ...at } };
    }
    if (batteries[of] !== undefined) return { what: `${what} of battery ${of}`, serial, goes: { sheet: '06' } };
    return { what: `${what} of ${of}`, serial, goes: { sheet: '12' } };
  });
}
