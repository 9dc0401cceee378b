/** Hands bytes to the browser to be saved as a file. */
export function saveBytes(fileName: string, bytes: BlobPart, type = 'application/octet-stream'): void {
  const address = URL.createObjectURL(new Blob([bytes], { type }));
  const link = document.createElement('a');
  link.href = address;
  link.download = fileName;
  link.click();
  // the browser has read it by then; kept longer it would only take room
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}
