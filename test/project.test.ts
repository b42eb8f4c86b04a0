import { execFileSync, spawnSync } from 'node:child_process';
import {
  copyFileSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { program } from './cli/run-leastcut.ts';

const root = join(import.meta.dirname, '..');
const text = (path: string) => readFileSync(join(root, path), 'utf8');
const run = (command: string, args: readonly string[]) =>
  execFileSync(command, args, { cwd: root, encoding: 'utf8', maxBuffer: 64 * 2 ** 20 });

interface PackageFile {
  readonly scripts: Readonly<Record<string, string>>;
  readonly dependencies?: Readonly<Record<string, string>>;
  readonly devDependencies: Readonly<Record<string, string>>;
}
const packageFile = JSON.parse(text('package.json')) as PackageFile;

/** What git holds or would take in: neither ignored nor deleted. */
const files = run('git', ['ls-files', '-z', '--cached', '--others', '--exclude-standard'])
  .split('\0')
  .filter((path) => path !== '' && existsSync(join(root, path)));

describe('the lock file', () => {
  const locked = JSON.parse(text('package-lock.json')) as {
    readonly packages: Readonly<Record<string, { readonly integrity?: string }>>;
  };

  test('holds no address to download from', () => {
    expect(text('package-lock.json')).not.toMatch(/"resolved"|:\/\/[^"]*\.tgz/);
  });

  test('holds the checksum of every package', () => {
    const packages = Object.entries(locked.packages).filter(([path]) => path !== '');
    expect(packages.length).toBeGreaterThan(6);
    expect(packages.filter(([, { integrity }]) => !integrity?.startsWith('sha512-'))).toEqual([]);
  });
});

describe('the packages used', () => {
  test('while running stand in the built script: an install fetches nothing else', () => {
    expect(packageFile.dependencies).toBeUndefined();
    const hooks = Object.keys(packageFile.scripts).filter((name) =>
      /^(?:pre|post)?(?:install|prepare|pack|publish|uninstall)$/.test(name),
    );
    expect(hooks).toEqual(['prepare']);
  });

  test('in the built script are the agreed ones, each with its terms and a reason in DEVELOPERS.md', () => {
    const licences = readFileSync(join(program(), '../../dist/LICENSES.txt'), 'utf8');
    const sections = licences.split(`\n${'-'.repeat(72)}\n\n`);
    expect(sections.map((text) => text.split(' ')[0])).toEqual([
      'chalk',
      'commander',
      'csv-parse',
      'jsonc-parser',
      'simple-statistics',
      'zod',
    ]);
    const guide = text('DEVELOPERS.md');
    for (const section of sections) {
      const [name = ''] = section.split(' ');
      expect(guide).toContain(`\`${name}\``);
      expect(section).toContain(` ${packageFile.devDependencies[name]}, `);
      expect(section).toMatch(/Copyright|\(c\)/i);
    }
  });

  test('are pinned to exact versions', () => {
    for (const [name, version] of Object.entries(packageFile.devDependencies))
      expect(version, name).toMatch(/^\d+\.\d+\.\d+$/);
  });
});

describe('what is packed', () => {
  // Without scripts: `prepare` would build dist anew under the feet of tests that run it.
  const [pack] = JSON.parse(run('npm', ['pack', '--dry-run', '--json', '--ignore-scripts'])) as [
    { readonly files: readonly { readonly path: string }[] },
  ];
  const packed = pack.files.map(({ path }) => path);

  const samples = files.filter((path) => path.startsWith('samples/'));
  const schemas = packed.filter((path) => path.startsWith('dist/schemas/'));

  test('is the program, its terms, its manual, its schemas, the samples, and nothing else', () => {
    expect(samples.length).toBeGreaterThan(0);
    expect([...packed].sort()).toEqual(
      [
        'LICENSE',
        'README.md',
        'bin/leastcut.js',
        'bin/package.json',
        'dist/LICENSES.txt',
        'dist/batch-worker.js',
        'dist/main.js',
        'dist/man/leastcut.1',
        'dist/package.json',
        'dist/plan.cache',
        'dist/plan.cjs',
        'dist/program.cache',
        'dist/program.cjs',
        'dist/survey.cache',
        'dist/survey.cjs',
        ...schemas,
        'package.json',
        ...samples,
      ].sort(),
    );
  });

  test('has a schema of every file and record, and the columns of every table', () => {
    expect(schemas).toContain('dist/schemas/shop.schema.json');
    expect(schemas).toContain('dist/schemas/readings.columns.json');
    expect(schemas.filter((path) => !/\.(schema|columns)\.json$/.test(path))).toEqual([]);
  });
});

describe('the files of the project', () => {
  test('stand at the top level only under the agreed names', () => {
    const agreed = ['README.md', 'DEVELOPERS.md', 'LICENSE', 'package.json', 'package-lock.json'];
    const folders = ['src', 'bin', 'test', 'samples', 'pictures'];
    const names = new Set(files.map((path) => path.split('/')[0] ?? ''));
    const foreign = [...names].filter(
      (name) => ![...agreed, 'tsconfig.json', ...folders].includes(name) && !name.startsWith('.'),
    );
    expect(foreign).toEqual([]);
  });

  // A path counts as absolute when nothing stands before its first slash: src/work/ is a room.
  const machineBound = [/(?<![\w.)@*-])\/(?:work|root)\//, /registry\.npm/];

  test('name no folder of one machine and no host that packages come from', () => {
    const found = files.flatMap((path) =>
      machineBound
        .map((pattern) => pattern.exec(text(path))?.[0])
        .filter((match) => match !== undefined)
        .map((match) => `${path}: ${match}`),
    );
    expect(found).toEqual([]);
  });

  test('would be caught if they did', () => {
    const caught = (line: string) => machineBound.some((pattern) => pattern.test(line));
    const folder = (name: string) => ['', name, ''].join('/');
    expect(caught(`see ${folder('work')}main`)).toBe(true);
    expect(caught(`"${folder('root')}.npmrc"`)).toBe(true);
    expect(caught(`https://${['registry', 'npmjs', 'org'].join('.')}/`)).toBe(true);
    expect(caught("import type { WorkModel } from '../work/work-model.ts';")).toBe(false);
    expect(caught('src/work/job-time.ts')).toBe(false);
  });
});

describe('the linter', () => {
  const biome = join(root, 'node_modules/@biomejs/biome/bin/biome');
  const garden = mkdtempSync(join(tmpdir(), 'leastcut-lint-'));
  mkdirSync(join(garden, 'src/base'), { recursive: true });
  copyFileSync(join(root, '.biome.json'), join(garden, '.biome.json'));
  afterAll(() => rmSync(garden, { recursive: true }));

  /** The names of the rules that one file, planted under the project's own settings, breaks. */
  function broken(path: string, code: string): string[] {
    writeFileSync(join(garden, path), code);
    const args = [biome, 'lint', '--colors=off', '--error-on-warnings', path];
    const { stdout, stderr } = spawnSync(process.execPath, args, { cwd: garden, encoding: 'utf8' });
    rmSync(join(garden, path));
    expect(stdout + stderr).toContain('Checked 1 file');
    return [...`${stdout}${stderr}`.matchAll(/ lint\/\w+\/(\w+) /g)].map(([, rule]) => rule ?? '');
  }

  test.each([
    ['a default export', 'noDefaultExport', 'export default 1;\n'],
    ['an assertion that a value is there', 'noNonNullAssertion', 'export const a = [1][0]!;\n'],
    ['a barrel file', 'noBarrelFile', "export { mil } from './units.ts';\n"],
    ['a type that may be anything', 'noExplicitAny', 'export const a = (b: any) => b;\n'],
    ['an enum', 'noEnum', 'export enum A {\n  b,\n}\n'],
    [
      'a type imported as a value',
      'useImportType',
      "import { Micrometres } from './units.ts';\nexport type A = Micrometres;\n",
    ],
  ])('refuses %s', (_, rule, code) => {
    expect(broken('src/base/planted.ts', code)).toEqual([rule]);
  });

  test('has nothing against a plain exported value', () => {
    expect(broken('src/base/planted.ts', 'export const a = 1;\n')).toEqual([]);
  });

  test('refuses a file name that is not in kebab case', () => {
    expect(broken('src/base/plantedFile.ts', 'export const a = 1;\n')).toEqual([
      'useFilenamingConvention',
    ]);
  });
});
