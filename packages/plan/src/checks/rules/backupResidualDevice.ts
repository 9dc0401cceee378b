import { abouts } from '../abouts.ts';
import { movedCircuits } from '../movedCircuits.ts';
import { type Judged, rule } from '../rule.ts';

/** Residual devices in an island: has every circuit kept alive one? The battery cannot drive a breaker's magnetic trip. */
export const backupResidualDevice = rule({
  id: 'backup-residual-device',
  sheet: '06',
  stops: true,
  question: 'Has every circuit kept alive a residual device?',
  judge(context) {
    const word = context.pack.words.residualDevice;
    return movedCircuits(context).map(({ id, facts, choice }): Judged => {
      const about = abouts.circuit(id, facts.name);
      const has = choice.residualDevice ?? facts.residualDevice;
      if (has === undefined) {
        return {
          about,
          state: 'ask',
          title: `Is there a ${word} on ${facts.name}?`,
          needs: [`facts.loads.circuits.${id}.residualDevice`],
        };
      }
      return has
        ? { about, state: 'meets', title: `${facts.name} has a ${word}.` }
        : {
            about,
            state: 'fails',
            title: `${facts.name} is kept alive without a ${word}.`,
            detail: 'In an island a fault drives too little current to trip its breaker at once.',
            mends: [
              {
                words: `Fit a ${word} when it is moved.`,
                changes: [{ path: ['choices', 'backup', 'circuits', id, 'residualDevice'], value: true }],
              },
            ],
          };
    });
  },
});
