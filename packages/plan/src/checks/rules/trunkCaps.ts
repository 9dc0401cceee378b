import { abouts, plural, trunkName } from '../abouts.ts';
import { type Judged, rule } from '../rule.ts';

const CAPS = [
  { use: 'drop-cap', count: 'drop', one: 'unused drop', words: 'drop cap' },
  { use: 'end-cap', count: 'end', one: 'open end', words: 'end cap' },
] as const;

/**
 * Caps: is there a cap for every unused drop and every end?
 *
 * A job that names its own small parts has to name these too; one that names none leaves them to the kit.
 */
export const trunkCaps = rule({
  id: 'trunk-caps',
  sheet: '04',
  stops: false,
  question: 'Is there a cap for every unused drop and end?',
  judge({ trunks, choices }) {
    const uses = new Set(
      Object.values(choices.parts).flatMap((id) => {
        const sheet = choices.equipment[id];
        return sheet?.kind === 'part' ? [sheet.use as string] : [];
      }),
    );
    const kitChooses = Object.keys(choices.parts).length === 0;
    return trunks.trunks.map((trunk): Judged => {
      const name = trunkName(trunk.name);
      const about = abouts.trunk(trunk.id, trunk.name);
      const missing = CAPS.filter((cap) => trunk.caps[cap.count] > 0 && !kitChooses && !uses.has(cap.use));
      if (missing.length > 0) {
        const open = missing.map((cap) => plural(trunk.caps[cap.count], cap.one)).join(' and ');
        return {
          about,
          state: 'fails',
          title: `${name} leaves ${open}. The parts name no ${missing.map((cap) => cap.words).join(' and no ')}.`,
          mends: [{ words: `Add ${missing.map((cap) => cap.words).join(' and ')} to the parts.` }],
        };
      }
      return {
        about,
        state: 'meets',
        title: `${name} takes ${plural(trunk.caps.end, 'end cap')} and ${plural(trunk.caps.drop, 'drop cap')}.`,
      };
    });
  },
});
