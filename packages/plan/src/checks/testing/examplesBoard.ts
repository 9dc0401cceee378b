import type { Parts } from './draft.ts';
import type { Examples } from './example.ts';

const trunkA = ({ stages }: Parts) => {
  const trunk = stages.trunks.trunks[0];
  if (trunk === undefined) throw new Error('the case has a trunk');
  return trunk;
};
const circuitA = ({ stages }: Parts) => {
  const circuit = stages.board.circuits[0];
  if (circuit === undefined) throw new Error('the case has a circuit');
  return circuit;
};
const choiceA = ({ view }: Parts) => {
  const trunk = view.choices.trunks.a;
  if (trunk === undefined) throw new Error('the case has a trunk');
  return trunk;
};
/** A rise of the trunk, share and options moved with it. */
const rises = (parts: Parts, totalV: number, feedV: number, sizeV: number) => {
  const trunk = trunkA(parts);
  trunk.rise.share *= totalV / trunk.rise.totalV;
  trunk.rise.totalV = totalV;
  trunk.feedOptions = [
    { drop: 1, totalV },
    { drop: 2, totalV: feedV + 0.1 },
    { drop: 3, totalV: feedV },
    { drop: 4, totalV },
  ];
  trunk.sizeOptions = [
    { cableSheetId: 'cable-6', totalV },
    { cableSheetId: 'cable-10', totalV: sizeV },
  ];
};
/** Three source breakers in a board of some heat, the fullest at a share of its rating. */
const threeBreakers = (parts: Parts, heatC: number, fullestA: number) => {
  parts.view.facts.board.ambientC = heatC;
  const [first, second] = parts.stages.board.circuits;
  if (first === undefined || second === undefined) throw new Error('the case has two circuits');
  second.designA = 5;
  first.designA = fullestA;
  parts.stages.board.circuits.push({ ...second, id: 'trunk:b', of: 'b', name: 'Trunk B' });
};
const threePhase = (parts: Parts, differenceVA: number) => {
  parts.view.facts.supply.system = 'three-phase';
  parts.stages.board.largestDifferenceVA = differenceVA;
};
const residual = (parts: Parts, sheetId: string) => {
  choiceA(parts).breakerSheet = sheetId;
  circuitA(parts).breakerSheetId = sheetId;
};

/** Worked examples: trunks and board. */
export const examplesBoard: readonly Examples[] = [
  {
    rule: 'units-per-trunk',
    // B16 ÷ 1.7391 A = 9.2: nine units; ten are one too many
    fails: {
      set: (parts) => {
        residual(parts, 'breaker-b16');
        const trunk = trunkA(parts);
        trunk.unitCount = 10;
        trunk.currentA = 10 * trunk.unitA;
      },
      value: 10,
      limit: 9,
      mend: 'Move 1 unit to another trunk.',
    },
    // 20 A ÷ 1.7391 A = 11.5: eleven, breaker and cable alike
    meets: { value: 4, limit: 11 },
  },
  {
    rule: 'units-per-trunk',
    variant: 'us',
    // 20 A · 0.8 ÷ 1.25 A = 12.8: twelve, and the sheet says twelve
    fails: {
      set: (parts) => {
        const trunk = trunkA(parts);
        trunk.unitCount = 13;
        trunk.currentA = 13 * trunk.unitA;
      },
      value: 13,
      limit: 12,
    },
    meets: { value: 4, limit: 12 },
  },
  {
    rule: 'trunk-rise',
    // 2 % of 230 V = 4.60 V; fed at the third drop 4.37 V, in 10 mm² 4.02 V
    fails: {
      set: (parts) => rises(parts, 5.42, 4.37, 4.02),
      value: 5.42,
      limit: 4.6,
      mend: 'Feed it at the third drop.',
      mended: 4.37,
      change: ['choices.trunks.a.feedDrop', 3],
    },
    meets: { value: 1.15, limit: 4.6 },
    asks: {
      set: (parts) => {
        trunkA(parts).mainsKnown = false;
        parts.view.facts.supply.mains = {};
      },
      needs: 'facts.supply.mains.lengthM',
    },
  },
  {
    rule: 'trunk-rise',
    variant: 'gb',
    // 1 % of 230 V = 2.30 V; no feed is enough (2.35 V), 10 mm² is (2.10 V)
    fails: {
      set: (parts) => rises(parts, 2.6, 2.35, 2.1),
      value: 2.6,
      limit: 2.3,
      mend: 'Run the home run in 10 mm².',
      mended: 2.1,
      change: ['choices.trunks.a.homeRun.cableSheet', 'cable-10'],
    },
    meets: { value: 1.15, limit: 2.3 },
  },
  {
    rule: 'trunk-rise',
    variant: 'us',
    // 2 % of 240 V between the units' terminals = 4.80 V. Feed 5.0 V and size 5.1 V are each too little; both:
    // 5.0 + 5.1 − 5.4 = 4.7 V
    fails: {
      set: (parts) => {
        rises(parts, 5.4, 5, 5.1);
        const [thin, thick] = trunkA(parts).sizeOptions;
        if (thin && thick) [thin.cableSheetId, thick.cableSheetId] = ['cable-10awg', 'cable-8awg'];
      },
      value: 5.4,
      limit: 4.8,
      mend: 'Feed it at the third drop and run the home run in 8 AWG.',
      mended: 4.7,
    },
    meets: { value: 1.2, limit: 4.8 },
  },
  {
    rule: 'trunk-rise-with-battery',
    // 5.0 V with the battery, of which 0.9 V come on top of the trunk's own 4.1 V; fed at the third drop 3.5 + 0.9 = 4.4 V
    fails: {
      set: (parts) => {
        rises(parts, 4.1, 3.5, 3.9);
        trunkA(parts).riseWithBattery = {
          totalV: 5,
          working: { name: 'by hand', value: 5, unit: 'V', source: 'the case' },
        };
      },
      value: 5,
      limit: 4.6,
      mend: 'Feed it at the third drop.',
      mended: 4.4,
      change: ['choices.trunks.a.feedDrop', 3],
    },
    meets: {
      set: (parts) => {
        trunkA(parts).riseWithBattery = {
          totalV: 2,
          working: { name: 'by hand', value: 2, unit: 'V', source: 'the case' },
        };
      },
      value: 2,
      limit: 4.6,
    },
    asks: {
      set: (parts) => {
        trunkA(parts).mainsKnown = false;
        parts.view.facts.supply.mains = {};
        trunkA(parts).riseWithBattery = {
          totalV: 2,
          working: { name: 'by hand', value: 2, unit: 'V', source: 'the case' },
        };
      },
      needs: 'facts.supply.mains.lengthM',
    },
  },
  {
    rule: 'drop-reach',
    fails: {
      set: (parts) => {
        const drop = trunkA(parts).drops[1];
        if (drop) drop.reach = { needMm: 400, haveMm: 340 };
      },
      value: 400,
      limit: 340,
      mend: 'Splice a jumper in',
    },
    meets: { value: 100, limit: 340 },
  },
  {
    rule: 'trunk-caps',
    // the job names its small parts, and no cap among them
    fails: {
      set: ({ view }) => (view.choices.parts = { clips: 'cable-clip' }),
      mend: 'Add end cap to the parts.',
    },
    meets: { set: ({ view }) => (view.choices.parts = { clips: 'cable-clip', caps: 'end-cap' }) },
  },
  {
    rule: 'breaker-rating',
    // 22 A on a C20 made for continuous duty; the C25 carries it and its cable carries 40 A
    fails: {
      set: (parts) => (circuitA(parts).designA = 22),
      value: 22,
      limit: 20,
      mend: 'Fit C25 breaker',
      change: ['choices.trunks.a.breakerSheet', 'breaker-c25'],
    },
    meets: {},
  },
  {
    rule: 'breaker-rating',
    variant: 'us',
    // 16.25 A on 20 A · 0.8 = 16 A
    fails: {
      set: (parts) => (circuitA(parts).designA = 16.25),
      value: 16.25,
      limit: 16,
      mend: 'Fit 30 A breaker',
      change: ['choices.trunks.a.breakerSheet', 'breaker-us-30'],
    },
    meets: {},
  },
  {
    rule: 'breaker-continuous',
    // 40 °C: a lone breaker carries 1 − 0.005 · 10 = 95 %, three side by side 0.8 · 95 = 76 %. 19.5 A of 20 A are 97.5 %
    fails: { set: (parts) => threeBreakers(parts, 40, 19.5), value: 97.5, limit: 76, mend: 'Leave a blank way' },
    // 15 A of 20 A are 75 %
    meets: { set: (parts) => threeBreakers(parts, 40, 15), value: 75, limit: 76 },
    // 15.652 A (nine units) of 20 A are 78 %: more than 76, less than 95
    asks: { set: (parts) => threeBreakers(parts, 40, 15.652), value: 78.26, limit: 76, needs: 'choices.confirmations' },
  },
  {
    rule: 'cable-capacity',
    fails: {
      set: (parts) => {
        circuitA(parts).capacity.capacityA = 18;
        const size = circuitA(parts).sizes[0];
        if (size) size.meets = false;
      },
      value: 18,
      limit: 20,
      mend: 'Run it in 10 mm².',
      mended: 55,
      change: ['choices.trunks.a.homeRun.cableSheet', 'cable-10'],
    },
    meets: {},
  },
  {
    rule: 'fault-loop',
    // over the table's 1.20 Ω; a residual part of 30 mA lets 50 V ÷ 0.03 A = 1667 Ω pass
    fails: {
      set: (parts) => {
        const { loop } = circuitA(parts);
        if (loop) loop.ohm = 1.6;
      },
      value: 1.6,
      limit: 1.2,
      mend: 'Fit C20 residual breaker 30 mA type A',
      change: ['choices.trunks.a.breakerSheet', 'residual-c20-a'],
    },
    meets: { value: 0.55, limit: 1.2 },
    asks: { set: (parts) => delete circuitA(parts).loop, needs: 'facts.supply.loopOhm' },
  },
  {
    rule: 'breaking-capacity',
    fails: {
      set: ({ view }) => (view.facts.supply.prospectiveA = 6500),
      value: 6.5,
      limit: 6,
      mend: 'Choose devices for more',
    },
    meets: { value: 1.5, limit: 6 },
    // the loop to earth still gives a figure, and it is not judged by
    asks: { set: ({ view }) => delete view.facts.supply.prospectiveA, needs: 'facts.supply.prospectiveA' },
  },
  {
    rule: 'bus',
    // 63 + 46 = 109 A on bars of 100 A: a main of 63 − 9 = 54 A would just do
    fails: {
      set: ({ stages }) => Object.assign(stages.board.bus, { sourceA: 46, comparedA: 109 }),
      value: 109,
      limit: 100,
      mend: 'A main of 54 A or less',
      mended: 100,
    },
    // 63 + 6.957 + 20 = 89.957 A
    meets: { value: 89.957, limit: 100 },
    asks: {
      set: ({ stages }) => {
        delete stages.board.bus.busA;
        delete stages.board.bus.comparedA;
        delete stages.board.bus.limitA;
      },
      needs: 'facts.board.busA',
    },
  },
  {
    rule: 'free-ways',
    fails: { set: ({ stages }) => (stages.board.waysFree = 1), value: 2, limit: 1, mend: 'Fit a sub-board' },
    meets: { value: 2, limit: 6 },
    asks: { set: ({ stages }) => delete stages.board.waysFree, needs: 'facts.board.freeWays' },
  },
  {
    rule: 'line-difference',
    variant: 'eu',
    fails: { set: (parts) => threePhase(parts, 5000), value: 5, limit: 4.6, mend: 'Put a trunk' },
    meets: { set: (parts) => threePhase(parts, 4000), value: 4, limit: 4.6 },
  },
  {
    rule: 'standing-leakage',
    // four units of 2.6 mA on a 30 mA device: 10.4 mA, a third of it is 10 mA
    fails: {
      set: (parts) => {
        residual(parts, 'residual-c20-a');
        const unit = parts.view.choices.equipment['alder-400'];
        if (unit?.kind === 'unit') unit.standingLeakageMA = 2.6;
      },
      value: 10.4,
      limit: 10,
      mend: 'Split the trunk',
    },
    // four units of 0.35 mA
    meets: { set: (parts) => residual(parts, 'residual-c20-a'), value: 1.4, limit: 10 },
  },
  {
    rule: 'standing-leakage',
    variant: 'gb',
    // four of 2.3 mA are 9.2 mA; 30 % of 30 mA are 9 mA
    fails: {
      set: (parts) => {
        residual(parts, 'residual-c20-a');
        const unit = parts.view.choices.equipment['alder-400'];
        if (unit?.kind === 'unit') unit.standingLeakageMA = 2.3;
      },
      value: 9.2,
      limit: 9,
    },
    meets: { set: (parts) => residual(parts, 'residual-c20-a'), value: 1.4, limit: 9 },
  },
  {
    rule: 'breaker-both-ways',
    fails: {
      set: (parts) => residual(parts, 'residual-b16-one-way'),
      mend: 'Fit B16 residual breaker 30 mA type A',
      change: ['choices.trunks.a.breakerSheet', 'residual-b16-a'],
    },
    meets: {},
  },
  {
    rule: 'surge',
    variant: 'gb',
    fails: { set: ({ view }) => (view.facts.board.surgeDevice = false), mend: 'Add a type 2 surge device' },
    meets: {},
    asks: { set: ({ view }) => delete view.facts.board.surgeDevice, needs: 'facts.board.surgeDevice' },
  },
  {
    rule: 'wiring-colours',
    fails: { set: ({ view }) => (view.facts.board.wiring = 'us-120-240'), mend: 'Look at the board again' },
    meets: {},
    asks: { set: ({ view }) => (view.facts.board.wiringMixed = true), needs: 'facts.board.wiringMixed' },
  },
  {
    rule: 'board-backing',
    fails: { set: ({ view }) => (view.facts.board.backing = 'asbestos'), mend: 'A licensed remover' },
    meets: {},
    asks: {
      set: ({ view }) => {
        view.facts.board.backing = 'unknown';
        view.facts.site.yearBuilt = 1978;
      },
      needs: 'facts.board.backing',
    },
  },
];
