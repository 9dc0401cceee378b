// @vitest-environment happy-dom
import { kestrelRise } from '@eaveline/job';
import type { Change } from '@eaveline/plan';
import { act, useState } from 'react';
import { createRoot, type Root } from 'react-dom/client';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { changeJob, refusalWords } from '../job/changeJob.ts';
import { JobContext } from '../job/JobContext.tsx';
import { valueAt } from '../job/path.ts';
import { NumberField } from './NumberField.tsx';

const homeRun = (trunk: string) => ['choices', 'trunks', trunk, 'homeRun', 'lengthM'];

let root: Root;
let keptM: (trunk: string) => unknown;
let taken: readonly (readonly Change[])[];

/** Kestrel Rise on a desk of its own: trunk A is 31 m from the board. */
function Desk({ trunk }: { readonly trunk: string }) {
  const [job, setJob] = useState(kestrelRise);
  keptM = (of) => valueAt(job, homeRun(of));
  const edit = (changes: readonly Change[]) => {
    const changed = changeJob(job, changes);
    if ('refusal' in changed) return refusalWords(changed.refusal);
    taken = [...taken, changes];
    setJob(changed.job);
    return undefined;
  };
  return (
    <JobContext value={{ job, edit, mend: edit }}>
      <NumberField label="Home run" path={homeRun(trunk)} unit="m" />
    </JobContext>
  );
}

const show = (trunk: string) => act(() => root.render(<Desk trunk={trunk} />));
const field = () => document.querySelector('input') as HTMLInputElement;
const said = () => document.querySelector('[aria-live]')?.textContent;

function type(text: string) {
  act(() => {
    field().focus();
    // React hears of a text only through the element's own setter
    Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value')?.set?.call(field(), text);
    field().dispatchEvent(new Event('input', { bubbles: true }));
  });
}
const press = (key: string) => act(() => field().dispatchEvent(new KeyboardEvent('keydown', { key, bubbles: true })));

beforeEach(() => {
  Object.assign(globalThis, { IS_REACT_ACT_ENVIRONMENT: true });
  taken = [];
  const page = document.body.appendChild(document.createElement('div'));
  root = createRoot(page);
  show('a');
  expect(keptM('a')).toBe(31);
});
afterEach(() => {
  act(() => root.unmount());
  document.body.replaceChildren();
});

describe('a figure as it is typed', () => {
  test('is a draft, read out beside the field; Enter takes it', () => {
    type('12 ft');
    expect(said()).toBe('12 ft = 3.6576\u00a0m. The job keeps 31 m until this is taken.');
    expect(keptM('a')).toBe(31);
    press('Enter');
    expect(keptM('a')).toBe(3.6576);
    expect(field().value).toBe('3.6576');
  });

  test('leaves nothing behind when it is refused: 12 furlongs is not 12 m', () => {
    for (const text of ['1', '12', '12 ', '12 f', '12 furlongs']) type(text);
    press('Enter');
    expect(said()).toMatch(/The job keeps 31 m\.$/);
    expect(field().value).toBe('12 furlongs');
    expect(field().getAttribute('aria-invalid')).toBe('true');
    expect(taken).toEqual([]);
  });

  test('is put back by Escape, after a refusal too', () => {
    type('24');
    press('Escape');
    expect(field().value).toBe('31');
    type('about thirty');
    press('Enter');
    press('Escape');
    expect(field().value).toBe('31');
    expect(field().getAttribute('aria-invalid')).toBe('false');
    act(() => field().blur());
    expect(taken).toEqual([]);
  });

  test('is taken when the field is left', () => {
    type('24');
    act(() => field().blur());
    expect(keptM('a')).toBe(24);
  });

  test('typed as it stood, it is no edit', () => {
    type('3');
    type('31');
    press('Enter');
    expect(taken).toEqual([]);
    expect(said()).toBe('');
  });
});

describe('what is typed is not lost with the page', () => {
  test.each(['pagehide', 'beforeunload'])('%s takes it', (going) => {
    type('24');
    act(() => dispatchEvent(new Event(going)));
    expect(keptM('a')).toBe(24);
  });

  test('a page laid aside takes it; one looked at again does not', () => {
    type('24');
    act(() => document.dispatchEvent(new Event('visibilitychange')));
    expect(keptM('a')).toBe(31);
    Object.defineProperty(document, 'visibilityState', { value: 'hidden', configurable: true });
    act(() => document.dispatchEvent(new Event('visibilitychange')));
    Reflect.deleteProperty(document, 'visibilityState');
    expect(keptM('a')).toBe(24);
  });

  test('a field that goes on to another trunk takes it for the one it was typed for', () => {
    type('24');
    const ofB = keptM('b');
    show('b');
    expect(keptM('a')).toBe(24);
    expect(keptM('b')).toBe(ofB);
    expect(field().value).toBe(String(ofB));
  });

  test('a press elsewhere takes it first, though a phone leaves the focus in the field', () => {
    const button = document.body.appendChild(document.createElement('button'));
    let found: unknown;
    button.addEventListener('click', () => {
      found = keptM('a');
    });
    type('24');
    act(() => button.click());
    expect(found).toBe(24);
  });
});
