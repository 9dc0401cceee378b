/** Hands a text to the browser to be saved as a file. */
export function saveText(fileName: string, text: string, type = 'application/json'): void {
  const address = URL.createObjectURL(new Blob([text], { type }));
  const link = document.createElement('a');
  link.href = address;
  link.download = fileName;
  link.click();
  // the browser has read it by then; kept longer it would only take room
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}
