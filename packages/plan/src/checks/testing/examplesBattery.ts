import type { Parts } from './draft.ts';
import type { Examples } from './example.ts';

const wall = ({ view }: Parts) => {
  const found = view.facts.walls.wall;
  if (found === undefined) throw new Error('the case has a wall');
  return found;
};
const store = ({ view }: Parts) => {
  const found = view.choices.batteries.store;
  if (found === undefined) throw new Error('the case has a battery');
  return found;
};
const hangAt = (parts: Parts, leftMm: number) => {
  const { place } = store(parts);
  if (place) place.leftMm = leftMm;
};
const fridge = ({ view }: Parts) => {
  const found = view.facts.loads.circuits.fridge;
  if (found === undefined) throw new Error('the case has a fridge');
  return found;
};
const start = ({ stages }: Parts) => {
  const found = stages.backup.starts[0];
  if (found === undefined) throw new Error('the case has a motor');
  return found;
};
const backup = ({ view }: Parts) => {
  if (view.choices.backup === undefined) throw new Error('the case has a backup');
  return view.choices.backup;
};
const fitted = (parts: Parts, solarA: number, batteryA: number) => {
  const { stages } = parts;
  stages.trunks.lineA.L1 = solarA;
  stages.trunks.lineVA.L1 = 230 * solarA;
  stages.board.lineA.L1 = solarA + batteryA;
  stages.board.lineVA.L1 = 230 * (solarA + batteryA);
};

/** Worked examples: battery, backup, network and papers. */
export const examplesBattery: readonly Examples[] = [
  {
    rule: 'battery-place',
    fails: { set: (parts) => (wall(parts).place = 'bedroom'), mend: 'Choose a wall outside' },
    meets: {},
    asks: { set: (parts) => delete store(parts).place, needs: 'choices.batteries.store.place' },
  },
  {
    rule: 'battery-clearance',
    // the window ends at 1500 mm, the battery begins at 1980 mm: 480 mm of 600; 120 mm to the right mends it
    fails: {
      set: (parts) => hangAt(parts, 1980),
      value: 480,
      limit: 600,
      mend: 'Move it 120 mm to the right.',
      mended: 600,
      change: ['choices.batteries.store.place.leftMm', 2100],
    },
    // 3000 − 1500 mm
    meets: { value: 1500, limit: 600 },
  },
  {
    rule: 'battery-clearance',
    variant: 'us',
    // 2300 − 1500 = 800 mm of 914 (3 ft)
    fails: {
      set: (parts) => hangAt(parts, 2300),
      value: 800,
      limit: 914,
      mend: 'Move it 114 mm to the right.',
      change: ['choices.batteries.store.place.leftMm', 2414],
    },
    meets: { value: 1500, limit: 914 },
  },
  {
    rule: 'battery-barrier',
    fails: {
      set: (parts) => (wall(parts).habitableBehind = true),
      mend: 'Put a barrier behind it.',
      change: ['choices.batteries.store.barrier', true],
    },
    meets: {},
    asks: { set: (parts) => delete wall(parts).combustible, needs: 'facts.walls.wall.combustible' },
  },
  {
    rule: 'battery-vehicles',
    fails: {
      set: (parts) => (wall(parts).vehicles = true),
      mend: 'Set a bollard.',
      change: ['choices.batteries.store.bollard', true],
    },
    meets: {},
    asks: { set: (parts) => delete wall(parts).vehicles, needs: 'facts.walls.wall.vehicles' },
  },
  {
    rule: 'battery-size',
    variant: 'us',
    // nine batteries of 9.2 kWh are 82.8 kWh
    fails: {
      set: (parts) => {
        const one = store(parts);
        for (let n = 2; n <= 9; n++) parts.view.choices.batteries[`store-${n}`] = one;
      },
      value: 82.8,
      limit: 80,
      mend: 'Spread the batteries',
    },
    meets: { value: 9.2, limit: 80 },
  },
  {
    rule: 'backup-running',
    // 4200 VA of 0.9 · 4600 = 4140 VA; the fridge's 150 VA of the 4200 are enough to shed
    fails: {
      set: ({ stages }) => {
        const line = stages.backup.byLine[0];
        if (line) line.runningVA = 4200;
      },
      value: 4200,
      limit: 4140,
      mend: 'Shed Fridge',
      change: ['choices.backup.circuits.fridge.shed', true],
    },
    meets: { value: 150, limit: 4140 },
  },
  {
    rule: 'backup-start',
    fails: {
      set: (parts) =>
        Object.assign(start(parts), {
          withRestVA: 9200,
          verdict: 'will not',
          mends: [{ words: 'Leave Fridge off the backup.' }],
        }),
      value: 9200,
      limit: 7000,
      mend: 'Leave Fridge off the backup.',
    },
    meets: { value: 1380, limit: 7000 },
    asks: {
      set: (parts) => {
        delete start(parts).withRestVA;
        start(parts).verdict = 'plate missing';
      },
      needs: 'facts.loads.circuits.fridge.motor.lockedRotorA',
    },
  },
  {
    rule: 'backup-solar',
    // 7360 ÷ 4600 = 1.60, the battery's sheet says 1.5; without trunk A 5760 ÷ 4600 = 1.252
    fails: {
      set: ({ stages }) => Object.assign(stages.backup, { solarOnBackupVA: 7360, solarShare: 1.6 }),
      value: 1.6,
      limit: 1.5,
      mend: 'Leave',
      mended: 1.2522,
      change: ['choices.backup.trunks.a', false],
    },
    // 1600 ÷ 4600
    meets: { value: 0.3478, limit: 1.5 },
  },
  {
    rule: 'backup-lines',
    fails: {
      set: ({ stages }) => {
        const circuit = stages.backup.circuits[0];
        if (circuit) Object.assign(circuit, { fed: false, standsOn: ['L1', 'L2', 'L3'] });
      },
      mend: 'Leave it on the grid side.',
      change: ['choices.backup.circuits.fridge.moved', false],
    },
    meets: {},
  },
  {
    rule: 'left-dark',
    fails: {
      set: ({ stages }) => {
        const circuit = stages.backup.circuits[0];
        if (circuit) circuit.moved = false;
        stages.backup.leftDark = ['fridge'];
      },
      mend: 'Move it.',
    },
    meets: {},
  },
  {
    rule: 'backup-residual-device',
    fails: {
      set: (parts) => (fridge(parts).residualDevice = false),
      mend: 'Fit one',
      change: ['choices.backup.circuits.fridge.residualDevice', true],
    },
    meets: {},
    asks: {
      set: (parts) => delete fridge(parts).residualDevice,
      needs: 'facts.loads.circuits.fridge.residualDevice',
    },
  },
  {
    rule: 'backup-neutral',
    fails: {
      set: (parts) => {
        fridge(parts).neutralTraced = false;
        parts.view.state = 'on site';
      },
      mend: 'Trace it',
    },
    meets: {},
    asks: {
      set: (parts) => delete fridge(parts).neutralTraced,
      needs: 'facts.loads.circuits.fridge.neutralTraced',
    },
  },
  {
    rule: 'island-earthing',
    // the grid's neutral stays through: a changeover with a bond relay makes a second link
    fails: {
      set: (parts) => (backup(parts).changeoverSheet = 'sluice-63-one'),
      mend: 'Use Plain 63.',
      change: ['choices.backup.changeoverSheet', 'plain-63'],
    },
    meets: {},
  },
  {
    rule: 'island-earthing',
    variant: 'gb',
    fails: {
      set: ({ view }) => (view.facts.board.electrode = false),
      mend: 'Drive an electrode.',
      change: ['choices.backup.electrode', true],
    },
    meets: {},
    asks: { set: ({ view }) => delete view.facts.board.electrode, needs: 'facts.board.electrode' },
  },
  {
    rule: 'changeover-rating',
    fails: { set: ({ stages }) => (stages.backup.changeoverNeedA = 80), value: 80, limit: 63, mend: 'Choose a larger' },
    meets: { value: 27, limit: 63 },
  },
  {
    rule: 'network-threshold',
    variant: 'gb',
    // ten units are 17.39 A; 16 A ÷ 1.7391 A = 9.2, so nine stay below. On site without an answer it fails
    fails: {
      set: (parts) => {
        fitted(parts, 4000 / 230, 20);
        delete parts.view.facts.network.approvalNumber;
        parts.view.state = 'on site';
      },
      value: 4000 / 230,
      limit: 16,
      mend: 'Apply to the DNO',
    },
    // four units, no battery: 6.957 A, told within 28 days
    meets: {
      set: (parts) => {
        parts.view.choices.batteries = {};
      },
      value: 1600 / 230,
      limit: 16,
    },
    // four units and the battery: 26.957 A, asked first
    asks: {
      set: ({ view }) => delete view.facts.network.approvalNumber,
      value: 1600 / 230 + 20,
      limit: 16,
      needs: 'facts.network.approvalNumber',
    },
  },
  {
    rule: 'export-limit',
    // 1500 VA are set and 1600 can be made; the network lets 1200 out
    fails: {
      set: ({ view }) => (view.facts.network.exportLimitVAPerLine = 1200),
      value: 1.5,
      limit: 1.2,
      mend: 'Set the export limit to 1.20 kVA',
      mended: 1.2,
      change: ['choices.exportLimitSetVA', 1200],
    },
    meets: { value: 1.5, limit: 5 },
    asks: {
      set: ({ view }) => delete view.facts.network.exportLimitVAPerLine,
      needs: 'facts.network.exportLimitVAPerLine',
    },
  },
  {
    rule: 'network-approval',
    // 1600 + 4600 VA are fitted
    fails: {
      set: ({ view }) => (view.facts.network.approvedVA = 5000),
      value: 6.2,
      limit: 5,
      mend: 'Apply to',
    },
    meets: { value: 6.2, limit: 10 },
    asks: { set: ({ view }) => delete view.facts.network.approvalNumber, needs: 'facts.network.approvalNumber' },
  },
  {
    rule: 'labels',
    fails: {
      set: ({ view }) => (view.choices.labels['solar-present'] = false),
      mend: 'Print it.',
      change: ['choices.labels.solar-present', true],
    },
    meets: {},
  },
  {
    rule: 'documents',
    fails: { set: ({ view }) => (view.state = 'handed over'), mend: 'Get it from the' },
    meets: {},
    asks: { set: ({ view }) => (view.state = 'tested'), needs: 'records.signatures, document:electrical-certificate' },
  },
  {
    rule: 'design-sign-off',
    fails: { set: ({ view }) => (view.state = 'handed over'), mend: 'Sign it' },
    meets: {
      set: ({ view }) => {
        view.state = 'letter';
        view.designSigned = { id: 's', name: 'Nia', on: '2026-05-12', of: 'this design', changed: [] };
      },
    },
    asks: { set: ({ view }) => (view.state = 'letter'), needs: 'records.signatures, design' },
  },
];
