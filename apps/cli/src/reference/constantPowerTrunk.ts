import type { Json } from './shape.ts';

/**
 * A trunk of equal units as a network for the load flow: source, home run, and one arm or several of drops.
 * Keys as in a load-flow case; no reactance.
 *
 * @param mains  between the source and the home run, where the example has them.
 */
export function constantPowerTrunk(
  inputs: Json,
  mains?: { readonly lengthM: number; readonly rOhmPerKm: number },
): Json {
  const counts = inputs.module_inverters;
  const arms = (Array.isArray(counts) ? counts : [counts]).map(Number);
  const segment = (id: string, from: string, to: string, lengthM: number, rOhmPerKm: number) => ({
    id,
    from,
    to,
    conductors: ['A', 'N'],
    length_m: lengthM,
    r_ohm_per_km: rOhmPerKm,
    neutral_r_ohm_per_km: rOhmPerKm,
  });
  const board = mains ? 'BOARD' : 'SRC';
  const segments = [
    ...(mains ? [segment('mains', 'SRC', board, mains.lengthM, mains.rOhmPerKm)] : []),
    segment('home-run', board, 'JOINT', Number(inputs.home_run_m), Number(inputs.home_run_r_ohm_per_km)),
  ];
  const injections: Json[] = [];
  arms.forEach((count, arm) => {
    for (let k = 0; k < count; k++) {
      const [from, to] = [k === 0 ? 'JOINT' : `${arm}-${k - 1}`, `${arm}-${k}`];
      const lengthM = Number(k === 0 ? inputs.first_drop_m : inputs.pitch_m);
      segments.push(segment(`trunk-${to}`, from, to, lengthM, Number(inputs.trunk_r_ohm_per_km)));
      injections.push({ node: to, between: ['A', 'N'], kind: 'module-inverter', p_w: inputs.power_each_w });
    }
  });
  return { system: 'single-phase', nominal_v: inputs.nominal_v, segments, injections };
}
