import type { Job } from '@eaveline/job';
import type { CheckView } from './context.ts';

/** The parts of a job that rules read. A signature that a later one names as superseded no longer counts. */
export function viewOf({ state, facts, choices, records }: Job): CheckView {
  const { site, network, supply, board, roof, walls, loads } = facts;
  const { rules, equipment, rows, modules, units, trunks, batteries, backup } = choices;
  const { mounting, wind, parts, setbacks, exportLimitSetVA, labels, confirmations } = choices;
  const signatures = Object.entries(records.signatures);
  const superseded = new Set(signatures.map(([, { supersedes }]) => supersedes));
  return {
    state,
    facts: { site, network, supply, board, roof, walls, loads: { circuits: loads.circuits } },
    choices: {
      rules,
      equipment,
      rows,
      modules,
      units,
      trunks,
      batteries,
      backup,
      mounting,
      wind,
      parts,
      setbacks,
      exportLimitSetVA,
      labels,
      confirmations,
    },
    signed: signatures.filter(([id]) => !superseded.has(id)).map(([, { of }]) => of),
  };
}
