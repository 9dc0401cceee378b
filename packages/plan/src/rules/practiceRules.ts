import { limit, PRACTICE } from './limit.ts';
import type { PackFigures } from './pack.ts';
import type { RuleBook } from './ruleLimits.ts';

/** What breakers side by side carry for hours, where no rule of the region already leaves room. */
export const besideOthers = limit(
  0.8,
  PRACTICE,
  'IEC 60898 guides, breakers side by side',
  'memory',
  'And half a percent less for each kelvin above 30 °C: common practice, no source.',
);

/** Rules of the trade that no text of any region gives, the same everywhere. */
export function practiceRules(figures: PackFigures): RuleBook {
  return {
    'roof-measures': limit(0.01, PRACTICE, 'two measures agree within 1 %', 'practice'),
    rafters: limit('feet on known rafters', PRACTICE, 'rafters found before feet are placed', 'practice'),
    'module-overlap': limit('frames side by side', PRACTICE, 'nothing on top of another', 'practice'),
    'obstruction-clear': limit('clear zone of the survey', PRACTICE, 'kept free round what stands out', 'job'),
    'rail-overhang': limit(1 / 3, PRACTICE, 'overhang at most a third of the span', 'practice'),
    'foot-spacing': limit('largest spacing chosen', PRACTICE, 'spacing chosen for this job', 'job'),
    'foot-uplift': figures.wind.footMargin,
    'fixing-covering': limit('coverings it is made for', 'data sheet', 'fixing sheet, coverings', 'equipment sheet'),
    'rail-stress': limit('stress the rail allows', 'data sheet', 'rail sheet, design stress', 'equipment sheet'),
    'trunk-caps': limit('a cap on every free drop and end', PRACTICE, 'caps counted, trunk sealed', 'practice'),
    'backup-running': figures.backup.runningShare,
    'backup-start': figures.backup.startShare,
    'backup-solar': figures.backup.solarShare,
    'backup-lines': limit('every line it needs', PRACTICE, 'a machine has all its lines or drops out', 'practice'),
    'left-dark': limit('what must stay on is moved', PRACTICE, 'the customer’s wish, met or told', 'practice'),
    'design-sign-off': limit('signed as it is built', PRACTICE, 'a licensed person signs the design', 'practice'),
  };
}
