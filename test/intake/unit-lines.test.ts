import { describe, expect, test } from 'vitest';
import { briefs, values } from './helpers.ts';

const numbers = (text: string) =>
  values(text)?.map(([, , , value]) => Math.round(100 * Number(value)) / 100);

describe('a line that names the unit between two rows', () => {
  test('holds for the rows below it, and leaves those above in theirs', () => {
    const text = 'Unit: um\npanel,reading\nbonnet,101\nUnit: mil\nroof,3.9\n';
    expect(numbers(text)).toEqual([101, 99.06]);
  });

  test('is no unit of the rows above it', () => {
    const text = 'panel,reading\nbonnet,101\nUnit: mil\nroof,3.9\n';
    expect(briefs(text)).toEqual(['1:7+7 error unit-missing']);
  });

  test('must agree with the header', () => {
    const text = 'panel,reading (µm)\nbonnet,101\nUnit: mil\nroof,3.9\n';
    expect(briefs(text)).toEqual(['3:1+9 error unit-conflict']);
  });
});

describe('the unit of the readings', () => {
  test.each([
    'Serial=12345;Unit=um\n\npanel,reading\n',
    'Date: 1/2/24, Unit: um\npanel,reading\n',
    '* unit: um *\npanel,reading\n',
    'Unit of measure: micrometre\npanel,reading\n',
    'Measurement unit;µm\npanel,reading\n',
    'Maßeinheit: µm\npanel,reading\n',
    ',um\n',
    'panel (µm),reading\n',
    'panel,Schichtdicke in µm\n',
    'panel,Épaisseur en µm\n',
  ])('is found in %j', (head) => {
    expect(numbers(`${head}bonnet,101\nroof,99\n`)).toEqual([101, 99]);
  });

  test.each(['µm 1;µm 2;µm 3', 'um_1;um_2;um_3', 'µm;µm;µm', '#1;#2;#3'])(
    'is that of the columns "%s", which are points of one panel',
    (names) => {
      const corner = names.startsWith('#') ? 'panel (µm)' : 'panel';
      expect(values(`${corner};${names}\nroof;101;103;99\n`)).toEqual([
        ['roof', '1', 1, 101],
        ['roof', '2', 1, 103],
        ['roof', '3', 1, 99],
      ]);
    },
  );
});

describe('columns of readings with names that say nothing', () => {
  test.each(['panel,Before,After', 'panel,Before um,After um', 'panel,Ann,Ben', ',Ann,Ben'])(
    'are not read as one survey under %j, whatever unit is named',
    (names) => {
      const text = `${names}\nbonnet,101,98\nroof,99,97\n`;
      expect(values(text, { unit: 'um' })).toBeUndefined();
      expect(briefs(text, { unit: 'um' })[0]).toMatch(
        /^1:[12]\+\d+ error (?:column|header)-missing$/,
      );
    },
  );
});

test.each(['Lecturas por panel: 4, unidad µm', 'Messpunkte: 4, Einheit µm', 'Punti: 4, unità µm'])(
  '"%s" above the readings names their unit',
  (line) => expect(values(`${line}\n;;\nroof;105,6;106,0\nboot;94,6;101,3\n`)).toHaveLength(4),
);

test.each([
  ['padded by a spreadsheet', 'Panel;1;2\nbonnet;112;109\nroof;98;101\nmicrons;;\n'],
  ['in Czech', 'Díl;1;2\nbonnet;112;109\nroof;98;101\nHodnoty v µm\n'],
  [
    'at the end of a sentence with a comma',
    'the readings of today, all in microns:\nbonnet: 112, 109\nroof: 98, 101\n',
  ],
  ['in the corner, over the panels', 'Readings (µm);1;2\nbonnet;112;109\nroof;98;101\n'],
])('a unit is heard %s', (_, text) => {
  expect(values(text)?.map(([panel, , , film]) => [panel, film])).toEqual([
    ['bonnet', 112],
    ['bonnet', 109],
    ['roof', 98],
    ['roof', 101],
  ]);
});

test.each(['Values not in µm', 'Unit not µm', 'Werte nicht in µm'])(
  'a line that says which unit it is not, "%s", names none',
  (line) => {
    const rows = 'panel,reading\nroof,101\nboot,103\n';
    expect(briefs(`${line}\n${rows}`).join()).toContain('error unit-missing');
    expect(briefs(`${rows}${line}\n`).join()).toContain('error unit-missing');
  },
);

test('a column without a name right behind the readings that holds units names that of each row', () => {
  const text = 'panel;point;reading;\nroof;1;101;µm\nroof;2;4.1;mil\nboot;1;103;µm\n';
  expect(values(text)?.map((one) => Number(one[3]).toFixed(2))).toEqual([
    '101.00',
    '104.14',
    '103.00',
  ]);
  expect(briefs(text.replace('103;µm', '103;x')).join()).toContain('error');
});
