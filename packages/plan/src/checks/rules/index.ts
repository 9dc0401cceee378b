import type { AnyRule } from '../runRules.ts';
import { breakerRating } from './breakerRating.ts';
import { coldVoltage } from './coldVoltage.ts';
import { trunkRise } from './trunkRise.ts';

/** Every rule, in the order a design is read: site, roof, array, trunks, board, battery, backup, network, papers. */
export const rules: readonly AnyRule[] = [coldVoltage, trunkRise, breakerRating];
