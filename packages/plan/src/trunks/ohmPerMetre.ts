import type { Conductor } from '@eaveline/job';
import { ohmPerKm } from '@eaveline/physics';
import { type Working, worked } from '../working.ts';

/**
 * Temperatures conductors are taken at when they carry full sun. Common practice, no source: under the modules on a
 * hot day, in a roof space, in the ground or a wall. A hotter conductor drops more, so these lean to the high side.
 */
export const SERVICE_C = { trunk: 75, homeRun: 60, mains: 50 } as const;

/** `6 mm²`, `10 AWG`. */
export function sizeName(conductor: Conductor): string {
  return conductor.areaMm2 === undefined ? `${conductor.awg} AWG` : `${conductor.areaMm2} mm²`;
}

/** Resistance of one conductor at a temperature, Ω/m, with its working. */
export function ohmPerMetre(conductor: Conductor, temperatureC: number, what: string): Working & { value: number } {
  const at = (temperature: number) =>
    conductor.areaMm2 === undefined
      ? ohmPerKm(
          { standard: 'NEC', material: conductor.material, awg: conductor.awg ?? '', conduit: 'none' },
          temperature,
        )
      : ohmPerKm(
          {
            standard: 'IEC 60228',
            class: conductor.strandClass,
            material: conductor.material,
            sizeMm2: conductor.areaMm2,
          },
          temperature,
        );
  const source = conductor.areaMm2 === undefined ? 'NEC Chapter 9 Table 8' : 'IEC 60228, greatest resistance at 20 °C';
  const perM = at(temperatureC) / 1000;
  return {
    ...worked(
      `${what}, ${sizeName(conductor)} ${conductor.material} at ${temperatureC} °C`,
      perM,
      'Ω/m',
      'r = r₂₀ · (1 + α · (T − 20))',
      source,
      [
        { name: 'at 20 °C', symbol: 'r₂₀', value: at(20) / 1000, unit: 'Ω/m', source },
        { name: 'in service', symbol: 'T', value: temperatureC, unit: '°C', source: 'common practice, no source' },
      ],
      { symbol: 'r' },
    ),
    value: perM,
  };
}
