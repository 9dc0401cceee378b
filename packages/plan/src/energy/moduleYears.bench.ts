import { kestrelRise } from '@eaveline/job';
import type { PlacedModule } from '../array/types.ts';
import type { LitPlane } from '../roof/types.ts';
import { workOut } from '../workOut.ts';
import { type ModuleYears, type ModuleYearsInput, moduleYears } from './moduleYears.ts';

const { sun, roof, array } = workOut(kestrelRise);
const { objects, horizon } = kestrelRise.facts.site;

/** So many modules about the places of Kestrel Rise, no two at one place: each has a shade of its own. */
function modulesOf(count: number): PlacedModule[] {
  return Array.from({ length: count }, (_, k) => {
    const module = array.modules[k % array.modules.length] as PlacedModule;
    const [e, n, u] = module.centre3d;
    return { ...module, id: `m${k}`, name: `M${k}`, centre3d: [e + 0.01 * Math.floor(k / array.modules.length), n, u] };
  });
}

const forty = modulesOf(40);
const fourHundred = modulesOf(400);
let turn = 0;

const input = (modules: readonly PlacedModule[], over: Partial<ModuleYearsInput> = {}): ModuleYearsInput => ({
  ...{ sun, planes: roof.planes, modules, equipment: kestrelRise.choices.equipment },
  ...{ objects: Object.values(objects), horizon, ...over },
});

/** The same roof in a light of its own: shades are kept, years are not. */
const newLight = (): LitPlane[] => roof.planes.map((plane) => ({ ...plane, sun: { ...plane.sun } }));
/** The same objects a hair farther east: nothing is kept. */
const newScene = () => {
  turn += 1;
  return Object.values(objects).map((object) => ({ ...object, eastM: object.eastM + turn * 1e-9 }));
};
const has = (count: number) => (years: ModuleYears) => years.byModule.size === count;

export const benches = [
  {
    name: 'plan/moduleYears: 40 modules, three sections each, hourly year, shades kept',
    run: () => moduleYears(input(forty, { planes: newLight() })),
    check: has(40),
    budget: { ms: 20, why: 'the year follows a change of equipment while a person looks' },
  },
  {
    name: 'plan/moduleYears: the same from nothing',
    run: () => moduleYears(input(forty, { objects: newScene() })),
    check: has(40),
    budget: { ms: 80, why: 'a tree is dragged' },
  },
  {
    name: 'plan/moduleYears: one of forty modules moved',
    run: () => {
      turn += 1;
      const [first, ...rest] = forty as [PlacedModule, ...PlacedModule[]];
      const [e, n, u] = first.centre3d;
      return moduleYears(input([{ ...first, centre3d: [e, n + turn * 1e-7, u] }, ...rest]));
    },
    check: has(40),
    budget: { ms: 8, why: 'a module is dragged' },
  },
  {
    name: 'plan/moduleYears: 400 modules, hourly year, shades kept',
    run: () => moduleYears(input(fourHundred, { planes: newLight() })),
    check: has(400),
    budget: { ms: 210, why: 'no more than 10.5 times forty' },
  },
];
