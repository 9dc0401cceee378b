import type { Finding, SheetNo } from '@eaveline/plan';

/** What sheet 08 shows of the findings; empty is everything. */
export interface Filter {
  readonly state: 'all' | Finding['state'];
  readonly sheet: '' | SheetNo;
  /** Name of the thing judged. */
  readonly thing: string;
}

export const EVERYTHING: Filter = { state: 'all', sheet: '', thing: '' };

/** The findings a filter lets through, in their order. */
export function filtered<F extends Pick<Finding, 'state' | 'sheet' | 'about'>>(
  findings: readonly F[],
  { state, sheet, thing }: Filter,
): readonly F[] {
  return findings.filter(
    (each) =>
      (state === 'all' || each.state === state) &&
      (sheet === '' || each.sheet === sheet) &&
      (thing === '' || each.about.name === thing),
  );
}

/** Sheets that have findings, in their order, and the things judged on the one picked, by name. */
export function pickable(findings: readonly Pick<Finding, 'sheet' | 'about'>[], sheet: Filter['sheet']) {
  const sheets = [...new Set(findings.map((each) => each.sheet))].sort();
  const here = findings.filter((each) => sheet === '' || each.sheet === sheet);
  const things = [...new Set(here.map(({ about }) => about.name))].sort((a, b) =>
    a.localeCompare(b, 'en', { numeric: true }),
  );
  return { sheets, things };
}
