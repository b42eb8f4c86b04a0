import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { displayWidth } from '../../src/render/printable.ts';
import { renderText, type TextStyle } from '../../src/render/text.ts';
import {
  type Block,
  type Cell,
  cell,
  gap,
  list,
  paragraph,
  title,
} from '../../src/report/model.ts';

const style = (width: number): TextStyle => ({ width, paint: (text) => text });
const painted = (width: number): TextStyle => ({
  width,
  paint: (text, tone) => (tone === 'plain' ? text : `<${tone}>${text}</${tone}>`),
});
const lines = (blocks: readonly Block[], width: number): readonly string[] =>
  renderText(blocks, style(width)).slice(0, -1).split('\n');

describe('running text', () => {
  test('is filled into lines, the later ones of a labelled paragraph set in', () => {
    expect(lines([paragraph('Time', 'one two three four five')], 16)).toEqual([
      'Time: one two',
      '  three four',
      '  five',
    ]);
  });

  test('without a label is not set in', () => {
    expect(lines([paragraph(null, 'one two three')], 8)).toEqual(['one two', 'three']);
  });

  test('under a label longer than a line keeps the label whole, and marks all of it', () => {
    const block = paragraph('bonnet, roof, boot lid', 'cool it');
    expect(lines([block], 14)).toEqual(['bonnet, roof,', '  boot lid:', '  cool it']);
    expect(renderText([block], painted(14))).toBe(
      '<strong>bonnet, roof,</strong>\n  <strong>boot lid</strong>:\n  cool it\n',
    );
  });

  test('longer than a line is not cut', () => {
    expect(lines([paragraph(null, 'a unbelievably-long-name b')], 10)).toEqual([
      'a',
      'unbelievably-long-name',
      'b',
    ]);
  });

  test('is at most 100 columns wide, whatever the window, while a table takes what it needs', () => {
    const text = 'word '.repeat(60).trim();
    const told = lines([title(text), paragraph('Time', text), list('Points', [text])], 200);
    expect(Math.max(...told.map(displayWidth))).toBeLessThanOrEqual(100);
    expect(Math.max(...told.map(displayWidth))).toBeGreaterThan(90);
    const wide = 'w'.repeat(60);
    const row: Block = {
      kind: 'table',
      columns: [
        { title: 'one', align: 'left' },
        { title: 'other', align: 'left' },
      ],
      rows: [[cell(wide), cell(wide)]],
    };
    expect(lines([row], 200).some((line) => line.includes(`${wide} ${wide}`))).toBe(true);
  });

  test('keeps a number with its unit', () => {
    expect(lines([paragraph(null, 'takes 2.5 µm off, risk 5 %')], 10)).toEqual([
      'takes',
      '2.5 µm',
      'off, risk',
      '5 %',
    ]);
  });

  test('of a list is set in under its label', () => {
    expect(lines([list('Inputs', ['one two three', 'four'])], 12)).toEqual([
      'Inputs',
      '  one two',
      '    three',
      '  four',
    ]);
  });

  test('of a list hangs under its own item, set in or pointed at, and never looks like a new one', () => {
    const items = ['\u00a0\u00a01: one two three', '→ 2: one two three'];
    expect(lines([list('Limits', items)], 14)).toEqual([
      'Limits',
      '    1: one two',
      '      three',
      '  → 2: one two',
      '      three',
    ]);
  });

  test('never starts a line with a blank it was not given, nor ends one with any', () => {
    const word = fc.stringMatching(/^[a-z]{1,12}$/);
    fc.assert(
      fc.property(
        fc.array(word, { minLength: 1, maxLength: 30 }),
        fc.integer({ min: 20, max: 60 }),
        (words, width) => {
          const out = lines([paragraph(null, words.join(' '))], width);
          expect(out.join(' ')).toBe(words.join(' '));
          expect(out.filter((line) => line.length > width)).toEqual([]);
        },
      ),
    );
  });

  test('with a wide character counts two columns for it', () => {
    expect(lines([paragraph(null, '車体 車体')], 8)).toEqual(['車体', '車体']);
    expect(lines([paragraph(null, '車体 車体')], 9)).toEqual(['車体 車体']);
  });

  test('a title is strong on each of its lines, a label strong without its colon', () => {
    const page = renderText([title('one two'), gap, paragraph('Time', 'x')], painted(5));
    expect(page).toBe(
      '<strong>one</strong>\n<strong>two</strong>\n\n<strong>Time</strong>:\n  x\n',
    );
  });
});

const table = (rows: readonly (readonly Cell[])[]): Block => ({
  kind: 'table',
  columns: [
    { title: 'panel', align: 'left' },
    { title: 'n', align: 'right' },
  ],
  rows,
});

describe('a table', () => {
  test('puts words left and numbers right', () => {
    expect(
      lines(
        [
          table([
            [cell('roof'), cell('5')],
            [cell('boot lid'), cell('12')],
          ]),
        ],
        80,
      ),
    ).toEqual(['panel     n', 'roof      5', 'boot lid 12']);
  });

  test.each([
    ['wide characters', '車体'],
    ['a combining mark', 'coupe\u0301'],
    ['an emoji of several code points', '👩‍🔧'],
    ['a control character, shown as text', 'a\u001bb'],
  ])('aligns the next column after %s', (_, label) => {
    const rows = lines(
      [
        table([
          [cell(label), cell('1')],
          [cell('quarter panel'), cell('22')],
        ]),
      ],
      80,
    );
    expect(new Set(rows.map(displayWidth)).size).toBe(1);
  });

  test('wider than the page is not cut', () => {
    const long = 'x'.repeat(100);
    expect(lines([table([[cell(long), cell('5')]])], 60).join('\n')).toContain(`${long} 5`);
  });

  test('colours a cell to its full width and changes nothing else', () => {
    const plain = table([[cell('roof'), cell('5', 'binding')]]);
    expect(renderText([plain], painted(80))).toBe(
      '<quiet>panel</quiet> <quiet>n</quiet>\nroof  <binding>5</binding>\n',
    );
  });
});

const strip = (values: readonly number[], marked: number | null = null): Block => ({
  kind: 'table',
  columns: [
    { title: 'p', align: 'left' },
    { title: '', align: 'left', axis: { from: 0, to: 100, line: 50 } },
  ],
  rows: [[cell('a'), { kind: 'strip', values, marked }]],
});
/** `a` and a blank, then a strip of 20. */
const drawn = (values: readonly number[], marked: number | null = null): string =>
  lines([strip(values, marked)], 22)[1]?.slice(2) ?? '';

describe('a strip of readings', () => {
  test('puts each value where it stands on the axis, and the line across', () => {
    expect(drawn([0, 25, 75])).toBe('·    ·    ┊    ·');
  });

  test('tells one, two and more values at one place', () => {
    expect(drawn([1, 26, 26, 76, 76, 76])).toBe('·    :    ┊    ⁝');
  });

  test('marks the thinnest and the line with signs of their own, which no reading at the same place covers', () => {
    expect(drawn([75], 25)).toBe('     ‹    ┊    ·');
    expect(drawn([25], 25)).toBe('     ‹    ┊');
    expect(drawn([50, 51, 52], 25)).toBe('     ‹    ┊');
  });

  test('shows that something lies beyond the axis, at either end', () => {
    expect(drawn([101])).toBe('          ┊        »');
    expect(drawn([100])).toBe('          ┊        ·');
    expect(drawn([75], -5)).toBe('«         ┊    ·');
  });

  test('has the ends of its axis and the line in the heading', () => {
    expect(lines([strip([])], 22)[0]).toBe('p 0         ┊      100');
  });

  test('takes the width that is left, and at least eight columns of it', () => {
    expect(lines([strip([99])], 13)[1]).toBe(`a ${' '.repeat(5)}┊${' '.repeat(4)}·`.slice(0, 13));
    expect(displayWidth(lines([strip([99])], 5)[1] ?? '')).toBe(10);
    expect(displayWidth(lines([strip([99])], 200)[1] ?? '')).toBe(42);
  });

  test('keeps every value within the strip', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: -1000, max: 1000, noNaN: true }), { maxLength: 8 }),
        (values) => {
          expect(displayWidth(drawn(values, values[0] ?? null))).toBeLessThanOrEqual(20);
        },
      ),
    );
  });
});

describe('things to do', () => {
  test('stand behind their boxes under a label, wrapped beside them', () => {
    const block: Block = {
      kind: 'ticks',
      label: 'roof',
      note: '5 sections',
      items: [
        { text: 'tape the edges', boxes: 1 },
        { text: 'cut: 3 sets of it', boxes: 3 },
        { text: 'mind: warm', boxes: 0, tone: 'strong' },
      ],
    };
    expect(lines([block], 24)).toEqual([
      'roof: 5 sections',
      '  [ ] tape the edges',
      '  [ ][ ][ ] cut: 3 sets',
      '            of it',
      '      mind: warm',
    ]);
    const text = renderText([block], painted(40));
    expect(text).toContain('<strong>roof</strong>: 5 sections');
    expect(text).toContain('<strong>mind: warm</strong>');
  });
});
