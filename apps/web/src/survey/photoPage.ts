import type { KeptPhoto } from './photoStore.ts';

const MARKS: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;', "'": '&#39;' };
const plain = (text: string) => text.replace(/[&<>"']/g, (mark) => MARKS[mark] ?? mark);

/** A photograph with its picture as letters, so that one file holds all. */
export interface LetteredPhoto extends Pick<KeptPhoto, 'id' | 'what' | 'by' | 'at' | 'of'> {
  /** `data:image/jpeg;base64,…` */
  readonly source: string;
}

/** One page with every photograph of a survey, what it shows, who took it and when. It opens anywhere and prints. */
export function photoPage(job: string, photos: readonly LetteredPhoto[], when: (at: string) => string): string {
  const figures = photos.map(
    ({ id, what, by, at, of, source }) =>
      `<figure><img src="${plain(source)}" alt="${plain(what)}"><figcaption><b>${plain(what)}</b><br>${plain(when(at))}, ${plain(by)}<br>${plain(of)}, ${plain(id)}</figcaption></figure>`,
  );
  return `<!doctype html>
<html lang="en"><meta charset="utf-8"><title>${plain(job)}: photographs</title>
<style>body{font:15px/21px Verdana,sans-serif;margin:20px;color:#14202b}figure{margin:0 0 24px;break-inside:avoid}img{max-width:100%;max-height:220mm;display:block}</style>
<h1>${plain(job)}: ${photos.length} ${photos.length === 1 ? 'photograph' : 'photographs'} of the survey</h1>
${figures.join('\n')}
</html>
`;
}

/** A picture as a data address. */
export function lettered(picture: Blob): Promise<string> {
  return new Promise((resolve, reject) => {
    const reader = new FileReader();
    reader.onload = () => resolve(String(reader.result));
    reader.onerror = () => reject(reader.error ?? new Error('A photograph could not be read'));
    reader.readAsDataURL(picture);
  });
}
