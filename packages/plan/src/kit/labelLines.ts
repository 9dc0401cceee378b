import { packFor } from '../rules/index.ts';
import type { LabelText } from '../rules/pack.ts';
import type { KitInput } from './kitInput.ts';
import { kitLine, part } from './kitLine.ts';
import type { KitLine, KitPlan } from './types.ts';

/** Labels the region asks for, with how many; one left off in the job is left off here. */
export function labelsOf({ view, trunks }: KitInput): KitPlan['labels'] {
  const batteries = Object.keys(view.batteries).length;
  const counts: Readonly<Record<LabelText['when'], number>> = {
    always: 1,
    battery: batteries,
    backup: view.backup === undefined ? 0 : 1,
    'per source': trunks.trunks.length + batteries,
    'per trunk': trunks.trunks.length,
  };
  return packFor(view.rules)
    .labels.filter(({ id, when }) => view.labels[id] !== false && counts[when] > 0)
    .map(({ id, text, where, clause, seen, when }) => ({ id, text, where, clause, seen, count: counts[when] }));
}

const WHEN: Readonly<Record<LabelText['when'], { readonly formula: string; readonly unit: KitLine['unit'] }>> = {
  always: { formula: 'one set: a label for every place named', unit: 'sets' },
  backup: { formula: 'one set: a label for every place named', unit: 'sets' },
  battery: { formula: 'one set a battery: a label for every place named', unit: 'sets' },
  'per source': { formula: 'one a trunk and one a battery', unit: 'pieces' },
  'per trunk': { formula: 'one a trunk', unit: 'pieces' },
};

/** The same as lines of the kit. */
export function labelLines(input: KitInput, labels: KitPlan['labels']): KitLine[] {
  const texts = packFor(input.view.rules).labels;
  return labels.flatMap(({ id, text, where, clause, count }) => {
    const { formula, unit } = WHEN[texts.find((label) => label.id === id)?.when ?? 'always'];
    return kitLine({
      id: `label:${id}`,
      name: `Label: ${text}`,
      group: 'labels',
      count,
      unit,
      formula,
      source: clause,
      inputs: [part(where, count, '', clause)],
    });
  });
}
