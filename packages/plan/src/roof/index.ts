import type { Job, ObstructionFacts, PlaneFacts } from '@eaveline/job';
import { packFor } from '../rules/index.ts';
import type { RulePack } from '../rules/pack.ts';
import type { Stage } from '../stage.ts';
import { given, givenAngle, type Working, worked } from '../working.ts';
import { areaM2 } from './clipConvex.ts';
import { type HorizonPoint, horizonElevation } from './horizonElevation.ts';
import { planeLetters } from './planeLetters.ts';
import { planeShape, type Setbacks } from './planeShape.ts';
import { ALBEDO, planeLight } from './planeSun.ts';
import { raftersU } from './raftersU.ts';
import { takenAreaM2 } from './takenArea.ts';
import type { LitPlane, LitRoof, RoofObstruction, RoofPlane } from './types.ts';

/** What the roof depends on. */
export interface RoofView {
  readonly planes: Readonly<Record<string, PlaneFacts>>;
  readonly obstructions: Readonly<Record<string, ObstructionFacts>>;
  readonly horizon: readonly HorizonPoint[];
  readonly setbacks: Job['choices']['setbacks'];
  readonly rules: Job['choices']['rules'];
}

/** Planes from what was taped: outline, usable part, rafters, and the light of a year on each. */
export const roofStage: Stage<'roof', 'sun', RoofView> = {
  name: 'roof',
  before: ['sun'],
  view: ({ facts, choices }) => ({
    planes: facts.roof.planes,
    obstructions: facts.roof.obstructions,
    horizon: facts.site.horizon,
    setbacks: choices.setbacks,
    rules: choices.rules,
  }),
  run: (view, { sun }): LitRoof => {
    const setbacks = setbacksOf(view, packFor(view.rules));
    const light = planeLight(sun, horizonElevation(view.horizon));
    const entries = Object.entries(view.planes);
    const letters = planeLetters(entries.map(([, plane]) => plane.name));
    const planes = entries.map(([id, plane], k): LitPlane => {
      const shape = planeShape(plane, setbacks, `facts.roof.planes.${id}`);
      const obstructions = obstructionsOf(view.obstructions, id);
      const rafters = raftersU(plane);
      return {
        id,
        name: plane.name,
        letter: letters[k] as string,
        facingDeg: plane.facingDeg,
        pitchDeg: plane.pitchDeg,
        ...shape,
        usableAreaM2: areaM2(shape.usable) - takenAreaM2(shape.usable, obstructions),
        obstructions,
        ...(rafters && { raftersU: rafters }),
        sun: light(plane.pitchDeg, plane.facingDeg),
      };
    });
    const workings = planes.flatMap((plane) => planeWorkings(plane, view.planes[plane.id] as PlaneFacts));
    return { planes, workings, leavesOut };
  },
};

const leavesOut = [
  'A plane is an eave, a ridge and two straight sides. Broken eaves, dormers and valleys inside a plane are not drawn.',
  'Each plane stands alone: whether neighbours meet at hip and ridge is not checked.',
  'Rafters run straight up the slope at one spacing.',
  'The horizon hides the sun and its share of the sky, which is taken as evenly bright. The ground stays as bright.',
  `Ground reflects ${ALBEDO * 100} % everywhere, common practice, no source. Snow is not followed.`,
  'Glass counts as plain, without a coating: a coated module gets about 1 % more.',
] as const;

/** The job's own setbacks, and the pack's where the job says nothing. */
function setbacksOf({ setbacks }: RoofView, pack: RulePack): Setbacks {
  return {
    eaveM: setbacks.eaveM ?? pack.setbacks.eaveM.value,
    ridgeM: setbacks.ridgeM ?? pack.setbacks.ridgeM.value,
    sideM: setbacks.sideM ?? pack.setbacks.sideM.value,
  };
}

function obstructionsOf(all: RoofView['obstructions'], planeId: string): RoofObstruction[] {
  return Object.entries(all)
    .filter(([, thing]) => thing.planeId === planeId)
    .map(([id, { kind, name, uM, vM, widthM, depthM, heightM, clearM }]) => ({
      id,
      kind,
      name: name ?? kind,
      centre: [uM, vM],
      widthM,
      depthM,
      heightM,
      clearM,
    }));
}

function planeWorkings(plane: RoofPlane, facts: PlaneFacts): Working[] {
  const at = `facts.roof.planes.${plane.id}`;
  const { name } = plane;
  const eave = given(`${name}, eave`, facts.eaveLengthM, 'm', `${at}.eaveLengthM`);
  const slope = given(`${name}, slope length`, facts.slopeLengthM, 'm', `${at}.slopeLengthM`);
  const ridge = worked(`${name}, ridge`, facts.ridgeToM - facts.ridgeFromM, 'm', 'ridge to − ridge from', 'the job', [
    given('ridge from', facts.ridgeFromM, 'm', `${at}.ridgeFromM`),
    given('ridge to', facts.ridgeToM, 'm', `${at}.ridgeToM`),
  ]);
  const area = worked(
    `${name}, area`,
    plane.areaM2,
    'm²',
    'A = (eave + ridge) ÷ 2 · slope length',
    'area of a trapezoid',
    [eave, ridge, slope],
  );
  const light = worked(
    `${name}, sun on the plane`,
    plane.sun.annualKwhM2,
    'kWh/m² a year',
    'beam, sky and ground in the plane, less horizon and glass',
    'Perez et al. 1990; incidence by De Soto, Klein and Beckman 2006',
    [
      givenAngle('facing', facts.facingDeg, `${at}.facingDeg`),
      givenAngle('pitch', facts.pitchDeg, `${at}.pitchDeg`),
      worked(
        'before horizon and glass',
        plane.sun.annualBareKwhM2,
        'kWh/m² a year',
        'beam + sky + ground',
        'Perez et al. 1990',
        [],
      ),
    ],
  );
  return [area, light, ...slopeAgreement(facts, name, at, slope)];
}

/** Two measures of one slope, side by side, where both were taken. */
function slopeAgreement(facts: PlaneFacts, name: string, at: string, slope: Working): Working[] {
  if (facts.planWidthM === undefined) return [];
  const fromPlanM = facts.planWidthM / Math.cos((facts.pitchDeg * Math.PI) / 180);
  return [
    worked(
      `${name}, slope length against plan width`,
      facts.slopeLengthM / fromPlanM - 1,
      '',
      'slope length ÷ (plan width ÷ cos pitch) − 1',
      'geometry',
      [
        slope,
        given('plan width', facts.planWidthM, 'm', `${at}.planWidthM`),
        givenAngle('pitch', facts.pitchDeg, `${at}.pitchDeg`),
      ],
    ),
  ];
}
