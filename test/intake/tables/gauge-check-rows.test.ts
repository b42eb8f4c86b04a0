import { describe, expect, test } from 'vitest';
import { briefs, read, values } from '../helpers.ts';

describe('rows in which the gauge was checked', () => {
  const text = 'panel,um\nZero plate,0.2\nShim 125,125.4\nbonnet,112\nroof,121\nZero plate,0.4\n';

  test('among those of panels are left out, and each is told', () => {
    expect(values(text)).toEqual([
      ['bonnet', '1', 1, 112],
      ['roof', '1', 1, 121],
    ]);
    expect(briefs(text)).toEqual(
      [2, 3, 6].map((line) => expect.stringMatching(`^${line}:1\\+\\d+ warning line-left-out$`)),
    );
    expect(
      read(text).value?.excluded.map((cell) => [cell.line, cell.text, cell.class, cell.panel]),
    ).toEqual([
      [2, '0.2', 'not-film', 'Zero plate'],
      [3, '125.4', 'not-film', 'Shim 125'],
      [6, '0.4', 'not-film', 'Zero plate'],
    ]);
  });

  test.each([
    ...[
      'zero plate',
      'ZERO CHECK',
      'zero point',
      'Nullpunkt',
      'Nullplatte',
      'Foil 125',
      'Shim: 125 µm',
    ],
    ...['Folie 125', 'calibration foil', 'reference shim', 'check shim 51', 'test folie'],
    ...['Calibration Plate', 'calibration block 2', 'reference block', 'test plate', 'zero block'],
  ])('are known by any of their words: %s', (label) => {
    expect(values(`panel,um\n${label},0.2\nbonnet,112\n`)).toEqual([['bonnet', '1', 1, 112]]);
  });

  test('are refused where they head another table, and where there are no others', () => {
    expect(values('panel,point,um\nbonnet,1,112\nshim,number,gloss\nA,1,88.4\n')).toBeUndefined();
    expect(values('panel,um\nShim 125,125.4\n')).toBeUndefined();
  });
});

describe('a column of the principle that the gauge read by', () => {
  test('is one of substrates, whatever it is called', () => {
    const text = 'panel,um,Mode\nbonnet,112,NFe\nroof,121,Fe\nboot,119,\n';
    expect(read(text).value?.readings.map(({ substrate }) => substrate)).toEqual([
      ...['NFe', 'Fe', undefined],
    ]);
    expect(briefs(text)).toEqual([]);
  });

  test('stays what it is where a word says something else, or a column of substrates stands by', () => {
    const other = 'panel,um,Mode\nbonnet,112,NFe\nroof,121,auto\n';
    expect(read(other).value?.readings.map(({ substrate }) => substrate)).toEqual([
      ...[undefined, undefined],
    ]);
    const both = 'panel,um,Mode,substrate\nbonnet,112,NFe,steel\n';
    expect(read(both).value?.readings[0]?.substrate).toBe('steel');
  });
});

describe('layers in columns of their own', () => {
  test('are shown the column in which a layer is named', () => {
    const { diagnostics } = read(
      'panel,point,Total um,Clear um,Base um,Primer um\nbonnet,1,112,42,18,52\n',
    );
    expect(diagnostics[0]?.hint).toContain('in a column "layer" total, clear, base, primer');
  });
});

test('a total of all may be their mean', () => {
  const text = (mean: number) =>
    `panel;um\nbonnet;112\nbonnet;109\nroof;121\nroof;118\nGesamt;${mean}\n`;
  expect(briefs(text(115))).toEqual(['6:1+6 note statistics-left-out']);
  expect(briefs(text(117))).toContainEqual(expect.stringContaining('statistics-disagree'));
});

describe('a line that says how many readings there are', () => {
  const rows = 'panel,um\nbonnet,112\nbonnet,109\nroof,121\n';
  const disagree = (text: string) =>
    briefs(text).filter((one) => one.includes('statistics-disagree'));

  test('is held against them, above the rows and below', () => {
    expect(disagree(`Readings: 4\n${rows}`)).toEqual(['1:1+11 warning statistics-disagree']);
    expect(disagree(`Anzahl Messwerte: 4\n${rows}`)).toHaveLength(1);
    expect(disagree(`${rows}Readings: 4\n`)).toEqual(['5:1+11 warning statistics-disagree']);
  });

  test('may count those of the file, of a panel, or the cells left out as well', () => {
    expect(disagree(`Readings: 3\n${rows}`)).toEqual([]);
    expect(disagree(`Readings: 2\n${rows}`)).toEqual([]);
    expect(disagree(`Readings: 4\n${rows}roof,---\n`)).toEqual([]);
  });
});
