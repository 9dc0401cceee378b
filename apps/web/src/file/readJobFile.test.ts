import { kestrelRise, writeJob } from '@eaveline/job';
import { afterEach, expect, test } from 'vitest';
import { filesDesk } from './filesDesk.ts';
import { readJobFile } from './readJobFile.ts';

const file = (name: string, text: string, size = text.length) => ({ name, size, text: async () => text });

afterEach(() => {
  for (const { no } of filesDesk.state()) filesDesk.putAway(no);
});

test('a job file is read whole, with everything noticed in it', async () => {
  const { job, remarks } = await readJobFile(file('k.job.json', writeJob(kestrelRise)));
  expect(job).toEqual(kestrelRise);
  expect(remarks.filter(({ severity }) => severity !== 'note')).toEqual([]);
});

test('of a bad file nothing is taken, and every remark says file, line, field and the way out', async () => {
  const text = writeJob(kestrelRise)
    .replace('"latitudeDeg": -37.6', '"latitudeDeg": 376')
    .replace('"serviceA": 63', '"serviceA": "63"');
  const { job, remarks } = await readJobFile(file('k.job.json', text));
  expect(job).toBeUndefined();
  const stops = remarks.filter(({ severity }) => severity === 'stop');
  expect(stops.map(({ file: name, at }) => [name, at])).toEqual([
    ['k.job.json', 'facts.site.latitudeDeg'],
    ['k.job.json', 'facts.supply.serviceA'],
  ]);
  for (const { line, mend } of stops) expect([line, mend]).toEqual([expect.any(Number), expect.stringMatching(/\.$/)]);
});

test('a file from a newer version, and one that is no job, say what to do', async () => {
  const newer = await readJobFile(file('n.job.json', JSON.stringify({ ...kestrelRise, version: 7 })));
  expect(newer.job).toBeUndefined();
  expect(newer.remarks[0]?.mend).toContain('Open it with a newer Eaveline');
  const other = await readJobFile(file('photo.jpg', '\uFFFD\uFFFDJFIF'));
  expect(other.remarks[0]).toMatchObject({ found: 'a picture', wanted: 'a job file: its name ends in .job.json' });
  const pdf = await readJobFile(file('roof plan.PDF', '%PDF-1.7'));
  expect(pdf.remarks[0]?.found).toBe('a PDF');
  // what is in it counts, not how it is called
  expect((await readJobFile(file('job.txt.pdf', writeJob(kestrelRise)))).job).toEqual(kestrelRise);
  expect((await readJobFile(file('x.job.json', '\uFFFD\uFFFD'))).remarks[0]?.found).toBe(
    'a file that is not UTF-8 text',
  );
});

test('an older version is lifted, and it is said', async () => {
  const old = { ...JSON.parse(writeJob(kestrelRise)), version: 0 };
  const { remarks } = await readJobFile(file('old.job.json', JSON.stringify(old)));
  expect(remarks).toContainEqual(expect.objectContaining({ severity: 'note', found: 'version 0' }));
});

test('a file far too long is not read, and one that cannot be read is said', async () => {
  let read = false;
  const readsIt = async () => {
    read = true;
    return '';
  };
  const film = { ...file('film.mp4', '', 3e9), text: readsIt };
  expect((await readJobFile(film)).remarks[0]?.found).toBe('3000 MB');
  expect(read).toBe(false);
  const gone = { ...file('gone.job.json', ''), text: () => Promise.reject(new Error('gone')) };
  expect((await readJobFile(gone)).remarks[0]?.found).toContain('gone');
});

test('several files are read one after another and stay until they are put away', async () => {
  await filesDesk.bring([file('a.job.json', writeJob(kestrelRise)), file('b.json', '{')]);
  expect(filesDesk.state().map(({ fileName, job }) => [fileName, job?.id])).toEqual([
    ['a.job.json', 'kestrel-rise'],
    ['b.json', undefined],
  ]);
  const [a] = filesDesk.state();
  if (a === undefined) throw new Error('two were brought');
  filesDesk.say(a.no, 'Kept.');
  expect(filesDesk.state()[0]?.said).toBe('Kept.');
  filesDesk.putAway(a.no);
  expect(filesDesk.state()).toHaveLength(1);
});
