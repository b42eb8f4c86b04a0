import { describe, expect, test } from 'vitest';
import { briefs, read, values } from '../helpers.ts';

const codes = (text: string) => briefs(text).map((one) => one.split(' ').slice(1).join(' '));

describe('readings', () => {
  test('thinner than a film are told, each at its cell, and stand', () => {
    const text = 'panel,point,reading_um\nroof,1,104\nroof,2,12\nroof,3,106\n';
    expect(briefs(text)).toEqual(['3:8+2 warning reading-implausible']);
    expect(values(text)).toHaveLength(3);
    expect(briefs(text.replace(',12\n', ',30\n'))).toEqual([]);
  });

  test('of one layer may be thinner', () => {
    const text = 'panel,reading_um,layer\nroof,104,\nroof,12,base\nroof,106,\n';
    expect(briefs(text)).toEqual([]);
  });

  test('with a power of ten and two digits at most have lost some', () => {
    const text = (value: string) => `panel,point,reading_um\nroof,1,${value}\nroof,2,104\n`;
    expect(codes(text('1E+02'))).toEqual(['warning reading-doubted']);
    expect(codes(text('1.0E+2'))).toEqual(['warning reading-doubted']);
    expect(codes(text('1.042E+02'))).toEqual([]);
  });

  test('in pairs of a number and one digit between commas are refused', () => {
    const text = (row: string) => `panel,1,2,3,4,unit\nroof,${row},µm\n`;
    expect(briefs(text('104,5,106,2'))).toEqual(['2:6+3 error reading-ambiguous']);
    expect(read(text('104,5,106,2'), { decimal: '.' }).value).toBeDefined();
    expect(codes(text('104,105,106,102'))).toEqual([]);
  });
});

describe('a unit that a row or a table lacks', () => {
  test('is asked for where the number fits the others in the other unit only', () => {
    const text = (value: number, unit: string) =>
      `panel,point,reading,unit\nroof,1,4.1,mil\nroof,2,${value},${unit}\nroof,3,4.4,mil\n`;
    expect(codes(text(106, ''))).toEqual(['error unit-missing']);
    expect(codes(text(106, '-'))).toEqual(['error unit-missing']);
    expect(codes(text(4.3, ''))).toEqual([]);
    expect(codes(text(20, ''))).toEqual([]);
  });

  test('is that of the table above, unless its numbers fit the other unit only', () => {
    const text = (value: number) =>
      `panel,point,reading_um\nroof,1,104\nroof,2,106\n\npanel,point,reading\nboot,1,${value}\n`;
    expect(codes(text(4.4))).toEqual(['error unit-missing']);
    expect(codes(text(108))).toEqual([]);
    expect(codes(text(900))).toEqual([]);
  });
});

describe('rows', () => {
  test('with the same second twice are a copy', () => {
    const rows = '09:12:01,roof,1,104\n09:12:09,boot,1,106\n';
    expect(codes(`time,panel,point,reading_um\n${rows}${rows}`)).toEqual(['error table-repeated']);
    const untimed = 'roof,1,104\nboot,1,106\n';
    expect(codes(`panel,point,reading_um\n${untimed}${untimed}`)).toEqual([]);
  });

  test('whose points start anew under one name may lack another', () => {
    const text = 'panel,point,reading_um\nroof,1,104\n,2,106\n,1,111\n,2,109\n';
    expect(briefs(text)).toEqual(['4:1+1 error panel-missing']);
    expect(codes(text.replace(',1,111', 'boot,1,111'))).toEqual([]);
  });

  test('of a list that starts anew are counted on, and told', () => {
    const text = 'µm\nroof;104;106\nboot;111;109\nroof;62;63\nboot;66;64\n';
    expect(codes(text)).toEqual(['warning reading-doubted']);
    expect(read(text).value?.decisions.evidence.join()).not.toContain('each panel has one row');
  });

  test('of the mean of all without a point are doubted', () => {
    const text = (value: string) =>
      `panel,point,reading_um\nroof,1,104\nroof,2,106\nboot,1,111\nboot,2,109\nboot,,${value}\n`;
    expect(codes(text('107.5'))).toEqual(['warning statistics-unnamed']);
    expect(codes(text('107.1'))).toEqual(['warning reading-doubted']);
  });

  test('of which the last column is the mean of the others, on three panels, are doubted', () => {
    const text = (last: string) =>
      `panel,1,2,3,4,unit\nroof,104,106,103,104.3,µm\nboot,111,109,112,110.7,µm\nbonnet,97,98,99,${last},µm\n`;
    expect(briefs(text('98'))).toEqual(['1:13+1 warning statistics-unnamed']);
    expect(codes(text('99'))).toEqual([]);
  });

  test('that head columns by numbers are the head of another table', () => {
    const text = 'panel,point,reading_um\nroof,1,104\nroof,2,106\nPanel,1,2\nboot,111,109\n';
    expect(values(text)?.map(([panel, , , value]) => [panel, value])).toEqual([
      ['roof', 104],
      ['roof', 106],
      ['boot', 111],
      ['boot', 109],
    ]);
    expect(codes(text.replace('Panel,1,2', 'Panel,1,3'))).toContain('error panel-missing');
  });
});

describe('columns', () => {
  test.each([
    ['Void?', 'N', 'Y'],
    ['use', '1', '0'],
    ['Ignore', '0', '1'],
    ['Keep', 'x', ''],
    ['Deleted at', '', '2026-03-03 09:14'],
    ['Ausreißer', '', 'A'],
  ])('"%s" is asked about where a row is marked', (heading, plain, mark) => {
    const text = (last: string) =>
      `panel;point;reading_um;${heading}\nroof;1;104;${plain}\nroof;2;188;${last}\n`;
    expect(codes(text(mark))).toContain('error reading-ambiguous');
    expect(codes(text(plain))).toEqual(['warning column-unknown']);
  });

  test('of sides stop the file where a panel has both and names none', () => {
    const text = (left: string, right: string) =>
      `side,panel,point,reading_um\nL,${left},1,104\nR,${right},1,111\n`;
    expect(codes(text('front door', 'front door'))).toContain('error panel-ambiguous');
    expect(codes(text('front door left', 'front door right'))).toEqual(['warning column-unknown']);
  });
});

describe('lists of panels', () => {
  const list = 'roof: 111 109 112 µm\nboot: 97 98 99 µm\n';

  test.each(['Bonnet (repainted 2019)', 'spoiler', 'bonnet #1', 'bonnet 12:30'])(
    'take "%s" above and below for a row',
    (name) => {
      for (const text of [`${name}: 104 106 103 µm\n${list}`, `${list}${name}: 104 106 103 µm\n`]) {
        const own = values(text)?.filter(([panel]) => panel === name);
        expect(own?.map(([, , , value]) => value)).toEqual([104, 106, 103]);
      }
    },
  );

  test.each(['Tel: 040 123 456', 'Date: 2026 03 01', 'Limits: 80 180', 'Serial: 104'])(
    'take "%s" for none',
    (line) => expect(values(`${line}\n${list}`)).toHaveLength(6),
  );
});

describe('rows of something else', () => {
  test.each(['Batt', 'Hum', 'Dew point', 'Taupunkt'])(
    'stand in no place of a point: %s',
    (name) => {
      const text = `µm;bonnet;roof\n1;112;121\n2;109;118\n3;115;119\n${name};87;86\n`;
      expect(codes(text)).toContain('error panel-missing');
    },
  );

  test.each(['Whole car', 'Carried over', 'All panels'])('nor of a panel: %s', (name) => {
    const text = `panel;µm\nbonnet;112\nbonnet;109\nroof;121\n${name};114\n`;
    expect(codes(text)).toContain('error panel-missing');
  });
});

describe('columns called by numbers that do not count', () => {
  test('are asked about under the names of their columns', () => {
    const { diagnostics } = read('Panel (µm);1;2;3;2024\nbonnet;112;109;115;113\n');
    expect(diagnostics.map(({ code, at, hint }) => [code, at?.line, hint])).toEqual([
      [
        'column-missing',
        1,
        'columns found: Panel (µm), 1, 2, 3, 2024; if those called by numbers hold readings of one visit, number them 1, 2, 3 … without a gap',
      ],
    ]);
    expect(read('Panel (µm);1;2;3;4\nbonnet;112;109;115;113\n').value?.readings).toHaveLength(4);
  });
});

test('a target and its tolerances beside what was measured are no readings', () => {
  const text =
    'Teil;Soll;Tol-;Tol+;Ist 1;Ist 2\nbonnet;110;80;140;112;109\nroof;110;80;140;121;118\n';
  expect(values(text, { unit: 'um' })?.map(([panel, , , value]) => [panel, value])).toEqual([
    ['bonnet', 112],
    ['bonnet', 109],
    ['roof', 121],
    ['roof', 118],
  ]);
});
