import type { Finding, Plan } from '@eaveline/plan';
import type { Head } from '../frame/head.ts';
import { counted, listed, ordinal, sentence } from '../words/count.ts';
import { apart, figure } from '../words/figure.ts';

/** The rule that judges a trunk's rise, where the region has one. */
export function riseFinding(findings: readonly Finding[], trunkId: string): Finding | undefined {
  return findings.find(({ rule, about }) => rule === 'trunk-rise' && about.id === trunkId);
}

const letter = (name: string) => name.replace(/^trunk\s+/i, '');

/** The trunk that rises most, against its limit; below it what another feed would do. */
export function headOfTrunks({ trunks: { trunks }, checks }: Pick<Plan, 'trunks' | 'checks'>): Head {
  if (trunks.length === 0) return { sentence: 'No trunk yet. Modules come first.' };
  const worst = trunks.reduce((a, b) => (b.rise.totalV > a.rise.totalV ? b : a));
  const finding = riseFinding(checks.findings, worst.id);
  const name = `Trunk ${letter(worst.name)}`;
  const judged =
    finding?.value !== undefined && finding.limit !== undefined ? apart(finding.value, finding.limit, 2) : undefined;
  const head =
    judged === undefined
      ? `${name} rises ${figure(worst.rise.totalV, 2)} V.`
      : `${name} rises ${judged.value} V. The limit is ${judged.limit} V.`;
  const best = worst.feedOptions.reduce((a, b) => (b.totalV < a.totalV ? b : a), {
    drop: worst.feedDrop,
    totalV: worst.rise.totalV,
  });
  const others = trunks.filter(({ id }) => id !== worst.id);
  const parts = [
    best.drop !== worst.feedDrop &&
      worst.rise.totalV - best.totalV >= 0.01 &&
      `Fed at its ${ordinal(best.drop)} drop it rises ${figure(best.totalV, 2)} V`,
    others.length > 0 &&
      `${listed(others.map(({ name: other }) => letter(other)))} ${others.length === 1 ? 'rises' : 'rise'} less: ${listed(others.map(({ rise }) => figure(rise.totalV, 2)))} V`,
    !worst.mainsKnown && 'The mains are not measured: the rise stops at the board',
  ].filter((part) => part !== false);
  return {
    sentence: head,
    quiet: `${parts.length === 0 ? sentence(counted(trunks.length, 'trunk')) : parts.join('. ')}.`,
  };
}
