import type { BackedCircuit } from '../../backup/types.ts';
import { abouts, plural } from '../abouts.ts';
import type { CheckContext } from '../context.ts';
import { eachOrAll } from '../eachOrAll.ts';
import { type Judged, rule } from '../rule.ts';

/**
 * Backup residual device: has every circuit on the battery's side a residual device?
 *
 * In island the battery cannot drive the current that a breaker needs to trip at once, so disconnection rests on
 * residual devices. In the United States a circuit has to keep the one it has: whether it has one is still asked.
 */
export const backupResidualDevice = rule({
  id: 'backup-residual-device',
  sheet: '06',
  stops: true,
  question: 'Has every circuit on the battery’s side a residual device?',
  judge(context) {
    const moved = context.backup.circuits.filter((circuit) => circuit.moved);
    if (moved.length === 0) return [];
    return eachOrAll(
      moved.map((circuit) => judgeCircuit(circuit, context)),
      {
        about: abouts.backup('residual-devices', 'Residual devices in island'),
        state: 'meets',
        title:
          context.pack.id === 'us'
            ? `${plural(moved.length, 'moved circuit')}: each keeps the protection it has.`
            : `${plural(moved.length, 'moved circuit')}, each with a residual device.`,
      },
    );
  },
});

function judgeCircuit({ id, name }: BackedCircuit, { facts, choices, pack }: CheckContext): Judged {
  const about = { kind: 'circuit' as const, id, name };
  const found = facts.loads.circuits[id]?.residualDevice;
  const chosen = choices.backup?.circuits[id]?.residualDevice;
  const has = chosen ?? found;
  if (has === true) return { about, state: 'meets', title: `${name} has a residual device.` };
  if (has === undefined) {
    return {
      about,
      state: 'ask',
      title: `Has ${name} a residual device?`,
      needs: [`facts.loads.circuits.${id}.residualDevice`],
    };
  }
  if (pack.id === 'us' && found === false) return { about, state: 'meets', title: `${name} has none to keep.` };
  return {
    about,
    state: 'fails',
    title: `${name} moves to the battery’s side without a residual device.`,
    mends: [
      {
        words: 'Fit one at its breaker.',
        changes: [{ path: ['choices', 'backup', 'circuits', id, 'residualDevice'], value: true }],
      },
    ],
  };
}
