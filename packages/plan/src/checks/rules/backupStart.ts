import type { MotorStart } from '../../backup/types.ts';
import type { Mend } from '../../finding.ts';
import { abouts } from '../abouts.ts';
import { type Judged, rule } from '../rule.ts';
import { showWithin } from '../showWithin.ts';

const STATE = {
  starts: 'meets',
  'no start peak': 'meets',
  'will not': 'fails',
  ask: 'ask',
  'plate missing': 'ask',
} as const;
/** What a soft starter leaves of a start: a third to a half by practice, the larger taken. */
const SOFT_START = 0.5;

/** Start: does every motor kept alive start on the battery with everything else running? */
export const backupStart = rule({
  id: 'backup-start',
  sheet: '06',
  stops: true,
  question: 'Does every motor start on the battery?',
  judge({ backup }, limit) {
    return backup.starts.map((start): Judged => {
      const about = abouts.circuit(start.circuitId, start.name);
      const plate = `facts.loads.circuits.${start.circuitId}.motor.lockedRotorA`;
      if (start.verdict === 'plate missing' || start.withRestVA === undefined) {
        const state = STATE[start.verdict];
        return {
          about,
          state,
          title:
            state === 'ask'
              ? `${start.name}: what is its locked-rotor current?`
              : `${start.name} starts without a peak.`,
          needs: [plate],
          working: start.working,
        };
      }
      const limitVA = limit.value * start.availableVA;
      const sense = 'at most' as const;
      const shown = showWithin(start.withRestVA / 1000, limitVA / 1000, sense, 1);
      const measured = { value: start.withRestVA / 1000, limit: limitVA / 1000, unit: 'kVA', sense };
      const state = STATE[start.verdict];
      return {
        about,
        state,
        title: `${start.name} ${state === 'fails' ? 'will not start' : state === 'ask' ? 'may not start' : 'starts'} on the battery: ${shown.value} of ${shown.limit} kVA.`,
        detail: 'Locked rotor on top of all that runs with it.',
        ...measured,
        needs: [plate],
        working: start.working,
        mends: mendsOf(start),
      };
    });
  },
});

function mendsOf(start: MotorStart): readonly Mend[] {
  const { startVA, withRestVA } = start;
  const softVA =
    startVA === undefined || withRestVA === undefined ? undefined : withRestVA - (1 - SOFT_START) * startVA;
  return [
    {
      words: `Leave ${start.name} off the backup.`,
      changes: [{ path: ['choices', 'backup', 'circuits', start.circuitId, 'moved'], value: false }],
    },
    ...(softVA !== undefined && softVA <= start.availableVA
      ? [{ words: 'Fit a soft starter: half the start.', value: softVA / 1000 }]
      : []),
  ];
}
