import { blankDiodeState, checkModuleModel, type ModuleModel, moduleAt } from './diode.ts';
import { moduleMaxPower } from './moduleMaxPower.ts';

const LIGHTS = 128;
const WARMTHS = 64;
const MOST_LIGHT = 1600;
const COLDEST_C = -45;
const HOTTEST_C = 105;
const PER_ROOT = (LIGHTS - 1) / Math.sqrt(MOST_LIGHT);
const PER_C = (WARMTHS - 1) / (HOTTEST_C - COLDEST_C);

/** Maximum power of a module over light and warmth, ready for the loops of a year. */
export interface ModulePowerTable {
  /** P/S, W per W/m², rows of √S, columns of temperature. */
  readonly powerPerLight: Float64Array;
  /** Voltage there, V. */
  readonly voltageV: Float64Array;
}

/**
 * Tabulates maximum power and its voltage: P/S over √S to 1,600 W/m² (128 nodes) and −45 to 105 °C
 * (64), read by linear interpolation both ways. Annual energy within 10⁻⁵ of the exact one.
 *
 * The unit's window and its efficiency have kinks and stay outside the table.
 *
 * @throws {Refusal} as `checkModuleModel`.
 */
export function modulePowerTable(model: ModuleModel): ModulePowerTable {
  checkModuleModel(model);
  const powerPerLight = new Float64Array(LIGHTS * WARMTHS);
  const voltageV = new Float64Array(LIGHTS * WARMTHS);
  const state = blankDiodeState();
  const point = { powerW: 0, voltageV: 0, currentA: 0 };
  for (let j = 0; j < LIGHTS; j++) {
    const root = j === 0 ? 0.1 : j / PER_ROOT; // P/S falls like a logarithm towards the dark; no node at 0
    const light = root * root;
    for (let k = 0; k < WARMTHS; k++) {
      moduleMaxPower(moduleAt(model, light, COLDEST_C + k / PER_C, state), point);
      powerPerLight[j * WARMTHS + k] = point.powerW / light;
      voltageV[j * WARMTHS + k] = point.voltageV;
    }
  }
  return { powerPerLight, voltageV };
}

/** Reads a column of the table; beyond its edges the last cell goes on straight. */
function read(values: Float64Array, irradiance: number, cellC: number): number {
  const x = Math.sqrt(irradiance) * PER_ROOT;
  const y = (cellC - COLDEST_C) * PER_C;
  const j = Math.min(LIGHTS - 2, Math.floor(x));
  const k = Math.max(0, Math.min(WARMTHS - 2, Math.floor(y)));
  const at = j * WARMTHS + k;
  const low = values[at] + (y - k) * (values[at + 1] - values[at]);
  const high = values[at + WARMTHS] + (y - k) * (values[at + WARMTHS + 1] - values[at + WARMTHS]);
  return low + (x - j) * (high - low);
}

/** Maximum power, W, unchecked: for hot loops. 0 where the light is not above 0. */
export function modulePowerFromTable(table: ModulePowerTable, irradiance: number, cellC: number): number {
  return irradiance > 0 ? irradiance * read(table.powerPerLight, irradiance, cellC) : 0;
}

/** Voltage at maximum power, V, unchecked: for hot loops. 0 where the light is not above 0. */
export function moduleVoltageFromTable(table: ModulePowerTable, irradiance: number, cellC: number): number {
  return irradiance > 0 ? read(table.voltageV, irradiance, cellC) : 0;
}
