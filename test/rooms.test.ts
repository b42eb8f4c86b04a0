import { mkdirSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { cruise, type ICruiseResult } from 'dependency-cruiser';
import extractDepcruiseOptions from 'dependency-cruiser/config-utl/extract-depcruise-options';
import extractTSConfig from 'dependency-cruiser/config-utl/extract-ts-config';
import { afterAll, describe, expect, test } from 'vitest';

const root = join(import.meta.dirname, '..');
const options = await extractDepcruiseOptions(join(root, '.dependency-cruiser.mjs'));
const fences = options.ruleSet?.forbidden ?? [];
const tsConfig = extractTSConfig(join(root, 'tsconfig.json'));

async function cruiseSource(baseDir: string): Promise<ICruiseResult> {
  const report = await cruise(['src'], { ...options, baseDir }, undefined, { tsConfig });
  if (typeof report.output === 'string') throw new Error(`Expected a result, not ${report.output}`);
  return report.output;
}

const rooms = [
  'base',
  'film',
  'correction',
  'work',
  'training',
  'intake',
  'formats',
  'tasks',
  'report',
  'render',
  'cli',
];

describe('the rooms of src', () => {
  const written = readdirSync(join(root, 'src'), { recursive: true, encoding: 'utf8' })
    .filter((path) => path.endsWith('.ts'))
    .map((path) => `src/${path.replaceAll('\\', '/')}`)
    .sort();

  test('keep every fence, with every file of src looked at', async () => {
    const { modules, summary } = await cruiseSource(root);
    const seen = modules.map(({ source }) => source).filter((source) => source.startsWith('src/'));
    expect(seen.sort()).toEqual(written);
    expect(summary.violations.map(({ rule, from, to }) => `${rule.name}: ${from} → ${to}`)).toEqual(
      [],
    );
  });

  test('hold every file, so that none stands outside the fences', () => {
    const homeless = written.filter((path) => !rooms.includes(path.split('/')[1] ?? ''));
    expect(homeless).toEqual([]);
  });

  test('are fenced by rules that each say in a sentence why they stand', () => {
    for (const { name, comment, severity } of fences) {
      expect(comment, name).toMatch(/^\S+ .{20,}\.$/);
      expect(severity, name).toBe('error');
    }
  });
});

interface Planted {
  readonly fence: string;
  readonly title: string;
  /** The file that imports, and what it says. */
  readonly from: string;
  readonly line: string;
  /** The files that are there to be imported. */
  readonly to: readonly { readonly path: string; readonly content: string }[];
}

const exporting = (path: string) => ({
  path,
  content: path.endsWith('.ts')
    ? 'export const there = 1;\nexport type There = 1;\n'
    : 'export const there = 1;\n',
});

/** `import` of a value from a file of ours, as it is written between two rooms. */
const crossing = (fence: string, title: string, from: string, to: string): Planted => ({
  fence,
  title,
  from: `src/${from}/here.ts`,
  line: `import { there } from '../${to}/there.ts';\nexport const here = there;\n`,
  to: [exporting(`src/${to}/there.ts`)],
});

const packaged = (fence: string, title: string, from: string, name: string): Planted => ({
  fence,
  title,
  from: `src/${from}/here.ts`,
  line: `import { there } from '${name}';\nexport const here = there;\n`,
  to: [exporting(`node_modules/${name}/index.js`)],
});

const planted: readonly Planted[] = [
  crossing('base-imports-nothing-of-ours', 'base may not import film', 'base', 'film'),
  crossing('film-sees-base', 'film may not import correction', 'film', 'correction'),
  crossing('film-sees-base', 'film may not import formats', 'film', 'formats'),
  crossing('correction-sees-film', 'correction may not import work', 'correction', 'work'),
  crossing('correction-sees-film', 'correction may not import training', 'correction', 'training'),
  crossing('work-sees-film-and-correction', 'work may not import training', 'work', 'training'),
  crossing('work-sees-film-and-correction', 'work may not import formats', 'work', 'formats'),
  crossing('training-sees-film', 'training may not import correction', 'training', 'correction'),
  crossing('intake-sees-the-trade', 'intake may not import formats', 'intake', 'formats'),
  crossing('intake-sees-the-trade', 'intake may not import tasks', 'intake', 'tasks'),
  crossing('formats-sees-the-trade', 'formats may not import intake', 'formats', 'intake'),
  crossing('formats-sees-the-trade', 'formats may not import tasks', 'formats', 'tasks'),
  crossing('tasks-see-no-output', 'tasks may not import report', 'tasks', 'report'),
  crossing('tasks-see-no-output', 'tasks may not import cli', 'tasks', 'cli'),
  crossing('report-writes-nothing', 'report may not import render', 'report', 'render'),
  crossing('report-knows-intake-by-type', 'report may not run intake', 'report', 'intake'),
  crossing('render-sees-the-report-model', 'render may not import film', 'render', 'film'),
  crossing(
    'render-sees-the-report-model',
    'render may import nothing of report but its model',
    'render',
    'report',
  ),
  {
    fence: 'film-sees-base',
    title: 'a fence holds for types too',
    from: 'src/film/here.ts',
    line: `import type { There } from '../formats/there.ts';\nexport type Here = There;\n`,
    to: [exporting('src/formats/there.ts')],
  },
  {
    fence: 'film-sees-base',
    title: 'a fence holds for an import made while running',
    from: 'src/film/here.ts',
    line: `export const here = () => import('../cli/there.ts');\n`,
    to: [exporting('src/cli/there.ts')],
  },
  {
    fence: 'no-circles',
    title: 'two files may not need each other, not even by type',
    from: 'src/film/here.ts',
    line: `import type { There } from './there.ts';\nexport type Here = There | 1;\n`,
    to: [
      {
        path: 'src/film/there.ts',
        content: `import type { Here } from './here.ts';\nexport type There = Here[];\n`,
      },
    ],
  },
  {
    fence: 'node-lives-in-cli',
    title: 'a room other than cli may not import a module of Node',
    from: 'src/formats/here.ts',
    line: `import { readFileSync } from 'node:fs';\nexport const here = readFileSync;\n`,
    to: [],
  },
  packaged('csv-parse-lives-in-intake', 'csv-parse is for intake alone', 'formats', 'csv-parse'),
  packaged('zod-lives-in-formats', 'zod is for formats alone', 'cli', 'zod'),
  packaged(
    'jsonc-parser-lives-in-formats',
    'jsonc-parser is for formats alone',
    'intake',
    'jsonc-parser',
  ),
  packaged(
    'simple-statistics-lives-in-base-stats',
    'simple-statistics is for base/stats alone',
    'base',
    'simple-statistics',
  ),
  packaged('commander-lives-in-cli', 'commander is for cli alone', 'tasks', 'commander'),
  packaged('chalk-lives-in-cli', 'chalk is for cli alone', 'render', 'chalk'),
  packaged(
    'packages-have-a-home',
    'a package that nobody agreed to may not be imported, not even by cli',
    'cli',
    'left-over',
  ),
  {
    fence: 'every-import-is-found',
    title: 'an import must lead somewhere',
    from: 'src/film/here.ts',
    line: `import { there } from './nowhere.ts';\nexport const here = there;\n`,
    to: [],
  },
  {
    fence: 'source-never-imports-test',
    title: 'src may not import test',
    from: 'src/film/here.ts',
    line: `import { there } from '../../test/there.ts';\nexport const here = there;\n`,
    to: [exporting('test/there.ts')],
  },
  {
    fence: 'source-never-imports-samples',
    title: 'src may not import samples',
    from: 'src/cli/here.ts',
    line: `import there from '../../samples/job.json' with { type: 'json' };\nexport const here = there;\n`,
    to: [{ path: 'samples/job.json', content: '{}\n' }],
  },
];

/** Imports that the matrix allows, which a fence drawn too tightly would refuse. */
const allowed: readonly Planted[] = [
  crossing('', 'film may import base', 'film', 'base'),
  crossing('', 'work may import correction', 'work', 'correction'),
  crossing('', 'intake may import training', 'intake', 'training'),
  crossing('', 'tasks may import intake', 'tasks', 'intake'),
  crossing('', 'report may import tasks', 'report', 'tasks'),
  crossing('', 'cli may import render', 'cli', 'render'),
  {
    fence: '',
    title: 'report may name a type of intake',
    from: 'src/report/here.ts',
    line: `import type { There } from '../intake/there.ts';\nexport type Here = There;\n`,
    to: [exporting('src/intake/there.ts')],
  },
  {
    fence: '',
    title: 'render may import the model of report',
    from: 'src/render/here.ts',
    line: `import { there } from '../report/model.ts';\nexport const here = there;\n`,
    to: [exporting('src/report/model.ts')],
  },
  packaged(
    '',
    'simple-statistics may be imported in base/stats',
    'base/stats',
    'simple-statistics',
  ),
  packaged('', 'zod may be imported in formats', 'formats', 'zod'),
];

const gardens: string[] = [];
afterAll(() => {
  for (const garden of gardens) rmSync(garden, { recursive: true });
});

/** Writes the few files of one case into a folder of its own. */
function plant({ from, line, to }: Planted): string {
  const garden = mkdtempSync(join(tmpdir(), 'leastcut-rooms-'));
  gardens.push(garden);
  const write = (path: string, content: string) => {
    mkdirSync(dirname(join(garden, path)), { recursive: true });
    writeFileSync(join(garden, path), content);
  };
  write('package.json', '{"name":"garden","type":"module"}');
  write('tsconfig.json', '{}');
  write(from, line);
  for (const file of to) {
    const { path, content } = file;
    write(path, content);
    if (path.startsWith('node_modules/'))
      write(join(dirname(path), 'package.json'), '{"type":"module","exports":"./index.js"}');
  }
  return garden;
}

async function brokenFences(sown: Planted): Promise<string[]> {
  const { summary } = await cruiseSource(plant(sown));
  return [...new Set(summary.violations.map(({ rule }) => rule.name))];
}

describe('a fence', () => {
  for (const sown of planted) {
    test(sown.title, async () => {
      expect(await brokenFences(sown)).toEqual([sown.fence]);
    });
  }

  for (const sown of allowed) {
    test(sown.title, async () => {
      expect(await brokenFences(sown)).toEqual([]);
    });
  }

  test('has its violation planted here, for each fence there is', () => {
    const names = fences.map(({ name }) => name ?? '');
    expect([...new Set(planted.map(({ fence }) => fence))].sort()).toEqual(names.sort());
  });
});
