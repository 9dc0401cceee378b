import { box, text } from '../drawing/make.ts';
import { cautionSign } from '../drawing/marks.ts';
import { wrapEven } from '../type/wrap.ts';
import type { Part } from './block.ts';

const HEAD = { capMm: 3, weight: 700, face: 'plain' } as const;
const BODY = { capMm: 3, weight: 400, face: 'plain' } as const;
const PITCH = 6;
const LEFT = 19;

/** A caution in a frame, above the work it is for: hazard and what to do, then the rest. Never broken. */
export function caution(head: string, body?: string): Part {
  const part: Part = ([x, top], widthMm, roomMm) => {
    const wide = widthMm - LEFT - 3;
    const heads = wrapEven(head, wide, HEAD);
    const bodies = body === undefined ? [] : wrapEven(body, wide, BODY);
    const count = heads.length + bodies.length;
    const heightMm = Math.max(15, 5 + PITCH * count);
    if (heightMm > roomMm + 1e-9) return { items: [], heightMm: 0, rest: part };
    const middle = top - heightMm / 2;
    const first = middle + (PITCH * (count - 1)) / 2 - HEAD.capMm / 2;
    return {
      heightMm,
      items: [
        box([x, top - heightMm], widthMm, heightMm, { layer: 'FRAME', pen: 0.5 }),
        ...cautionSign([x + LEFT / 2, middle - 4.6], 11),
        ...heads.map((line, k) => text(line, [x + LEFT, first - PITCH * k], HEAD)),
        ...bodies.map((line, k) => text(line, [x + LEFT, first - PITCH * (heads.length + k)], BODY)),
      ],
    };
  };
  return part;
}
