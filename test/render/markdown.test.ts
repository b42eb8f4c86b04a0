import { describe, expect, test } from 'vitest';
import { renderMarkdown } from '../../src/render/markdown.ts';
import { escapedMarkdown } from '../../src/render/markdown-text.ts';
import { type Block, cell, gap, list, paragraph, title } from '../../src/report/model.ts';

describe('a page in Markdown', () => {
  test('has headings, paragraphs and lists, a blank line between', () => {
    expect(
      renderMarkdown([
        title('One'),
        gap,
        paragraph('Time', '2 h'),
        paragraph(null, 'x'),
        list('Notes', ['a', 'b']),
      ]),
    ).toBe('# One\n\n**Time:** 2 h\n\nx\n\n## Notes\n\n- a\n- b\n');
  });

  test('has a table with pipes, numbers to the right, a strip as its readings', () => {
    const block: Block = {
      kind: 'table',
      columns: [
        { title: 'panel', align: 'left' },
        { title: 'n', align: 'right' },
        { title: '', align: 'left', said: 'readings', axis: { from: 0, to: 9, line: null } },
      ],
      rows: [
        [cell('a|b'), cell('2', 'strong'), { kind: 'strip', values: [1.23456, 2], marked: null }],
        [cell(''), cell('', 'strong')],
      ],
    };
    expect(renderMarkdown([block])).toBe(
      [
        '| panel | n | readings |',
        '| --- | ---: | --- |',
        '| a\\|b | **2** | 1.235, 2 |',
        '|  |  |  |',
        '',
      ].join('\n'),
    );
  });

  test('has a drawing as a table of the same numbers, in order', () => {
    const block: Block = {
      kind: 'curve',
      label: 'Curve',
      curve: {
        across: { title: 'spent', unit: 'µm', from: 0, to: 4 },
        up: { title: 'clears', unit: '%', from: 0, to: 100 },
        line: [
          { x: 1, y: 50 },
          { x: 3, y: 70 },
        ],
        marks: [{ x: 2, y: 60, sign: 'A', name: 'enhance' }],
      },
    };
    expect(renderMarkdown([block])).toBe(
      [
        '## Curve',
        '',
        '| spent (µm) | clears (%) |  |',
        '| ---: | ---: | --- |',
        '| 1 | 50 |  |',
        '| 2 | 60 | A: enhance |',
        '| 3 | 70 |  |',
        '',
      ].join('\n'),
    );
  });

  test('has boxes to tick and blanks to fill in', () => {
    const blank = '\\_'.repeat(12);
    expect(
      renderMarkdown([
        { kind: 'ticks', label: 'roof', items: [{ text: 'cut', boxes: 2 }] },
        { kind: 'form', fields: ['Date'] },
        {
          kind: 'boxes',
          label: 'roof',
          places: [
            { name: '1', u: 0, v: 0 },
            { name: '2', u: 1, v: 0 },
          ],
        },
      ]),
    ).toBe(
      `## roof\n\n- [ ] [ ] cut\n\n- Date: ${blank}\n\n## roof\n\n| 1 | 2 |\n| --- | --- |\n|  |  |\n`,
    );
  });
});

describe('text in Markdown', () => {
  test.each([
    ['94.1 µm', '94.1 µm'],
    ['−0.3 and -0.3', '−0.3 and -0.3'],
    ['1. item', '1\\. item'],
    ['- item', '\\- item'],
    ['---', '\\---'],
    ['a_b*c`d', 'a\\_b\\*c\\`d'],
    ['[x](y) <b> & | ~ $', '\\[x\\](y) \\<b\\> \\& \\| \\~ \\$'],
    ['\\x', '\\\\x'],
    ['  code', 'code'],
    ['a\u001bb', 'a\\\\u{1b}b'],
  ])('%j is written %j', (text, written) => {
    expect(escapedMarkdown(text)).toBe(written);
  });
});
