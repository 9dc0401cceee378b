import type { PlacedModule, RoofPlane } from '@eaveline/plan';
import { figure } from '../words/figure.ts';

const HAIR_M = 1e-6;

/** In what way a module lies where none may: over a setback, in a clear ring, on another; undefined where it does not. */
export function breachWords({ clear, obstruction, overlaps }: PlacedModule, { edges }: RoofPlane): string | undefined {
  const kept = (sides: readonly string[]) =>
    Math.max(0, ...edges.filter(({ side }) => sides.includes(side)).map(({ setbackM }) => setbackM));
  const sides = [
    { name: 'eave', has: clear.eave, wants: kept(['eave']) },
    { name: 'ridge', has: clear.ridge, wants: kept(['ridge']) },
    { name: 'side', has: clear.side, wants: kept(['left', 'right']) },
  ];
  const near = sides.find(({ has, wants }) => has < wants - HAIR_M);
  if (near !== undefined && near.has < 0)
    return `${figure(-near.has * 1000, 0)} mm over the ${near.name}, ${figure(near.wants * 1000, 0)} kept free inside it`;
  if (near !== undefined)
    return `${figure(near.has * 1000, 0)} mm from the ${near.name} of ${figure(near.wants * 1000, 0)}`;
  if (obstruction !== undefined && obstruction.roomM < -HAIR_M) {
    return `${figure(-obstruction.roomM * 1000, 0)} mm inside the clear ring of ${obstruction.name}`;
  }
  return overlaps === undefined ? undefined : 'lies on another module';
}
