import type { BoardFacts, SupplyFacts } from '@eaveline/job';
import { necBusbar, sumOfSources } from '@eaveline/physics';
import type { RulePack } from '../rules/pack.ts';
import { given, worked } from '../working.ts';
import type { BoardPlan } from './types.ts';

/**
 * Do the bars carry the network's share and the sources' together?
 *
 * us: 1.25 · ΣI + main against 1.2 · bus, sources at the far end. Elsewhere: the service and all sources against the
 * rating of the bars. Where no source lands on the bars, they carry the main alone. Without a bus rating from the
 * plate there is nothing to judge.
 *
 * @param sourceA sources that land on this board, on its busiest line, A.
 */
export function busRule(board: BoardFacts, supply: SupplyFacts, sourceA: number, pack: RulePack): BoardPlan['bus'] {
  const mainA = board.mainSwitchA ?? supply.serviceA;
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
    : sumOfSources(board.busA, [Math.min(mainA, supply.serviceA), sourceA]);
  return {
    busA: board.busA,
    mainA,
    sourceA,
    comparedA: verdict.comparedA,
    limitA: verdict.limitA,
    rule,
    working: worked('Bars', verdict.comparedA, 'A', rule, pack.bus.limit.clause, [
      given('bars', board.busA, 'A', 'facts.board.busA'),
      given('main', mainA, 'A', board.mainSwitchA === undefined ? 'facts.supply.serviceA' : 'facts.board.mainSwitchA'),
      { name: 'sources on the busiest line', value: sourceA, unit: 'A', source: 'sum of the rated currents' },
    ]),
  };
}
