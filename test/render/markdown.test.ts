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
        '| a\\|b | **2** | 1.235, 2.000 |',
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
        '| spent (µm) | clears (%) | on the curve |',
        '| ---: | ---: | --- |',
        '| 1.00 | 50 |  |',
        '| 2.00 | 60 | A: enhance |',
        '| 3.00 | 70 |  |',
        '',
      ].join('\n'),
    );
  });

  test('has a box to tick in each line, as a task list has but one, and blanks to fill in', () => {
    const blank = '\\_'.repeat(12);
    expect(
      renderMarkdown([
        {
          kind: 'ticks',
          label: 'roof',
          note: 'takes 2 µm',
          items: [
            { text: 'cut', boxes: 2 },
            { text: 'finish: 2× it', boxes: 2, apart: ['set 1 of 2', 'set 2 of 2'] },
            { text: 'mind: warm', boxes: 0 },
          ],
        },
        { kind: 'form', fields: ['Date'] },
        {
          kind: 'boxes',
          panels: [
            {
              label: 'roof',
              towards: { word: 'front', at: 'top' },
              places: [
                { name: '1', u: 0, v: 0 },
                { name: '2', u: 1, v: 0 },
              ],
              boxes: 1,
            },
          ],
        },
      ]),
    ).toBe(
      `## roof\n\ntakes 2 µm\n\n- [ ] cut\n- [ ] cut\n- [ ] set 1 of 2\n- [ ] set 2 of 2\n- mind: warm\n\n- Date: ${blank}\n\n## roof, ↑ front\n\n| 1 | 2 |\n| --- | --- |\n|  |  |\n`,
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

describe('a list in Markdown', () => {
  test('has what is set in under an item in it', () => {
    const items = ['roof', '\u00a0\u00a05.12: life', '\u00a0\u00a07.4: clear', 'bonnet'];
    expect(renderMarkdown([list('Limits', items)])).toBe(
      '## Limits\n\n- roof\n  - 5.12: life\n  - 7.4: clear\n- bonnet\n',
    );
  });

  test('is numbered where its items bear their numbers', () => {
    const items = ['1. wash', '\u00a0\u00a0twice', '2. dry'];
    expect(renderMarkdown([list('Order', items)])).toBe(
      '## Order\n\n1. wash\n   - twice\n2. dry\n',
    );
  });
});
