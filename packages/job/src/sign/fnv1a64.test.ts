import { expect, test } from 'vitest';
import { fnv1a64 } from './fnv1a64.ts';

/** A second way: whole numbers without limit, and the platform's own UTF-8. */
function byBigInt(text: string): string {
  let h = 0xcbf29ce484222325n;
  for (const byte of new TextEncoder().encode(text)) h = ((h ^ BigInt(byte)) * 0x100000001b3n) % 2n ** 64n;
  return h.toString(16).padStart(16, '0');
}

test('the vectors its authors publish', () => {
  // Noll's test suite fnv-1a, 64 bits: "", "a", "foobar"; RFC 9923, appendix
  expect(fnv1a64('')).toBe('cbf29ce484222325');
  expect(fnv1a64('a')).toBe('af63dc4c8601ec8c');
  expect(fnv1a64('foobar')).toBe('85944171f73967e8');
});

test.each(['Ω µ ² ≥ ≤ √ Δ → ✓ ✗ ☐', 'žluťoučký kůň', '🏠 four bytes', 'x'.repeat(10_000)])(
  'as whole numbers without limit give it: %s',
  (text) => {
    expect(fnv1a64(text)).toBe(byBigInt(text));
  },
);
