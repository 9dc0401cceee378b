import type { Job } from '@eaveline/job';
import type { Plan } from '@eaveline/plan';
import type { SheetView } from '../desk/sheetView.ts';
import { type Subject, workingSubjects } from '../pad/subject.ts';
import { withUnit } from '../words/figure.ts';
import { headOfTrunks, riseFinding } from './headOfTrunks.ts';
import { TrunksSheet } from './TrunksSheet.tsx';

/** A trunk is selected with its rise: the working, the rule that judges it, and the ways out. */
function trunkSubjects({ trunks, checks }: Plan): Subject[] {
  return trunks.trunks.flatMap(({ id, name, riseWorking, riseWithBattery }) => {
    const finding = riseFinding(checks.findings, id);
    const rise: Subject = {
      id: `rise:${id}`,
      name: `Trunk ${name}, voltage rise`,
      working: riseWorking,
      ...(finding === undefined ? {} : { finding }),
    };
    if (riseWithBattery === undefined) return [rise];
    return [
      rise,
      {
        id: `rise-battery:${id}`,
        name: `Trunk ${name}, with the battery discharging`,
        working: riseWithBattery.working,
      },
    ];
  });
}

/** Extra cable between two drops, and why it was needed. */
function jumperSubjects({ choices }: Job): Subject[] {
  return Object.entries(choices.trunks).flatMap(([trunkId, { name, jumpers }]) =>
    Object.entries(jumpers).map(([id, { afterDrop, lengthM, why }]) => ({
      id: `jumper:${trunkId}:${id}`,
      name: `Trunk ${name}, jumper after drop ${afterDrop}`,
      words: [
        `It adds ${withUnit(lengthM, 'm')} between drops ${afterDrop} and ${afterDrop + 1}.`,
        ...(why === undefined ? [] : [why]),
      ],
    })),
  );
}

/** Sheet 04. */
export const trunksView: SheetView = {
  head: headOfTrunks,
  subjects: (plan, job) => [
    ...trunkSubjects(plan),
    ...jumperSubjects(job),
    ...workingSubjects('trunks', plan.trunks.workings),
  ],
  first: ({ trunks: { trunks } }) => {
    const worst = trunks.reduce<(typeof trunks)[number] | undefined>(
      (a, b) => (a === undefined || b.rise.totalV > a.rise.totalV ? b : a),
      undefined,
    );
    return worst && `rise:${worst.id}`;
  },
  leavesOut: ({ trunks }) => trunks.leavesOut,
  shows: 'trunks, volts',
  Body: TrunksSheet,
};
