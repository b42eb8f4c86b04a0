import { describe, expect, test } from 'vitest';
import { renderPlain } from '../../src/render/plain.ts';
import { headingOf, joined, setIn } from '../../src/report/facts.ts';
import { type Block, cell, gap, list, paragraph, title } from '../../src/report/model.ts';
import { pageOf } from './naughty.ts';

const facts = (...blocks: readonly Block[]): readonly string[] =>
  renderPlain(blocks).trimEnd().split('\n');

describe('one fact a line', () => {
  test('has no drawing, no blank line and no run of blanks', () => {
    const page = renderPlain(pageOf('roof'));
    expect(page).not.toMatch(/[│└─┊‹⁝_|]|\n\n| {2}|\[ \]/u);
  });

  test('is a title, an item under its list, a labelled text', () => {
    expect(
      facts(title('Survey'), gap, list('Help', ['a; b', 'c']), paragraph('Care', 'cool it')),
    ).toEqual(['Survey', 'Help: a; b', 'Help: c', 'Care: cool it']);
  });

  test('is each of several that a text holds, and never a part of one', () => {
    const said = joined(
      ['one; two. Three', { text: '7 % else', facts: ['risk 7 % else'] }],
      '; ',
      '.',
    );
    expect(facts(paragraph('Risk', said), list('Risk', [said]))).toEqual([
      'Risk: one; two. Three',
      'Risk: risk 7 % else',
      'Risk: one; two. Three',
      'Risk: risk 7 % else',
    ]);
  });

  test('that is set in under another is said with it, and the heading over it is none', () => {
    const items = [headingOf('a.csv:'), setIn('a.csv', joined(['utf-8', 'comma'], ', ')), 'b.csv'];
    expect(facts(list('Inputs', items))).toEqual([
      'Inputs: a.csv: utf-8',
      'Inputs: a.csv: comma',
      'Inputs: b.csv',
    ]);
    expect(facts(list('To do', ['before ______ µm']))).toEqual(['To do: before to fill in µm']);
  });

  test('has a note’s name where it has none of its own: no word of a file can begin a line', () => {
    expect(facts(paragraph(null, joined(['By A', 'roof: may go 9 µm'], '; ')))).toEqual([
      'Note: By A',
      'Note: roof: may go 9 µm',
    ]);
    expect(facts(paragraph(null, 'By A; roof: may go 9 µm'))).toEqual(['By A; roof: may go 9 µm']);
  });

  test('has all of a label that names panels before it, however long', () => {
    const label = 'bonnet, front right wing, both front doors, boot lid, roof';
    expect(facts(paragraph(label, joined(['one', 'two'], '; ')))).toEqual([
      `${label}: one`,
      `${label}: two`,
    ]);
  });

  test('has the short form of a label that has one, which is said whole in a line of its own', () => {
    const text = 'What would help, µm more may go (unread: unknown); each alone';
    expect(facts(list({ text, short: 'What would help' }, ['spot +0.5', 'clear +1.0']))).toEqual([
      text,
      'What would help: spot +0.5',
      'What would help: clear +1.0',
    ]);
    const grounds = { text: 'Built in (-v: grounds)', short: 'Built in' };
    expect(facts(paragraph(grounds, 'one thing'))).toEqual([grounds.text, 'Built in: one thing']);
  });
});

describe('a table', () => {
  const table = (rows: Extract<Block, { kind: 'table' }>['rows']): Block => ({
    kind: 'table',
    columns: [
      { title: 'panel (µm)', align: 'left' },
      { title: 'least', align: 'right', said: 'thinnest credible', unit: 'µm' },
      { title: 'removed (µm)', align: 'right' },
      { title: 'verdict', align: 'left' },
      { title: '', align: 'left' },
    ],
    rows,
  });

  test('names row, column and unit with every value', () => {
    expect(
      facts(table([[cell('bonnet'), cell('94.1'), cell('2'), cell('polish'), cell('hot')]])),
    ).toEqual([
      'bonnet: thinnest credible 94.1 µm',
      'bonnet: removed 2 µm',
      'bonnet: verdict polish',
      'bonnet: hot',
    ]);
  });

  test('says none for a dash, without a unit, and nothing for an empty cell', () => {
    expect(facts(table([[cell('roof'), cell('–'), cell(''), cell('leave'), cell('')]]))).toEqual([
      'roof: thinnest credible none',
      'roof: verdict leave',
    ]);
  });

  test('names a part with its panel, and goes on with a row whose name is empty', () => {
    const rest = [cell(''), cell(''), cell('')];
    expect(
      facts(
        table([
          [cell('roof'), cell('1'), ...rest],
          [cell('\u00a0\u00a0thinner zone'), cell('2'), ...rest],
          [cell(''), cell('3'), ...rest],
          [cell('\u00a0\u00a0thicker zone'), cell('4'), ...rest],
        ]),
      ),
    ).toEqual([
      'roof: thinnest credible 1 µm',
      'roof, thinner zone: thinnest credible 2 µm',
      'roof, thinner zone: thinnest credible 3 µm',
      'roof, thicker zone: thinnest credible 4 µm',
    ]);
  });

  test('says of a row that is a number what the number is', () => {
    const block: Block = {
      kind: 'table',
      columns: [
        { title: 'shim (µm)', align: 'right', said: 'shim', unit: 'µm' },
        { title: 'off by', align: 'right', unit: 'µm' },
      ],
      rows: [
        [cell('50.0'), cell('+0.3')],
        [cell('plate'), cell('0.0')],
      ],
    };
    expect(facts(block)).toEqual(['shim 50.0 µm: off by +0.3 µm', 'shim plate: off by 0.0 µm']);
  });

  test('has the values of a strip below 0 with the minus sign of all other figures', () => {
    const axis = { from: -1, to: 4, line: 0 };
    const block: Block = {
      kind: 'table',
      columns: [
        { title: 'panel', align: 'left' },
        { title: '', said: 'came off', align: 'left', axis },
      ],
      rows: [[cell('roof'), { kind: 'strip', values: [-0.4, 1.25], marked: null }]],
    };
    expect(facts(block)).toEqual(['roof: came off −0.400, 1.250']);
  });

  test('has a strip as its values', () => {
    const axis = { from: 80, to: 120, line: null };
    const block = (said: string | undefined): Block => ({
      kind: 'table',
      columns: [
        { title: 'panel', align: 'left' },
        { title: '', align: 'left', axis, ...(said === undefined ? {} : { said, unit: 'µm' }) },
      ],
      rows: [[cell('roof'), { kind: 'strip', values: [101.23456, 99], marked: 90 }]],
    });
    expect(facts(block('readings'))).toEqual(['roof: readings 101.2, 99.0 µm']);
    expect(facts(block(undefined))).toEqual(['roof: values 101.2, 99.0']);
  });
});

test('what is drawn or filled in is said', () => {
  const curve: Block = {
    kind: 'curve',
    label: 'What it takes',
    curve: {
      across: { title: 'film spent', unit: 'µm', from: 0, to: 4 },
      up: { title: 'clears', unit: '%', from: 0, to: 100 },
      line: [{ x: 1.23456, y: 50 }],
      marks: [{ x: 2, y: 60, sign: 'A', name: 'enhance' }],
    },
  };
  expect(
    facts(
      curve,
      { kind: 'form', fields: ['Date'] },
      {
        kind: 'ticks',
        label: 'roof',
        note: 'takes 2 µm, 5 sections',
        items: [
          { text: 'tape', boxes: 1 },
          { text: 'cut', boxes: 3 },
          { text: 'finish: 2× it', boxes: 2, apart: ['finish, set 1 of 2', 'finish, set 2 of 2'] },
          { text: 'mind: warm', boxes: 0 },
        ],
      },
      {
        kind: 'boxes',
        panels: [{ label: 'roof', towards: null, places: [{ name: '1', u: 0, v: 0 }], boxes: 1 }],
      },
    ),
  ).toEqual([
    'What it takes: film spent 1.23 µm, clears 50 %',
    'What it takes: enhance: film spent 2.00 µm, clears 60 %',
    'to fill in: Date',
    'roof: takes 2 µm, 5 sections',
    'roof: to do: tape',
    'roof: to do 3 times: cut',
    'roof: to do: finish, set 1 of 2',
    'roof: to do: finish, set 2 of 2',
    'roof: mind: warm',
    'roof: to read: point 1',
  ]);
});
