import { useEffect, useRef } from 'react';

/** What a key does, by its name as the browser gives it: `1`, `b`, `Escape`; letters in small, `Shift z` with the shift key. */
export type KeyActs = Readonly<Record<string, () => void>>;

function isTyping(target: EventTarget | null): boolean {
  return target instanceof HTMLElement && (target.matches('input, select, textarea') || target.isContentEditable);
}

/** Single keys for the page. They are off while something is typed, and leave alone what is held with Ctrl, Alt or Cmd. */
export function useKeys(acts: KeyActs): void {
  const latest = useRef(acts);
  latest.current = acts;
  useEffect(() => {
    const press = (event: KeyboardEvent) => {
      if (event.ctrlKey || event.altKey || event.metaKey || event.defaultPrevented || isTyping(event.target)) return;
      if (document.querySelector('dialog[open]') !== null) return;
      const letter = event.key.length === 1 ? event.key.toLowerCase() : event.key;
      const act = latest.current[event.shiftKey && /^[a-z]$/.test(letter) ? `Shift ${letter}` : letter];
      if (act === undefined) return;
      event.preventDefault();
      act();
    };
    addEventListener('keydown', press);
    return () => removeEventListener('keydown', press);
  }, []);
}
