import type { MotorStart } from '../../backup/types.ts';
import type { Limit } from '../../rules/limit.ts';
import { type Working, worked } from '../../working.ts';
import { type Judged, rule } from '../rule.ts';
import { against } from '../units.ts';

/**
 * Backup start: does the battery start each motor while the rest runs?
 *
 * The backup stage weighs the start: what is left of the short-time rating against the locked-rotor current. Where it
 * may go either way, or the plate gives nothing, the rule asks.
 */
export const backupStart = rule({
  id: 'backup-start',
  sheet: '06',
  stops: true,
  question: 'Does the battery start each motor while the rest runs?',
  judge: ({ backup }, limit) => backup.starts.map((start) => judgeStart(start, limit)),
});

function judgeStart(start: MotorStart, { value: share, clause }: Limit): Judged {
  const { circuitId, name, verdict, withRestVA, availableVA, working, mends, k } = start;
  const about = { kind: 'circuit' as const, id: circuitId, name };
  if (verdict === 'no start peak') return { about, state: 'meets', title: `${name} starts softly, without a peak.` };
  if (verdict === 'plate missing' || withRestVA === undefined) {
    return {
      about,
      state: 'ask',
      title: `What does ${name} draw as it starts?`,
      detail: 'Read the locked-rotor current, or code letter and power, off its plate.',
      needs: [`facts.loads.circuits.${circuitId}.motor.lockedRotorA`],
      working,
    };
  }
  const { shown, ...measured } = against(withRestVA, 'at most', share * availableVA, 'VA');
  const title = `${name} starts with ${shown.value}, the rest running. The battery gives ${shown.limit} for seconds.`;
  const said = {
    about,
    ...measured,
    title,
    ...(start.withRestWorking === undefined ? {} : { working: start.withRestWorking }),
    limitWorking: givenForSeconds(start, share, clause),
    mends,
  };
  if (verdict === 'starts') return withRestVA <= share * availableVA || k === undefined ? said : dips(start, k);
  if (verdict === 'ask') {
    return {
      ...said,
      state: 'ask',
      detail: 'It may start or stall. Try it on the battery before it is promised.',
      needs: [`facts.loads.circuits.${circuitId}.motor.softStarter`],
    };
  }
  return { ...said, state: 'fails' };
}

function givenForSeconds({ availableWorking, availableVA }: MotorStart, share: number, clause: string): Working {
  const said = { name: 'share of it that is counted on', value: share, unit: '', source: clause };
  return worked('Given for seconds', share * availableVA, 'VA', 'share · short-time rating', clause, [
    said,
    availableWorking,
  ]);
}

/** Share of its locked-rotor current from which a motor starts: simulated in `physics/motor`, no published rule. */
const SURE_SHARE = 80;

/** A motor that asks a little more than there is: it starts on what is left, slower, and the voltage dips meanwhile. */
function dips({ circuitId, name, working }: MotorStart, k: number): Judged {
  const { shown, ...measured } = against(100 * k, 'at least', SURE_SHARE, '%');
  return {
    about: { kind: 'circuit', id: circuitId, name },
    ...measured,
    title: `${name} finds ${shown.value} of its starting current. From ${shown.limit} it starts.`,
    detail: 'The lights dip while it runs up. Try it at commissioning.',
    working: worked(`${name}, share of its starting current`, 100 * k, '%', '100 · k', working.source, [working]),
  };
}
