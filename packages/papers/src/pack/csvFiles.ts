import type { Job } from '@eaveline/job';
import type { Plan } from '@eaveline/plan';
import { writeCsv } from './csv.ts';
import { type CsvTable, tasksTable, testsTable, yes } from './csvWork.ts';
import { monthNames } from './figures.ts';

/** The tables of a pack by file name. Figures unrounded, units in the heads; a cell left empty is not known. */
export function csvFiles({ job, plan }: { readonly job: Job; readonly plan: Plan }): Record<string, string> {
  const tables: Readonly<Record<string, CsvTable>> = {
    findings: findings(plan),
    kit: kit(plan),
    cuts: cuts(plan),
    circuits: circuits(plan, job),
    drops: drops(plan),
    tests: testsTable(plan),
    tasks: tasksTable(plan),
    'energy-months': energyMonths(plan),
  };
  return Object.fromEntries(
    Object.entries(tables).map(([name, { heads, rows }]) => [`${name}.csv`, writeCsv(heads, rows)]),
  );
}

function findings({ checks }: Plan): CsvTable {
  return {
    heads: [
      'id',
      'rule',
      'about',
      'state',
      'limit unconfirmed',
      'stops',
      'title',
      'value',
      'sense',
      'limit',
      'unit',
      'margin',
      'clause',
      'edition',
      'known from',
      'first mend',
    ],
    rows: checks.findings.map((one) => [
      one.id,
      one.rule,
      one.about.name,
      one.state,
      yes(one.unconfirmed),
      yes(one.stops),
      one.title,
      one.value,
      one.sense,
      one.limit,
      one.unit,
      one.margin,
      one.clause,
      one.edition,
      one.seen,
      one.mends[0]?.words,
    ]),
  };
}

function kit({ kit }: Plan): CsvTable {
  return {
    heads: ['id', 'group', 'name', 'count', 'unit', 'counted from'],
    rows: kit.lines.map((line) => [
      line.id,
      line.group,
      line.name,
      line.count,
      line.unit,
      line.working.formula ?? line.working.source,
    ]),
  };
}

function cuts({ kit }: Plan): CsvTable {
  return {
    heads: ['bar', 'stock, mm', 'rail id', 'rail', 'piece, mm', 'left of the bar, mm'],
    rows: kit.cuts.flatMap((cut) =>
      cut.pieces.map((piece) => [cut.bar, cut.stockMm, piece.railId, piece.railName, piece.lengthMm, cut.offcutMm]),
    ),
  };
}

function circuits({ board }: Plan, job: Job): CsvTable {
  const nameOf = (id: string): string | undefined => job.choices.equipment[id]?.name;
  return {
    heads: [
      'id',
      'circuit',
      'lines',
      'design, A',
      'breaker',
      'breaker, A',
      'cable',
      'length, m',
      'table, A',
      'correction',
      'carries, A',
      'loop hot, ohm',
      'loop cold, ohm',
      'loop limit, ohm',
    ],
    rows: board.circuits.map((one) => [
      one.id,
      one.name,
      one.lines.join(' '),
      one.designA,
      nameOf(one.breakerSheetId),
      one.breakerA,
      nameOf(one.cableSheetId),
      one.lengthM,
      one.capacity.tableA,
      one.capacity.factors.reduce((product, { factor }) => product * factor, 1),
      one.capacity.capacityA,
      one.loop?.ohm,
      one.loop?.coldOhm,
      one.loop?.limitOhm,
    ]),
  };
}

function drops({ trunks }: Plan): CsvTable {
  return {
    heads: [
      'trunk',
      'drop',
      'number',
      'unit id',
      'modules',
      'line',
      'from feed, m',
      'along rail, mm',
      'above board, V',
      'above point of supply, V',
    ],
    rows: trunks.trunks.flatMap((trunk) =>
      trunk.drops.map((drop) => [
        trunk.name,
        drop.name,
        drop.number,
        drop.unitId,
        drop.moduleNames.join(' '),
        drop.line ?? trunk.lines.join(' '),
        drop.fromFeedM,
        drop.alongRailMm,
        drop.aboveBoardV,
        trunk.mainsKnown ? drop.aboveSupplyV : undefined,
      ]),
    ),
  };
}

function energyMonths({ energy }: Plan): CsvTable {
  return {
    heads: ['month', 'energy, kWh'],
    rows: energy.monthlyKwh.map((kwh, month) => [monthNames[month], kwh]),
  };
}
