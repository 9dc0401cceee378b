import type { Choices, SiteFacts } from '@eaveline/job';
import type { PlacedModule } from '../array/types.ts';
import { sheetOf } from '../equipment.ts';
import type { LitPlane } from '../roof/types.ts';
import type { SunPlan } from '../sun/types.ts';
import { modulePower } from './modulePower.ts';
import { type ModuleYear, moduleYear } from './moduleYear.ts';
import { nearShade } from './nearShade.ts';
import { sunPath } from './sunPath.ts';
import type { UnitYear } from './unitYear.ts';

/** What the years of modules hang on: nothing of the wires. */
export interface ModuleYearsInput {
  readonly sun: SunPlan;
  readonly planes: readonly LitPlane[];
  readonly modules: readonly PlacedModule[];
  readonly equipment: Choices['equipment'];
  readonly objects: readonly SiteFacts['objects'][string][];
}

/** A year with a number: modules that share it share the number. */
export interface NumberedYear extends ModuleYear {
  readonly number: number;
}

/** Years of all modules by id, and room for the years of units made from them. */
export interface ModuleYears {
  readonly byModule: ReadonlyMap<string, NumberedYear>;
  readonly units: Map<string, UnitYear>;
  /** Sheets that could not be modelled in full, in sentences. */
  readonly why: readonly string[];
}

let last: { readonly input: ModuleYearsInput; readonly sheets: string; readonly answer: ModuleYears } | undefined;

/**
 * The year of every module; the last answer again where sun, roof, modules, sheets and objects are the same. A cable
 * made longer changes what the wires lose, not what the modules make, and must not cost their years anew.
 */
export function moduleYears(input: ModuleYearsInput): ModuleYears {
  const sheets = JSON.stringify([input.equipment, input.objects]);
  const same =
    last?.input.sun === input.sun &&
    last.input.planes === input.planes &&
    last.input.modules === input.modules &&
    last.sheets === sheets;
  if (last === undefined || !same) last = { input, sheets, answer: workYears(input) };
  return last.answer;
}

/** Modules of one plane and one sheet with nothing near in their sun share one year. */
function workYears({ sun, planes, modules, equipment, objects }: ModuleYearsInput): ModuleYears {
  const planeOf = new Map(planes.map((plane) => [plane.id, plane]));
  const clear = new Map<string, NumberedYear>();
  const byModule = new Map<string, NumberedYear>();
  const why = new Set<string>();
  const path = sunPath(sun);
  let made = 0;
  for (const module of modules) {
    const plane = planeOf.get(module.planeId);
    if (plane === undefined) throw new Error(`plane '${module.planeId}' is not in the roof`);
    const sheet = sheetOf(equipment, module.sheetId, 'module');
    const { power, why: reason } = modulePower(sheet);
    if (reason !== undefined)
      why.add(`${sheet.name} fits no single diode and goes by rated power and coefficient. ${reason}`);
    const open = nearShade(module.centre3d, objects, path, plane.sun.beam);
    const key = `${module.planeId} ${module.sheetId}`;
    const known = open === undefined ? clear.get(key) : undefined;
    const year = known ?? { ...moduleYear(sun, plane.sun, open, power, sheet.noctC), number: made++ };
    if (open === undefined) clear.set(key, year);
    byModule.set(module.id, year);
  }
  return { byModule, units: new Map(), why: [...why] };
}
