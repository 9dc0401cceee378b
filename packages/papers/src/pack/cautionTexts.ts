import type { Job } from '@eaveline/job';

/** A caution for a step of this job: when, the hazard with what to do, and the usual practice. */
export interface StepCaution {
  readonly step: string;
  readonly head: string;
  readonly body: string;
  /** Whether this house has the hazard. Left out where every job has it. */
  readonly when?: (job: Job) => boolean;
}

const planes = (job: Job) => Object.values(job.facts.roof.planes);
const hasBattery = (job: Job) => Object.keys(job.choices.batteries).length > 0;
const hasBackup = (job: Job) => job.choices.backup !== undefined;
const maybeAsbestos = (job: Job) =>
  planes(job).some((plane) => plane.asbestos !== 'no') ||
  ['asbestos', 'unknown', undefined].includes(job.facts.board.backing) ||
  (job.facts.site.yearBuilt ?? 0) < (job.choices.rules.pack === 'iec-eu' ? 2000 : 1990);

/**
 * Hazards by step, in the order of the work. Common practice, no source, unless the text names one; distances and
 * heights at which a guard is asked for are the country's own law.
 */
export const stepCautions: readonly StepCaution[] = [
  {
    step: 'On arrival',
    head: 'Say who is in charge, where the nearest hospital is, where to meet in a fire.',
    body: 'Site talk signed. Nobody walks under the eaves while others work above.',
  },
  {
    step: 'Before anybody goes up',
    head: 'Treat every old sheet and every skylight as fragile.',
    body: 'Look from a pole or a drone first; boards to walk on, covers over skylights.',
    when: (job) =>
      planes(job).some((plane) => plane.fragile !== false) ||
      Object.values(job.facts.roof.obstructions).some((thing) => thing.kind === 'skylight'),
  },
  {
    step: 'Before anything is drilled, cut or brushed',
    head: 'Asbestos: if nobody is sure, it is. Do not drill, cut or brush it.',
    body: 'A sample first, then a licensed remover. It may be in the roof, under the eaves and behind an old board.',
    when: maybeAsbestos,
  },
  {
    step: 'Ladder',
    head: 'Tie the ladder top and bottom, one out for four up, one metre past the edge.',
    body: 'Modules never go up a ladder by hand.',
  },
  {
    step: 'At the edge',
    head: 'Nobody works outside the guard.',
    body: 'Scaffold or rail first; a harness only where neither can stand, and then short enough to hold you back from the edge.',
  },
  {
    step: 'Lifting',
    head: 'A module is a sail. Two people, two hands each; stop at the gust the lead has set.',
    body: 'Gusts above 10\u00a0m/s with modules in hand, a wet or frosted roof, lightning within 10\u00a0km, a roof above 60\u00a0°C: the lead stops the work and nobody overrules it.',
  },
  {
    step: 'Drilling',
    head: 'Scan first: cables and pipes run under the roof. Isolate the lighting circuits there.',
    body: 'Metal roof, gutters and battens may be live from a fault: main off before you touch them.',
  },
  {
    step: 'Grinding tile or slate',
    head: 'Silica dust: cut wet, wear a mask, glasses and ear protection.',
    body: 'Grind down wind, and nobody below.',
    when: (job) => planes(job).some((plane) => /tile|slate/.test(plane.covering)),
  },
  {
    step: 'Heat',
    head: 'Drink a glass of water every twenty minutes. Shade, and an early start.',
    body: 'Work in pairs; look at each other.',
  },
  {
    step: 'D.c. plugs',
    head: 'A module in light is live and cannot be switched off. Never open a plug under load.',
    body: 'Cover it, or cut the a.c. first. One module at a time, gloves, plugs closed. The arc is small and burns.',
  },
  {
    step: 'Trunk',
    head: 'Lock the breaker of the trunk before you touch a drop. Prove it dead at the roof box.',
    body: 'Caps on every open end. No supply, no inverter: but prove it, do not trust it.',
  },
  {
    step: 'At the board',
    head: 'Main off is not dead. List what stays live and cover it.',
    body: 'The network isolates for work on the service side. Arc-flash dress where it cannot be dead.',
  },
  {
    step: 'Several sources',
    head: 'Isolate all, lock all, prove every pair of conductors.',
    body: 'Battery a.c., solar a.c., main; lock; key in your pocket. Prove the tester, test line, neutral and earth against each other, prove the tester again.',
    when: hasBattery,
  },
  {
    step: 'Neutral',
    head: 'An open neutral burns the house. Neutral first on, last off, and to its torque.',
    body: 'Measure every line to neutral before a load is switched on.',
    when: (job) => job.facts.supply.system !== 'single-phase',
  },
  {
    step: 'Current transformers',
    head: 'Never open the secondary of a current transformer that carries current.',
    body: 'Short it before you unplug it. Those with a voltage output are exempt.',
  },
  {
    step: 'Battery',
    head: 'A battery cannot be made dead. No jewellery, insulated tools, terminals covered.',
    body: 'Stair trolley, two to four people, wall and floor checked. One that was dropped stands outdoors, 15\u00a0m away. Last cover on before energy.',
    when: hasBattery,
  },
  {
    step: 'Backup test',
    head: 'With the grid off the board is live. One person stays at it; telephones on.',
    body: 'Residual devices are tried in island as well: no trip there means no bond of neutral and earth. Stop.',
    when: hasBackup,
  },
  {
    step: 'Leaving the roof',
    head: 'The last one down counts people and tools before the guard comes off.',
    body: 'Photographs of every seal and of the whole roof.',
  },
  {
    step: 'Years later',
    head: 'Plates say one thing, wiring another: take the map as wrong until it is proven.',
    body: 'Measure the current before you unplug.',
  },
];

/** The cautions this house needs, in the order of the work. */
export function cautionsFor(job: Job): StepCaution[] {
  return stepCautions.filter((one) => one.when?.(job) ?? true);
}
