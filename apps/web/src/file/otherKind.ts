/** What is opened here, in the words of a refusal. */
export const WANTED = 'a job file: its name ends in .job.json';

const KINDS: readonly (readonly [RegExp, string])[] = [
  [/\.pdf$/i, 'a PDF'],
  [/\.(jpe?g|png|heic|heif|webp|gif|tiff?|bmp)$/i, 'a picture'],
  [/\.(docx?|odt|rtf)$/i, 'a text document'],
  [/\.(xlsx?|ods|csv|tsv)$/i, 'a table'],
  [/\.(zip|gz|7z|rar|tar)$/i, 'a packed folder'],
  [/\.(dxf|dwg|ifc)$/i, 'a drawing'],
  [/\.(mp4|mov|avi|mkv)$/i, 'a film'],
  [/\.(txt|md|log)$/i, 'a plain text'],
  [/\.epw$/i, 'a year of weather, which sheet 07 takes'],
];

/**
 * What a file is that is no job file, by its first letters or its name; undefined where it may be one.
 *
 * @param text  what is in it, where it was read: a job under another name is still a job.
 */
export function otherKind(fileName: string, text = ''): string | undefined {
  if (text.startsWith('%PDF')) return 'a PDF';
  if (text.trimStart().startsWith('{')) return undefined;
  return KINDS.find(([ends]) => ends.test(fileName))?.[1];
}
