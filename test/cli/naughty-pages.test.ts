/**
 * Every page of every command in every form, of a vehicle whose every text is one label that does harm where it
 * is not escaped. What a harmless label gives is the measure: no element, cell or line more.
 */
import { createHash } from 'node:crypto';
import { parse } from 'csv-parse/sync';
import { describe, expect, test } from 'vitest';
import type { Answer, World } from '../../src/cli/command.ts';
import { commands, loadCommand } from '../../src/cli/commands.ts';
import { parseArguments } from '../../src/cli/options/arguments.ts';
import { asciiBlocks } from '../../src/render/ascii.ts';
import { asciiDrawing } from '../../src/render/ascii-text.ts';
import { renderCsv } from '../../src/render/csv.ts';
import { renderDiagnostic } from '../../src/render/diagnostic-text.ts';
import { renderHtml } from '../../src/render/html.ts';
import { renderJson } from '../../src/render/json.ts';
import { renderMarkdown } from '../../src/render/markdown.ts';
import { renderPlain } from '../../src/render/plain.ts';
import { renderText } from '../../src/render/text.ts';
import { actingIn, naughty, UNSAFE } from '../render/naughty.ts';
import { type Files, naughtyFiles, naughtyPages } from './naughty-vehicle.ts';

const worldOf = (files: Files): World => {
  const world: World = {
    load: async (name) => {
      const text = files.get(name);
      if (text === undefined) throw new Error(`no file ${name}`);
      return {
        file: {
          name,
          bytes: Buffer.from(text, 'utf8'),
          sha256: createHash('sha256').update(text).digest('hex'),
        },
        diagnostics: [],
      };
    },
    create: async () => [],
    surroundings: {
      environment: {},
      workingDirectory: undefined,
      home: '/nowhere',
      platform: 'linux',
      today: '2026-03-31',
    },
    once: (_what, _options, make) => make(world),
    fromEnvironment: new Set(),
    command: loadCommand,
    commands: () => Promise.all(commands.map(({ load }) => load())),
  };
  return world;
};

async function answerTo(words: readonly string[], files: Files): Promise<Answer> {
  const [name = '', ...rest] = words;
  const command = await loadCommand(name);
  const { value, diagnostics } = parseArguments(command, rest);
  if (value?.kind !== 'run') throw new Error(JSON.stringify(diagnostics));
  return command.run(value.operands, value.options, worldOf(files));
}

const style = { width: 80, paint: (text: string) => text };

type Forms = Readonly<Record<string, string>>;

/** The forms of an answer, by name. */
function formsOf({ pages, records, table }: Answer): Forms {
  const blocks = pages().flat();
  return {
    text: renderText(blocks, style),
    ascii: asciiDrawing(renderText(asciiBlocks(blocks), style)),
    plain: renderPlain(blocks),
    markdown: renderMarkdown(blocks),
    html: renderHtml(blocks),
    json: records().map(renderJson).join(''),
    csv: table === undefined ? '' : renderCsv(table()),
  };
}

const refusalsIn = ({ diagnostics }: Answer): readonly string[] =>
  diagnostics.filter(({ severity }) => severity === 'error').map(({ message }) => message);

const HARMLESS = 'roof';
const tagsIn = (html: string): readonly string[] =>
  html.match(/<\/?(?!span\b|bdi\b|strong\b)[a-z]\w*/gi) ?? [];
const attributesIn = (html: string): ReadonlySet<string> =>
  new Set(
    [...html.matchAll(/<[a-z]\w*((?: [\w-]+="[^"]*")*)\/?>/gi)].flatMap(
      ([, all = '']) => all.match(/[\w-]+(?==")/g) ?? [],
    ),
  );
const cellsIn = (csv: string): readonly (readonly string[])[] => parse(csv) as string[][];

/** What no label may change of the forms of a page. */
function shapeOf({ html = '', markdown = '', csv = '' }: Forms) {
  const [tags, cells] = [tagsIn(html), cellsIn(csv)];
  return {
    // As one text, which is soon compared.
    inOrder: tags.join(' '),
    tags: new Set(tags),
    attributes: attributesIn(html),
    acting: actingIn(markdown),
    cells,
    widths: cells.map((row) => row.length),
  };
}

/** What a harmless label gives, by the place of its page: the measure of all others. */
const harmless = await Promise.all(
  naughtyPages(HARMLESS).map(async (words) => {
    const answer = await answerTo(words, naughtyFiles(HARMLESS));
    expect(refusalsIn(answer), words.join(' ')).toEqual([]);
    return shapeOf(formsOf(answer));
  }),
);

/** As a file in UTF-8 can hold it: half a pair becomes the mark of what was lost. */
const inFile = (label: string): string => Buffer.from(label, 'utf8').toString('utf8');
const NO_TEXT = '\u0000';

describe.each(naughty.filter((label) => !label.includes(NO_TEXT)).map(inFile))(
  'with %j for every text',
  (label) => {
    const files = naughtyFiles(label);

    test.each(
      naughtyPages(label).map((words, at) => ({ at, name: words.slice(0, 2).join(' '), words })),
    )('$at $name: comes out harmless in every form', async ({ at, words }) => {
      const answer = await answerTo(words, files);
      expect(refusalsIn(answer)).toEqual([]);
      const forms = formsOf(answer);
      for (const [form, text] of Object.entries(forms)) {
        // A cell of a spreadsheet may hold line ends and tabs, in quotes: they are the label's own.
        const shown = form === 'csv' ? text.replaceAll(/[\t\r]/g, '') : text;
        expect(UNSAFE.exec(shown.replaceAll('\n', ''))?.[0], form).toBeUndefined();
        const forged = form === 'csv' ? null : text.match(/^bonnet: may go 99.*$/gm);
        expect(forged, form).toBeNull();
      }
      const said = answer.diagnostics.map((one) => renderDiagnostic(one)).join('');
      expect(UNSAFE.exec(said.replaceAll('\n', ''))?.[0]).toBeUndefined();
      expect(forms['ascii']).toMatch(/^\p{ASCII}*$/u);
      const shape = shapeOf(forms);
      const measure = harmless[at];
      if (measure === undefined) throw new Error('a page without its measure');
      // A line end in a file is a decision of the reader, with a line of its own.
      if (/[\r\n]/.test(label)) expect(shape.tags).toEqual(measure.tags);
      else expect(shape.inOrder).toBe(measure.inOrder);
      expect(shape.attributes).toEqual(measure.attributes);
      expect(shape.acting).toEqual(measure.acting);
      expect(shape.widths).toEqual(measure.widths);
      expect(
        shape.cells
          .flat()
          .filter((cell) => /^[=+\-@\t\r]/.test(cell) && Number.isNaN(Number(cell))),
      ).toEqual([]);
      expect(answer.records().length).toBeGreaterThan(0);
    });

    test('is in the record as it was written, less the blanks around it', async () => {
      const { records } = await answerTo(['survey', 'readings.csv', '--job', 'job.json'], files);
      const [record] = records().map((one) => JSON.parse(renderJson(one)) as { vehicle: unknown });
      expect(record?.vehicle).toBe(label.trim());
    });
  },
);

test('blanks before a name cannot make it a part of what stands above it', async () => {
  const answer = await answerTo(
    ['survey', 'readings.csv', '--template', 'template.json'],
    naughtyFiles('\u00a0=1+1'),
  );
  const facts = renderPlain(answer.pages().flat()).split('\n');
  expect(facts.filter((line) => /^=1\+1 side \d: may go/.test(line))).toHaveLength(2);
});
