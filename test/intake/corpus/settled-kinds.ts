/** What a careful reader settles from the cells, where no name says it; and what looks so and is not. */
import { inventSurvey, type Survey } from './invented-survey.ts';
import { instance, type Kind, kindsOf, type Rest } from './kind.ts';
import { type LongStyle, longTable, type Show, shown } from './write-table.ts';

const kind = kindsOf('settled by the cells', 'layout');
const panels = ['bonnet', 'roof', 'boot lid'];

const table = (
  title: string,
  expected: Kind['expected'],
  header: readonly string[],
  row: NonNullable<LongStyle['row']>,
  rest: Rest = {},
): Kind =>
  kind(title, expected, (random) => {
    const survey = inventSurvey(random, { panels, points: 4 });
    return instance(longTable(survey, { header, row, delimiter: ';' }), survey, rest);
  });

const named: NonNullable<LongStyle['row']> = ({ panel, point, value }, show) => [
  panel,
  point,
  show(value),
];
const ofPanels = { says: /is the column of panels: each of its cells names one/ };
const ofPoints = { says: /the number behind each panel is its point/ };

/** Whole readings and a number more in each row, which no name stands above. */
const furtherCell = (title: string, further: (i: number) => string): Kind =>
  kind(title, 'refused', (random) => {
    const survey: Survey = inventSurvey(random, { panels, points: 4, decimals: 0 });
    const row = ({ panel, point, value }: Survey['shots'][number], _: Show, i: number) => [
      panel,
      point,
      String(value),
      further(i),
    ];
    return instance(longTable(survey, { header: ['panel', 'point', 'reading_um'], row }), survey, {
      refusedAt: 2,
    });
  });

/** Two columns of readings, each of a visit. */
const datedColumns = (first: string, second: string): Kind =>
  kind(`columns called ${first} and ${second}`, 'refused', (random) => {
    const survey = inventSurvey(random, { panels, points: 2 });
    const rows = panels.map((panel) => {
      const own = survey.shots.filter((shot) => shot.panel === panel);
      return [panel, ...own.map(({ value }) => shown(value, { decimal: ',' }))].join(';');
    });
    const text = [`Panel (µm);${first};${second}`, ...rows, ''].join('\n');
    return instance(text, survey, { refusedAt: 1 });
  });

/** The first panel's rows, then a row of something else that neither panel nor point names. */
const foilUnderName = (remark: string): Kind =>
  kind(`a row remarked "${remark}" under a merged name`, 'refused', (random) => {
    const survey = inventSurvey(random, { panels, points: 3 });
    const rows = survey.shots.map(({ panel, point, value }) => [
      point === '1' ? panel : '',
      point,
      shown(value),
      '',
    ]);
    const all = [
      ['panel', 'point', 'reading_um', 'remark'],
      ...rows.toSpliced(3, 0, ['', '', '125.0', remark]),
    ];
    return instance(`${all.map((row) => row.join(';')).join('\n')}\n`, survey, { refusedAt: 5 });
  });

export const settledKinds: readonly Kind[] = [
  table('panels under "Label"', 'read', ['Label', 'Point', 'Reading µm'], named, ofPanels),
  table('panels under no name', 'read', ['', 'Point', 'Reading µm'], named, ofPanels),
  ...['Bonnet 1', 'Bonnet_01', 'Bonnet #1', 'Bonnet P1'].map((example) =>
    table(
      `points behind the panels, as in ${example}`,
      'read',
      ['Panel', 'Reading µm'],
      ({ panel, point, value }, show) => [
        example.replace('Bonnet', panel).replace('1', point),
        show(value),
      ],
      ofPoints,
    ),
  ),
  table(
    'a place in a list before each panel',
    'read',
    ['Panel', 'Point', 'Reading µm'],
    ({ panel, point, value }, show) => [
      `${panels.indexOf(panel) + 1}. ${panel}`,
      point,
      show(value),
    ],
    { says: /the number before each panel is its place in a list/ },
  ),
  table(
    'a sign for the same below each panel',
    'read',
    ['Panel', 'Point', 'Reading µm'],
    ({ panel, point, value }, show) => [point === '1' ? panel : '〃', point, show(value)],
    { says: /a sign for the same stands below each panel/ },
  ),
  table(
    'rows that begin with their number, unnamed',
    'read',
    ['Panel', 'Point', 'Reading µm'],
    ({ panel, point, value }, show, i) => [String(i + 1), panel, point, show(value)],
    { says: /every row begins with its own number/ },
  ),
  kind('a unit in a comment above the table', 'read', (random) => {
    const survey = inventSurvey(random, { panels });
    const text = longTable(survey, { header: ['panel', 'point', 'reading'] });
    return instance(`# exported by hand\n# unit: µm\n${text}`, survey, { says: /line 2 says µm/ });
  }),
  kind('quotes within cells behind backslashes', 'read', (random) => {
    const survey = inventSurvey(random, { panels });
    const header = ['panel', 'point', 'reading_um', 'note'];
    const text = longTable(survey, {
      header,
      quote: 'never',
      row: ({ panel, point, value }, show) => [panel, point, show(value), '"by \\"A\\" line"'],
    });
    return instance(text, survey, { says: /a backslash stands before each quote/ });
  }),
  furtherCell('whole readings and an unnamed temperature', (i) => String(21 + (i % 3))),
  furtherCell('whole readings and an unnamed grade', (i) => String(1 + (i % 5))),
  furtherCell('whole readings and an unnamed humidity', (i) => String(47 + (i % 4))),
  datedColumns('2023-05-03', '2024-05-03'),
  datedColumns('03.05.23', '04.05.24'),
  datedColumns('2023/05', '2024/05'),
  foilUnderName('calibration check'),
  foilUnderName('Nullpunkt'),
  table(
    'points and readings under each other’s names',
    'refused',
    ['Panel', 'Point', 'Reading µm'],
    ({ panel, point, value }, show) => [panel, show(value), point],
    { refusedAt: 2 },
  ),
  kind('each point before and after, in a column that is not read', 'refused', (random) => {
    const survey = inventSurvey(random, { panels, points: 2, repeats: 2 });
    const row: LongStyle['row'] = ({ panel, point, value, repeat }, show) => [
      panel,
      point,
      repeat === 1 ? 'before' : 'after',
      show(value),
    ];
    const header = ['Panel', 'Point', 'Stage', 'Reading µm'];
    return instance(longTable(survey, { header, row }), survey, { refusedAt: 3 });
  }),
  table(
    'a number of two digits before each panel',
    'read',
    ['Panel', 'Point', 'Reading µm'],
    ({ panel, point, value }, show) => [
      `0${panels.indexOf(panel) + 1} ${panel}`,
      point,
      show(value),
    ],
    { says: /the number before each panel is its place in a list/ },
  ),
  table(
    'a word under no name beside one reading',
    'read',
    ['Panel', 'Point', 'Reading µm', ''],
    ({ panel, point, value }, show, i) => [panel, point, show(value), i === 1 ? 'deleted' : ''],
    { says: /"deleted" beside it, under no name, may say otherwise/ },
  ),
  table(
    'the unit behind the name of each panel',
    'read',
    ['Panel', 'Point', 'Reading'],
    ({ panel, point, value }, show) => [`${panel} (µm)`, point, show(value)],
    { says: /µm behind each panel is the unit of its readings/ },
  ),
  table(
    'hours and minutes in columns of their own',
    'read',
    ['Hour', 'Min', 'Panel', 'Point', 'Reading µm'],
    ({ panel, point, value }, show, i) => ['10', String(11 + i), panel, point, show(value)],
  ),
  kind('a last reading that lost its decimals with the line end', 'read', (random) => {
    const survey = inventSurvey(random, { panels, points: 4 });
    const whole = survey.shots.at(-1);
    const shots = survey.shots.map((shot) =>
      shot === whole
        ? { ...shot, value: Math.round(shot.value) }
        : { ...shot, value: halves(shot) },
    );
    const rows = shots.map(({ panel, point, value }) =>
      [panel, point, value === Math.round(value) ? String(value) : shown(value)].join(','),
    );
    const text = ['panel,point,reading_um', ...rows].join('\n');
    const sure = shots.filter(
      (shot) => shot.value !== Math.round(shot.value) || shot !== shots.at(-1),
    );
    return instance(text, { ...survey, shots: sure }, { says: /it may be cut off/ });
  }),
  kind('a block of points from 1 that no line names', 'refused', (random) => {
    const survey = inventSurvey(random, { panels, points: 3 });
    const blocks = panels.map((panel, k) => {
      const own = survey.shots.filter((shot) => shot.panel === panel);
      const rows = own.map(({ point, value }) => `${point};${shown(value)}`);
      return [...(k === 1 ? [] : [panel]), 'Point;Value (µm)', ...rows, ''].join('\n');
    });
    return instance(`${blocks.join('\n')}\n`, survey, { refusedAt: 7 });
  }),
  kind('two readings about a comma in each row', 'refused', (random) => {
    const survey = inventSurvey(random, { panels, points: 1 });
    const rows = ['bonnet;112,109', 'roof;98,99', 'boot lid;118,121'];
    return instance(['panel;reading_um', ...rows, ''].join('\n'), survey, { refusedAt: 2 });
  }),
];

/** A value with one decimal that is never 0. */
const halves = ({ value }: Survey['shots'][number]): number => Math.round(value) + 0.4;
