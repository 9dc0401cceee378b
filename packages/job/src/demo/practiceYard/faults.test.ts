import { expect, test } from 'vitest';
import { gather } from '../../parse/gather.ts';
import { parseJob } from '../../parse/parseJob.ts';
import type { SheetKind } from '../../schema/sheets.ts';
import { writeJob } from '../../write/writeJob.ts';
import { practiceYard, practiceYardFaults } from './index.ts';

const { facts, choices } = practiceYard;

function sheet<K extends SheetKind>(id: string, kind: K) {
  const found = choices.equipment[id];
  if (found?.kind !== kind) throw new Error(`${id} is not the sheet of a ${kind}`);
  return found as Extract<typeof found, { kind: K }>;
}

test('thirty and more faults, a dozen and more of them for the checks, each told once', () => {
  const by = (who: string) => practiceYardFaults.filter(({ foundBy }) => foundBy === who).length;
  expect(by('checks')).toBeGreaterThanOrEqual(12);
  expect(by('tests')).toBeGreaterThan(0);
  expect(by('data')).toBeGreaterThan(0);
  expect(practiceYardFaults.length).toBeGreaterThanOrEqual(30);
  expect(new Set(practiceYardFaults.map(({ id }) => id)).size).toBe(practiceYardFaults.length);
});

test('every fault for the checks names a place in the job', () => {
  for (const { id, where, foundBy } of practiceYardFaults) {
    if (foundBy === 'checks') expect(gather(practiceYard, where), id).toHaveLength(1);
  }
});

test('its file is sound: the faults are in the design, not in the document', () => {
  expect(parseJob(writeJob(practiceYard)).remarks).toEqual([]);
});

test('the electrical faults are really there, by hand', () => {
  const module = sheet('pellucid-430', 'module');
  const old = sheet('alder-250', 'unit');
  const on = (trunkId: string) => Object.values(choices.units).filter((unit) => unit.trunkId === trunkId).length;

  // 12 · 400/230 = 20.87 A on 20 A
  expect((on('a') * sheet('alder-400', 'unit').ratedVA) / 230).toBeGreaterThan(sheet('breaker-c20', 'breaker').ratedA);
  // 2 · 44 m · 7.41 mΩ/m (IEC 60228, 2.5 mm² at 20 °C) · 20.87 A = 13.6 V, 2 % is 4.6 V
  expect(choices.trunks.a.homeRun).toMatchObject({ cableSheet: 'cable-2-5', lengthM: 44 });
  // 38.9 · (1 + 0.0025 · (25 + 8)) = 42.11 V on 42 V; 13.9 · 1.25 = 17.4 A on 13 A
  expect(module.vocV * (1 + (module.vocPctPerK / 100) * ((facts.site.recordLowC ?? 0) - 25))).toBeGreaterThan(
    old.maxDcV,
  );
  expect(module.iscA * 1.25).toBeGreaterThan(old.maxIscA);
  expect(facts.supply.prospectiveA).toBeGreaterThan(sheet('breaker-c20', 'breaker').breakingKA * 1000);
  expect(sheet(choices.trunks.b.breakerSheet, 'breaker').bothWays).toBe(false);
  // 12 · 400 + 4 · 250 + 4600 + 6000 = 16 400 VA
  expect(on('a') * 400 + on('b') * 250 + 4600 + 6000).toBe(16400);
  expect(facts.network.approvedVA).toBeLessThan(16400);
  expect(choices.exportLimitSetVA).toBeGreaterThan(facts.network.exportLimitVAPerLine ?? 0);
  expect(on('a') > 0 && on('b') > 0 && Object.values(choices.trunks).every(({ lines }) => lines.join() === 'L1')).toBe(
    true,
  );
  const breakers = Object.keys(choices.trunks).length + Object.keys(choices.batteries).length;
  expect(breakers).toBeGreaterThan(facts.board.freeWays ?? 0);
});

test('the faults of the roof are really there, by hand', () => {
  const { north } = facts.roof.planes;
  // 4.6 ÷ cos 20° = 4.895 m
  const byPlanM = (north.planWidthM ?? 0) / Math.cos((20 * Math.PI) / 180);
  expect(byPlanM).toBeCloseTo(4.895, 3);
  expect(north.slopeLengthM / byPlanM).toBeGreaterThan(1.01);
  expect(sheet(choices.mounting?.fixingSheet ?? '', 'fixing').suits).not.toContain(north.covering);
  // the clamp zone runs from 0.2 · 1722 = 344 mm to 0.3 · 1722 = 517 mm
  expect(choices.rows['north-1'].railsMm?.[0]).toBeLessThan(344);
  expect(choices.rows['north-1'].uM).toBeLessThan(choices.setbacks.sideM ?? 0);
  // landscape: 1722 + 20 mm from module to module
  expect(sheet(choices.trunks.b.cableSheet, 'trunk-cable').dropPitchMm).toBeLessThan(1742);
  expect(choices.trunks.b.jumpers).toEqual({});
  // fourth of row 2: u from 1 + 3 · 1.742 = 6.226 to 7.948, top at 3.334; the flue's lower edge at 3.5: 166 mm away
  const flue = facts.roof.obstructions.flue;
  expect(flue.vM - flue.depthM / 2 - (2.2 + 1.134)).toBeLessThan(flue.clearM);
  expect(flue.uM - flue.widthM / 2).toBeLessThan(7.948);
});

test('the faults of battery and backup are really there, by hand', () => {
  const window = facts.walls.yard.items['office-window'];
  const { outside, inside } = choices.batteries;
  expect((outside.place?.leftMm ?? 0) - (window.leftMm + window.widthMm)).toBe(200);
  expect(facts.walls[inside.place?.wallId ?? ''].place).toBe('bedroom');
  expect(facts.walls.yard).toMatchObject({ combustible: true, vehicles: true });
  expect(outside).toMatchObject({ barrier: false, bollard: false });

  const battery = sheet(outside.sheet, 'battery');
  const { circuits } = facts.loads;
  // 46 · 230 = 10 580 VA
  expect((circuits.cooling.motor?.lockedRotorA ?? 0) * 230).toBeGreaterThan(battery.peakVA);
  // 400 + 1500 + 2400 + 2050 = 6350 W
  const onOneLine = Object.keys(choices.backup?.circuits ?? {}).filter((id) => circuits[id].lines.length === 1);
  expect(onOneLine.reduce((sum, id) => sum + circuits[id].runW, 0)).toBe(6350);
  expect(battery.continuousVA).toBeLessThan(6350);
  expect(circuits.lathe.lines.length).toBeGreaterThan(choices.backup?.lines.length ?? 0);
  expect(choices.backup?.circuits.sockets).toMatchObject({ moved: true, residualDevice: false });
});
