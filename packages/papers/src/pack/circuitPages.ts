import type { SourceCircuit, TrunkPlan } from '@eaveline/plan';
import { gap, headline, ledger, type Part, paragraph, type Sheet, table, together } from '../page/index.ts';
import { capital, counted, figure, withUnit } from './figures.ts';
import { mixedColoursPart } from './mixedColoursPart.ts';
import { lineLetters, type Pack, sheetOf, sizeName } from './packContext.ts';
import { headed, pagesOf } from './pagesOf.ts';
import { workingPart } from './workingPart.ts';

/** The schedule of the circuits that carry solar and batteries to the board, and how each figure came about. */
export function circuitPages(pack: Pack): Sheet[] {
  const { circuits } = pack.plan.board;
  if (circuits.length === 0) return [];
  return pagesOf(pack, { no: '05', title: 'Circuits' }, [
    headline(
      boardSentence(pack),
      'Currents at full export or full discharge. Capacity where the cable runs, loop at its far end, hot.',
    ),
    gap(3),
    ...mixedColoursPart(pack),
    schedule(pack),
    gap(3),
    ...boardParts(pack),
    ...circuits.flatMap((circuit) => circuitParts(pack, circuit)),
  ]);
}

function boardSentence({ plan, words }: Pack): string {
  const { circuits, bus, waysNeeded, waysFree } = plan.board;
  const ways = `${counted(waysNeeded, 'way')} needed, ${waysFree === undefined ? 'free ways not counted' : `${waysFree} free`}`;
  const compared =
    bus.comparedA === undefined || bus.limitA === undefined
      ? ''
      : ` Bars: ${figure(bus.comparedA, 0)} of ${withUnit(bus.limitA, 'A', 0)}.`;
  return `${counted(circuits.length, 'circuit')} into the ${words.board}. ${capital(ways)}.${compared}`;
}

function schedule(pack: Pack): Part {
  return table({
    label: 'circuits',
    columns: [
      { head: 'circuit', share: 2.2, weight: 700 },
      { head: 'lines', share: 1.3 },
      { head: 'design, A', share: 1.2, align: 'point' },
      { head: pack.words.breaker, share: 1.9, face: 'close' },
      { head: 'cable', share: 1.4 },
      { head: 'length, m', share: 1.2, align: 'point' },
      { head: 'carries, A', share: 1.3, align: 'point' },
      { head: 'loop, Ω', share: 1.2, align: 'point' },
      { head: 'rise, V', share: 1.1, align: 'point' },
    ],
    rows: pack.plan.board.circuits.map((circuit) => {
      const breaker = sheetOf(pack, circuit.breakerSheetId, 'breaker');
      const trunk = trunkOf(pack, circuit);
      return {
        of: circuit.id,
        cells: [
          circuit.name,
          lineLetters(circuit.lines),
          figure(circuit.designA, 2),
          `${figure(circuit.breakerA, 0)} A, ${breaker.curve === 'US' ? counted(breaker.poles, 'pole') : `type ${breaker.curve}`}`,
          sizeName(sheetOf(pack, circuit.cableSheetId, 'cable').conductor),
          figure(circuit.lengthM, 1),
          figure(circuit.capacity.capacityA, 1),
          circuit.loop === undefined ? 'not known' : figure(circuit.loop.ohm, 2),
          trunk === undefined ? '' : figure(trunk.rise.totalV, 2),
        ],
      };
    }),
  });
}

function trunkOf(pack: Pack, circuit: SourceCircuit): TrunkPlan | undefined {
  return circuit.kind === 'trunk' ? pack.plan.trunks.trunks.find((trunk) => trunk.id === circuit.of) : undefined;
}

/** Lines of the board: what each carries, their difference, the neutral. */
function boardParts({ plan }: Pack): Part[] {
  const { board } = plan;
  const lines = (['L1', 'L2', 'L3'] as const).filter((line) => board.lineA[line] > 0);
  const each = lines.map((line) => `${line} ${withUnit(board.lineA[line], 'A', 1)}`).join(', ');
  const words = [
    `Sources on each line: ${each}.`,
    ...(lines.length > 1 ? [`Largest difference ${withUnit(board.largestDifferenceVA, 'VA', 0)}.`] : []),
    ...(board.neutralA === undefined ? [] : [`Neutral at full sun and no load ${withUnit(board.neutralA, 'A', 1)}.`]),
    `Standing leakage ${withUnit(board.standingLeakageMA, 'mA', 1)}.`,
    ...(board.prospectiveA === undefined ? [] : [`Prospective current ${withUnit(board.prospectiveA, 'A', 0)}.`]),
  ];
  return [
    paragraph(words.join(' ')),
    gap(2),
    ...(board.bus.working === undefined ? [] : [headed('Bars of the board', workingPart(board.bus.working)), gap(3)]),
  ];
}

function circuitParts(pack: Pack, circuit: SourceCircuit): Part[] {
  const trunk = trunkOf(pack, circuit);
  const smaller = circuit.sizes.filter((size) => !size.meets).map((size) => size.why);
  return [
    gap(2),
    headed(
      `${circuit.name}: ${withUnit(circuit.capacity.capacityA, 'A', 1)} where it runs`,
      capacityLedger(pack, circuit),
    ),
    paragraph(
      `Source: ${circuit.capacity.working.source}. ${smaller.length > 0 ? `Smaller does not do: ${smaller.join(' ')}` : ''}`,
      {
        capMm: 2.1,
        ink: 'quiet',
      },
    ),
    gap(2),
    ...(trunk === undefined ? [] : [riseLedger(pack, trunk), gap(2)]),
    ...(circuit.loop === undefined
      ? [paragraph('Loop not worked out: the loop of the supply is not known.', { ink: 'quiet' })]
      : [workingPart(circuit.loop.working, 1)]),
    gap(2),
  ];
}

/** Table current, one correction after another, what is left. */
function capacityLedger(pack: Pack, circuit: SourceCircuit): Part {
  const { tableA, factors, capacityA } = circuit.capacity;
  let running = tableA;
  const size = sizeName(sheetOf(pack, circuit.cableSheetId, 'cable').conductor);
  const sum = ledger({
    lines: [
      { what: `${size} by the table`, value: withUnit(tableA, 'A', 1) },
      ...factors.map(({ name, factor }) => {
        running *= factor;
        return { what: name, factor: `× ${figure(factor, 2)}`, value: withUnit(running, 'A', 1) };
      }),
    ],
    total: {
      what: `carries; design ${withUnit(circuit.designA, 'A', 2)}, ${pack.words.breaker} ${withUnit(circuit.breakerA, 'A', 0)}`,
      value: withUnit(capacityA, 'A', 1),
    },
  });
  return together(sum);
}

/** Rise from the street outward to the highest unit. */
function riseLedger(pack: Pack, { name, rise, homeRun, mainsKnown, spans, currentA }: TrunkPlan): Part {
  const along = spans.reduce((sum, span) => sum + span.lengthM, 0);
  return together(
    ledger({
      lines: [
        {
          what: mainsKnown ? 'Mains, street to board' : 'Mains not known: rise stops at the board',
          value: withUnit(rise.mainsV, 'V', 3),
        },
        {
          what: `${capital(pack.words.homeRun)}, at ${withUnit(currentA, 'A', 2)}`,
          factor: withUnit(homeRun.lengthM, 'm', 1),
          value: withUnit(rise.homeRunV, 'V', 3),
        },
        {
          what: 'Trunk to its highest unit',
          factor: `${withUnit(along, 'm', 2)} in all`,
          value: withUnit(rise.trunkV, 'V', 3),
        },
      ],
      total: {
        what: `Rise of trunk ${name}, ${figure(100 * rise.share, 2)} % of nominal`,
        value: withUnit(rise.totalV, 'V', 3),
      },
    }),
  );
}
