import { expect, test } from 'vitest';
import { kestrelRise } from '../demo/index.ts';
import { writeJob } from '../write/writeJob.ts';
import { LONGEST_TEXT, type ParsedJob, parseJob } from './parseJob.ts';
import { remarkLine } from './remark.ts';

const good = writeJob(kestrelRise);

/** A job of the demo with something broken in it. */
function broken(breakIt: (job: ReturnType<typeof JSON.parse>) => void): ParsedJob {
  const job = JSON.parse(good);
  breakIt(job);
  return parseJob(JSON.stringify(job, null, 2));
}

/** The remark at a path; there has to be exactly one. */
function at({ remarks }: ParsedJob, path: string) {
  const found = remarks.filter((remark) => remark.at === path);
  expect(found, `remarks at ${path}, of ${remarks.map((remark) => remark.at).join(' ')}`).toHaveLength(1);
  return found[0];
}

test('a sound job gives no remark', () => {
  expect(parseJob(good).remarks).toEqual([]);
});

test('an empty file', () => {
  for (const text of ['', '  \n\t']) {
    expect(parseJob(text, 'a.job.json')).toEqual({
      remarks: [
        {
          severity: 'stop',
          file: 'a.job.json',
          at: '',
          found: 'an empty file',
          wanted: 'a job document',
          mend: 'Take the last copy that opened, or begin with a new job.',
        },
      ],
    });
  }
});

test('not JSON: line and column of the first fault', () => {
  const { job, remarks } = parseJob('{\n  "format": "eaveline-job",\n  "version": 1,,\n}', 'a.job.json');
  expect(job).toBeUndefined();
  expect(remarks).toMatchObject([{ line: 3, column: 16, found: '","', wanted: 'a name in double quotes' }]);
  expect(remarkLine(remarks[0])).toBe(
    'a.job.json, line 3, column 16: found ","; wanted a name in double quotes. Mend the text there, or take the last copy that opened.',
  );
});

test('a file cut short', () => {
  const cut = good.slice(0, good.length / 2);
  const { job, remarks } = parseJob(cut);
  expect(job).toBeUndefined();
  expect(remarks[0]).toMatchObject({ severity: 'stop', found: 'the end of the file' });
  expect(remarks[0].line).toBe(cut.split('\n').length);
});

test('JSON, but another sort of document', () => {
  expect(parseJob('[1, 2]').remarks).toMatchObject([{ at: '', found: 'a list of 2' }]);
  expect(parseJob('{"type": "FeatureCollection"}').remarks).toMatchObject([
    { severity: 'stop', at: 'format', found: 'nothing', wanted: 'eaveline-job' },
  ]);
});

test('a version from the future: what to do, and nothing taken over', () => {
  const parsed = broken((job) => {
    job.version = 7;
  });
  expect(parsed.job).toBeUndefined();
  expect(parsed.remarks).toMatchObject([
    { severity: 'stop', at: 'version', line: 3, found: 'version 7', wanted: 'version 1 or older' },
  ]);
  expect(parsed.remarks[0].mend).toContain('newer Eaveline');
  for (const version of ['1', 1.5, -1, null]) {
    expect(broken((job) => Object.assign(job, { version })).remarks).toMatchObject([
      { severity: 'stop', at: 'version' },
    ]);
  }
});

test('a job without a site', () => {
  const remark = at(
    broken((job) => delete job.facts.site),
    'facts.site',
  );
  expect(remark).toMatchObject({ severity: 'stop', found: 'nothing', wanted: 'a group of fields in braces' });
  expect(remark.mend).toContain('latitudeDeg');
  // the line of the group it is missing from
  expect(good.split('\n')[(remark.line ?? 0) - 1]).toContain('"facts"');
});

test('an impossible latitude, and a length below zero: both, each on its line', () => {
  const parsed = broken((job) => {
    job.facts.site.latitudeDeg = 143.9;
    job.choices.trunks.a.homeRun.lengthM = -31;
  });
  expect(at(parsed, 'facts.site.latitudeDeg')).toMatchObject({ found: '143.9', wanted: 'at most 90°' });
  const length = at(parsed, 'choices.trunks.a.homeRun.lengthM');
  expect(length).toMatchObject({ severity: 'stop', found: '−31', wanted: 'more than 0 m' });
  expect(length.mend).toBe('Measure along the cable, joint to joint, in metres.');
  expect(length.line).toBeGreaterThan(at(parsed, 'facts.site.latitudeDeg').line ?? Number.POSITIVE_INFINITY);
});

test('one fault does not hide another: a wrong figure and a name that leads nowhere', () => {
  const parsed = broken((job) => {
    job.facts.supply.serviceA = 'sixty-three';
    job.choices.modules['north-1-1'].unitId = 'u-nobody';
  });
  expect(at(parsed, 'facts.supply.serviceA')).toMatchObject({ found: '"sixty-three"', wanted: 'a number' });
  expect(at(parsed, 'choices.modules.north-1-1.unitId')).toMatchObject({
    found: '"u-nobody", which choices.units does not hold',
  });
});

test.each([
  ['choices.rows.north-1.planeId', 'attic'],
  ['choices.modules.north-1-2.rowId', 'north-9'],
  ['choices.modules.north-1-2.unitId', 'constructor-less'],
  ['choices.units.u-north-1-2.trunkId', 'z'],
  ['choices.units.u-north-1-2.sheet', 'alder-500'],
  ['choices.trunks.a.cableSheet', 'pellucid-430'],
  ['choices.trunks.a.homeRun.cableSheet', 'bramble-120-1'],
  ['choices.trunks.a.breakerSheet', 'cable-6'],
  ['choices.batteries.battery.sheet', 'alder-400'],
  ['choices.batteries.battery.place.wallId', 'moon'],
  ['choices.backup.changeoverSheet', 'heath-13'],
  ['choices.mounting.railSheet', 'tile-hook'],
  ['facts.roof.obstructions.flue.planeId', 'cellar'],
])('%s naming %s stops it', (path, name) => {
  const parsed = broken((job) => {
    const steps = path.split('.');
    const last = steps.pop() as string;
    steps.reduce((group, step) => group[step], job)[last] = name;
  });
  expect(parsed.job).toBeUndefined();
  expect(at(parsed, path)).toMatchObject({ severity: 'stop', found: expect.stringContaining(`"${name}"`) });
});

test('backed-up circuits and trunks that do not exist', () => {
  const parsed = broken((job) => {
    job.choices.backup.circuits.sauna = { moved: true };
    job.choices.backup.trunks.q = true;
  });
  expect(at(parsed, 'choices.backup.circuits.sauna').mend).toContain('fridge');
  expect(at(parsed, 'choices.backup.trunks.q').mend).toContain('a, b, c');
});

test('a module no unit takes', () => {
  const second = broken((job) => {
    job.choices.modules['north-1-2'].unitId = 'u-north-1-1';
    job.choices.modules['north-1-2'].input = 2;
  });
  expect(at(second, 'choices.modules.north-1-2.input')).toMatchObject({
    severity: 'stop',
    found: 'input 2 of u-north-1-1',
    wanted: 'at most 1: its sheet "alder-400" takes no more',
  });
  expect(at(second, 'choices.units.u-north-1-2')).toMatchObject({ severity: 'warn', found: 'no module on this unit' });

  const same = broken((job) => {
    job.choices.modules['north-1-2'].unitId = 'u-north-1-1';
  });
  expect(same.remarks.filter(({ severity }) => severity === 'stop')).toMatchObject([
    { found: expect.stringContaining('input 1 of u-north-1-1') },
  ]);

  const without = broken((job) => delete job.choices.modules['north-1-2'].unitId);
  expect(at(without, 'choices.modules.north-1-2.unitId')).toMatchObject({
    found: 'nothing',
    wanted: 'a text in quotes',
  });
});

test('two modules at one place, two units on one drop', () => {
  const parsed = broken((job) => {
    job.choices.modules['north-1-2'].place = 1;
    job.choices.units['u-north-2-2'].drop = 1;
  });
  expect(at(parsed, 'choices.modules.north-1-2.place').found).toBe('place 1 of north-1, which north-1-1 has');
  expect(at(parsed, 'choices.units.u-north-2-2.drop').found).toBe('drop 1 of a, which u-north-2-1 has');
});

test('a home run that enters past the last drop, a jumper after it', () => {
  const parsed = broken((job) => {
    job.choices.trunks.a.feedDrop = 10;
    job.choices.trunks.a.jumpers['after-9'] = { afterDrop: 9, lengthM: 1 };
  });
  expect(at(parsed, 'choices.trunks.a.feedDrop')).toMatchObject({ found: 'drop 10', wanted: 'a drop from 1 to 9' });
  expect(at(parsed, 'choices.trunks.a.jumpers.after-9.afterDrop').severity).toBe('stop');
});

test('a trunk with 60 units opens, and is spoken of: the checks judge it', () => {
  const parsed = broken((job) => {
    for (let n = 1; n <= 51; n++) {
      job.choices.units[`more-${n}`] = { sheet: 'alder-400', trunkId: 'a', drop: 9 + n };
      job.choices.modules[`more-${n}`] = { rowId: 'north-2', place: 5 + n, unitId: `more-${n}` };
    }
  });
  expect(parsed.job).toBeDefined();
  expect(at(parsed, 'choices.trunks.a')).toMatchObject({ severity: 'warn', found: '60 units on one trunk' });
});

test('ids that could not stand in an address', () => {
  const parsed = broken((job) => {
    job.choices.trunks['Trunk D/..'] = job.choices.trunks.a;
    job.id = 'Kestrel Rise!';
  });
  expect(parsed.job).toBeUndefined();
  expect(parsed.remarks).toEqual(
    expect.arrayContaining([
      expect.objectContaining({
        at: 'choices.trunks.Trunk D/..',
        wanted: 'an id of lower-case letters, digits and hyphens',
      }),
      expect.objectContaining({ at: 'id', found: '"Kestrel Rise!"', wanted: 'lower-case letters, digits and hyphens' }),
    ]),
  );
});

test('lines the supply does not have', () => {
  const parsed = broken((job) => {
    job.facts.supply.system = 'single-phase';
  });
  expect(at(parsed, 'facts.loads.circuits.lights.lines.0')).toMatchObject({
    found: 'line L2',
    wanted: 'a line of a single-phase supply: L1',
  });
  expect(at(parsed, 'choices.trunks.c.lines.0').found).toBe('line L3');
  expect(at(parsed, 'facts.supply.measuredV.L2').severity).toBe('stop');
});

test('a unit on a line its trunk does not carry, a line named twice', () => {
  const parsed = broken((job) => {
    job.choices.units['u-north-2-1'].line = 'L2';
    job.choices.trunks.b.lines = ['L2', 'L2'];
  });
  expect(at(parsed, 'choices.units.u-north-2-1.line').wanted).toContain('L1');
  expect(at(parsed, 'choices.trunks.b.lines').wanted).toBe('each line once');
});

test('a day whose shares do not sum to one', () => {
  const parsed = broken((job) => {
    job.facts.loads.dayShape = Array(24).fill(0.05);
  });
  // 24 × 0.05 = 1.2
  expect(at(parsed, 'facts.loads.dayShape')).toMatchObject({
    found: 'shares that sum to 1.200',
    mend: 'Divide each by 1.200.',
  });
  const short = broken((job) => job.facts.loads.dayShape.pop());
  expect(at(short, 'facts.loads.dayShape')).toMatchObject({ found: 'a list of 23', wanted: 'exactly 24 entries' });
});

test('two sizes on one conductor, equipment of no known kind, a word not on the list', () => {
  const parsed = broken((job) => {
    job.facts.supply.mains.conductor.awg = '6';
    job.choices.equipment['tern-40'].kind = 'gutter';
    job.facts.supply.earthing = 'TN-X';
  });
  expect(at(parsed, 'facts.supply.mains.conductor').wanted).toBe('give areaMm2 or awg, and not both');
  expect(
    parsed.remarks.some(({ at: path, wanted }) => path === 'choices.equipment.tern-40.kind' && /kind/.test(wanted)),
  ).toBe(true);
  expect(at(parsed, 'facts.supply.earthing').wanted).toBe('one of MEN, TN-C-S, TN-S, TT, US-grounded');
});

test('a misspelled field is kept and spoken of; the origin of a fact that is not there too', () => {
  const parsed = broken((job) => {
    job.facts.board.busAmps = 100;
    job.facts.provenance['supply.electrodeOhm'] = { by: 'Nia', at: '2026-05-02T00:00:00Z' };
  });
  expect(parsed.job).toHaveProperty('facts.board.busAmps', 100);
  expect(at(parsed, 'facts.board.busAmps').severity).toBe('note');
  expect(at(parsed, 'facts.provenance.supply.electrodeOhm').severity).toBe('note');
});

test.each(['__proto__', 'constructor', 'prototype'])('the name %s is refused, and reaches nothing', (name) => {
  const text = good.replace('"facts": {', `"facts": {\n "${name}": { "polluted": true },`);
  const { job, remarks } = parseJob(text);
  expect(job).toBeUndefined();
  expect(remarks).toMatchObject([{ severity: 'stop', at: `facts.${name}` }]);
  expect(({} as { polluted?: boolean }).polluted).toBeUndefined();
});

test('a name given twice is refused: readers would silently keep the last', () => {
  const { job, remarks } = parseJob(good.replace('"serviceA": 63,', '"serviceA": 63,\n "serviceA": 80,'));
  expect(job).toBeUndefined();
  expect(remarks).toMatchObject([{ at: 'facts.supply.serviceA', found: '"serviceA" named twice' }]);
});

test('nesting without end is refused before anything is built', () => {
  const { job, remarks } = parseJob(`${'{"a":'.repeat(100_000)}1${'}'.repeat(100_000)}`);
  expect(job).toBeUndefined();
  expect(remarks).toMatchObject([{ found: 'groups nested too deep', line: 1 }]);
});

test('a huge file is refused by its size', () => {
  const { job, remarks } = parseJob(' '.repeat(LONGEST_TEXT + 1));
  expect(job).toBeUndefined();
  expect(remarks).toMatchObject([{ severity: 'stop', found: '20.0 million letters', wanted: 'at most 20 million' }]);
});

test('a byte order mark is no fault', () => {
  expect(parseJob(`\uFEFF${good}`).remarks).toEqual([]);
});

test('5,000 modules open, every one of them', () => {
  const job = JSON.parse(good);
  for (let n = 0; n < 4974; n++) {
    const trunk = `t${Math.floor(n / 9)}`;
    job.choices.trunks[trunk] ??= { ...job.choices.trunks.a, jumpers: {}, feedDrop: 1 };
    job.choices.units[`x${n}`] = { sheet: 'alder-400', trunkId: trunk, drop: (n % 9) + 1 };
    const row = `r${Math.floor(n / 100)}`;
    job.choices.rows[row] ??= job.choices.rows['north-1'];
    job.choices.modules[`x${n}`] = { rowId: row, place: (n % 100) + 1, unitId: `x${n}` };
  }
  const text = JSON.stringify(job, null, 2);
  const { job: opened, remarks } = parseJob(text);
  expect(remarks).toEqual([]);
  expect(Object.keys(opened?.choices.modules ?? {})).toHaveLength(5000);
});

test('a confirmation without a name behind it is refused', () => {
  for (const by of ['', '  ']) {
    const parsed = broken((job) => {
      job.choices.confirmations = { one: { rule: 'fault-loop', edition: '2018', by, on: '2026-05-02' } };
    });
    expect(parsed.job).toBeUndefined();
    expect(at(parsed, 'choices.confirmations.one.by')).toMatchObject({
      severity: 'stop',
      wanted: 'a text that is not empty',
      mend: 'Say which licensed person read the limit, or take the confirmation out.',
    });
  }
});
