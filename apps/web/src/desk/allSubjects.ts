import type { Job } from '@eaveline/job';
import type { Finding, Plan, SheetNo } from '@eaveline/plan';
import { SHEETS } from '../frame/sheetNames.ts';
import { type PlacedSubject, paged, type Subject } from '../pad/subject.ts';
import { ruleWords } from '../words/ruleWords.ts';
import type { SheetView } from './sheetView.ts';

/** `Trunk rise, Trunk A`: short enough for the box of a pad. */
export function findingName({ rule, about }: Finding): string {
  return `${ruleWords(rule)}, ${about.name}`;
}

/** Findings a sheet shows beside its things, as subjects. */
function findingSubjects(plan: Plan, no: SheetNo): Subject[] {
  const shown = no === '08' ? plan.checks.findings : plan.checks.findings.filter(({ sheet }) => sheet === no);
  return shown.map((finding) => ({ id: finding.id, name: findingName(finding), finding }));
}

/**
 * Everything that can be selected on any sheet, in the order of the sheets.
 *
 * @param planFor the plan a sheet can be drawn from; nothing can be selected on one that waits.
 */
export function allSubjects(
  views: Readonly<Record<SheetNo, SheetView>>,
  planFor: (no: SheetNo) => Plan | undefined,
  job: Job,
): ReadonlyMap<SheetNo, readonly PlacedSubject[]> {
  return new Map(
    SHEETS.map(({ no }) => {
      const plan = planFor(no);
      const subjects = plan === undefined ? [] : [...views[no].subjects(plan, job), ...findingSubjects(plan, no)];
      return [no, paged(no, subjects)];
    }),
  );
}
