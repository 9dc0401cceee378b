import { designSignature, type Job } from '@eaveline/job';
import type { CheckView } from './context.ts';

/** The parts of a job that rules read. A signature that a later one names as superseded no longer counts. */
export function viewOf(job: Job): CheckView {
  const { state, facts, choices, records } = job;
  const { site, network, supply, board, roof, walls, loads } = facts;
  const { rules, equipment, rows, modules, units, trunks, batteries, backup } = choices;
  const { mounting, wind, parts, setbacks, exportLimitSetVA, labels, confirmations } = choices;
  const signatures = Object.entries(records.signatures);
  const designSigned = designSignature(job);
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
    ...(designSigned === undefined ? {} : { designSigned }),
  };
}
