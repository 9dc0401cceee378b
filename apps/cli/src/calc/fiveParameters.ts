import type { ModuleModel } from '@eaveline/physics';
import { z } from 'zod';
import { num } from './fields.ts';

/** The five parameters of the single-diode model at 1000 W/m² and 25 °C, as rows carry them. */
export const fiveParameters = z
  .object({
    ILRefA: num('A', 'light current'),
    IORefA: num('A', 'saturation current'),
    RSOhm: num('Ω', 'series resistance'),
    RShRefOhm: z.number().nullable().meta({ unit: 'Ω', description: 'shunt resistance; null for none' }),
    aRefV: num('V', 'modified ideality, n·Ns·k·T/q'),
  })
  .meta({ description: 'five parameters at 1000 W/m² and 25 °C' });

export type FiveParameters = z.output<typeof fiveParameters>;

/** The same as the physics has them: the shunt as a conductance, 0 for none. */
export function modelOf(p: FiveParameters, alphaIscAPerK: number): ModuleModel {
  return {
    photoCurrentA: p.ILRefA,
    saturationCurrentA: p.IORefA,
    seriesOhm: p.RSOhm,
    shuntSiemens: p.RShRefOhm === null ? 0 : 1 / p.RShRefOhm,
    idealityV: p.aRefV,
    alphaIscAPerK,
  };
}

/** And back. */
export function parametersOf(model: ModuleModel): FiveParameters {
  return {
    ILRefA: model.photoCurrentA,
    IORefA: model.saturationCurrentA,
    RSOhm: model.seriesOhm,
    RShRefOhm: model.shuntSiemens === 0 ? null : 1 / model.shuntSiemens,
    aRefV: model.idealityV,
  };
}
