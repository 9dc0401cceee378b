import { useCallback, useEffect, useLayoutEffect, useRef, useState } from 'react';

export interface DraftParts {
  /** Where the value stands: a draft belongs to one place, and is taken there when the field goes on to another. */
  readonly place: string;
  /** Takes a text; false where it is refused, and then the draft stays. */
  readonly take: (text: string) => boolean;
}

/** A text in a field that is in the job only once it is taken. */
export interface Draft {
  /** Undefined while nothing is being typed. */
  readonly text: string | undefined;
  readonly type: (text: string) => void;
  /** By Enter, or by leaving the field. */
  readonly take: () => void;
  /** The field shows again what the job keeps. */
  readonly putBack: () => void;
}

/**
 * Keeps what is typed apart from the job until it is taken: by Enter, by leaving the field, or because the page, the
 * field or the place it stands for goes. A page may go without the field being left, and nothing typed is lost then.
 */
export function useDraft({ place, take: takes }: DraftParts): Draft {
  const [text, setText] = useState<string>();
  const latest = useRef({ text, takes });
  // set after the drawing: what ends the old place still finds the old one here
  useLayoutEffect(() => {
    latest.current = { text, takes };
  });

  const take = useCallback(() => {
    const { text, takes } = latest.current;
    if (text === undefined || !takes(text)) return;
    latest.current = { text: undefined, takes };
    setText(undefined);
  }, []);
  const putBack = useCallback(() => {
    latest.current = { ...latest.current, text: undefined };
    setText(undefined);
  }, []);

  // biome-ignore lint/correctness/useExhaustiveDependencies: it ends with its place
  useLayoutEffect(
    () => () => {
      take();
      putBack();
    },
    [place],
  );

  const typing = text !== undefined;
  useEffect(() => {
    if (!typing) return;
    const hidden = () => {
      if (document.visibilityState === 'hidden') take();
    };
    // captured: taken before anybody asks whether all is kept
    addEventListener('beforeunload', take, { capture: true });
    addEventListener('pagehide', take, { capture: true });
    document.addEventListener('visibilitychange', hidden);
    return () => {
      removeEventListener('beforeunload', take, { capture: true });
      removeEventListener('pagehide', take, { capture: true });
      document.removeEventListener('visibilitychange', hidden);
    };
  }, [typing, take]);

  return { text, type: setText, take, putBack };
}
