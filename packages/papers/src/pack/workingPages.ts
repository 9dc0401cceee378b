import type { Finding } from '@eaveline/plan';
import { mark } from '../drawing/index.ts';
import { gap, headline, type Part, paragraph, type Sheet, stacked } from '../page/index.ts';
import { counted } from './figures.ts';
import type { Pack } from './packContext.ts';
import { headed, pagesOf } from './pagesOf.ts';
import { workingPart } from './workingPart.ts';

/** Every figure that fails or waits for an answer, with how it came about and what would mend it. */
export function workingPages(pack: Pack): Sheet[] {
  const findings = [...pack.fails, ...pack.asks];
  if (findings.length === 0) return [];
  const printed = new Set<string>();
  const sentence = `How ${counted(findings.length, 'open figure')} came about.`;
  return pagesOf(pack, { no: '08.W', title: 'Workings' }, [
    headline(sentence, 'What each figure was made of, step by step, and where the step comes from.'),
    ...findings.map((finding) => findingPart(pack, finding, printed)),
  ]);
}

function findingPart(pack: Pack, finding: Finding, printed: Set<string>): Part {
  const { state, title, detail, clause, edition, seen, mends, needs, working } = finding;
  const parts: Part[] = [
    ...(detail === undefined ? [] : [paragraph(detail)]),
    paragraph(`${[...new Set([clause, edition])].filter((one) => one !== '').join(', ')}. Known from: ${seen}.`, {
      capMm: 2.1,
      ink: 'quiet',
    }),
    ...mends.map((mend) => paragraph(`Mend: ${mend.words}`)),
    ...(needs.length === 0 ? [] : [paragraph(`Waits for: ${factNames(pack, needs)}.`, { capMm: 2.1, ink: 'quiet' })]),
    ...(working === undefined ? [] : [gap(1), workingPart(working, 6, printed)]),
  ];
  const body: Part = (at, widthMm, roomMm) => stacked(parts, at, widthMm, roomMm);
  const titled = headed(title, body);
  // the mark stands in the margin of its own heading
  const marked: Part = (at, widthMm, roomMm) => {
    const block = titled([at[0] + 6, at[1]], widthMm - 6, roomMm);
    if (block.items.length === 0) return { ...block, rest: marked };
    const items = [mark(state, [at[0] + 1.7, at[1] - 3.2]), ...block.items];
    if (block.rest === undefined) return { ...block, items };
    const rest: Part = ([x, y], wide, room) => (block.rest as Part)([x + 6, y], wide - 6, room);
    return { ...block, items, rest: indented(rest) };
  };
  return (at, widthMm, roomMm) => stacked([gap(4), marked], at, widthMm, roomMm);
}

/** Facts as the survey names them; where it has no name for one, the words of its place in the job. */
function factNames({ plan }: Pack, needs: readonly string[]): string {
  return needs.map((at) => plan.site.missing.find((fact) => fact.at === at)?.what ?? placeInWords(at)).join('; ');
}

/** `facts.network.approvedVA` as `network, approved VA`. */
function placeInWords(at: string): string {
  const words = at.split('.').slice(1).join(', ');
  return words.replace(/(?<=[a-z])(?=[A-Z])/g, ' ').replace(/[-:]/g, ' ');
}

/** What goes on in the next column keeps its margin. */
function indented(first: Part): Part {
  return (at, widthMm, roomMm) => {
    const block = first(at, widthMm, roomMm);
    if (block.rest === undefined) return block;
    const later = block.rest;
    return { ...block, rest: indented(([x, y], wide, room) => later([x + 6, y], wide - 6, room)) };
  };
}
