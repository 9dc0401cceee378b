import { startTransition, useEffect, useState } from 'react';

/** A page that is not seen is painted seldom or never; what waits for it comes all the same. */
const AT_LATEST_MS = 100;

/** A value once what was drawn with it at first is on the screen: for what may follow a frame behind. */
export function useAfterPaint<T>(value: T, before: T): T {
  const [shown, show] = useState(before);
  useEffect(() => {
    let after: ReturnType<typeof setTimeout> | undefined;
    const follow = () => startTransition(() => show(value));
    // the callbacks of a frame come before its painting, what they put off comes after it
    const frame = requestAnimationFrame(() => {
      clearTimeout(late);
      after = setTimeout(follow);
    });
    const late = setTimeout(() => {
      cancelAnimationFrame(frame);
      follow();
    }, AT_LATEST_MS);
    return () => {
      cancelAnimationFrame(frame);
      clearTimeout(late);
      clearTimeout(after);
    };
  }, [value]);
  return shown;
}
