import { abouts } from '../abouts.ts';
import { BEGUN } from '../begun.ts';
import { rule } from '../rule.ts';

/** Wind exposed: is it known whether a hill, lee zone or coast raises the wind, and who answers for it? */
export const windExposed = rule({
  id: 'wind-exposed',
  question: 'Is the site free of hills, lee zones and coasts that raise the wind?',
  sheet: '01',
  stops: true,
  judge: ({ facts, signed, state }) => {
    const about = abouts.site();
    const { exposed } = facts.site.wind;
    if (exposed === undefined) {
      return [
        {
          about,
          state: 'ask',
          title: 'Does a hill, a lee zone or the coast raise the wind here?',
          needs: ['facts.site.wind.exposed'],
        },
      ];
    }
    if (!exposed) {
      return [
        { about, state: 'meets', title: 'No hill, lee zone or coast raises the wind here.', seen: 'job' as const },
      ];
    }
    if (signed.includes(WIND_ENGINEER)) {
      return [
        {
          about,
          state: 'meets',
          title: 'The site is exposed. An engineer has signed for the wind.',
          seen: 'job' as const,
        },
      ];
    }
    return [
      {
        about,
        // once work has begun there is nothing left to ask
        state: BEGUN.includes(state) ? ('fails' as const) : ('ask' as const),
        title: 'The site is exposed. An engineer settles the wind.',
        detail: 'The figures of the fixings hold for open and level ground only.',
        needs: [`records.signatures, ${WIND_ENGINEER}`],
        mends: [{ words: 'Send the roof plan to an engineer, and record the signature.' }],
      },
    ];
  },
});

/** What the engineer's signature is of. */
export const WIND_ENGINEER = 'document:wind-engineer';
