import type { Finding, MotorStart } from '@eaveline/plan';

/** How a motor's start stands: the word, and the figure and limit that the rule judged it by. */
export interface StartOnRule {
  readonly state: Finding['state'];
  readonly words: string;
  readonly gauge:
    | {
        readonly unit: string;
        readonly value: number;
        readonly limit: number;
        readonly sense: 'at most' | 'at least';
        readonly decimals: number;
      }
    | undefined;
}

const SAYS: Readonly<Record<MotorStart['verdict'], { readonly state: Finding['state']; readonly words: string }>> = {
  starts: { state: 'meets', words: 'Starts' },
  'no start peak': { state: 'meets', words: 'Has no start peak' },
  ask: { state: 'ask', words: 'May not start' },
  'plate missing': { state: 'ask', words: 'Plate not read' },
  'will not': { state: 'fails', words: 'Will not start' },
};

/**
 * The rule has the last word, and its gauge is drawn: the sum against what the battery gives for seconds, or, where a
 * motor asks a little more than that, the share of its starting current that it still finds against the share from
 * which it starts.
 */
export function startOnRule(start: MotorStart, findings: readonly Finding[]): StartOnRule {
  const finding = findings.find(({ rule, about }) => rule === 'backup-start' && about.id === start.circuitId);
  const said = SAYS[start.verdict];
  if (finding === undefined) return { ...said, gauge: undefined };
  const { state, value, limit, unit, sense } = finding;
  const dips = state === 'meets' && unit === '%';
  const other = { fails: 'Fails', ask: 'Ask', meets: 'Meets' }[state];
  const words = state === said.state ? `${said.words}${dips ? ', lights dip' : ''}` : other;
  if (value === undefined || limit === undefined || sense === undefined) return { state, words, gauge: undefined };
  const kilo = unit === 'VA';
  return {
    state,
    words,
    gauge: {
      unit: kilo ? 'kVA' : (unit ?? ''),
      value: kilo ? value / 1000 : value,
      limit: kilo ? limit / 1000 : limit,
      sense,
      decimals: kilo ? 2 : 0,
    },
  };
}
