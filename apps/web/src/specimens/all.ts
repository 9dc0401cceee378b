import { doing } from './doing.tsx';
import { drawingParts } from './drawingParts.tsx';
import { figures } from './figures.tsx';
import { filling } from './filling.tsx';
import { findingParts } from './findingParts.tsx';
import { frameParts } from './frameParts.tsx';
import { padParts } from './padParts.tsx';
import type { Specimen } from './specimen.ts';
import { standing } from './standing.tsx';

/** Every component in every state; the page is made from this and nothing else. */
export const SPECIMENS: readonly Specimen[] = [
  ...doing,
  ...filling,
  ...standing,
  ...figures,
  ...padParts,
  ...findingParts,
  ...drawingParts,
  ...frameParts,
];
