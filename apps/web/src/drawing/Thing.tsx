import type { KeyboardEvent, ReactNode } from 'react';

export interface ThingProps {
  /** Id of the subject it stands for. */
  readonly id: string;
  /** Name, place, state: what a screen reader says. */
  readonly label: string;
  readonly selected: boolean;
  readonly onSelect: (id: string) => void;
  readonly children: ReactNode;
}

/** Arrows walk the things of a drawing in their own order, round and round. */
function walk(event: KeyboardEvent<SVGGElement>) {
  const by = { ArrowRight: 1, ArrowDown: 1, ArrowLeft: -1, ArrowUp: -1 }[event.key];
  if (by === undefined) return;
  const things = [...(event.currentTarget.ownerSVGElement?.querySelectorAll<SVGGElement>('[data-subject]') ?? [])];
  const now = things.indexOf(event.currentTarget);
  things[(now + by + things.length) % things.length]?.focus();
  event.preventDefault();
}

/** A thing drawn that can be selected: a button with a name, whatever it looks like. */
export function Thing({ id, label, selected, onSelect, children }: ThingProps) {
  return (
    // biome-ignore lint/a11y/useSemanticElements: SVG has no button of its own
    <g
      role="button"
      tabIndex={0}
      aria-label={label}
      aria-pressed={selected}
      data-subject={id}
      onClick={() => onSelect(id)}
      onKeyDown={(event) => {
        if (event.key === 'Enter' || event.key === ' ') {
          event.preventDefault();
          onSelect(id);
        }
        walk(event);
      }}
    >
      {children}
    </g>
  );
}
