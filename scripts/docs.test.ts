import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { describe, expect, test } from 'vitest';

const ROOT = fileURLToPath(new URL('..', import.meta.url));

function pagesBelow(folder: string): string[] {
  return readdirSync(join(ROOT, folder), { withFileTypes: true }).flatMap((entry) => {
    const path = join(folder, entry.name);
    if (entry.isDirectory()) return pagesBelow(path);
    return entry.name.endsWith('.md') ? [path] : [];
  });
}

const pages = [...readdirSync(ROOT).filter((name) => name.endsWith('.md')), ...pagesBelow('docs')];

/** Targets of the links of a page that stay in this repository; pictures are looked at by people. */
function ownLinks(text: string): string[] {
  return [...text.matchAll(/(?<!!)\[[^\]]*\]\(([^)#\s]+)[^)]*\)/g)]
    .map(([, target]) => target as string)
    .filter((target) => !/^[a-z]+:/.test(target));
}

test.each(pages)('every link of %s leads somewhere', (page) => {
  const text = readFileSync(join(ROOT, page), 'utf8');
  const broken = ownLinks(text).filter((target) => !existsSync(join(ROOT, dirname(page), target)));
  expect(broken).toEqual([]);
});

test('the pages and their links were found at all', () => {
  expect(pages).toContain('README.md');
  expect(ownLinks(readFileSync(join(ROOT, 'README.md'), 'utf8'))).toContain('CONTRIBUTING.md');
});

test('every npm script that a page names exists', () => {
  const { scripts } = JSON.parse(readFileSync(join(ROOT, 'package.json'), 'utf8')) as { scripts: object };
  const named = pages.flatMap((page) =>
    [...readFileSync(join(ROOT, page), 'utf8').matchAll(/npm run ([a-z]+)/g)].map(([, name]) => name as string),
  );
  expect(named.length).toBeGreaterThan(0);
  expect(named.filter((name) => !(name in scripts))).toEqual([]);
});

describe('TypeScript in README.md runs and prints what its comments say', () => {
  const blocks = [...readFileSync(join(ROOT, 'README.md'), 'utf8').matchAll(/```ts\n([\s\S]*?)```/g)];

  test('there is some', () => {
    expect(blocks.length).toBeGreaterThan(0);
  });

  test.each(blocks.map(([, code], k) => [k + 1, code as string] as const))('block %i', async (_k, code) => {
    const expected = [...code.matchAll(/console\.log\(.*\); \/\/ (.*)/g)].map(([, said]) => said);
    expect(expected.length).toBeGreaterThan(0);
    const folder = mkdtempSync(join(ROOT, 'node_modules/.docs-'));
    try {
      const file = join(folder, 'block.ts');
      writeFileSync(file, `export const printed: string[] = [];\n${code.replaceAll('console.log(', 'printed.push(')}`);
      const { printed } = (await import(pathToFileURL(file).href)) as { printed: string[] };
      expect(printed).toEqual(expected);
    } finally {
      rmSync(folder, { recursive: true });
    }
  });
});
