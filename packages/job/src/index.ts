export * from './schema/choices.ts';
export * from './schema/facts.ts';
export { JOB_VERSION, type Job, type JobDraft, jobSchema } from './schema/job.ts';
export { type Records, recordsSchema } from './schema/records.ts';
export * from './schema/sheets.ts';
