/**
 * The examples that `explain` shows of each diagnostic are the folders beside this file as text.
 * RECORD=1 writes them anew.
 */
import { execFileSync } from 'node:child_process';
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { caseNames } from '../cli/case-command.ts';
import { projectRoot } from '../cli/run-leastcut.ts';

const dataFile = join(projectRoot, 'src/formats/data/diagnostic-examples.ts');
const START = 'export const diagnosticExamples';

type Example = {
  readonly command: string;
  readonly files: readonly { readonly name: string; readonly text: string }[];
};

/** What is typed after the program's name, without environment and without the folder's name. */
const typed = (cmd: string): string =>
  cmd
    .trim()
    .replace(/^(?:[A-Z_]+=(?:"[^"]*"|\S*) )+/, '')
    .replaceAll(/\{(?:case|tmp)\}\//g, '')
    .replaceAll('{case}', 'a-folder');

/** Latin-1 where it is not UTF-8: what an editor shows of it. */
function asText(bytes: Uint8Array): string {
  try {
    return new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    return new TextDecoder('latin1').decode(bytes);
  }
}

function exampleIn(code: string): Example {
  const folder = join(import.meta.dirname, code);
  const files = readdirSync(folder, { withFileTypes: true })
    .filter((entry) => entry.isFile() && !/^(cmd|expected\..*)$/.test(entry.name))
    .map(({ name }) => ({ name, text: asText(readFileSync(join(folder, name))) }))
    .sort((a, b) => (a.name < b.name ? -1 : 1));
  return { command: typed(readFileSync(join(folder, 'cmd'), 'utf8')), files };
}

const examples = caseNames(import.meta.dirname).map((code) => [code, exampleIn(code)] as const);

/** As code; bytes that no editor shows are written as escapes. */
const literal = (text: string): string =>
  JSON.stringify(text).replaceAll(
    /[\u007f-\u009f\u200b-\u200f\u2028-\u202e\ufeff]/g,
    (one) => `\\u${one.charCodeAt(0).toString(16).padStart(4, '0')}`,
  );

function asCode([code, { command, files }]: (typeof examples)[number]): string {
  const texts = files.map(({ name, text }) => `${literal(name)}: ${literal(text)}`);
  const second = texts.length === 0 ? '' : `, { ${texts.join(', ')} }`;
  return `  '${code}': example(${literal(command)}${second}),\n`;
}

if (process.env['RECORD'] === '1') {
  const written = readFileSync(dataFile, 'utf8');
  const head = written.slice(0, written.indexOf(START));
  const type = ': Readonly<Record<DiagnosticCode, DiagnosticExample>>';
  writeFileSync(dataFile, `${head}${START}${type} = {\n${examples.map(asCode).join('')}};\n`);
  const biome = join(projectRoot, 'node_modules/@biomejs/biome/bin/biome');
  execFileSync(process.execPath, [biome, 'check', '--write', dataFile], { cwd: projectRoot });
}

// Loaded after it may have been written.
const { diagnosticExamples } = await import('../../src/formats/data/diagnostic-examples.ts');

test.each(examples)('what explain shows of %s is what its folder holds', (code, example) => {
  const shown = new Map<string, Example>(Object.entries(diagnosticExamples));
  expect(shown.get(code)).toEqual(example);
});

test('explain shows no example of a code that has no folder', () => {
  expect(Object.keys(diagnosticExamples).sort()).toEqual(examples.map(([code]) => code));
});
