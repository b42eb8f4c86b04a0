import { describe, expect, test } from 'vitest';
import { asciiBlocks } from '../../src/render/ascii.ts';
import { asciiDrawing } from '../../src/render/ascii-text.ts';
import { renderHtml } from '../../src/render/html.ts';
import { renderMarkdown } from '../../src/render/markdown.ts';
import { renderPlain } from '../../src/render/plain.ts';
import { printable } from '../../src/render/printable.ts';
import { renderText } from '../../src/render/text.ts';
import type { Block } from '../../src/report/model.ts';
import { actingIn, bare, naughty, pageOf, UNSAFE } from './naughty.ts';

const style = { width: 80, paint: (text: string) => text };
const text = (blocks: readonly Block[]): string => renderText(blocks, style);
const ascii = (blocks: readonly Block[]): string => asciiDrawing(text(asciiBlocks(blocks)));
const renderers = [
  { form: 'text', render: text },
  { form: 'ASCII text', render: ascii },
  { form: 'plain text', render: renderPlain },
  { form: 'Markdown', render: renderMarkdown },
  { form: 'HTML', render: renderHtml },
];
const HARMLESS = pageOf('roof');

describe.each(renderers)('in $form', ({ render }) => {
  test.each(naughty)('%j moves no cursor, turns no writing and breaks no line', (label) => {
    const page = render(pageOf(label));
    expect(UNSAFE.exec(page.replaceAll('\n', ''))?.[0]).toBeUndefined();
  });
});

describe('in plain text', () => {
  test.each(naughty)('%j begins no fact that it is not part of', (label) => {
    const lines = renderPlain(pageOf(label)).trimEnd().split('\n');
    // A long label is said whole once, then by its first words.
    const whole = printable(label).trim();
    const [short] = whole.split(/, | \(|; |: /, 1);
    const own = short || whole;
    expect(own).not.toBe('');
    const begins = (line: string): boolean =>
      [own, 'Note: ', 'to fill in: '].some((beginning) => line.startsWith(beginning));
    expect(lines.filter((line) => !begins(line))).toEqual([]);
  });
});

describe('in ASCII', () => {
  test.each(naughty)('%j leaves nothing but ASCII', (label) => {
    expect(ascii(pageOf(label))).toMatch(/^\p{ASCII}*$/u);
  });

  test('a letter of a label that ASCII lacks is shown by its number, and nothing else made of it', () => {
    expect(ascii([{ kind: 'title', text: 'Vordertür Łódź' }])).toBe(
      'Vordert\\u{fc}r \\u{141}\\u{f3}d\\u{17a}\n',
    );
  });
});

describe('in Markdown', () => {
  test.each(naughty)('%j opens nothing: no tag, link, code, emphasis, mathematics', (label) => {
    expect(actingIn(renderMarkdown(pageOf(label)))).toEqual(actingIn(renderMarkdown(HARMLESS)));
  });

  test.each(naughty)('%j adds no line, no cell and no heading', (label) => {
    const shape = (page: string) =>
      bare(page)
        .split('\n')
        .map((line) => [
          line === '',
          line.split('|').length,
          /^(#+ |- |\d+[.)] |> |```|---|\||\*\*|)/.exec(line)?.[0],
        ]);
    expect(shape(renderMarkdown(pageOf(label)))).toEqual(shape(renderMarkdown(HARMLESS)));
  });

  test('nobody is called, and no address becomes a link', () => {
    const page = renderMarkdown([{ kind: 'title', text: 'a@b.org @me http://x www.x' }]);
    expect(page).toBe('# a@<!-- -->b.org @<!-- -->me http:<!-- -->//x www<!-- -->.x\n');
  });
});

describe('in HTML', () => {
  test.each(naughty)('%j adds no element', (label) => {
    // A number may stand in a span with its unit.
    const tags = (page: string) => page.match(/<\/?(?!(?:span|bdi)\b)\w+/g);
    const boxes = (blocks: readonly Block[]) => tags(renderHtml(blocks));
    expect(boxes(pageOf(label))).toEqual(boxes(HARMLESS));
  });
});
