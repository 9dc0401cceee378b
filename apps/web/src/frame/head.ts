/** What a sheet opens with: a sentence with the figure that matters, and one quiet line. */
export interface Head {
  readonly sentence: string;
  readonly quiet?: string;
}
