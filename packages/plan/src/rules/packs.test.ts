import { expect, test } from 'vitest';
import { describeRules } from './describeRules.ts';
import { packFor, rulePacks } from './index.ts';

const packs = Object.values(rulePacks);
const pairs = [
  ['au', 'gb'],
  ['au', 'us'],
  ['gb', 'us'],
  ['au', 'ie'],
  ['ie', 'us'],
] as const;

test.each(pairs)('%s and %s: at least seven of ten rules that both hold differ in limit or clause', (a, b) => {
  const other = new Map(describeRules(rulePacks[b]).map((rule) => [rule.rule, rule]));
  const both = describeRules(rulePacks[a]).filter((rule) => other.has(rule.rule));
  const differ = both.filter((rule) => {
    const twin = other.get(rule.rule);
    return twin?.limit !== rule.limit || twin.clause !== rule.clause;
  });
  expect(both.length).toBeGreaterThanOrEqual(10);
  expect(differ.length / both.length).toBeGreaterThanOrEqual(0.7);
});

test.each(packs)('$variant: every limit names clause, document and edition, and how it is known', (pack) => {
  const rules = describeRules(pack);
  expect(rules.length).toBeGreaterThanOrEqual(10);
  for (const rule of rules) {
    expect(rule.clause, rule.rule).not.toBe('');
    expect(rule.limit, rule.rule).not.toBe('');
    const hasNoEdition = ['common practice', 'data sheet', 'equipment sheet'].includes(rule.document);
    expect(hasNoEdition || rule.edition !== '', `${rule.rule}: ${rule.document}`).toBe(true);
  }
});

test.each(packs)('$variant: a rule is held or lacked with a reason, never both and never neither', (pack) => {
  const held = describeRules(pack).map((rule) => rule.rule as string);
  const lacked = pack.lacks.map((lack) => lack.rule as string);
  expect(lacked.filter((rule) => held.includes(rule))).toEqual([]);
  const all = new Set(packs.flatMap((each) => describeRules(each).map((rule) => rule.rule as string)));
  expect([...held, ...lacked].sort()).toEqual([...all].sort());
});

test('the variant picks the pack', () => {
  expect(packFor({ pack: 'iec-eu', variant: 'ie' }).words.network).toBe('DSO');
  expect(packFor({ pack: 'au-nz', variant: 'au' }).riseShare.value).toBe(0.02);
  // AS/NZS 4777.1 cl 3.3.3: 2 %; EREC G98: 16 A a phase
  expect(packFor({ pack: 'iec-eu', variant: 'gb' }).tellOnlyA?.value).toBe(16);
});
