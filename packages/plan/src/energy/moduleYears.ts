import type { Choices, SiteFacts } from '@eaveline/job';
import { sunCells } from '@eaveline/physics';
import type { PlacedModule } from '../array/types.ts';
import { sheetOf } from '../equipment.ts';
import { type HorizonPoint, horizonElevation } from '../roof/horizonElevation.ts';
import type { LitPlane } from '../roof/types.ts';
import type { SunPlan } from '../sun/types.ts';
import { modulePower } from './modulePower.ts';
import { type ModuleShade, moduleShade } from './moduleShade.ts';
import { type ModuleYear, moduleYear } from './moduleYear.ts';
import { type SceneBody, shadeScene } from './shadeScene.ts';
import type { UnitYear } from './unitYear.ts';

/** What the years of modules hang on: nothing of the wires. */
export interface ModuleYearsInput {
  readonly sun: SunPlan;
  readonly planes: readonly LitPlane[];
  readonly modules: readonly PlacedModule[];
  readonly equipment: Choices['equipment'];
  readonly objects: readonly SiteFacts['objects'][string][];
  readonly horizon: readonly HorizonPoint[];
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
  const sheets = JSON.stringify([input.equipment, input.objects, input.horizon]);
  const same =
    last?.input.sun === input.sun &&
    last.input.planes === input.planes &&
    last.input.modules === input.modules &&
    last.sheets === sheets;
  if (last === undefined || !same) last = { input, sheets, answer: workYears(input) };
  return last.answer;
}

/** Shades of the last modules asked for, by all they hang on. A moved module has its own worked out anew, not the others. */
const shades = new Map<string, { readonly shade: ModuleShade | undefined }>();
const SHADES_KEPT = 600;

function shadeOf(
  module: PlacedModule,
  plane: LitPlane,
  scene: { readonly bodies: readonly SceneBody[]; readonly key: string },
  latitudeDeg: number,
  horizonDeg: Float64Array | undefined,
): ModuleShade | undefined {
  const { centre3d, widthM, heightM, name } = module;
  const key = `${scene.key} ${name} ${plane.id} ${centre3d.join(' ')} ${widthM} ${heightM}`;
  const known = shades.get(key);
  if (known !== undefined) return known.shade;
  const shade = moduleShade(module, plane, scene.bodies, latitudeDeg, horizonDeg);
  if (shades.size >= SHADES_KEPT) shades.delete(shades.keys().next().value as string);
  shades.set(key, { shade });
  return shade;
}

/** Years by the shade they are of, or the light of the plane where there is none, and by the sheet. */
const years = new WeakMap<object, Map<string, { readonly light: LitPlane['sun']; readonly year: NumberedYear }>>();
let made = 0;

/** The year of a shade or of a clear plane, worked out once: of a roof of which one module was moved, one is new. */
function yearOf(of: object, sheet: string, light: LitPlane['sun'], work: () => ModuleYear): NumberedYear {
  const known = years.get(of) ?? new Map();
  years.set(of, known);
  const last = known.get(sheet);
  if (last?.light === light) return last.year;
  made += 1;
  const year = { ...work(), number: made };
  known.set(sheet, { light, year });
  return year;
}

/** Modules of one plane and one sheet with nothing near in their light share one year. */
function workYears({ sun, planes, modules, equipment, objects, horizon }: ModuleYearsInput): ModuleYears {
  const planeOf = new Map(planes.map((plane) => [plane.id, plane]));
  const byModule = new Map<string, NumberedYear>();
  const why = new Set<string>();
  const { latitudeDeg } = sun;
  const scene = { bodies: shadeScene(objects, planes), key: sceneKey(objects, planes, horizon, latitudeDeg) };
  const horizonDeg = horizonElevation(horizon);
  const cells = sunCells(sun, sun.steps, sun.stepS, latitudeDeg);
  for (const module of modules) {
    const plane = planeOf.get(module.planeId);
    if (plane === undefined) throw new Error(`plane '${module.planeId}' is not in the roof`);
    const sheet = sheetOf(equipment, module.sheetId, 'module');
    const power = modulePower(sheet);
    if (power.why !== undefined)
      why.add(`${sheet.name} fits no single diode and goes by rated power and coefficient. ${power.why}`);
    const shade = shadeOf(module, plane, scene, latitudeDeg, horizonDeg);
    for (const words of shade?.inside ?? []) why.add(words);
    const work = () => moduleYear(sun, plane.sun, shade, cells, power, sheet.noctC);
    byModule.set(module.id, yearOf(shade ?? plane.sun, JSON.stringify(sheet), plane.sun, work));
  }
  return { byModule, units: new Map(), why: [...why] };
}

/** All of the scene, as text: one letter apart, and it is another one. */
function sceneKey(
  objects: ModuleYearsInput['objects'],
  planes: readonly LitPlane[],
  horizon: readonly HorizonPoint[],
  latitudeDeg: number,
): string {
  return JSON.stringify([
    objects,
    planes.map(({ id, outline3d, obstructions }) => [id, outline3d, obstructions]),
    horizon,
    latitudeDeg,
  ]);
}
