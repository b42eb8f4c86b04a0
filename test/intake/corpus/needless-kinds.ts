/**
 * Files that a person settles from the file alone: units in other spellings, quotes and marks of other
 * programs, a cell in a unit of its own, several readings in a cell. Each with a half-broken twin.
 */
import { inventSurvey, type Survey } from './invented-survey.ts';
import { instance, type Kind, kindsOf, readingsOf } from './kind.ts';
import type { Random } from './random.ts';
import { longTable, showing } from './write-table.ts';

const bytes = kindsOf('what a person settles: bytes', 'bytes');
const cells = kindsOf('what a person settles: cells', 'cells');
const layout = kindsOf('what a person settles: layout', 'layout');

type Rewrite = (text: string) => string;

/** A long table with its text rewritten as another program leaves it. */
const rewritten = (random: Random, rewrite: Rewrite, says?: RegExp, header = 'reading (µm)') => {
  const survey = inventSurvey(random, { points: 4 });
  const text = longTable(survey, { delimiter: ';', header: ['panel', 'point', header] });
  return instance(rewrite(text), survey, says === undefined ? {} : { says });
};

/** A long table with one cell, the sixth, written otherwise; its value stays unless told. */
const oneCell = (
  title: string,
  expected: Kind['expected'],
  write: (value: number, show: string) => string,
  rest: { readonly value?: number; readonly says?: RegExp; readonly decimal?: string } = {},
): Kind =>
  cells(title, expected, (random) => {
    const survey = inventSurvey(random, { points: 4 });
    const { value, decimal = '.' } = rest;
    const shots = survey.shots.map((shot, i) =>
      i === 5 && value !== undefined ? { ...shot, value } : shot,
    );
    const text = longTable(survey, {
      delimiter: ';',
      decimal,
      row: ({ panel, point, value: own }, show, i) => [
        panel,
        point,
        i === 5 ? write(own, show(own)) : show(own),
      ],
    });
    const told = rest.says === undefined ? {} : { says: rest.says };
    return expected === 'refused'
      ? instance(text, survey, { refusedAt: 7 })
      : instance(text, { ...survey, shots }, told);
  });

/** A word in place of the sixth reading. */
const noReading = (word: string, kind: 'missing' | 'over-range' | 'error' | 'deleted'): Kind =>
  cells(`"${word}" where a reading should stand`, 'read', (random) => {
    const survey = inventSurvey(random, { points: 4 });
    const kept = survey.shots.filter((_, i) => i !== 5);
    const text = longTable(survey, {
      row: ({ panel, point, value }, show, i) => [panel, point, i === 5 ? word : show(value)],
    });
    return instance(text, readingsOf({ ...survey, shots: kept }), { excluded: [[kind]] });
  });

/** A row for each panel, its readings in one cell. */
const inOneCell = (random: Random, mark: string, spoil: Rewrite = (cell) => cell) => {
  const survey = inventSurvey(random, { points: 3, panelCount: 4 });
  const show = showing(survey);
  const names = [...new Set(survey.shots.map(({ panel }) => panel))];
  const rows = names.map((name) => {
    const own = survey.shots.filter(({ panel }) => panel === name);
    return `${name};"${spoil(own.map(({ value }) => show(value)).join(mark))}"`;
  });
  return { survey, text: `${['Panel;Readings (µm)', ...rows].join('\n')}\n` };
};

/** A row for each panel under columns of one name. */
const sameNames = (random: Random, points: number) => {
  const survey = inventSurvey(random, { points, panelCount: 4 });
  const show = showing(survey);
  const panels = [...new Set(survey.shots.map(({ panel }) => panel))];
  const rows = panels.map((name) => {
    const own = survey.shots.filter(({ panel }) => panel === name);
    return [name, ...own.map(({ value }) => show(value))].join(';');
  });
  const header = `Panel${';Reading (µm)'.repeat(points)}`;
  return instance(`${[header, ...rows].join('\n')}\n`, survey, { points: 'grouped' });
};

/** The sixth row in another unit than the others, which its column names. */
const unitByRow = (random: Random, shown: string, unit: string, um?: number) => {
  const survey = inventSurvey(random, { points: 4 });
  const shots = survey.shots.map((shot, i) =>
    i === 5 && um !== undefined ? { ...shot, value: um } : shot,
  );
  const text = longTable(survey, {
    header: ['Panel', 'Point', 'Reading', 'Unit'],
    row: ({ panel, point, value }, show, i) =>
      i === 5 ? [panel, point, shown, unit] : [panel, point, show(value), 'µm'],
  });
  return um === undefined
    ? instance(text, survey, { refusedAt: 7 })
    : instance(text, { ...survey, shots }, { says: /mm in others/ });
};

/** Three panels in columns, their points in rows. */
const wide = (random: Random, corner = 'Panel') => {
  const survey = inventSurvey(random, { points: 3, panelCount: 3 });
  const show = showing(survey);
  const panels = [...new Set(survey.shots.map(({ panel }) => panel))];
  const rows = ['1', '2', '3'].map((point) => {
    const own = survey.shots.filter((shot) => shot.point === point);
    return [point, ...own.map(({ value }) => show(value))].join(';');
  });
  return { survey, rows: [[corner, ...panels].join(';'), ...rows] };
};

const besides = (survey: Survey, secondHeader: string): string => {
  const show = showing(survey);
  const rows = survey.shots.map(({ panel, point, value }) => `${panel};${point};${show(value)}`);
  const half = Math.ceil(rows.length / 2);
  const left = rows.slice(0, half);
  const lines = left.map((row, k) => `${row};;${rows[half + k] ?? ';;'}`);
  return `${[`Panel;Point;µm;;${secondHeader}`, ...lines].join('\n')}\n`;
};

const japanese = {
  // EUC-JP of the header and two rows: ボンネット,1,118.5 and ルーフ,1,109.5.
  bytes: [
    0xa5, 0xd1, 0xa5, 0xcd, 0xa5, 0xeb, 0x2c, 0xc2, 0xac, 0xc4, 0xea, 0xc5, 0xc0, 0x2c, 0xcb, 0xec,
    0xb8, 0xfc, 0x28, 0xa6, 0xcc, 0x6d, 0x29, 0x0a, 0xa5, 0xdc, 0xa5, 0xf3, 0xa5, 0xcd, 0xa5, 0xc3,
    0xa5, 0xc8, 0x2c, 0x31, 0x2c, 0x31, 0x31, 0x38, 0x2e, 0x35, 0x0a, 0xa5, 0xeb, 0xa1, 0xbc, 0xa5,
    0xd5, 0x2c, 0x31, 0x2c, 0x31, 0x30, 0x39, 0x2e, 0x35, 0x0a,
  ],
} as const;

export const needlessKinds: readonly Kind[] = [
  ...['&#181;', '&micro;', '=B5', '\\u00b5', 'ì'].map((sign) =>
    bytes(`a micro sign written out as ${sign}`, 'read', (random) =>
      rewritten(random, (text) => text.replace('µ', sign), /repaired to "µ"/),
    ),
  ),
  bytes('a micro sign written out, its m lost', 'refused', (random) =>
    rewritten(random, (text) => text.replace('µm', '&#181;')),
  ),
  bytes('a Japanese file in EUC-JP, which is no GB', 'read', () =>
    instance(
      Uint8Array.from(japanese.bytes),
      [
        { vehicle: null, panel: 'ボンネット', point: '1', um: 118.5 },
        { vehicle: null, panel: 'ルーフ', point: '1', um: 109.5 },
      ],
      { says: /euc-jp/ },
    ),
  ),
  bytes('a workbook in place of a text', 'refused', () =>
    instance(Uint8Array.from([0x50, 0x4b, 3, 4, 20, 0, 6, 0, 8, 0, 0, 0, 33, 0]), [], {
      hint: /CSV/,
    }),
  ),

  ...(
    [
      ['a broken bar between columns', (text) => text.replaceAll(';', '¦'), /¦ as delimiter/],
      ['a colon between columns', (text) => text.replaceAll(';', ':'), /: as delimiter/],
      ['a written-out tab between columns', (text) => text.replaceAll(';', '\\t'), /written out/],
      [
        'the separators of data streams',
        (text) => text.replaceAll(';', '\u001f').replaceAll('\n', '\u001e'),
        /unit separator/,
      ],
      ['a line sep=, that is not so', (text) => `sep=,\n${text}`, /sep= line/],
      ['the > of a mail before each line', (text) => text.replace(/^(?=.)/gmu, '> '), /mail/],
      ['typographic quotes', (text) => text.replace(/[^;\n]+/gu, '“$&”'), /taken for quotes/],
      ['guillemets for quotes', (text) => text.replace(/[^;\n]+/gu, '«$&»'), /taken for quotes/],
      ['U+2028 for line ends', (text) => text.replaceAll('\n', '\u2028'), /U\+2028/],
      ['a next-line sign for line ends', (text) => text.replaceAll('\n', '\u0085'), /U\+0085/],
      [
        'whole lines in quotes, theirs doubled',
        (text) => text.replace(/^(.+?)(;.*)$/gmu, '"""$1""$2"'),
        /as a whole/,
      ],
    ] as const satisfies readonly (readonly [string, Rewrite, RegExp])[]
  ).map(([title, rewrite, says]) =>
    layout(title, 'read', (random) => rewritten(random, rewrite, says)),
  ),
  layout('typographic quotes in some lines only', 'refused', (random) =>
    rewritten(random, (text) =>
      text
        .split('\n')
        .map((line, k) =>
          k % 2 === 0 ? line.replace(/[^;\n]+/gu, '“$&”') : line.replace('1', '”1'),
        )
        .join('\n'),
    ),
  ),
  layout('a mail mark before some lines only', 'refused', (random) =>
    rewritten(random, (text) => text.replace(/^(?=p)/gmu, '> ')),
  ),
  layout('tables side by side under one row of names', 'read', (random) => {
    const survey = inventSurvey(random, { panelCount: 4, points: 3 });
    return instance(besides(survey, 'Panel;Point;µm'), survey);
  }),
  layout('tables side by side under different names', 'refused', (random) => {
    const survey = inventSurvey(random, { panelCount: 4, points: 3 });
    return instance(besides(survey, 'Panel;Point;Film'), survey);
  }),
  layout('a column of units that is called U', 'read', (random) => {
    const survey = inventSurvey(random, { points: 4 });
    const text = longTable(survey, {
      header: ['Panel', 'Pt', 'Thk', 'U'],
      row: ({ panel, point, value }, show) => [panel, point, show(value), 'um'],
    });
    return instance(text, survey, { says: /column "U" says/ });
  }),
  layout('a column that is called U and is no unit in one row', 'refused', (random) => {
    const survey = inventSurvey(random, { points: 4 });
    const text = longTable(survey, {
      header: ['Panel', 'Pt', 'Thk', 'U'],
      row: ({ panel, point, value }, show, i) => [panel, point, show(value), i === 3 ? '7' : 'um'],
    });
    return instance(text, survey);
  }),
  layout('a column of units behind a limit, and none behind the readings', 'refused', (random) => {
    const survey = inventSurvey(random, { points: 4 });
    const text = longTable(survey, {
      header: ['Panel', 'Point', 'Reading', 'Spec', 'Spec in'],
      row: ({ panel, point, value }, show) => [panel, point, show(value), '7', 'mil'],
    });
    return instance(text, survey);
  }),
  layout('the unit of all values in the last line', 'read', (random) =>
    rewritten(random, (text) => `${text}\nall values in µm\n`, /says µm/, 'reading'),
  ),
  layout('a unit below the table that is not said of all', 'refused', (random) =>
    rewritten(random, (text) => `${text}\nlast check in µm\n`, undefined, 'reading'),
  ),

  layout('three columns of one name', 'read', (random) => sameNames(random, 3)),
  layout('two columns of one name', 'refused', (random) => sameNames(random, 2)),
  layout('a row in mm among rows in µm, by a column of units', 'read', (random) =>
    unitByRow(random, '0.1055', 'mm', 105.5),
  ),
  layout('a row in mm that would be filler', 'refused', (random) =>
    unitByRow(random, '1.055', 'mm'),
  ),
  layout('the unit of the rows above by a ditto mark', 'read', (random) => {
    const survey = inventSurvey(random, { points: 4 });
    const text = longTable(survey, {
      header: ['Panel', 'Point', 'Reading', 'Unit'],
      row: ({ panel, point, value }, show, i) => [panel, point, show(value), i === 0 ? 'µm' : '〃'],
    });
    return instance(text, survey, { says: /column "Unit" says µm/ });
  }),
  ...['Unit;µm;µm;µm', 'Unit;µm;mil;µm'].map((units, k) =>
    layout(`a last row "${units}"`, k === 0 ? 'read' : 'refused', (random) => {
      const { survey, rows } = wide(random);
      return instance(`${rows.join('\n')}\n${units}\n`, survey);
    }),
  ),
  layout('the unit in the corner above the points', 'read', (random) => {
    const { survey, rows } = wide(random, 'µm');
    return instance(`${rows.join('\n')}\n`, survey, { says: /says µm/ });
  }),
  ...['x0.1 µm', '1/100 mm', 'µm x 10', 'µin'].map((unit) =>
    layout(`a unit with a factor, ${unit}`, 'refused', (random) =>
      instance(
        longTable(inventSurvey(random), { header: ['panel', 'point', `reading [${unit}]`] }),
        [],
        { refusedAt: 1, hint: /in the export/, options: { unit: 'um' } },
      ),
    ),
  ),
  ...['bonnet - 104 106', 'bonnet 104/106'].map((line) =>
    layout(`lines as "${line}"`, 'read', () =>
      instance(`All readings in µm\n\n${line}\n${line.replace('bonnet', 'roof')}\n`, [
        ...['bonnet', 'roof'].flatMap((panel) => [
          { vehicle: null, panel, point: '1', um: 104 },
          { vehicle: null, panel, point: '2', um: 106 },
        ]),
      ]),
    ),
  ),
  layout('a line "roof 12/03", a day perhaps', 'refused', () =>
    instance('All readings in µm\n\nbonnet 12/03\nroof 11/03\n', []),
  ),
  layout('a list with a slip of a letter in one number', 'refused', () =>
    instance('roof: 111 109 µm\nboot lid: 97 98 µm\nbonnet: 104 1O6 µm\n', [], {
      refusedAt: 3,
      hint: /correct it/,
    }),
  ),

  oneCell('one cell in mm among µm', 'read', () => '0.1055 mm', {
    value: 105.5,
    says: /the cell itself names: "0.1055 mm"/,
  }),
  oneCell('one cell in mil among µm', 'read', () => '4.15 mil', {
    value: 105.41,
    says: /the cell itself names/,
  }),
  oneCell('one cell in mm that would be filler', 'refused', () => '1.055 mm'),
  oneCell('one cell with a raised point', 'read', (_, show) => show.replace('.', '·')),
  oneCell('a raised point among decimal commas', 'read', (_, show) => show.replace(',', '·'), {
    decimal: ',',
  }),
  oneCell('one cell as 1.055×10²', 'read', () => '1.055×10²', { value: 105.5 }),
  oneCell('one cell as 1.055*10^2', 'read', () => '1.055*10^2', { value: 105.5 }),
  oneCell('one cell as 1.055×2', 'refused', () => '1.055×2'),
  oneCell('the unit before the number', 'read', (_, show) => `µm ${show}`),
  oneCell('a word before the number', 'refused', (_, show) => `about ${show}`),
  noReading('OVRNG', 'over-range'),
  noReading('2000+', 'over-range'),
  noReading('1.79769313486232E+308', 'over-range'),
  noReading('Kunststoff', 'missing'),
  noReading('no metal', 'missing'),
  noReading('nicht gem.', 'missing'),
  noReading('undefined', 'missing'),
  noReading('not accessible', 'missing'),
  noReading('cassé', 'error'),
  noReading('xxx', 'deleted'),
  oneCell('a number with a plus behind that ends no range', 'refused', (_, show) => `${show}+`),
  oneCell('a word that nobody knows', 'refused', () => 'plastiline'),

  ...[' / ', '/', ', ', ' ', '\n'].map((mark) =>
    cells(`several readings in a cell, ${JSON.stringify(mark)} between them`, 'read', (random) => {
      const { survey, text } = inOneCell(random, mark);
      return instance(text, survey, { points: 'grouped', says: /hold several readings/ });
    }),
  ),
  cells('several readings in a cell, one of them no film', 'refused', (random) => {
    const { survey, text } = inOneCell(random, '/', (cell) => `${cell}/3`);
    return instance(text, survey);
  }),
];
