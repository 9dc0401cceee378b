import type { Plan, StageName } from '@eaveline/plan';
import { gap, headline, type Part, paragraph, type Sheet } from '../page/index.ts';
import type { Pack } from './packContext.ts';
import { headed, pagesOf } from './pagesOf.ts';

const STAGES: readonly StageName[] = [
  'site',
  'sun',
  'roof',
  'array',
  'trunks',
  'board',
  'energy',
  'backup',
  'structure',
  'checks',
  'kit',
  'day',
  'tests',
];

const NAMES: Readonly<Record<StageName, string>> = {
  site: 'Site and climate',
  sun: 'Sun and weather',
  roof: 'Roof',
  array: 'Modules and rails',
  trunks: 'Trunks',
  board: 'Board',
  energy: 'Energy',
  backup: 'Backup',
  structure: 'Structure',
  checks: 'Checks',
  kit: 'Kit',
  day: 'Day plan',
  tests: 'Tests',
};

/** The last page: what was not worked out, stage by stage, and what the paper itself does not show. */
export function leftOutPages(pack: Pack): Sheet[] {
  const stages = STAGES.flatMap((stage): Part[] => {
    const words = leavesOut(pack.plan, stage);
    return words.length === 0 ? [] : [gap(2.5), headed(NAMES[stage], paragraph(words.join('\n')))];
  });
  return pagesOf(pack, { no: '12', title: 'What this pack leaves out' }, [
    headline('What this pack leaves out.', 'Nothing here was looked at. Each is somebody’s to decide.'),
    ...stages,
    gap(2.5),
    headed('This pack', paragraph(ownWords(pack).join('\n'))),
  ]);
}

function leavesOut(plan: Plan, stage: StageName): readonly string[] {
  return [...new Set(plan[stage].leavesOut)];
}

function ownWords({ job }: Pack): string[] {
  return [
    'A single-line diagram, the customer’s book and the papers of the network.',
    'Roof planes are drawn as they were taped: a hip that bends or a ridge that sags is not seen.',
    'The trunk is drawn straight; its way round hooks and frames is the crew’s.',
    ...(job.choices.rules.pack === 'us'
      ? [
          'Lengths are metric and conductors by gauge (AWG). Feet and inches are not printed: convert with one tape, not by head.',
        ]
      : []),
  ];
}
