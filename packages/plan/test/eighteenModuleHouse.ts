import { type Job, type JobDraft, jobSchema } from '@eaveline/job';
import { module430, unit400 } from './sheets.ts';

/**
 * The 18-module house of the trade's own sums, as a job: single phase 230 V, 63 A, loop 0.35 Ω, TN-C-S; two trunks of
 * nine units of 400 VA on 2.5 mm² with a drop every 1.20 m; home run 22 m of 6/6 mm²; mains 15 m of 16 mm².
 * Invented throughout.
 */
export function eighteenModuleHouse(change: (draft: JobDraft) => void = () => undefined): Job {
  const rows: NonNullable<JobDraft['choices']['rows']> = {};
  const modules: NonNullable<JobDraft['choices']['modules']> = {};
  const units: NonNullable<JobDraft['choices']['units']> = {};
  const trunks: NonNullable<JobDraft['choices']['trunks']> = {};
  ['a', 'b'].forEach((id, k) => {
    rows[`row-${id}`] = {
      planeId: 'south',
      row: k + 1,
      orientation: 'portrait',
      uM: 0.5,
      vM: 0.3 + k * 1.75,
      gapMm: 20,
      moduleSheet: 'module',
    };
    trunks[id] = {
      name: id.toUpperCase(),
      cableSheet: 'trunk',
      lines: ['L1'],
      feedDrop: 1,
      homeRun: { cableSheet: 'c6', lengthM: 22, route: { method: 'C', ambientC: 40 } },
      breakerSheet: 'b16',
    };
    for (let place = 1; place <= 9; place++) {
      modules[`m-${id}-${place}`] = { rowId: `row-${id}`, place, unitId: `u-${id}-${place}` };
      units[`u-${id}-${place}`] = { sheet: 'unit', trunkId: id, drop: place };
    }
  });
  const cable = (areaMm2: number) => ({
    kind: 'cable' as const,
    name: `cable ${areaMm2} mm²`,
    conductor: { material: 'copper' as const, areaMm2 },
    cores: 3,
    insulation: 'PVC' as const,
    insulationC: 70,
    sunlight: false,
  });
  const draft: JobDraft = {
    format: 'eaveline-job',
    version: 1,
    id: 'eighteen-module-house',
    name: 'Eighteen-module house',
    invented: true,
    firm: { name: 'Lantern & Ridge Electrical' },
    facts: {
      site: {
        address: 'invented',
        latitudeDeg: 51.5,
        longitudeDeg: -0.1,
        zone: 'Europe/London',
        recordLowC: -10,
        recordHighC: 38,
      },
      supply: {
        system: 'single-phase',
        nominalV: 230,
        earthing: 'TN-C-S',
        serviceA: 63,
        loopOhm: 0.35,
        measuredV: { L1: 236 },
        mains: { lengthM: 15, conductor: { material: 'copper', areaMm2: 16 } },
      },
      board: { busA: 100, mainSwitchA: 63, breakingKA: 6, freeWays: 4, wiring: 'iec' },
      roof: {
        planes: {
          south: {
            name: 'South',
            facingDeg: 180,
            pitchDeg: 30,
            eaveLengthM: 12,
            slopeLengthM: 4.5,
            ridgeFromM: 0,
            ridgeToM: 12,
            eaveLeft: { eastM: 12, northM: 0, heightM: 5 },
            edges: { left: 'verge', right: 'verge' },
            covering: 'concrete-tile',
            rafters: { firstMm: 300, spacingMm: 600 },
          },
        },
      },
      loads: { circuits: {} },
    },
    choices: {
      rules: { pack: 'iec-eu', variant: 'gb' },
      equipment: {
        module: module430,
        unit: unit400,
        trunk: {
          kind: 'trunk-cable',
          name: 'trunk 1.20',
          dropPitchMm: 1200,
          lines: 1,
          conductor: { material: 'copper', areaMm2: 2.5 },
          insulationC: 90,
          ratedA: 20,
          ratedV: 400,
        },
        c4: cable(4),
        c6: cable(6),
        c10: cable(10),
        b16: {
          kind: 'breaker',
          name: 'B16',
          ratedA: 16,
          curve: 'B',
          poles: 1,
          breakingKA: 6,
          continuousShare: 1,
          bothWays: true,
        },
        rail: {
          kind: 'rail',
          name: 'rail',
          stockMm: 4200,
          massKgPerM: 1.1,
          secondMomentCm4: 6.9,
          sectionModulusCm3: 3.3,
          elasticGPa: 70,
          designStressMPa: 150,
          expansionPerK: 23.1e-6,
          longestRunMm: 12000,
        },
        mid: { kind: 'clamp', name: 'mid clamp', place: 'mid', gapMm: 20, torqueNm: 15, bonding: true },
        end: { kind: 'clamp', name: 'end clamp', place: 'end', gapMm: 40, torqueNm: 15, bonding: true },
        hook: { kind: 'fixing', name: 'tile hook', suits: ['concrete-tile'], screws: 2 },
      },
      rows,
      modules,
      units,
      trunks,
      mounting: {
        railSheet: 'rail',
        midClampSheet: 'mid',
        endClampSheet: 'end',
        fixingSheet: 'hook',
        footSpacingMm: 1200,
      },
    },
  };
  change(draft);
  return jobSchema.parse(draft);
}
