/**
 * FNV-1a of 64 bits over the UTF-8 bytes of a text, as 16 hexadecimal digits.
 *
 *     h = 14695981039346656037;  for each byte:  h = (h xor byte) · 1099511628211  mod 2⁶⁴
 *
 * It notices a change. It is no seal: whoever wants two texts of one hash can make them.
 *
 * Source: Fowler, Noll, Vo, The FNV Non-Cryptographic Hash Algorithm, RFC 9923.
 */
export function fnv1a64(text: string): string {
  let high = 0xcbf29ce4;
  let low = 0x84222325;
  for (const byte of utf8(text)) {
    low = (low ^ byte) >>> 0;
    // the prime is 2⁴⁰ + 435: times 435 in two halves, and the low half moved up by 40 bits
    const product = low * 435; // below 2⁴¹, so exact
    const carry = Math.floor(product / 2 ** 32);
    high = (Math.imul(high, 435) + carry + (low << 8)) >>> 0;
    low = product >>> 0;
  }
  return hex(high) + hex(low);
}

const hex = (half: number) => half.toString(16).padStart(8, '0');

/** A text as UTF-8. Written out because this room knows neither browser nor Node. Source: RFC 3629. */
function utf8(text: string): number[] {
  const bytes: number[] = [];
  for (const sign of text) {
    const code = sign.codePointAt(0) as number;
    const after = (shift: number) => 0x80 | ((code >> shift) & 0x3f);
    if (code < 0x80) bytes.push(code);
    else if (code < 0x800) bytes.push(0xc0 | (code >> 6), after(0));
    else if (code < 0x10000) bytes.push(0xe0 | (code >> 12), after(6), after(0));
    else bytes.push(0xf0 | (code >> 18), after(12), after(6), after(0));
  }
  return bytes;
}
