import { expect, test } from 'vitest';
import { photoPage } from './photoPage.ts';
import { photoId } from './takePhoto.ts';

test('a photograph is named by its second, and by chance within it', () => {
  const at = new Date('2026-05-15T14:32:05.700Z');
  expect(photoId(at, 0)).toBe('photo-20260515-143205-0000');
  expect(photoId(at, 0.5)).toBe('photo-20260515-143205-8000');
});

test('the page of photographs says what, when and who, and takes no words for marks of its own', () => {
  const photo = {
    id: 'photo-1',
    what: 'Board <b>open</b>',
    by: 'N. "Nia" O’Dea',
    at: '2026-05-15T14:32:05Z',
    of: 'board',
    source: 'data:image/jpeg;base64,AAAA',
  };
  const page = photoPage('Kestrel & Rise', [photo], (at) => at.slice(11, 16));
  expect(page).toContain('Kestrel &amp; Rise: 1 photograph of the survey');
  expect(page).toContain('Board &lt;b&gt;open&lt;/b&gt;');
  expect(page).toContain('14:32, N. &quot;Nia&quot;');
  expect(page).not.toContain('<b>open');
});
