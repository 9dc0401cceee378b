export { demoJobs, ironbarkClinic, kestrelRise, larkspurLane, quaysideTerrace } from './demo/index.ts';
export { apartM, type HousePoint, type PlanePoint, planeOutline, planeToHouse } from './demo/planeGeometry.ts';
export * from './schema/choices.ts';
export * from './schema/facts.ts';
export { JOB_VERSION, type Job, type JobDraft, jobSchema } from './schema/job.ts';
export { type Records, recordsSchema } from './schema/records.ts';
export * from './schema/sheets.ts';
export { demoSheets, type SheetId, takeSheets } from './sheets/index.ts';
