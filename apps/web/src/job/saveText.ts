import { saveBytes } from './saveBytes.ts';

/** Hands a text to the browser to be saved as a file. */
export function saveText(fileName: string, text: string, type = 'application/json'): void {
  saveBytes(fileName, text, type);
}
