import type { Page } from 'playwright-core';

/**
 * What of the page can be pushed sideways: the document, or the sheet in its own scroller. A drawing that is wider than
 * the frame scrolls in a box of its own, which is allowed.
 *
 * @returns a line each, with the first thing that reaches too far; none where all is well.
 */
export function sideways(page: Page): Promise<string[]> {
  return page.evaluate(async () => {
    // drawings take their width from a first layout: the frame after it is the one that stands
    for (let frame = 0; frame < 2; frame++) await new Promise(requestAnimationFrame);
    const scrollers = [document.documentElement, document.body, document.querySelector('main')];
    const body = document.querySelector('main > div > header + div');
    return [...scrollers, body].flatMap((each) => {
      if (each === null || each.scrollWidth <= each.clientWidth) return [];
      const edge = each.getBoundingClientRect().left + each.clientWidth;
      const far = [...each.querySelectorAll('*')].find((thing) => thing.getBoundingClientRect().right > edge + 1);
      const what = far === undefined ? '' : `, from ${far.tagName.toLowerCase()} “${far.textContent?.slice(0, 40)}”`;
      return [`${each.tagName.toLowerCase()} is ${each.scrollWidth} wide in ${each.clientWidth}${what}`];
    });
  });
}
