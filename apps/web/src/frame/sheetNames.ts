import type { SheetNo } from '@eaveline/plan';

/** The sheets of a job, in the order of the register. */
export const SHEETS: readonly { readonly no: SheetNo; readonly name: string; readonly key: string }[] = [
  { no: '01', name: 'Site', key: '1' },
  { no: '02', name: 'Roof', key: '2' },
  { no: '03', name: 'Array', key: '3' },
  { no: '04', name: 'Trunks', key: '4' },
  { no: '05', name: 'Board', key: '5' },
  { no: '06', name: 'Backup', key: '6' },
  { no: '07', name: 'Energy', key: '7' },
  { no: '08', name: 'Checks', key: '8' },
  { no: '09', name: 'Kit', key: '9' },
  { no: '10', name: 'Day', key: '0' },
  { no: '11', name: 'Tests', key: '-' },
  { no: '12', name: 'Handover', key: '=' },
];

/** `04` from an address; undefined where there is no such sheet. */
export function sheetNoOf(text: string): SheetNo | undefined {
  return SHEETS.find(({ no }) => no === text)?.no;
}

export function sheetName(no: SheetNo): string {
  const sheet = SHEETS.find((each) => each.no === no);
  if (sheet === undefined) throw new Error(`There is no sheet ${no}`);
  return sheet.name;
}
