/** As JSON; what JSON has no words for is written as text, so that nothing keeps the rest from being saved. */
export function asText(document: unknown): string {
  try {
    return JSON.stringify(document, (_key, value) => (typeof value === 'bigint' ? String(value) : value), 2) ?? '';
  } catch (error) {
    return `${String(error)}\n${String(document)}\n`;
  }
}
