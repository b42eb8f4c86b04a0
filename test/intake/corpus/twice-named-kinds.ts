/** Columns that are called as others are, and names above or beside a table in a way of their own. */
import { inventSurvey } from './invented-survey.ts';
import { instance, type Kind, kindsOf, type Rest } from './kind.ts';
import { type LongStyle, longTable, shown } from './write-table.ts';

const kind = kindsOf('columns named twice', 'layout');
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

const counts = { says: /counts 1, 2, 3 and numbers the points/ };

/** Each panel over its points, one row of readings. */
const underPanels = (title: string, corner: string, lower: string): Kind =>
  kind(title, 'read', (random) => {
    const survey = inventSurvey(random, { panels, points: 3 });
    const cells = (text: (k: number) => string): string =>
      survey.shots.map((_, k) => text(k)).join(';');
    const text = [
      `${corner};${cells((k) => (k % 3 === 0 ? (survey.shots[k]?.panel ?? '') : ''))}`,
      `${lower};${cells((k) => String((k % 3) + 1))}`,
      `A;${cells((k) => shown(survey.shots[k]?.value ?? 0, { decimal: '.' }))}`,
      '',
    ].join('\n');
    return instance(text, survey, { says: /lines 1 and 2 name the columns together/ });
  });

export const twiceNamedKinds: readonly Kind[] = [
  table(
    'a column "Messung" that counts beside the values',
    'read',
    ['Bauteil', 'Messung', 'Wert', 'Einheit'],
    ({ panel, point, value }, show) => [panel, point, show(value), 'µm'],
    counts,
  ),
  table(
    'a column "Reading" that counts behind the thickness',
    'read',
    ['Panel', 'Thickness (µm)', 'Reading'],
    ({ panel, point, value }, show) => [panel, show(value), point],
    counts,
  ),
  table(
    'two columns of readings and neither counts',
    'refused',
    ['Panel', 'Reading', 'Value', 'Unit'],
    ({ panel, value }, show) => [panel, show(value + 2), show(value), 'µm'],
    { refusedAt: 1 },
  ),
  table(
    'a code of each panel beside its name',
    'read',
    ['Part', 'Panel', 'Point', 'Reading µm'],
    ({ panel, point, value }, show) => [
      `P0${panels.indexOf(panel) + 1}`,
      panel,
      point,
      show(value),
    ],
    { says: /is a second name of what "Panel" names/ },
  ),
  table(
    'a side in a second column of panels',
    'refused',
    ['Zone', 'Panel', 'Point', 'Reading µm'],
    ({ panel, point, value }, show) => [
      Number(point) % 2 === 0 ? 'left' : 'right',
      panel,
      point,
      show(value),
    ],
    { refusedAt: 1 },
  ),
  underPanels('panels merged over their points, the unit in the upper corner', 'µm', 'Pass'),
  underPanels('panels merged over their points, the unit in the lower corner', '', 'µm'),
  kind('a quoted pair above a table that another sign parts', 'read', (random) => {
    const survey = inventSurvey(random, { panels, points: 3 });
    const text = longTable(survey, { delimiter: ';', header: ['panel', 'point', 'reading'] });
    return instance(`Serial.....: 42\n"Unit","µm"\n\n${text}`, survey, { says: /line 2 says µm/ });
  }),
  kind('a line "panel / point: value unit" for each reading', 'read', (random) => {
    const survey = inventSurvey(random, { panels, points: 3 });
    const lines = survey.shots.map(
      ({ panel, point, value }) => `${panel} / ${point}: ${shown(value, { decimal: '.' })} µm\n`,
    );
    return instance(lines.join(''), survey, { says: /the number behind each panel is its point/ });
  }),
];
