import { useContext, useEffect, useRef, useState } from 'react';
import { DeskContext } from '../desk/DeskContext.tsx';
import { Act } from '../parts/Act.tsx';
import { StateWord } from '../parts/StateWord.tsx';
import { clock, MONTHS } from '../words/clock.ts';
import styles from './CopyWorking.module.css';
import { type CopiedFrom, copyText } from './copyText.ts';
import type { PlacedSubject } from './subject.ts';

export interface CopyWorkingProps {
  readonly subject: PlacedSubject;
}

/** Puts the working on the clipboard as text for a letter; where the clipboard refuses, the text stands here, selected. */
export function CopyWorking({ subject }: CopyWorkingProps) {
  const open = useContext(DeskContext)?.open;
  const [said, setSaid] = useState<'copied' | 'refused'>();
  const text = copyText(subject, copiedFrom(open, subject.page));
  // biome-ignore lint/correctness/useExhaustiveDependencies: another working has not been copied yet
  useEffect(() => setSaid(undefined), [text]);

  async function copy() {
    try {
      await navigator.clipboard.writeText(text);
      setSaid('copied');
    } catch {
      // the browser says no in many ways, and the way out is one: the text itself
      setSaid('refused');
    }
  }
  return (
    <div className={styles.copy}>
      <Act onPress={() => void copy()}>Copy this working</Act>
      <span role="status">{said === 'copied' && <b>Copied.</b>}</span>
      {said === 'refused' && <ByHand text={text} />}
    </div>
  );
}

export interface ByHandProps {
  readonly text: string;
  /** Select it at once, so that the next key copies it. */
  readonly take?: boolean;
}

/** The text to be copied by the keys of the device. */
export function ByHand({ text, take = true }: ByHandProps) {
  const ref = useRef<HTMLTextAreaElement>(null);
  useEffect(() => {
    if (take) ref.current?.select();
  }, [take]);
  return (
    <div className={styles.byHand}>
      <p role="alert">
        <StateWord state="ask" /> The clipboard does not take it. The text below is selected: copy it from here.
      </p>
      <textarea ref={ref} readOnly aria-label="The working as text" value={text} rows={8} />
    </div>
  );
}

type Open = NonNullable<React.ContextType<typeof DeskContext>>['open'];

function copiedFrom(open: Open | undefined, page: string): CopiedFrom {
  if (open === undefined) return { job: 'No job', page, invented: true };
  const { job, plan, workedOutAt } = open;
  return {
    job: job.name,
    page,
    invented: job.invented,
    workedOut: workedOutAt && momentWords(workedOutAt),
    rules: plan && rulesWords(plan.checks),
  };
}

/** `2 May 2026, 09:41`, by the clock of the device. */
function momentWords(at: Date): string {
  const hour = clock(at.getHours() + at.getMinutes() / 60);
  return `${at.getDate()} ${MONTHS[at.getMonth()]} ${at.getFullYear()}, ${hour}`;
}

function rulesWords({ pack, variant, editions }: NonNullable<Open['plan']>['checks']): string {
  const named = Object.entries(editions).map(([document, edition]) => `${document} ${edition}`);
  return `${pack}/${variant}${named.length === 0 ? '' : `: ${named.join(', ')}`}`;
}
