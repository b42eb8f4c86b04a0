import { describe, expect, test } from 'vitest';
import { briefs, read, values } from './helpers.ts';

const evidence = (text: string) => read(text).value?.decisions.evidence.join('; ');
const layout = (text: string) => read(text).value?.decisions.layout;

describe('numbered columns', () => {
  test.each([
    'Panel;r1;r2\nroof;101;102\n',
    'Panel;1;2\nroof;101;102\n',
    'Panel;reading 1;reading 2\nroof;101;102\n',
    'Bauteil;Messung 1;Messung 2\nroof;101;102\n',
    'Panel;P1;P2\nroof;101;102\n',
    'Panneau;Mesure n° 1;Mesure n° 2\nroof;101;102\n',
    'パネル;測定値1;測定値2\nroof;101;102\n',
    'Panel;Reading;Reading 2\nroof;101;102\n',
  ])('%j holds two points of one panel', (text) => {
    expect(values(text, { unit: 'um' })).toEqual([
      ['roof', '1', 1, 101],
      ['roof', '2', 1, 102],
    ]);
  });

  test('with a column of points they are repeats of the point, and it is said', () => {
    const text = 'panel,point,r1_um,r2_um\nroof,a,101,102\nroof,b,99,98\n';
    expect(values(text)).toEqual([
      ['roof', 'a', 1, 101],
      ['roof', 'a', 2, 102],
      ['roof', 'b', 1, 99],
      ['roof', 'b', 2, 98],
    ]);
    expect(layout(text)).toBe('repeats');
    expect(evidence(text)).toContain('2 columns of readings are repeats of the row’s point');
  });

  test('where several rows name one panel each row is a point, and it is said', () => {
    const text = 'panel,r1_um,r2_um\nroof,101,102\nroof,99,98\n';
    expect(values(text)?.map(([, point, repeat]) => [point, repeat])).toEqual([
      ['1', 1],
      ['1', 2],
      ['2', 1],
      ['2', 2],
    ]);
    expect(evidence(text)).toContain('each row is a point');
  });

  test('readings under one merged header, or beyond it in most rows, are readings', () => {
    const merged = 'Panel;Readings (µm);;\nroof;101;102;99\nboot;98;97;96\n';
    expect(values(merged)).toHaveLength(6);
    const ragged = 'Panel;Readings (µm)\nroof;101;102;99\nboot;98;97\n';
    expect(values(ragged)).toHaveLength(5);
    expect(evidence(ragged)).toContain('columns without a name');
  });

  test('a number beyond the header in one row is refused, and so are columns of one name', () => {
    expect(briefs('panel;reading_um\nroof;101\nroof;102;99\nboot;98\n')).toEqual([
      '3:10+2 error row-too-long',
    ]);
    expect(briefs('panel;reading_um;reading_um\nroof;101;141\n')).toEqual([
      '1:18+10 error column-repeated',
    ]);
  });
});

describe('panels named by lines', () => {
  test('a line above its values names their panel, by a key or alone', () => {
    const keyed = 'Unit: µm\nPanel: roof\n101\n102,5\nPanel: boot\n99\n';
    expect(values(keyed)).toEqual([
      ['roof', '1', 1, 101],
      ['roof', '2', 1, 102.5],
      ['boot', '1', 1, 99],
    ]);
    expect(
      values('Unit;µm\n--- Roof ---\n1;101\n2;102\nBoot\n1;99\n')?.map(([p, q]) => [p, q]),
    ).toEqual([
      ['Roof', '1'],
      ['Roof', '2'],
      ['Boot', '1'],
    ]);
    expect(layout(keyed)).toBe('blocks');
  });

  test('a header may stand in every block, and an unknown name between blocks is a panel too', () => {
    const text =
      'Panel: roof\npoint;reading_um\n1;101\nPanel: boot\npoint;reading_um\n1;99\nFront apron\n1;98\n';
    expect(values(text)?.map(([panel, , , value]) => [panel, value])).toEqual([
      ['roof', 101],
      ['boot', 99],
      ['Front apron', 98],
    ]);
  });

  test('a vehicle named by a line holds for the rows below it', () => {
    const text = 'Vehicle: A1\npanel,reading_um\nroof,101\nVehicle: B2\nroof,99\n';
    expect(read(text).value?.readings.map(({ vehicle }) => vehicle)).toEqual(['A1', 'B2']);
    expect(evidence(text)).toContain('line 4 says vehicle B2');
  });

  test('lines of a panel and its readings are a list', () => {
    const rows = [
      ['roof', '1', 1, 101.5],
      ['roof', '2', 1, 102],
      ['boot', '1', 1, 99],
      ['boot', '2', 1, 98],
    ];
    expect(values('Unit: um\nroof: 101.5, 102\nboot: 99, 98\n')).toEqual(rows);
    expect(values('roof: 101,5; 102\nboot = 99; 98\n', { unit: 'um' })).toEqual(rows);
    expect(values('roof: 101,5  102 µm\nboot: 99 98 µm\n')).toEqual(rows);
    expect(layout('Unit: um\nroof: 101.5, 102\n')).toBe('list');
    expect(read('Unit: um\nroof: 101, 102\n').value?.readings[1]?.origin).toEqual({
      ...{ file: 'r.csv', line: 2, column: 12 },
    });
  });

  test('one number or two between commas is not guessed', () => {
    expect(briefs('roof: 101,99\nboot: 98,97\n', { unit: 'um' })).toEqual([
      '1:1+12 error header-missing',
    ]);
  });

  test('a bare list of numbers is of the panel that the user names', () => {
    expect(values('101,5\n102\n', { unit: 'um' })?.map(([panel]) => panel)).toEqual(['', '']);
    expect(values('101,5\n102\n', { unit: 'um', panelNames: new Map([['', 'roof']]) })).toEqual([
      ['roof', '1', 1, 101.5],
      ['roof', '2', 1, 102],
    ]);
  });
});

describe('no header', () => {
  test('known panels and film readings prove themselves, with or without points', () => {
    expect(values('roof;101,5\nboot;99\n', { unit: 'um' })?.map(([p, , , v]) => [p, v])).toEqual([
      ['roof', 101.5],
      ['boot', 99],
    ]);
    expect(
      values('roof,1,101\nroof,2,102\nboot,1,99\n', { unit: 'um' })?.map(([, p]) => p),
    ).toEqual(['1', '2', '1']);
  });

  test('an unknown panel, a column of unknown meaning or a short part after a comma is refused', () => {
    for (const text of ['apron,101\nboot,99\n', 'roof,abc,101\n', 'roof,101,5\nboot,99,2\n']) {
      expect(read(text, { unit: 'um' }).diagnostics[0]?.code).toBe('header-missing');
    }
  });
});

describe('what stands beside the table', () => {
  test('lines above and below in several styles are kept as they say', () => {
    const text =
      'Gauge report\nSerial: 0042\nDate;2026-11-25\nOperator = Ann\n\npanel;reading_um\nroof;101\n\nChecked by: Bob\n';
    expect(read(text).value?.decisions.metadata).toEqual([
      { key: 'Serial', value: '0042', line: 2 },
      { key: 'Date', value: '2026-11-25', line: 3 },
      { key: 'Operator', value: 'Ann', line: 4 },
      { key: 'Checked by', value: 'Bob', line: 9 },
    ]);
  });

  test('a text line below the rows is left out aloud, a lone panel is a row cut short', () => {
    expect(briefs('panel,reading_um\nroof,101\nEnd of report\n')).toEqual([
      '3:1+13 warning line-left-out',
    ]);
    expect(briefs('panel,reading_um\nroof,101\nboot\n')).toEqual(['3:1+4 error row-too-short']);
  });

  test('a header on every page is skipped with a note, another one starts a table of its own', () => {
    const again = 'panel,reading_um\nroof,101\npanel,reading_um\nboot,99\n';
    expect(values(again)).toHaveLength(2);
    expect(briefs(again)).toEqual(['3:1+5 note header-repeated']);
    const other = 'panel,point,reading_um\nroof,1,101\n\npoint,panel,reading_um\n7,boot,99\n';
    expect(values(other)).toEqual([
      ['roof', '1', 1, 101],
      ['boot', '7', 1, 99],
    ]);
  });

  test('a second table without panels is left out as a whole, one with panels is asked about', () => {
    const rows = 'panel,point,reading_um\nroof,1,101\nboot,1,99\n\n';
    expect(briefs(`${rows}Foil,Nominal,Shown\nA,50,51\n`)).toEqual([
      '5:1+4 warning table-left-out',
    ]);
    expect(briefs(`${rows}Panel,Before,Ratio,After\nroof,150,2,148\n`)).toEqual([
      '5:1+5 error column-missing',
    ]);
  });

  test('a table pasted twice is refused, rows that are alike by chance are not', () => {
    const rows = 'roof,101\nroof,102\nboot,99\nboot,98\n';
    expect(briefs(`panel,reading_um\n${rows}${rows}`)).toEqual(['6:1+4 error table-repeated']);
    expect(briefs(`panel,reading_um\n${rows}panel,reading_um\n${rows}`)).toContain(
      '7:1+4 error table-repeated',
    );
    expect(values('panel,reading_um\nroof,101\nroof,101\nroof,101\nroof,101\n')).toHaveLength(4);
  });

  test('a header far down is found', () => {
    expect(values(`${'a note\n'.repeat(70)}panel,reading_um\nroof,101\n`)).toHaveLength(1);
  });

  test('a file without readings says where and why', () => {
    const { diagnostics } = read('panel,reading_um\nroof,OL\n');
    expect(diagnostics.at(-1)).toMatchObject({
      code: 'no-readings',
      message: 'the file holds no reading: none of its 1 rows below gives one',
      at: { line: 1 },
    });
  });
});

describe('the words of other languages', () => {
  test.each([
    'Bauteil;Messpunkt;Schichtdicke (µm)',
    'Pièce;Point de mesure;Épaisseur (µm)',
    'Pieza;Punto;Espesor (µm)',
    'Pannello;Punto;Spessore (µm)',
    'Paneel;Meetpunt;Laagdikte (µm)',
    'Painel;Ponto;Espessura (µm)',
    'Część;Punkt;Grubość powłoki (µm)',
    'Del;Mätpunkt;Tjocklek (µm)',
    'Del;Målepunkt;Lagtykkelse (µm)',
    'パネル;測定点;膜厚(µm)',
    '面板;测点;厚度（µm）',
    'Панель;Точка;Толщина (мкм)',
  ])('%s names panel, point and reading', (header) => {
    expect(values(`${header}\nroof;7;101,5\n`)).toEqual([['roof', '7', 1, 101.5]]);
  });
});

describe('unquoted decimal commas', () => {
  test('are joined where every row has just one cell too many for each reading', () => {
    const text = 'panel,reading_um\nroof,101,5\nroof,102,8\nboot,99,1\n';
    expect(values(text)?.map(([, , , value]) => value)).toEqual([101.5, 102.8, 99.1]);
    expect(evidence(text)).toContain('unquoted decimal commas, joined');
    expect(read(text).value?.readings[1]?.origin.column).toBe(6);
  });

  test.each([
    'panel,reading_um\nroof,101,5\nroof,102\nboot,99,1\n',
    'panel,reading_um\nroof,101,5\nroof,102,5\nboot,99,5\n',
    'panel,reading_um\nroof,101,5\nroof,102,34\nboot,99,1\n',
    // Grades from 1 to 6 lie as close together, a temperature closer.
    'panel,reading_um\nroof,101,1\nroof,102,6\nboot,99,3\n',
    'panel,reading_um\nroof,101,21\nroof,102,23\nboot,99,22\n',
  ])('%j is refused', (text) => expect(briefs(text)[0]).toContain('error row-too-long'));
});

describe('two numbers by a slash in every cell', () => {
  const rows = 'roof;1;112/118\nroof;2;114/109\nbonnet;1;121/125\n';

  test('are refused where nothing says what each of them is', () => {
    const text = `Panel;Point;µm\n${rows}`;
    expect(briefs(text)).toEqual(['2:8+7 error reading-ambiguous']);
    expect(read(text).diagnostics[0]?.hint).toContain('in a cell of its own');
  });

  test.each([
    ['a plural above them', `Panel;Point;Readings (µm)\n${rows}`, 6],
    ['a third number in one cell', `Panel;Point;µm\n${rows}bonnet;2;119/123/120\n`, 9],
    [
      'a column of means that agree',
      'Panel;Point;µm;Mean\nroof;1;112/118;115\nroof;2;114/109;111.5\nbonnet;1;121/125;123\n',
      6,
    ],
  ])('are readings where %s says so', (_, text, count) => {
    expect(values(text)).toHaveLength(count);
  });

  test('are refused beside means that disagree', () => {
    const text = 'Panel;Point;µm;Mean\nroof;1;112/118;112\nroof;2;114/109;114\n';
    expect(briefs(text).join()).toContain('error reading-ambiguous');
  });
});

describe('columns called after panels', () => {
  test('of one name are read as points of one panel, and told', () => {
    const text = 'No.;Roof (µm);Bonnet (µm);Roof (µm)\n1;115;119;105\n2;108;116;106\n';
    expect(values(text)).toHaveLength(6);
    expect(briefs(text)).toEqual(['1:27+9 warning reading-doubted']);
    expect(briefs(text.replace(/Roof \(µm\)$/mu, 'Boot (µm)'))).toEqual([]);
  });

  test('are kept whatever they are called', () => {
    const text =
      'µm\n\nNo.,__proto__,constructor,Roof\n1,100,110,113\n2,101,110,115\n3,100,108,130\n';
    const panels = new Set(values(text)?.map(([panel]) => panel));
    expect([...panels]).toEqual(['__proto__', 'constructor', 'Roof']);
  });

  test('are not read where one number stands in every row of an unknown one, and that is why', () => {
    const text = 'µm\n\nNo.,Charge,Roof\n1,100,113\n2,100,115\n3,100,130\n';
    expect(values(text)).toHaveLength(3);
    expect(read(text).diagnostics[0]?.message).toContain('one number in every row');
  });
});
