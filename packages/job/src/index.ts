export { type CleanJob, type CleanSheet, cleanJob } from './copy/cleanJob.ts';
export { type Duplicate, type DuplicateFor, duplicateJob, type OtherSite } from './copy/duplicateJob.ts';
export { idFrom } from './copy/idFrom.ts';
export { isRegionCode, type Region, type RegionCode, regions, type Supply } from './copy/regions.ts';
export {
  demoJobs,
  ironbarkClinic,
  kestrelRise,
  larkspurLane,
  type PracticeFault,
  practiceYard,
  practiceYardFaults,
  quaysideTerrace,
} from './demo/index.ts';
export { makeNoCode } from './parse/makeNoCode.ts';
export { LONGEST_TEXT, type ParsedJob, parseJob } from './parse/parseJob.ts';
export { type JobRemark, remarkLine } from './parse/remark.ts';
export { apartM, type HousePoint, type PlanePoint, planeOutline, planeToHouse } from './roof/planeGeometry.ts';
export * from './schema/choices.ts';
export * from './schema/facts.ts';
export { JOB_VERSION, type Job, type JobDraft, jobSchema } from './schema/job.ts';
export { type Records, recordsSchema } from './schema/records.ts';
export * from './schema/sheets.ts';
export { demoSheets, type SheetId, takeSheets } from './sheets/index.ts';
export { changedParts, type DesignBasis, designBasis, designDigest } from './sign/designBasis.ts';
export { DESIGN, type DesignSignature, designSignature, signedWords } from './sign/designSignature.ts';
export * from './survey/index.ts';
export { type ReadConductorSize, readConductorSize } from './units/readConductorSize.ts';
export { type QuantityRefusal, quantityRefusalWords, type ReadQuantity, readQuantity } from './units/readQuantity.ts';
export { type Habit, plainFigures, showQuantity } from './units/showQuantity.ts';
export { jobJsonSchema } from './write/jobJsonSchema.ts';
export { writeJob } from './write/writeJob.ts';
