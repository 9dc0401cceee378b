import { NotKept } from './photoStore.ts';

/** Longest side kept, px: a plate stays legible at it, and a survey of fifty photographs stays below 30 MB. */
const LONGEST_PX = 1600;
const QUALITY = 0.82;

/**
 * A picture from the camera made small enough to keep, as JPEG, the way up the camera says.
 *
 * @throws {NotKept} in words, where the file holds no picture this browser can read.
 */
export async function shrunk(file: Blob): Promise<Blob> {
  const picture = await createImageBitmap(file, { imageOrientation: 'from-image' }).catch(() => {
    throw new NotKept('This file holds no picture that can be read. Take it again with the camera.');
  });
  const scale = Math.min(1, LONGEST_PX / Math.max(picture.width, picture.height));
  const canvas = document.createElement('canvas');
  canvas.width = Math.round(picture.width * scale);
  canvas.height = Math.round(picture.height * scale);
  const pen = canvas.getContext('2d');
  if (pen === null) throw new NotKept('This browser cannot make pictures smaller; the photograph was not kept.');
  pen.drawImage(picture, 0, 0, canvas.width, canvas.height);
  picture.close();
  const made = await new Promise<Blob | null>((resolve) => canvas.toBlob(resolve, 'image/jpeg', QUALITY));
  if (made === null) throw new NotKept('The photograph could not be made smaller; it was not kept.');
  return made;
}

/** `photo-20260515-143205-3f9a`: by its hour, and something that no other phone makes in the same second. */
export function photoId(at: Date, chance: number): string {
  const digits = at.toISOString().replace(/[-:]/g, '').slice(0, 15).replace('T', '-');
  return `photo-${digits}-${Math.floor(chance * 0x10000)
    .toString(16)
    .padStart(4, '0')}`;
}
