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

test('every package that a room or the workshop uses has its line in docs/dependencies.md', () => {
  const rooms = ['packages', 'apps'].flatMap((folder) =>
    readdirSync(join(ROOT, folder)).map((name) => `${folder}/${name}`),
  );
  const used = ['.', ...rooms].flatMap((room) => {
    const { dependencies, devDependencies } = JSON.parse(readFileSync(join(ROOT, room, 'package.json'), 'utf8'));
    return Object.keys({ ...dependencies, ...devDependencies });
  });
  const lines = readFileSync(join(ROOT, 'docs/dependencies.md'), 'utf8')
    .split('\n')
    .map((line) => (line.split('|')[1] ?? '').trim().split(', '));
  const explained = new Set(lines.flat());
  const silent = used.filter((name) => !/^@(eaveline|types)\//.test(name) && !explained.has(name));
  expect(used.length).toBeGreaterThan(10);
  expect(silent).toEqual([]);
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
