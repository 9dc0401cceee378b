import type { PlaneFacts } from '@eaveline/job';
import { given, givenAngle, worked } from '../../working.ts';
import { abouts } from '../abouts.ts';
import { planesInUse } from '../planesInUse.ts';
import { isWithin, type Judged, rule } from '../rule.ts';
import { against, shown as figure } from '../units.ts';

/**
 * Roof measures: do the taped slope length and plan width ÷ cos pitch agree?
 *
 *     difference = |L − W / cos p| / (W / cos p)
 *
 * Two measures apart mean that one of the three is wrong; which one, only the place can say.
 */
export const roofMeasures = rule({
  id: 'roof-measures',
  question: 'Do two measures of each slope agree?',
  sheet: '02',
  stops: true,
  judge: (context, limit) => planesInUse(context).map(({ id, facts }) => judgePlane(id, facts, limit.value)),
});

function judgePlane(id: string, plane: PlaneFacts, limitShare: number): Judged {
  const about = abouts.plane(id, plane.name);
  const at = `facts.roof.planes.${id}`;
  if (plane.planWidthM === undefined) {
    return {
      about,
      state: 'ask',
      title: `${plane.name}: ${figure(plane.slopeLengthM, 'm')} up the slope stands alone. What is its plan width?`,
      needs: [`${at}.planWidthM`],
    };
  }
  const byPlanM = plane.planWidthM / Math.cos((plane.pitchDeg * Math.PI) / 180);
  const apart = Math.abs(plane.slopeLengthM - byPlanM) / byPlanM;
  const { shown, ...measured } = against(100 * apart, 'at most', 100 * limitShare, '%');
  const meets = isWithin(measured.value, measured.limit, 'at most');
  const two = `${figure(plane.slopeLengthM, 'm')} and ${figure(byPlanM, 'm')}`;
  return {
    about,
    ...measured,
    title: meets
      ? `${plane.name}: two measures of the slope agree, ${two}.`
      : `${plane.name}: ${two} up the slope, ${shown.value} apart. ${shown.limit} is let pass. Which is right?`,
    working: worked(
      'Two measures of the slope apart',
      measured.value,
      '%',
      '|L − W ÷ cos p| ÷ (W ÷ cos p)',
      'plane geometry',
      [
        given('slope length, taped', plane.slopeLengthM, 'm', `${at}.slopeLengthM`, 'survey'),
        given('plan width', plane.planWidthM, 'm', `${at}.planWidthM`, 'survey'),
        givenAngle('pitch', plane.pitchDeg, `${at}.pitchDeg`, 'survey'),
      ],
    ),
    mends: meets ? [] : [{ words: 'Tape the slope again, and read the pitch at two places.' }],
  };
}
