/** Columns that are called something else than what they hold, and rows that hold less than they should. */
import { inventSurvey, panelsOf, pointsOf, type Survey, valuesAt } from './invented-survey.ts';
import { instance, type Kind, kindsOf, type Rest, readingsOf } from './kind.ts';
import { csv, type LongStyle, longTable, shown } from './write-table.ts';

const kind = kindsOf('borrowed names', 'layout');

const table = (
  title: string,
  expected: Kind['expected'],
  header: readonly string[],
  row: NonNullable<LongStyle['row']>,
  rest: Rest = {},
): Kind =>
  kind(title, expected, (random) => {
    const survey = inventSurvey(random, { points: 4 });
    return instance(longTable(survey, { header, row }), survey, rest);
  });

/** A column for each panel under a first column of another name. */
function panelColumns(survey: Survey, corner: string, first: (k: number) => string): string {
  const panels = panelsOf(survey);
  const rows = pointsOf(survey).map((point, k) => [
    first(k),
    ...panels.map((panel) =>
      valuesAt(survey, panel, point)
        .map((v) => shown(v))
        .join(''),
    ),
  ]);
  return csv([[corner, ...panels.map((panel) => `${panel} (µm)`)], ...rows]);
}

/** Each panel in a line of its own above its readings. */
const namesAbove = (survey: Survey, without?: string): string =>
  `panel,reading (µm)\n${panelsOf(survey)
    .map((panel) => {
      const rows = valuesAt(survey, panel).map((value) => `,${shown(value)}\n`);
      return `${panel}\n${panel === without ? '' : rows.join('')}`;
    })
    .join('')}`;

/** Every seventh row is marked, and is one that does not count. */
const isMarked = (i: number): boolean => i % 7 === 3;
const marked = (
  title: string,
  expected: Kind['expected'],
  header: string,
  mark: (out: boolean) => string,
): Kind =>
  kind(title, expected, (random) => {
    const survey = inventSurvey(random, { panelCount: 4, points: 5 });
    const out = survey.shots.filter((_, i) => isMarked(i));
    const text = longTable(survey, {
      header: ['panel', 'point', 'reading_um', header],
      row: ({ panel, point, value }, show, i) => [panel, point, show(value), mark(isMarked(i))],
    });
    if (expected === 'refused') return instance(text, survey, { refusedAt: 5 });
    const kept = survey.shots.filter((_, i) => !isMarked(i));
    return instance(text, readingsOf({ ...survey, shots: kept }), {
      excluded: out.map(() => ['deleted'] as const),
    });
  });

export const borrowedKinds: readonly Kind[] = [
  table(
    'panels in a column called "Ch"',
    'read',
    ['Time', 'Ch', 'Point', 'Value', 'Unit'],
    ({ panel, point, value }, show, i) => [`08:01:${10 + i}`, panel, point, show(value), 'um'],
  ),
  table(
    'numbers in a column called "Ch", and no panel',
    'refused',
    ['Time', 'Ch', 'Point', 'Value', 'Unit'],
    ({ point, value }, show, i) => [`08:01:${10 + i}`, '1', point, show(value), 'um'],
    { refusedAt: 2, hint: /panel/ },
  ),
  table(
    'a column "Ch" of numbers beside the panels',
    'read',
    ['panel', 'Ch', 'point', 'reading_um'],
    ({ panel, point, value }, show) => [panel, '1', point, show(value)],
  ),
  ...(
    [
      ['Soll (µm)', 'Ist (µm)'],
      ['Nominal (µm)', 'Actual (µm)'],
    ] as const
  ).flatMap(([nominal, actual]) => [
    table(
      `a nominal and an actual value, "${actual}"`,
      'read',
      ['panel', 'point', nominal, actual],
      ({ panel, point, value }, show) => [panel, point, '110', show(value)],
      { says: /is not read/ },
    ),
    table(
      `two actual values, "${actual}" and "reading"`,
      'either-but-never-wrong',
      ['panel', 'point', 'reading (µm)', actual],
      ({ panel, point, value }, show) => [panel, point, show(value), show(value - 2)],
      { says: /is not read/ },
    ),
  ]),
  table(
    'a column before the readings that counts and has no name',
    'read',
    ['panel', '', 'point', 'reading_um'],
    ({ panel, point, value }, show, i) => [panel, String(1 + (i % 9)), point, show(value)],
    { says: /too small beside the readings/ },
  ),
  table(
    'a column before the readings that may be readings and has no name',
    'refused',
    ['panel', '', 'point', 'reading_um'],
    ({ panel, point, value }, show, i) => [panel, String(90 + i), point, show(value)],
    { refusedAt: 1, hint: /name it/ },
  ),
  kind('one column per panel under a corner "Panel"', 'read', (random) => {
    const survey = inventSurvey(random, { panelCount: 3, points: 4 });
    const text = panelColumns(survey, 'Panel', (k) => String(k + 1));
    return instance(text, survey, { points: 'open' });
  }),
  kind('panels both above the columns and in the rows', 'refused', (random) => {
    const survey = inventSurvey(random, { panelCount: 3, points: 3 });
    const panels = panelsOf(survey);
    const text = panelColumns(survey, 'Panel', (k) => panels[k] ?? '');
    return instance(text, survey, { refusedAt: 2 });
  }),
  kind('a table lying on its side under a corner "Panel"', 'refused', (random) => {
    const survey = inventSurvey(random, { panelCount: 3, points: 1 });
    const panels = panelsOf(survey);
    const text = csv([
      ['Panel', ...panels],
      ['Point', ...panels.map(() => '1')],
      ['Reading (µm)', ...panels.map((panel) => valuesAt(survey, panel).map(String).join(''))],
    ]);
    return instance(text, survey, { refusedAt: 2, options: { unit: 'um' } });
  }),
  kind('panels in lines of their own above their readings', 'read', (random) => {
    const survey = inventSurvey(random, { panelCount: 3, points: 4 });
    return instance(namesAbove(survey), survey, { points: 'open', says: /in a row above/ });
  }),
  kind('panels in lines of their own, one of them without a reading', 'refused', (random) => {
    const survey = inventSurvey(random, { panelCount: 3, points: 4 });
    const [first] = panelsOf(survey);
    return instance(namesAbove(survey, first), survey, { refusedAt: 2 });
  }),
  kind('an unknown panel in a line of its own amid rows with panels', 'refused', (random) => {
    const survey = inventSurvey(random, { panels: ['bonnet', 'roof'], points: 3 });
    const [a = 0, b = 0, c = 0, ...more] = survey.shots.map(({ value }) => value);
    const rows = more.map((value) => `,${value}\n`).join('');
    const text = `panel,reading (µm)\nbonnet,${a}\n,${b}\n,${c}\nHood scoop\n${rows}`;
    return instance(text, survey, { refusedAt: 5 });
  }),
  marked('rows taken back by "annullato"', 'read', 'annullato', (out) => (out ? 'x' : '')),
  marked('rows taken back by a ring under 削除', 'read', '削除', (out) => (out ? '○' : '')),
  marked('rings and crosses under 削除', 'read', '削除', (out) => (out ? '○' : '×')),
  marked('a sign under 削除 that says neither', 'refused', '削除', (out) => (out ? '△' : '')),
  marked('rings and crosses under 有効', 'read', '有効', (out) => (out ? '×' : '○')),
  marked('rows marked as outliers', 'refused', 'outlier', (out) => (out ? 'TRUE' : 'FALSE')),
  marked('rows that are not ok', 'refused', 'ok', (out) => (out ? 'n' : 'y')),
  table(
    'rows that are all ok',
    'read',
    ['panel', 'point', 'reading_um', 'ok'],
    ({ panel, point, value }, show) => [panel, point, show(value), 'y'],
  ),
];
