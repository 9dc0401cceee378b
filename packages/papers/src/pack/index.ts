export { readCsvWord, writeCsv } from './csv.ts';
export { type InstallPack, type InstallPackInputs, installPack, packSheets } from './installPack.ts';
export type { PackInputs } from './packContext.ts';
