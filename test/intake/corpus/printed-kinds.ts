/** Tables as a printer or a terminal has them: aligned by blanks, one line a shot, rows in quotes. */
import { inventSurvey, panelsOf, type Survey, valuesAt } from './invented-survey.ts';
import { instance, type Kind, kindsOf } from './kind.ts';
import { mean, two, valuesOf } from './statistics-kinds.ts';
import { longRows, longTable, shown } from './write-table.ts';

const kind = kindsOf('printed', 'bytes');

/** Each column as wide as its longest cell and two blanks. */
function aligned(rows: readonly (readonly string[])[]): string {
  const widths = (rows[0] ?? []).map((_, k) =>
    Math.max(...rows.map((row) => (row[k] ?? '').length)),
  );
  return rows
    .map((row) =>
      row
        .map((cell, k) => cell.padEnd((widths[k] ?? 0) + 2))
        .join('')
        .trimEnd(),
    )
    .map((line) => `${line}\n`)
    .join('');
}

/** Lines of shots, the words of each as asked for. */
const shots = (survey: Survey, line: (panel: string, shown: string, i: number) => string): string =>
  survey.shots.map(({ panel, value }, i) => `${line(panel, shown(value), i)}\n`).join('');
const clock = (i: number): string => `08:${10 + (i % 50)}:07`;

export const printedKinds: readonly Kind[] = [
  ...(['^', '~'] as const).flatMap((delimiter) => [
    kind(`${delimiter} as delimiter`, 'read', (random) => {
      const survey = inventSurvey(random);
      return instance(longTable(survey, { delimiter }), survey, { says: /as delimiter/ });
    }),
    kind(`${delimiter} as delimiter, and commas in one row`, 'refused', (random) => {
      const survey = inventSurvey(random);
      const lines = longTable(survey, { delimiter }).split('\n');
      const text = lines.with(3, (lines[3] ?? '').replaceAll(delimiter, ',')).join('\n');
      return instance(text, survey, { refusedAt: 4 });
    }),
  ]),
  kind('columns aligned by blanks', 'read', (random) => {
    const survey = inventSurvey(random);
    return instance(aligned(longRows(survey)), survey, { says: /two blanks/ });
  }),
  kind('columns aligned by blanks, decimal commas', 'read', (random) => {
    const survey = inventSurvey(random);
    return instance(aligned(longRows(survey, { decimal: ',' })), survey);
  }),
  kind('two blanks between cells, not aligned', 'read', (random) => {
    const survey = inventSurvey(random);
    return instance(longTable(survey, { delimiter: '  ', quote: 'never' }), survey);
  }),
  kind('columns aligned by blanks, notes in some rows and a mean below', 'read', (random) => {
    const survey = inventSurvey(random, { points: 4 });
    const rows = longRows(survey, {
      header: ['panel', 'note', 'point', 'reading_um'],
      row: ({ panel, point, value }, show, i) => [
        panel,
        i % 3 === 1 ? 'dry' : '',
        point,
        show(value),
      ],
    });
    const last = ['Mean', '', '', two(mean(valuesOf(survey)))];
    return instance(aligned([...rows, last]), survey);
  }),
  kind('two blanks between cells, and a row without its point', 'refused', (random) => {
    const survey = inventSurvey(random, { points: 4 });
    const rows = longRows(survey).map((row, i) => (i === 5 ? [row[0] ?? '', row[2] ?? ''] : row));
    const text = rows.map((row) => `${row.join('  ')}\n`).join('');
    return instance(text, survey, { refusedAt: 6, hint: /comma/ });
  }),
  kind('every row in one pair of quotes', 'read', (random) => {
    const survey = inventSurvey(random);
    const lines = longTable(survey).trimEnd().split('\n');
    const text = lines.map((line) => `"${line}"\n`).join('');
    return instance(text, survey, { says: /quotes as a whole/ });
  }),
  kind('every row but one in a pair of quotes', 'refused', (random) => {
    const survey = inventSurvey(random, { points: 4 });
    const lines = longTable(survey).trimEnd().split('\n');
    return instance(lines.map((line, i) => (i === 3 ? line : `"${line}"`)).join('\n'), survey);
  }),
  kind('shots by time and panel', 'read', (random) => {
    const survey = inventSurvey(random);
    const text = shots(survey, (panel, value, i) => `${clock(i)} ${panel} ${value} um`);
    return instance(text, survey, { points: 'open', says: /each line is one shot/ });
  }),
  kind('shots by panel alone, the unit close to the number', 'read', (random) => {
    const survey = inventSurvey(random);
    const text = shots(survey, (panel, value) => `${panel} ${value}µm`);
    return instance(text, survey, { points: 'open' });
  }),
  kind('a shot over the range among shots', 'read', (random) => {
    const survey = inventSurvey(random, { points: 4 });
    const text = shots(survey, (panel, value, i) =>
      i === 3
        ? `${clock(i)} ${panel} ${value} um\n${clock(i)} ${panel} OL`
        : `${clock(i)} ${panel} ${value} um`,
    );
    return instance(text, survey, { points: 'open', excluded: [['over-range']] });
  }),
  kind('a number gone wrong among shots', 'refused', (random) => {
    const survey = inventSurvey(random, { points: 4 });
    const text = shots(survey, (panel, value, i) => {
      const written = i === 3 ? value.replace(/\d/u, 'O') : value;
      return `${clock(i)} ${panel} ${written} um`;
    });
    return instance(text, survey);
  }),
  kind('two numbers in each shot', 'refused', (random) => {
    const survey = inventSurvey(random);
    const text = shots(survey, (panel, value, i) => `${clock(i)} ${panel} 104 ${value} um`);
    return instance(text, survey);
  }),
  kind('numbered shots below the names of their panels', 'read', (random) => {
    const survey = inventSurvey(random, { points: 4 });
    const text = panelsOf(survey)
      .map((panel) => {
        const own = valuesAt(survey, panel).map((value, k) => `N=${k + 1} ${shown(value)}um\n`);
        return `${panel}\n${own.join('')}`;
      })
      .join('');
    return instance(text, survey, { points: 'open' });
  }),
  kind('numbered shots and no panel', 'refused', (random) => {
    const survey = inventSurvey(random);
    const text = shots(survey, (_, value, i) => `N=${i + 1} ${value}um`);
    return instance(text, survey, { refusedAt: 1, hint: /panel/ });
  }),
  kind('rows without a header, with their day and time', 'read', (random) => {
    const survey = inventSurvey(random, { points: 4 });
    const text = shots(survey, (panel, value, i) =>
      ['31.03.2026', clock(i), panel, `${value} µm`].join(';'),
    );
    return instance(text, survey, { points: 'open' });
  }),
];
