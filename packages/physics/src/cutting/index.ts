export { barsAtLeast } from './barsAtLeast.ts';
export { type CutCertificate, type CutPlan, type CutStockInput, cutStock } from './cutStock.ts';
export { type LineToSplit, type SplitLine, type SplitOptions, splitLines } from './splitLines.ts';
