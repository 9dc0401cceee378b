export { type Assumption, type Reading, type Remark, remarkSentence, type Severity } from './reading/remark.ts';
export { REMARKS_OF_A_KIND, type RemarkLog, remarkLog } from './reading/remarkLog.ts';
export { type FileKind, type Recognised, recogniseFile } from './recognise/recogniseFile.ts';
export { type DecodedText, decodeText, decodeUtf8, MAX_FILE_BYTES } from './text/decodeText.ts';
export { plainNumber, splitFields } from './text/fields.ts';
export { textLines } from './text/lines.ts';
