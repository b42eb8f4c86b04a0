/**
 * What a file says against its own readings, or leaves out beside them, in ways that pass unseen: each is
 * refused, or read and told, and beside each stands one that is to be read without ado.
 */
import { inventSurvey, type Shot } from './invented-survey.ts';
import { instance, type Kind, kindsOf, readingsOf } from './kind.ts';
import { csv, type LongStyle, longTable, quoted, shown } from './write-table.ts';

const kind = kindsOf('told, not quiet', 'layout');
const semicolons: LongStyle = { delimiter: ';', header: ['Panel', 'Point', 'Reading µm'] };
const panels = ['bonnet', 'roof', 'boot lid'];
/** Three panels of four points, with whole readings of paint. */
const plainSurvey = (random: Parameters<typeof inventSurvey>[0]) =>
  inventSurvey(random, { panels, points: 4, decimals: 1 });

const aside = (
  line: string,
  expected: Kind['expected'],
  where: 'above' | 'below',
  says?: RegExp,
): Kind =>
  kind(`${JSON.stringify(line)} ${where} the readings`, expected, (random) => {
    const survey = plainSurvey(random);
    const table = longTable(survey, semicolons);
    const text = where === 'above' ? `${line}\n${table}` : `${table}${line}\n`;
    const refusedAt = where === 'above' ? 1 : survey.shots.length + 2;
    return instance(text, survey, {
      ...(says === undefined ? {} : { says }),
      ...(expected === 'refused' ? { refusedAt } : {}),
    });
  });
const against = /may speak against readings/;

/** The second reading of the first panel stands in a row that is written otherwise than the others. */
const oddRow = (
  title: string,
  expected: Kind['expected'],
  change: (cells: readonly [string, string, string]) => readonly string[],
  says?: RegExp,
  header: readonly string[] = ['Panel', 'Point', 'Reading µm'],
): Kind =>
  kind(title, expected, (random) => {
    const survey = plainSurvey(random);
    const cellsOf = ({ panel, point, value }: Shot): readonly [string, string, string] => [
      panel,
      point,
      shown(value),
    ];
    const row: LongStyle['row'] = (shot, _, i) => {
      const cells = cellsOf(shot);
      const own = i === 1 ? change(cells) : cells;
      return [...own, ...header.slice(own.length).map(() => '')];
    };
    const shots = survey.shots.map((shot, i): Shot => {
      if (i !== 1) return shot;
      const [panel = '', point = '', value = ''] = change(cellsOf(shot));
      return { ...shot, panel, point, value: Number(value) };
    });
    return instance(
      longTable(survey, { delimiter: ';', header, row }),
      readingsOf({ ...survey, shots }),
      {
        ...(says === undefined ? {} : { says }),
        ...(expected === 'refused' ? { refusedAt: 3 } : {}),
      },
    );
  });

const listOf = (
  title: string,
  expected: Kind['expected'],
  names: readonly string[],
  write: (name: string, values: string, i: number) => string,
  lines: { readonly above?: string; readonly refusedAt?: number } = {},
): Kind =>
  kind(title, expected, (random) => {
    const survey = inventSurvey(random, { panels: names, points: 3 });
    const text = names
      .map((name, i) => {
        const own = survey.shots.filter(({ panel }) => panel === name);
        return `${write(name, own.map(({ value }) => shown(value)).join(' '), i)}\n`;
      })
      .join('');
    const { above = '', refusedAt } = lines;
    return instance(above + text, survey, {
      points: 'open',
      ...(refusedAt === undefined ? {} : { refusedAt }),
    });
  });
const withColon = (name: string, values: string): string => `${name}: ${values} µm`;

const lists: readonly Kind[] = [
  ...[
    'Bonnet (repainted 2019)',
    'spoiler',
    'bonnet #1',
    'bonnet 12:30',
    'Bonnet, resprayed',
  ].flatMap((name) => [
    listOf(`a list that begins with ${name}`, 'read', [name, 'roof', 'boot lid'], withColon),
    listOf(`a list that ends with ${name}`, 'read', ['roof', 'boot lid', name], withColon),
  ]),
  listOf('a list under a telephone number', 'read', panels, withColon, {
    above: 'Tel: 040 123 456\n',
  }),
  listOf('a list under its limits', 'read', panels, withColon, { above: 'Limits: 80 180\n' }),
  listOf(
    'a list whose first line lacks the colon',
    'refused',
    panels,
    (name, values, i) => `${name}${i === 0 ? '' : ':'} ${values} µm`,
    { refusedAt: 1 },
  ),
  listOf('a list of panels that starts anew', 'read', panels, (name, values) => {
    const [first = '', ...more] = values.split(' ');
    return `${name}: ${[first, ...more].join(' ')} µm`;
  }),
];

/** Rows of mil of which one has no unit. */
const unitless = (title: string, expected: Kind['expected'], mark: string, factor: number): Kind =>
  kind(title, expected, (random) => {
    const survey = inventSurvey(random, { panels, points: 4, unit: 'mil' });
    const header = ['Panel', 'Point', 'Reading', 'Unit'];
    const row: LongStyle['row'] = ({ panel, point, value }, show, i) =>
      i === 5 ? [panel, point, show(value * factor), mark] : [panel, point, show(value), 'mil'];
    return instance(
      longTable(survey, { header, row }),
      survey,
      expected === 'refused' ? { refusedAt: 7 } : {},
    );
  });

const units: readonly Kind[] = [
  unitless('a number in µm without a unit among mil', 'refused', '', 25.4),
  unitless('a number in µm with a dash for its unit among mil', 'refused', '-', 25.4),
  unitless('a number without a unit that is like the others in mil', 'read', '', 1),
  ...([1, 25.4] as const).map((factor) =>
    kind(
      factor === 1
        ? 'a second table without a unit, of numbers like the first'
        : 'a second table without a unit, of numbers that would be mil',
      factor === 1 ? 'read' : 'refused',
      (random) => {
        const survey = inventSurvey(random, { panels: ['bonnet', 'roof'], points: 3 });
        const [above, below] = [survey.shots.slice(0, 3), survey.shots.slice(3)];
        const first = longTable({ ...survey, shots: above }, semicolons);
        const second = longTable(
          { ...survey, shots: below },
          {
            delimiter: ';',
            header: ['Panel', 'Point', 'Reading'],
            row: ({ panel, point, value }) => [panel, point, shown(value / factor)],
          },
        );
        return instance(`${first}\n${second}`, survey, factor === 1 ? {} : { refusedAt: 6 });
      },
    ),
  ),
];

const rows: readonly Kind[] = [
  ...['limit', 'Soll', 'Grenzwert', 'temp', 'foil', 'Δ', 'Nominal', 'cal'].map((name) =>
    oddRow(`a point called ${name}`, 'refused', ([panel, , value]) => [panel, name, value]),
  ),
  ...['prev.', 'vorher', 'deleted', 'x', 'zinc', 'test', 'norm'].map((name) =>
    oddRow(`a point called ${name}`, 'refused', ([panel, , value]) => [panel, name, value]),
  ),
  ...['edge', 'links oben', '2a'].map((name) =>
    oddRow(`a point called ${name}`, 'read', ([panel, , value]) => [panel, name, value]),
  ),
  ...[
    '//bonnet',
    '! bonnet',
    '-- bonnet',
    '% bonnet',
    '✗ bonnet',
    '(bonnet)',
    '[bonnet]',
    'bonnet?',
    'bonnet old',
    'NOT bonnet',
  ].map((name) =>
    oddRow(
      `a row of ${JSON.stringify(name)} among those of bonnet`,
      'read',
      ([, point, value]) => [name, point, value],
      /a sign or word at the panel/,
    ),
  ),
  ...[
    'deleted',
    'falsch, gelöscht',
    'do not use',
    'WRONG POINT - see 3',
    'mis-read, ignore this one',
  ].map((note) =>
    oddRow(`a note "${note}"`, 'read', (cells) => [...cells, note], /its note may say otherwise/, [
      'Panel',
      'Point',
      'Reading µm',
      'Note',
    ]),
  ),
  ...[
    ['Void?', 'Y'],
    ['Ignore', '1'],
    ['Deleted at', '2026-03-03 09:14'],
    ['Löschdatum', '03.03.2026'],
    ['Ausreißer', 'A'],
  ].map(([heading = '', mark = '']) =>
    oddRow(
      `a column "${heading}" of "${mark}"`,
      'refused',
      (cells) => [...cells, mark],
      undefined,
      ['Panel', 'Point', 'Reading µm', heading],
    ),
  ),
  ...['1', '12'].map((value) =>
    oddRow(
      `a reading of ${value} µm among paint`,
      'read',
      ([panel, point]) => [panel, point, value],
      /thinner than any film/,
    ),
  ),
];

/** `104,5,106,2`: numbers of one decimal between commas that are also delimiters. */
const pairs = (title: string, expected: Kind['expected'], cell: (text: string) => string): Kind =>
  kind(title, expected, (random) => {
    const survey = inventSurvey(random, { panels, points: 2 });
    const lines = panels.map((name) => {
      const values = survey.shots.filter(({ panel }) => panel === name).map(({ value }) => value);
      return [name, ...values.map((value) => cell(shown(value, { decimal: ',' }))), 'µm'].join(',');
    });
    const width = expected === 'refused' ? 4 : 2;
    const header = ['Panel', ...Array.from({ length: width }, (_, k) => String(k + 1)), 'Unit'];
    const text = `${[header.join(','), ...lines].join('\n')}\n`;
    return instance(text, survey, expected === 'refused' ? { refusedAt: 2 } : {});
  });

const tables: readonly Kind[] = [
  pairs('decimal commas under twice as many numbered columns', 'refused', (text) => text),
  pairs('quoted decimal commas under numbered columns', 'read', quoted),
  ...(['2', '3'] as const).map((last) =>
    kind(
      `a second table "Panel;1;${last}" below one of rows`,
      last === '2' ? 'read' : 'either-but-never-wrong',
      (random) => {
        const survey = inventSurvey(random, { panels: ['bonnet', 'roof'], points: 2 });
        const [above, below] = [survey.shots.slice(0, 2), survey.shots.slice(2)];
        const wide = csv(
          [
            ['Panel', '1', last],
            ['roof', ...below.map(({ value }) => shown(value))],
          ],
          { delimiter: ';' },
        );
        const shots = last === '2' ? survey.shots : above;
        return instance(
          longTable({ ...survey, shots: above }, semicolons) + wide,
          readingsOf({ ...survey, shots }),
          { points: 'grouped' },
        );
      },
    ),
  ),
  kind('the same rows with the same seconds twice', 'refused', (random) => {
    const survey = inventSurvey(random, { panels: ['bonnet', 'roof'], points: 1 });
    const header = ['Time', 'Panel', 'Point', 'Reading µm'];
    const own = survey.shots.map(({ panel, point, value }, i) => [
      `09:12:0${i}`,
      panel,
      point,
      shown(value),
    ]);
    return instance(csv([header, ...own, ...own], { delimiter: ';' }), survey, { refusedAt: 4 });
  }),
  kind('points that start anew below a name on the first row', 'refused', (random) => {
    const survey = inventSurvey(random, { panels: ['bonnet', 'roof'], points: 2 });
    const row: LongStyle['row'] = ({ point, value }, show, i) => [
      i === 0 ? 'bonnet' : '',
      point,
      show(value),
    ];
    return instance(longTable(survey, { ...semicolons, row }), survey, { refusedAt: 4 });
  }),
  kind('sides in a column beside panels without any', 'read', (random) => {
    const survey = inventSurvey(random, {
      panels: ['left front door', 'right front door'],
      points: 2,
    });
    const row: LongStyle['row'] = ({ panel, point, value }, show) => [
      panel.startsWith('left') ? 'L' : 'R',
      'front door',
      point,
      show(value),
    ];
    const header = ['Side', 'Panel', 'Point', 'Reading µm'];
    return instance(longTable(survey, { header, row }), survey, {
      says: /"Side" and the panel’s name together say which panel/,
    });
  }),
  kind('sides in a column beside panels that name theirs', 'read', (random) => {
    const survey = inventSurvey(random, {
      panels: ['front door left', 'front door right'],
      points: 2,
    });
    const row: LongStyle['row'] = ({ panel, point, value }, show) => [
      panel.endsWith('left') ? 'L' : 'R',
      panel,
      point,
      show(value),
    ];
    return instance(
      longTable(survey, { header: ['Side', 'Panel', 'Point', 'Reading µm'], row }),
      survey,
    );
  }),
  kind('subtotals by the names of the panels, a mean of all and a scatter', 'read', (random) => {
    const survey = plainSurvey(random);
    const mean = (values: readonly number[]): string =>
      shown(values.reduce((sum, one) => sum + one, 0) / values.length, { digits: 2 });
    const foot = [
      ...panels.map((name) => [
        `Subtotal ${name}`,
        '',
        mean(survey.shots.filter(({ panel }) => panel === name).map(({ value }) => value)),
      ]),
      ['Gesamtdurchschnitt', '', mean(survey.shots.map(({ value }) => value))],
      ['Streuung', '', '3.1'],
    ];
    return instance(longTable(survey, semicolons) + csv(foot, { delimiter: ';' }), survey);
  }),
];

export const quietKinds: readonly Kind[] = [
  ...lists,
  ...units,
  ...[
    'All values x 0.1',
    'Scale factor;0.1',
    'Multiplier;10',
    'Faktor;0,1',
    'Offset;-12 µm',
    'Offset to add;25',
    'Alle Werte durch 10 teilen',
    'Readings in tenths of a micron',
    'Foil of 50 µm under the probe: subtract',
  ].map((line) => aside(line, 'refused', 'above')),
  aside('All readings minus 12 µm', 'refused', 'below'),
  ...[
    'Scale factor;1',
    'Offset;0',
    'Resolution: tenths of a micron',
    'UTC offset;+2',
    'Errors: 0',
  ].map((line) => aside(line, 'read', 'above')),
  ...[
    'NOT CALIBRATED',
    'Left and right are swapped',
    'Includes 50 µm of protection film',
    'Roof readings belong to another car',
    'Bonnet point 2 is wrong',
  ].map((line) => aside(line, 'read', 'above', against)),
  ...['Note: bonnet 2 was a mistake, please ignore', 'Bonnet 2 re-read: 105'].map((line) =>
    aside(line, 'read', 'below', against),
  ),
  ...rows,
  ...tables,
];
