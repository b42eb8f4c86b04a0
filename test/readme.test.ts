/**
 * README.md says nothing that the program does not do. Every block of the kind `console` is run as it
 * stands, in a folder of its own that holds the samples, and must show what the page shows; a line `…`
 * stands for lines left out, once in an output. RECORD=1 writes the outputs anew.
 */
import { chmodSync, cpSync, existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import * as z from 'zod';
import { optionsOf } from '../src/cli/command.ts';
import { commands } from '../src/cli/commands.ts';
import { exitCodes } from '../src/cli/exit-code.ts';
import type { OptionSpec } from '../src/cli/options/option-spec.ts';
import { helpOption, type OptionName, optionSpecs } from '../src/cli/options.ts';
import { basisMeanings } from '../src/formats/data/state-meanings.ts';
import { shopSchema } from '../src/formats/shop/shop.ts';
import { projectRoot, runShell } from './cli/run-leastcut.ts';
import { temporaryFolder } from './cli/temporary-folder.ts';

const readmePath = join(projectRoot, 'README.md');
const readme = readFileSync(readmePath, 'utf8').split('\n');

const ELIDED = '…';

/** A command of the page with the lines shown under it; `from` is where these begin, from 0. */
type Shown = {
  readonly command: string;
  readonly from: number;
  readonly output: readonly string[];
};
/** A block is run in one folder, command after command. */
type Block = { readonly line: number; readonly shown: readonly Shown[] };

/** Fenced blocks with their kind; the lines of each stand from `from` up to `to`. */
function fencedBlocks(lines: readonly string[]) {
  const fences = lines.flatMap((line, i) => (line.startsWith('```') ? [i] : []));
  return fences.flatMap((start, i) => {
    const end = fences[i + 1];
    return i % 2 === 1 || end === undefined
      ? []
      : [{ kind: (lines[start] ?? '').slice(3), from: start + 1, to: end }];
  });
}

function consoleBlocks(lines: readonly string[]): readonly Block[] {
  return fencedBlocks(lines)
    .filter(({ kind }) => kind === 'console')
    .map(({ from, to }) => {
      const starts = lines.flatMap((line, i) =>
        i >= from && i < to && line.startsWith('$ ') ? [i] : [],
      );
      const shown = starts.map((start, i) => ({
        command: (lines[start] ?? '').slice(2),
        from: start + 1,
        output: lines.slice(start + 1, starts[i + 1] ?? to),
      }));
      return { line: from + 1, shown };
    });
}

/** The output as the page would show it: with as many lines before and after the gap as there. */
function asShown(output: string, shown: readonly string[]): readonly string[] {
  const lines = output.split('\n').slice(0, -1);
  const gap = shown.indexOf(ELIDED);
  if (gap === -1) return lines;
  const after = shown.length - gap - 1;
  if (shown.indexOf(ELIDED, gap + 1) !== -1) throw new Error('only one gap in an output');
  if (lines.length <= gap + after) return lines;
  return [...lines.slice(0, gap), ELIDED, ...lines.slice(lines.length - after)];
}

/** `leastcut` as a command of the shell, in a folder with the samples and without settings of a user. */
function folderToRunIn(): { readonly cwd: string; readonly env: Readonly<Record<string, string>> } {
  const folder = temporaryFolder();
  const home = temporaryFolder();
  cpSync(join(projectRoot, 'samples'), join(folder, 'samples'), { recursive: true });
  const command = join(home, 'leastcut');
  writeFileSync(command, '#!/bin/sh\nexec "$NODE" "$PROGRAM" "$@"\n');
  chmodSync(command, 0o755);
  return { cwd: folder, env: { HOME: home, PATH: `${home}:${process.env['PATH']}` } };
}

/** The text under a heading, up to the next of its level. */
function section(title: string): string {
  const start = readme.indexOf(`## ${title}`);
  const end = readme.findIndex((line, i) => i > start && line.startsWith('## '));
  if (start === -1) throw new Error(`no section ${title}`);
  return readme.slice(start, end === -1 ? undefined : end).join('\n');
}

const loaded = await Promise.all(commands.map(({ load }) => load()));

/** Every option as a row of the table that lists them. */
const optionRows: readonly string[] = [
  ...(Object.keys(optionSpecs) as OptionName[]).map((name) => {
    const takers = loaded.filter((command) => optionsOf(command).includes(name));
    const by = takers.map((command) => command.name);
    return optionRow(optionSpecs[name], by.length === loaded.length ? 'all' : by.join(', '));
  }),
  optionRow(helpOption, 'all'),
];

function optionRow({ flags, summary, choices = [] }: OptionSpec, by: string): string {
  const words = choices.length === 0 ? '' : `: ${choices.join(', ')}`;
  const cells = [`\`${flags}\``, `${summary}${words}`, by];
  return `| ${cells.map((cell) => cell.replaceAll('|', '\\|')).join(' | ')} |`;
}

const isOptionRow = (line: string): boolean => /^\| `-/.test(line);

const blocks = consoleBlocks(readme);
const outputs = new Map<Shown, readonly string[]>();

describe('the reading of the page', () => {
  const page = [
    '```console',
    '$ leastcut a',
    'one',
    '…',
    'five',
    '$ b',
    '```',
    '```json',
    '{}',
    '```',
  ];

  test('finds each command with what is shown under it', () => {
    expect(consoleBlocks(page)).toEqual([
      {
        line: 2,
        shown: [
          { command: 'leastcut a', from: 2, output: ['one', '…', 'five'] },
          { command: 'b', from: 6, output: [] },
        ],
      },
    ]);
  });

  test('lets a gap stand for any lines, and for nothing else', () => {
    const shown = ['one', '…', 'five'];
    expect(asShown('one\ntwo\nfive\n', shown)).toEqual(shown);
    expect(asShown('one\nfive\n', shown)).not.toEqual(shown);
    expect(asShown('one\ntwo\nfour\n', shown)).not.toEqual(shown);
    expect(asShown('one\n', ['one', 'two'])).not.toEqual(['one', 'two']);
  });
});

describe.concurrent('README.md', () => {
  test.each(blocks.map((block) => [block.line, block] as const))(
    'shows at line %i what comes out',
    async (_, { shown }) => {
      const { cwd, env } = folderToRunIn();
      for (const one of shown) {
        const { out } = await runShell(`exec 2>&1\n${one.command}`, { cwd, env });
        expect(out, one.command).not.toContain('a bug of ours, please report');
        const lines = asShown(out, one.output);
        outputs.set(one, lines);
        if (process.env['RECORD'] !== '1') expect(lines, one.command).toEqual(one.output);
      }
    },
  );

  afterAll(() => {
    if (process.env['RECORD'] !== '1') return;
    const written = [...readme];
    const all = blocks.flatMap(({ shown }) => shown).reverse();
    for (const one of all) {
      written.splice(one.from, one.output.length, ...(outputs.get(one) ?? one.output));
    }
    const heading = written.indexOf('## Options');
    const first = written.findIndex((line, at) => at > heading && isOptionRow(line));
    const after = written.findIndex((line, at) => at > first && !isOptionRow(line));
    if (heading !== -1 && first !== -1) written.splice(first, after - first, ...optionRows);
    writeFileSync(readmePath, written.join('\n'));
  });

  test('lists the options there are, what each is for and which commands take it', () => {
    if (process.env['RECORD'] === '1') return;
    expect(section('Options').split('\n').filter(isOptionRow)).toEqual(optionRows);
  });

  test('names no option that is not there', () => {
    const named = readme.join('\n').match(/(?<![\w-])--[a-z][\w-]*/g) ?? [];
    const specs = [...Object.values(optionSpecs), helpOption];
    const known = new Set(specs.flatMap(({ flags }) => flags.match(/--[\w-]+/g) ?? []));
    expect(named.length).toBeGreaterThan(40);
    expect([...new Set(named)].filter((flag) => !known.has(flag) && flag !== '--version')).toEqual(
      [],
    );
  });

  test('runs the program nowhere but in blocks that are tried', () => {
    const untried = fencedBlocks(readme)
      .filter(({ kind }) => kind !== 'console')
      .flatMap(({ from, to }) => readme.slice(from, to))
      .filter((line) => /^(\$ )?leastcut /.test(line));
    expect(untried).toEqual([]);
    expect(blocks.flatMap(({ shown }) => shown).length).toBeGreaterThan(20);
  });

  test('lists the commands there are, and writes of no other', () => {
    const text = readme.join('\n');
    const names = commands.map(({ name }) => name);
    const rows = [...section('Commands').matchAll(/^\| `([a-z]+)` \|/gm)];
    expect(rows.map(([, name]) => name)).toEqual(names);
    const inText = [...text.matchAll(/`leastcut ([a-z]\w*)/g)].map(([, name = '']) => name);
    expect(inText.filter((name) => !names.includes(name))).toEqual([]);
  });

  test('lists the exit codes there are', () => {
    const rows = [...section('Exit codes').matchAll(/^\| (\d+) \|/gm)];
    expect(rows.map(([, code]) => Number(code))).toEqual(
      Object.values(exitCodes).sort((a, b) => a - b),
    );
  });

  test('says of each fact what the bonnet of the sample may lose with it', async () => {
    const rows = [...section('Finish and history').matchAll(/^\| `(".*)` \| .* \| ([\d.]+) \|$/gm)];
    expect(rows.length).toBeGreaterThan(10);
    const { cwd, env } = folderToRunIn();
    const budgets = new Map<string, string>();
    for (const [i, [, fact = '']] of rows.entries()) {
      writeFileSync(join(cwd, `${i}.json`), `{ "schema": "leastcut/job/1", ${fact} }`);
      const words = `samples/sound-saloon/readings.csv --template saloon --job ${i}.json`;
      const { out } = await runShell(`leastcut survey ${words} --format json`, { cwd, env });
      const record = JSON.parse(out) as { panels: { panel: string; budget_um: number }[] };
      const bonnet = record.panels.find(({ panel }) => panel === 'bonnet');
      budgets.set(fact, (bonnet?.budget_um ?? Number.NaN).toFixed(2));
    }
    expect(Object.fromEntries(budgets)).toEqual(
      Object.fromEntries(rows.map(([, fact, budget]) => [fact, budget])),
    );
  });

  test('lists the keys a shop file can have', () => {
    const [, line = ''] = /^Keys: (.*)$/m.exec(section('Settings')) ?? [];
    const listed = [...line.matchAll(/`([a-z_]+)`/g)].map(([, key]) => key);
    const keys = Object.keys(
      z.toJSONSchema(shopSchema, { unrepresentable: 'any' }).properties ?? {},
    );
    expect(listed.sort()).toEqual(keys.filter((key) => !key.endsWith('schema')).sort());
  });

  test('lists the grounds a number can have', () => {
    const rows = [...section('Where the numbers come from').matchAll(/^\| ([a-z ]+) \|/gm)];
    expect(rows.map(([, name]) => name).slice(1)).toEqual(Object.keys(basisMeanings));
  });

  test('names no file of the samples that is not there', () => {
    const named = new Set(readme.join('\n').match(/samples\/[\w./-]+\.\w+/g));
    expect(named.size).toBeGreaterThan(8);
    expect([...named].filter((path) => !existsSync(join(projectRoot, path)))).toEqual([]);
  });
});
