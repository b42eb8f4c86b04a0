import { describe, expect, test } from 'vitest';
import { briefs, panelNames, read, values } from '../helpers.ts';

/** `right side` is a panel of a van. */
const isPanel = (label: string): boolean =>
  [...panelNames, 'left side', 'right side', 'left hand side', 'rechts'].includes(
    label.toLowerCase(),
  );
const hints = (text: string) => read(text, { isPanel }).diagnostics.map(({ hint }) => hint ?? '');
const sides = 'write the side into the name of each panel, "left front door", and delete the line';

describe('a heading for a side of the car', () => {
  test('among the rows says what to write', () => {
    const text = (heading: string) => `panel;reading_um\nroof;101\n${heading}\nbonnet;103\n`;
    for (const heading of ['RIGHT SIDE', 'Left hand side', 'rechts'])
      expect(hints(text(heading)), heading).toContain(sides);
    expect(hints(text('Rear lip'))).not.toContain(sides);
  });

  test('above names that leave the side open says so, for one --panel-names would put both on one panel', () => {
    const leftOpen = (name: string) =>
      name === 'Quarter'
        ? { names: ['right quarter', 'left quarter'], why: 'it does not say left or right' }
        : undefined;
    const rows = 'roof 98 µm\nQuarter 101 µm\n';
    const of = (text: string) =>
      read(text, { isPanel, leftOpen }).diagnostics.map(({ hint }) => hint);
    expect(of(`LEFT SIDE\n${rows}RIGHT SIDE\nQuarter 103 µm\n`)).toContain(sides);
    expect(of(rows).join()).toContain('--panel-names "Quarter=PANEL"');
  });

  test('between two tables says so as well', () => {
    const table = 'panel;reading_um\nroof;101\nboot;99\n';
    expect(hints(`${table}\nRIGHT SIDE\n${table.replace('roof', 'bonnet')}`)).toContain(sides);
  });
});

test('where the one column of numbers is not read, the remedy names it, and reads it', () => {
  const text = 'panel;Reading in;µm\nroof;101;\nboot;99;\n';
  const { diagnostics } = read(text);
  expect(diagnostics.find(({ code }) => code === 'no-readings')?.hint).toBe(
    '"Reading in" holds numbers: if they are the readings, --columns "reading=Reading in"',
  );
  expect(values(text, { columns: new Map([['reading', 'Reading in']]) })).toHaveLength(2);
  const words = read('panel;Remark;µm\nroof;good;\nboot;dull;\n').diagnostics;
  expect(words.find(({ code }) => code === 'no-readings')?.hint).toContain('the right file');
});

test('columns of two visits are told as such, and not as a choice of one', () => {
  for (const [first, second] of [
    ['Before (µm)', 'After (µm)'],
    ['12.03.2026 (µm)', '14.04.2026 (µm)'],
    ['Vorher µm', 'Nachher µm'],
  ])
    expect(hints(`panel;${first};${second}\nroof;101;97\nboot;99;95\n`).join()).toContain(
      `"${first}" and "${second}" may be two visits: one file for each visit`,
    );
  expect(hints('panel;Ann (µm);Ben (µm)\nroof;101;97\n').join()).not.toContain('visits');
});

test('what stands behind a unit is quoted in the remedy', () => {
  expect(hints('Unit: µm, offset 12\npanel;reading\nroof;101\n').join()).toContain(
    '"offset 12" beside the unit is not understood',
  );
});

test('a number beyond the names of semicolon columns may be a further reading', () => {
  expect(hints('panel;reading_um\nroof;101\nboot;99;98\n').join()).toContain('further reading?');
  expect(hints('panel;reading_um\nroof;101\nboot;99;dull\n').join()).toContain('quote a cell');
});

test('times whose parts are parted by blanks stand beside readings of no named column', () => {
  const text = 'µm\n10 32 05;bonnet;112\n10 32 15;bonnet;115\n09 33 05;roof;101\n';
  expect(values(text)?.map(([panel, , , film]) => [panel, film])).toEqual([
    ['bonnet', 112],
    ['bonnet', 115],
    ['roof', 101],
  ]);
  expect(briefs(text.replaceAll('05;', '99;')).join()).toContain('error');
});

test.each([
  ['Panel;Reading 1 (µm);Reading 2 (µm);Reading 2 (µm);Reading 4 (µm);Avg', 'Reading 3 (µm)'],
  ['Panel;1;2;2;4', '3'],
  ['Panel;M1 µm;M1 µm', 'M2 µm'],
])(
  'of two numbered columns under one name the remedy is the number that lacks: %s',
  (header, meant) => {
    const cells = header.split(';').map((_, k) => 100 + k);
    const text = `${header}\nbonnet;${cells.slice(1).join(';')}\n`;
    const [only, ...more] = read(text).diagnostics;
    expect(more).toEqual([]);
    expect(only?.code).toBe('column-repeated');
    expect(only?.message).toMatch(/^columns \d and \d are both called "/u);
    expect(only?.hint).toContain(`is the second "${meant}"?`);
    const mended = text.replace(/(;[^;]+)(\1)(?=[;\n])/u, `$1;${meant}`);
    expect(values(mended, { unit: 'um' })?.length).toBeGreaterThan(1);
  },
);

test('two columns of one name that the next number would double again are told without one', () => {
  expect(hints('Panel;M1 µm;M2 µm;M2 µm;M3 µm\nbonnet;112;115;118;117\n')).toEqual([
    'number the readings of one visit 1, 2, 3 … without a gap; if one is the other once more, take it out; if they are of two visits, give each a file of its own',
  ]);
  expect(hints('Panel;A (µm);B (µm);B (µm)\nbonnet;112;115;118\n')).toEqual([
    'give each a name of its own; if one is the other once more, take it out; if they are of two visits, give each a file of its own',
  ]);
  expect(briefs('Panel;Job;Job;Width\nbonnet;112;115;118\n').join()).not.toContain('repeated');
});

test.each([
  ['Bonnet µm', '1;112\n2;115', 'Roof µm'],
  ['Bonnet (µm)', '1;112\n2;115', 'Roof (µm)'],
  ['Bonnet µm', '112\n115', 'Roof µm'],
])(
  'a panel and its unit in one line above numbers: the remedy parts them, and reads (%s)',
  (first, rows, second) => {
    const text = `${first}\n${rows}\n\n${second}\n${rows}\n`;
    expect(hints(text)).toEqual([
      'above the numbers write the panel alone, "Bonnet", and once above them all "Unit: µm"',
    ]);
    expect(values(`Unit: µm\n${text.replace(/ \(?µm\)?/gu, '')}`)?.map(([panel]) => panel)).toEqual(
      ['Bonnet', 'Bonnet', 'Roof', 'Roof'],
    );
  },
);

test('a metal before the number of a reading is told with the way out, which reads', () => {
  const told = (cell: string) => hints(`panel;reading_um\nroof;99\nroof;${cell}\n`).join();
  for (const cell of ['NFe 112', 'Fe 101', 'Fe: 101', 'Alu 101'])
    expect(told(cell), cell).toBe(
      'leave the number alone in its cell, and put the metal into a column "substrate"',
    );
  for (const cell of ['Tin 112', 'NFe', 'NFe 1x2', '112 Sn'])
    expect(told(cell), cell).not.toContain('metal');
  expect(values('panel;reading_um;substrate\nroof;99;Fe\nroof;112;NFe\n')).toHaveLength(2);
});
