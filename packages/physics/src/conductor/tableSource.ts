/** Where a table comes from, and whether it was read in a public text, recalled, or computed. */
export interface TableSource {
  /** Standard, clause or table, edition. */
  readonly text: string;
  readonly seen: 'public text' | 'from memory' | 'computed';
}
