import type { Parts } from './draft.ts';
import type { Examples } from './example.ts';

const north = ({ view }: Parts) => {
  const plane = view.facts.roof.planes.north;
  if (plane === undefined) throw new Error('the case has a north plane');
  return plane;
};
const moduleAt = ({ stages }: Parts, k: number) => {
  const module = stages.array.modules[k];
  if (module === undefined) throw new Error(`the case has no module ${k}`);
  return module;
};
const railAt = ({ stages }: Parts, k: number) => {
  const rail = stages.array.rails[k];
  if (rail === undefined) throw new Error(`the case has no rail ${k}`);
  return rail;
};
/** Moves every module, du along the eave and dv up the slope, with its row. */
const shift = (parts: Parts, du: number, dv: number) => {
  for (const module of parts.stages.array.modules) {
    module.at = [module.at[0] + du, module.at[1] + dv];
    module.corners = module.corners.map(([u, v]) => [u + du, v + dv]);
    module.clear.eave += dv;
    module.clear.ridge -= dv;
  }
  const row = parts.view.choices.rows.row;
  if (row !== undefined) {
    row.uM += du;
    row.vM += dv;
  }
};

/** Worked examples: site, roof and array. */
export const examplesRoof: readonly Examples[] = [
  {
    rule: 'supply-voltage',
    // 230 V · 1.10 = 253.0 V; 230 V · 0.94 = 216.2 V
    fails: {
      set: ({ view }) => (view.facts.supply.measuredV = { L1: 253.4 }),
      value: 253.4,
      limit: 253,
      mend: 'Report it',
    },
    meets: { value: 232, limit: 253 },
    asks: { set: ({ view }) => (view.facts.supply.measuredV = {}), needs: 'facts.supply.measuredV' },
  },
  {
    rule: 'wind-exposed',
    fails: {
      set: ({ view }) => {
        view.facts.site.wind.exposed = true;
        view.state = 'on site';
      },
      mend: 'Send the roof plan to an engineer',
    },
    meets: {},
    asks: { set: ({ view }) => delete view.facts.site.wind.exposed, needs: 'facts.site.wind.exposed' },
  },
  {
    rule: 'roof-measures',
    // 3 m ÷ cos 60° = 6 m; |6.09 − 6| ÷ 6 = 1.5 %
    fails: { set: (parts) => (north(parts).slopeLengthM = 6.09), value: 1.5, limit: 1, mend: 'Tape the slope again' },
    // |6.03 − 6| ÷ 6 = 0.5 %
    meets: { set: (parts) => (north(parts).slopeLengthM = 6.03), value: 0.5, limit: 1 },
    asks: { set: (parts) => delete north(parts).planWidthM, needs: 'facts.roof.planes.north.planWidthM' },
  },
  {
    rule: 'rafters',
    fails: { set: (parts) => (railAt(parts, 0).onRafters = false), mend: 'Move the rows over rafters' },
    meets: {},
    asks: { set: (parts) => delete north(parts).rafters.spacingMm, needs: 'facts.roof.planes.north.rafters.spacingMm' },
  },
  {
    rule: 'asbestos',
    fails: { set: (parts) => (north(parts).asbestos = 'yes'), mend: 'A licensed remover' },
    meets: {},
    asks: { set: (parts) => (north(parts).asbestos = 'unknown'), needs: 'facts.roof.planes.north.asbestos' },
  },
  {
    rule: 'cold-voltage',
    // at −10 °C: 38.9 · (1 + 0.0025 · 35) = 42.304 V, over a unit for 42 V
    fails: {
      set: ({ view }) => {
        const unit = view.choices.equipment['alder-400'];
        if (unit?.kind === 'unit') unit.maxDcV = 42;
      },
      value: 42.304,
      limit: 42,
      mend: 'Choose a unit for more volts',
    },
    // 38.9 · 1.0875 = 42.304 V of 58 V: trade.md's own sum, margin 27 %
    meets: { value: 42.304, limit: 58 },
    asks: { set: ({ view }) => delete view.facts.site.recordLowC, needs: 'facts.site.recordLowC' },
  },
  {
    rule: 'hot-voltage',
    // cell 45 + 30 = 75 °C: 32.6 · (1 − 0.003 · 50) = 27.71 V, under a tracker that begins at 28 V
    fails: {
      set: ({ view }) => {
        const unit = view.choices.equipment['alder-400'];
        if (unit?.kind === 'unit') unit.trackingLowV = 28;
      },
      value: 27.71,
      limit: 28,
      mend: 'Choose a unit that tracks lower',
    },
    meets: { value: 27.71, limit: 20 },
    asks: { set: ({ view }) => delete view.facts.site.recordHighC, needs: 'facts.site.recordHighC' },
  },
  {
    rule: 'short-circuit-current',
    // 13.9 · (1 + 0.00046 · 50) · 1.25 = 17.775 A
    fails: {
      set: ({ view }) => {
        const unit = view.choices.equipment['alder-400'];
        if (unit?.kind === 'unit') unit.maxIscA = 17.5;
      },
      value: 17.775,
      limit: 17.5,
      mend: 'Choose a unit for more current',
    },
    meets: { value: 17.775, limit: 20 },
    asks: { set: ({ view }) => delete view.facts.site.recordHighC, needs: 'facts.site.recordHighC' },
  },
  {
    rule: 'low-voltage-dc',
    // 112 V · 1.0875 = 121.8 V
    fails: {
      set: ({ view }) => {
        const module = view.choices.equipment['pellucid-430'];
        if (module?.kind === 'module') module.vocV = 112;
      },
      value: 121.8,
      limit: 120,
      mend: 'Choose a module with fewer cells',
    },
    meets: { value: 42.304, limit: 120 },
    asks: { set: ({ view }) => delete view.facts.site.recordLowC, needs: 'facts.site.recordLowC' },
  },
  {
    rule: 'low-voltage-dc',
    variant: 'us',
    // 75 V · 1.0875 = 81.56 V, over the 80 V inside the array
    fails: {
      set: ({ view }) => {
        const module = view.choices.equipment['pellucid-430'];
        if (module?.kind === 'module') module.vocV = 75;
      },
      value: 81.5625,
      limit: 80,
    },
    meets: { value: 42.304, limit: 80 },
  },
  {
    rule: 'dc-ac-ratio',
    // 2200 W ÷ 1600 VA = 1.375
    fails: { set: ({ stages }) => (stages.array.stcW = 2200), value: 1.375, limit: 1.33, mend: 'Choose a larger unit' },
    // 1720 ÷ 1600 = 1.075
    meets: { value: 1.075, limit: 1.33 },
  },
  {
    rule: 'setbacks',
    // the row 0.95 m lower stands at 0.05 m; two gaps of 100 mm are 200 mm: 150 mm up mends it
    fails: {
      set: (parts) => shift(parts, 0, -0.95),
      value: 50,
      limit: 200,
      mend: 'Move the row 150 mm up the slope.',
      change: ['choices.rows.row.vM', 0.2],
    },
    meets: {},
  },
  {
    rule: 'setbacks',
    variant: 'us',
    // four modules in plan are 4 · 1.134 · 1.722 · 0.5 of 60 · 0.5 m²: 13 % of the roof, so 18 in at the ridge.
    // 2.9 m up, the row ends at 5.622 m: 378 mm to the ridge, 79 mm short of 457
    fails: { set: (parts) => shift(parts, 0, 2.9), value: 378, limit: 457 },
    meets: {},
  },
  {
    rule: 'roof-path',
    variant: 'us',
    // the modules from 0.8 to 5.396 m, the plane cut to 6.2 m: strips of 800 and 804 mm
    fails: {
      set: (parts) => {
        shift(parts, -1.2, 0);
        for (const edge of parts.stages.roof.planes[0]?.edges ?? []) {
          if (edge.side !== 'right') continue;
          edge.from = [6.2, 0];
          edge.to = [6.2, 6];
        }
      },
      value: 804,
      limit: 914,
      mend: 'Move the rows to one side',
    },
    // from 2.0 to 6.596 m of 10 m: strips of 2000 and 3404 mm
    meets: { value: 3404, limit: 914 },
  },
  {
    rule: 'module-overlap',
    fails: {
      set: (parts) => (moduleAt(parts, 0).overlaps = 'm2'),
      mend: 'Give them places of their own.',
    },
    meets: {},
  },
  {
    rule: 'obstruction-clear',
    // 100 mm inside the ring of 500 mm: 400 mm from the flue
    fails: {
      set: (parts) => (moduleAt(parts, 2).obstruction = { id: 'flue', name: 'flue', roomM: -0.1 }),
      value: 400,
      limit: 500,
    },
    // ring from 3.4 m up, module to 2.722 m: 678 mm of room, 1178 mm from the flue
    meets: { value: 1178, limit: 500 },
  },
  {
    rule: 'clamp-zone',
    // zone 20 to 30 % of 1722 mm: 344.4 to 516.6 mm; the middles of both are 431 (430.5) and 1292 (1291.5) mm
    fails: {
      set: (parts) => {
        railAt(parts, 0).fromModuleEdgeMm = 250;
        railAt(parts, 0).inZone = false;
      },
      value: 250,
      limit: 344.4,
      mend: 'Put its rails',
      change: ['choices.rows.row.railsMm', [431, 1292]],
    },
    meets: {},
    asks: { set: (parts) => (railAt(parts, 0).zoneKnown = false), needs: 'choices.confirmations' },
  },
  {
    rule: 'rail-overhang',
    // right end: 6.75 − 6.3 = 450 mm; a third of the span of 1200 mm is 400 mm
    fails: { set: (parts) => (railAt(parts, 0).toU = 6.75), value: 450, limit: 400, mend: 'Put the end foot' },
    // 6.646 − 6.3 = 346 mm
    meets: { value: 346, limit: 400 },
  },
  {
    rule: 'rail-expansion',
    // 13.93 m without a gap between modules to break in
    fails: {
      set: (parts) => (railAt(parts, 0).lengthMm = 13_930),
      value: 13.93,
      limit: 12,
      mend: 'Break the rail with an expansion splice',
    },
    // a gap at 1.95 + 7.00 m: 13.93 − 7.00 − half of 20 mm = 6.92 m beyond it, 7.00 − 0.01 = 6.99 m before it
    meets: {
      set: (parts) => Object.assign(railAt(parts, 0), { lengthMm: 13_930, clamps: [{ kind: 'mid', u: 8.95 }] }),
      value: 6.99,
      limit: 12,
    },
    asks: {
      set: ({ view }) => {
        const sheet = view.choices.equipment['tern-40'];
        if (sheet?.kind === 'rail') delete sheet.longestRunMm;
      },
      needs: 'choices.equipment.tern-40.longestRunMm',
    },
  },
  {
    rule: 'foot-spacing',
    // the foot at 3.3 m gone: 4.5 − 2.1 = 2400 mm
    fails: {
      set: (parts) => railAt(parts, 0).feet.splice(1, 1),
      value: 2400,
      limit: 1200,
      mend: 'Add a foot',
    },
    meets: { value: 1200, limit: 1200 },
    asks: { set: ({ view }) => delete view.choices.mounting, needs: 'choices.mounting' },
  },
  {
    rule: 'foot-uplift',
    // 2400 ÷ 2000 = 1.20; 1200 mm · 1.20 ÷ 1.25 = 1152 mm, on rafters of 600 mm: 600 mm
    fails: {
      set: ({ stages }) => {
        if (stages.structure.worst) stages.structure.worst.upliftN = 2000;
      },
      value: 1.2,
      limit: 1.25,
      mend: 'Set feet at most 600 mm apart.',
      change: ['choices.mounting.footSpacingMm', 600],
    },
    meets: { value: 2, limit: 1.25 },
    asks: {
      // a load with its factors on may not stand against an allowable resistance
      set: ({ stages }) => {
        if (stages.structure.capacity) stages.structure.capacity.level = 'allowable';
      },
      needs: 'choices.equipment.tile-hook.upliftLevel',
    },
  },
  {
    rule: 'rail-stress',
    fails: {
      set: ({ stages }) => {
        const rail = stages.structure.rails[0];
        if (rail) rail.stressMPa = 200;
      },
      value: 200,
      limit: 180,
      mend: 'Set the feet closer',
    },
    meets: { value: 60, limit: 180 },
    asks: {
      set: ({ stages }) => (stages.structure.level = 'allowable'),
      needs: 'choices.confirmations',
    },
  },
  {
    rule: 'fixing-covering',
    fails: {
      set: (parts) => (north(parts).covering = 'slate'),
      mend: 'Use Tern slate hook.',
      change: ['choices.mounting.fixingSheet', 'slate-hook'],
    },
    meets: {},
  },
  {
    rule: 'gap-under',
    fails: {
      set: ({ view }) => {
        if (view.choices.mounting) view.choices.mounting.gapUnderMm = 40;
      },
      value: 40,
      limit: 50,
      mend: 'Choose 50 mm.',
      mended: 50,
      change: ['choices.mounting.gapUnderMm', 50],
    },
    meets: { value: 100 },
  },
  {
    rule: 'gap-under',
    variant: 'us',
    // 10 in = 254 mm
    fails: {
      set: ({ view }) => {
        if (view.choices.mounting) view.choices.mounting.gapUnderMm = 260;
      },
      value: 260,
      limit: 254,
    },
    meets: {},
  },
  {
    rule: 'proud-of-roof',
    variant: 'gb',
    // 180 + 30 = 210 mm; 200 − 30 = 170 mm fits
    fails: {
      set: ({ view }) => {
        if (view.choices.mounting) view.choices.mounting.gapUnderMm = 180;
      },
      value: 210,
      limit: 200,
      mend: 'Choose 170 mm',
      mended: 200,
      change: ['choices.mounting.gapUnderMm', 170],
    },
    // 100 + 30 mm
    meets: { value: 130, limit: 200 },
  },
];
