import { text } from '../drawing/make.ts';
import type { Drawing, Item } from '../drawing/model.ts';
import { checkBar } from '../drawing/scaleBar.ts';
import { fit } from '../type/wrap.ts';
import { type Banner, bannerItems, bannerMm } from './banner.ts';
import type { Column } from './flow.ts';
import { frameItems, frameOf, type SheetSize, sheetSizes } from './frame.ts';
import { type TitleBlock, titleBlockItems, titleBlockMm } from './titleBlock.ts';

/** One page: what stands on it, and what it says about itself. */
export interface Sheet {
  readonly size: SheetSize;
  /** Its name in the outline and to a screen reader. */
  readonly title: string;
  readonly banners: readonly Banner[];
  readonly block: Omit<TitleBlock, 'page'>;
  /** The quiet line above the title block: what confirms it, who decides. */
  readonly notice: string;
  readonly body: readonly Item[];
}

/** Clear space inside the frame. */
const INSET = 5;
/** The strip above the title block: the notice, and the check bar on sheets with a scale. */
const FOOT = 7;
const FOOT_SCALED = 12;

/** The part of a sheet that is free for its body. */
export function bodyOf(size: SheetSize, banners: number, scaled: boolean): Column {
  const { leftMm, rightMm, bottomMm, topMm } = frameOf(size);
  const top = topMm - banners * bannerMm - INSET;
  const bottom = bottomMm + titleBlockMm + (scaled ? FOOT_SCALED : FOOT);
  return { topLeft: [leftMm + INSET, top], widthMm: rightMm - leftMm - 2 * INSET, heightMm: top - bottom };
}

/** The whole page as one drawing: frame, banners, body, notice, title block with its `page`, `4 of 11`. */
export function layOut(sheet: Sheet, page: string): Drawing {
  const frame = frameOf(sheet.size);
  return {
    ...sheetSizes[sheet.size],
    title: sheet.title,
    items: [
      ...frameItems(sheet.size),
      ...bannerItems(frame, sheet.banners),
      ...sheet.body,
      ...footItems(sheet),
      ...titleBlockItems(frame, { ...sheet.block, page }),
    ],
  };
}

function footItems({ size, block, notice }: Sheet): Item[] {
  const { leftMm, rightMm, bottomMm } = frameOf(size);
  const y = bottomMm + titleBlockMm + 2.4;
  const bar = block.scale === undefined ? [] : checkBar([leftMm + INSET, y + 5]);
  if (notice === '') return bar;
  const { lines, ...look } = fit(notice, rightMm - leftMm - 2 * INSET, [2.1], { weight: 400 });
  return [...bar, text(lines[0] ?? '', [leftMm + INSET, y], { ...look, ink: 'quiet' })];
}
