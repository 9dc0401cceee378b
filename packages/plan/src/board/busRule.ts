import type { BoardFacts, SupplyFacts } from '@eaveline/job';
import { necBusbar, sumOfSources } from '@eaveline/physics';
import type { RulePack } from '../rules/pack.ts';
import { given, worked } from '../working.ts';
import type { ExistingSources } from './existingSources.ts';
import type { BoardPlan } from './types.ts';

/** What lands on the bars beside the network. */
export interface BusSources {
  readonly sourceA: number;
  readonly there: Pick<ExistingSources, 'inPlaceOfNetworkA' | 'givens'>;
}

/**
 * Do the bars carry the network's share and the sources' together?
 *
 * us: 1.25 · ΣI + main against 1.2 · bus, sources at the far end. Elsewhere: the service and all sources against the
 * rating of the bars. Where no source lands on the bars, they carry the main alone. A generator behind a changeover
 * feeds in place of the network, so the larger of the two counts; one without counts as a source. Without a bus rating
 * from the plate there is nothing to judge.
 *
 * @param sources what lands on this board, on its busiest line, A, and what of it stood there before.
 */
export function busRule(
  board: BoardFacts,
  supply: SupplyFacts,
  { sourceA, there }: BusSources,
  pack: RulePack,
): BoardPlan['bus'] {
  const networkA = board.mainSwitchA ?? supply.serviceA;
  const mainA = Math.max(networkA, there.inPlaceOfNetworkA);
  const withSources = pack.bus.kind === '120 percent' && sourceA > 0;
  const rule =
    sourceA === 0
      ? 'the main alone, against the bars: no source lands on them'
      : withSources
        ? '1.25 times the sources and the main, against 1.2 times the bars'
        : 'the service and all sources, against the bars';
  if (board.busA === undefined) return { mainA, sourceA, rule };

  const verdict = withSources
    ? necBusbar({
        busbarA: board.busA,
        mainBreakerA: mainA,
        inverterOutputCurrentA: sourceA,
        option: '120 percent opposite ends',
      })
    : sumOfSources(board.busA, [Math.max(Math.min(networkA, supply.serviceA), there.inPlaceOfNetworkA), sourceA]);
  return {
    busA: board.busA,
    mainA,
    sourceA,
    comparedA: verdict.comparedA,
    limitA: verdict.limitA,
    rule,
    working: worked('Bars', verdict.comparedA, 'A', rule, pack.bus.limit.clause, [
      given('bars', board.busA, 'A', 'facts.board.busA'),
      given(
        'main',
        networkA,
        'A',
        board.mainSwitchA === undefined ? 'facts.supply.serviceA' : 'facts.board.mainSwitchA',
      ),
      ...there.givens.map(({ working }) => working),
      { name: 'sources on the busiest line', value: sourceA, unit: 'A', source: 'sum of the rated currents' },
    ]),
  };
}
