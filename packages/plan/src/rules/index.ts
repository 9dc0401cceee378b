import type { Choices } from '@eaveline/job';
import { auPack, nzPack } from './auNz.ts';
import { euPack, gbPack, iePack } from './iecEu.ts';
import type { RulePack } from './pack.ts';
import { usPack } from './us.ts';

/** Every pack at hand, by variant. */
export const rulePacks: Readonly<Record<RulePack['variant'], RulePack>> = {
  au: auPack,
  nz: nzPack,
  gb: gbPack,
  ie: iePack,
  eu: euPack,
  us: usPack,
};

/** The pack a job chose. The variant decides; `parseJob` sees to it that it belongs to the pack named. */
export function packFor(rules: Pick<Choices['rules'], 'pack' | 'variant'>): RulePack {
  return rulePacks[rules.variant];
}
