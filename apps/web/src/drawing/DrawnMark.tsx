import type { OpenState } from '../checks/openState.ts';
import { Mark } from '../parts/Mark.tsx';
import { Unread } from './Unread.tsx';

export interface DrawnMarkProps {
  readonly state: OpenState | undefined;
  /** Its middle on the drawing. */
  readonly x: number;
  readonly y: number;
  readonly size?: number;
  /** With its word beside it, where there is room: to the right of the mark, or to its left. */
  readonly word?: 'right' | 'left';
}

/** The mark of what fails or asks on the very thing that is drawn: a solid block, or a ring; nothing where all meets. */
export function DrawnMark({ state, x, y, size = 13, word }: DrawnMarkProps) {
  if (state === undefined) return null;
  const half = size / 2;
  return (
    <Unread>
      <circle className="on-film" cx={x} cy={y} r={half + 0.5} />
      <svg x={x - half} y={y - half} width={size} height={size} aria-hidden="true">
        <Mark state={state} size={size} />
      </svg>
      {word !== undefined && (
        <text
          className={`bold halo ${state === 'fails' ? 'fa' : 'as'}`}
          x={word === 'right' ? x + half + 4 : x - half - 4}
          y={y + 4.5}
          textAnchor={word === 'right' ? 'start' : 'end'}
        >
          {state}
        </text>
      )}
    </Unread>
  );
}
