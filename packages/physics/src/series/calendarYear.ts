/** Days of the months of a year without 29 February. */
export const MONTH_DAYS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31] as const;

/** First day of each month, counted from 0; a thirteenth entry closes the year. */
export const MONTH_STARTS = [0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334, 365] as const;

/** Days in the year made here. */
export const YEAR_DAYS = 365;

/** Month of each day, counted from 0. */
export const MONTH_OF_DAY: readonly number[] = MONTH_DAYS.flatMap((days, month) =>
  Array.from({ length: days }, () => month),
);
