/**
 * Files that explain themselves: states of the gauge beside readings, codes of units and panels with their legend, marks,
 * names of columns in an odd place. Each with a twin in which the proof is missing.
 */
import { inventSurvey, panelsOf, type Survey, valuesAt } from './invented-survey.ts';
import { instance, type Kind, kindsOf, type Rest, readingsOf } from './kind.ts';
import type { Random } from './random.ts';
import { longTable, showing } from './write-table.ts';

const cells = kindsOf('what a file explains: cells', 'cells');
const layout = kindsOf('what a file explains: layout', 'layout');

/** A long table with a word in a further column: one for the sixth row, one for all others. */
const withStates = (
  title: string,
  expected: Kind['expected'],
  {
    heading,
    usual,
    odd,
  }: { readonly heading: string; readonly usual: string; readonly odd: string },
): Kind =>
  cells(title, expected, (random) => {
    const survey = inventSurvey(random, { points: 4 });
    const text = longTable(survey, {
      header: ['Panel', 'Point', 'Thickness (µm)', heading],
      row: ({ panel, point, value }, show, i) => [panel, point, show(value), i === 5 ? odd : usual],
    });
    if (expected === 'refused') return instance(text, survey, { refusedAt: 7 });
    const shots = survey.shots.filter((_, i) => i !== 5);
    return instance(text, readingsOf({ ...survey, shots }), { excluded: [['error']] });
  });

/** Half of the panels in mil, the others in µm, and a column that says which. */
const inTwoUnits = (
  random: Random,
  name: (unit: 'um' | 'mil') => string,
  above: string,
  slip = false,
) => {
  const survey = inventSurvey(random, { points: 3, panelCount: 4, decimals: 0 });
  const [first] = panelsOf(survey);
  const shots = survey.shots.map((shot) => ({ ...shot, inMil: shot.panel === first }));
  const rows = shots.map(({ panel, point, value, inMil }) => {
    const shown = inMil && !slip ? (value / 25.4).toFixed(1) : String(value);
    return [panel, point, shown, name(inMil ? 'mil' : 'um')].join(';');
  });
  const truth = shots.map(({ vehicle, panel, point, value, inMil }) => ({
    ...{ vehicle, panel, point },
    um: inMil ? Number((value / 25.4).toFixed(1)) * 25.4 : value,
  }));
  return { text: `${above}Panel;Point;Reading;Unit\n${rows.join('\n')}\n`, truth };
};

/** The rows of a long table, the names of its columns among them. */
const sortedIn = (random: Random, spoil: (lines: string[]) => string[], rest: Rest = {}) => {
  const survey = inventSurvey(random, { points: 3, panelCount: 4 });
  const [header = '', ...rows] = longTable(survey, {
    header: ['Panel', 'Point', 'Thickness (µm)'],
  })
    .trimEnd()
    .split('\n');
  const lines = spoil([...rows.slice(0, 6), header, ...rows.slice(6)]);
  return instance(`${lines.join('\n')}\n`, survey, rest);
};

/** One row: a column for each point of each panel. */
const inOneRow = (
  random: Random,
  heading: (panel: string, k: number) => string,
  { onePoint = [], ...rest }: Rest & { readonly onePoint?: readonly string[] } = {},
) => {
  const all = inventSurvey(random, { points: 2, panels: ['Bonnet', 'Roof', 'Boot lid'] });
  const shots = all.shots.filter(({ panel, point }) => point === '1' || !onePoint.includes(panel));
  const survey = { ...all, shots };
  const show = showing(survey);
  const names = survey.shots.map(({ panel, point }) => heading(panel, Number(point)));
  const values = survey.shots.map(({ value }) => show(value));
  const text = `Unit;${names.join(';')}\nµm;${values.join(';')}\n`;
  return instance(text, survey, rest);
};

/** Panels by number, and a line that says what the numbers are. */
const byCode = (random: Random, legend: (names: readonly string[]) => string) => {
  const survey = inventSurvey(random, { points: 3, panelCount: 3 });
  const names = panelsOf(survey);
  const text = longTable(survey, {
    header: ['Code', 'Point', 'Value (µm)'],
    row: ({ panel, point, value }, show) => [String(11 + names.indexOf(panel)), point, show(value)],
  });
  return { text: `${legend(names)}\n${text}`, survey };
};

const rewritten = (
  random: Random,
  rewrite: (text: string, survey: Survey) => string,
  rest: Rest = {},
  header = 'Thickness (µm)',
  decimals = 1,
) => {
  const survey = inventSurvey(random, { points: 4, decimals });
  const text = longTable(survey, { delimiter: ';', header: ['Panel', 'Point', header] });
  return instance(rewrite(text, survey), survey, rest);
};

/** Blocks of numbers, each with its sums in one line below it. */
const sumsInALine = (random: Random, sums: (own: readonly number[]) => string) => {
  const survey = inventSurvey(random, { points: 4, panelCount: 3, decimals: 0 });
  const blocks = panelsOf(survey).map((panel) => {
    const own = valuesAt(survey, panel);
    const rows = own.map((value, k) => `${k + 1}\t${value} µm`);
    return [`Panel: ${panel}`, ...rows, sums(own), ''].join('\n');
  });
  return instance(blocks.join('\n'), survey);
};
const meanOf = (own: readonly number[]): number => own.reduce((sum, x) => sum + x, 0) / own.length;

export const explainedKinds: readonly Kind[] = [
  withStates('a state that is an error of the gauge', 'read', {
    ...{ heading: 'Status', usual: 'OK', odd: 'ERR 12' },
  }),
  withStates('an error of the gauge in a flag, the others empty', 'read', {
    ...{ heading: 'Flag', usual: '', odd: 'E04' },
  }),
  withStates('an error of the gauge under another name than a state', 'read', {
    ...{ heading: 'Qualität', usual: 'i.O.', odd: 'Fehler 3' },
  }),
  withStates('a column of error codes, 0 for none', 'read', {
    ...{ heading: 'Error code', usual: '0', odd: '12' },
  }),
  withStates('a state that nobody knows where most are OK', 'refused', {
    ...{ heading: 'Status', usual: 'OK', odd: 'suspect' },
  }),
  withStates('a state of codes, 0 on most rows and 3 on one', 'refused', {
    ...{ heading: 'Status', usual: '0', odd: '3' },
  }),
  cells('a word for the film in a column of states', 'read', (random) => {
    const survey = inventSurvey(random, { points: 4 });
    const text = longTable(survey, {
      header: ['Panel', 'Point', 'Thickness (µm)', 'Status'],
      row: ({ panel, point, value }, show, i) => [
        ...[panel, point, show(value)],
        i === 5 ? 'repainted' : 'OK',
      ],
    });
    return instance(text, survey, { says: /"repainted" says nothing/ });
  }),
  cells('a row in a unit in which its number is far from all others', 'refused', (random) => {
    const { text, truth } = inTwoUnits(random, (unit) => (unit === 'um' ? 'µm' : 'mil'), '', true);
    return instance(text, truth);
  }),
  cells('units by code, which a line explains', 'read', (random) => {
    const { text, truth } = inTwoUnits(
      random,
      (unit) => (unit === 'um' ? '1' : '2'),
      'Units: 1 = micrometre, 2 = mil\n',
    );
    return instance(text, truth, { says: /what its units are/ });
  }),
  cells('units by code, one of which no line explains', 'refused', (random) => {
    const { text, truth } = inTwoUnits(
      random,
      (unit) => (unit === 'um' ? '1' : '3'),
      'Units: 1 = micrometre, 2 = mil\n',
    );
    return instance(text, truth);
  }),
  ...['1/1000 mm', '0.001 mm', 'mm/1000', '10^-6 m', '× 10⁻³ mm'].map((unit) =>
    cells(`µm written as ${unit}`, 'read', (random) =>
      rewritten(random, (text) => text, { says: /which is µm/ }, `Thickness (${unit})`),
    ),
  ),
  cells('a unit with a factor that is no µm: 1/100 mm', 'refused', (random) =>
    rewritten(random, (text) => text, {}, 'Thickness (1/100 mm)'),
  ),
  cells('0.001 mm above millimetres says how finely they are read', 'refused', (random) =>
    rewritten(
      random,
      (text) => text.replace(/;([\d.]+)$/gmu, (_, um) => `;${(Number(um) / 1000).toFixed(4)}`),
      {},
      'Thickness (0.001 mm)',
    ),
  ),
  cells('a line amid the rows that sets another unit', 'read', (random) => {
    const survey = inventSurvey(random, { points: 4, panelCount: 4, decimals: 0 });
    const half = survey.shots.length / 2;
    const rows = survey.shots.map(({ panel, point, value }, i) =>
      [panel, point, i < half ? value : (value / 25.4).toFixed(1)].join(';'),
    );
    const truth = survey.shots.map(({ vehicle, panel, point, value }, i) => ({
      ...{ vehicle, panel, point },
      um: i < half ? value : Number((value / 25.4).toFixed(1)) * 25.4,
    }));
    const lines = ['Unit set to µm', 'Panel;Point;Reading', ...rows.slice(0, half)];
    const text = [...lines, 'Unit set to mil', ...rows.slice(half)].join('\n');
    return instance(`${text}\n`, truth);
  }),
  cells('a unit that is set below the last row, and no other', 'refused', (random) =>
    rewritten(random, (text) => `${text}Unit set to mil\n`, {}, 'Reading'),
  ),
  cells('a comment amid the rows that names another unit', 'refused', (random) =>
    rewritten(random, (text) => text.replace(/((?:.*\n){6})/u, '$1# unit: mil\n'), {
      refusedAt: 7,
    }),
  ),
  cells('square brackets that a line explains as deleted', 'read', (random) => {
    const survey = inventSurvey(random, { points: 4 });
    const shots = survey.shots.filter((_, i) => i !== 5);
    const text = longTable(survey, {
      row: ({ panel, point, value }, show, i) => [
        ...[panel, point],
        i === 5 ? `[${show(value)}]` : show(value),
      ],
    });
    const said = `${text}\n[ ] = mesure supprimée, non comptée\n`;
    return instance(said, readingsOf({ ...survey, shots }), { excluded: [['deleted']] });
  }),
  cells('round brackets where a line explains square ones', 'refused', (random) => {
    const survey = inventSurvey(random, { points: 4 });
    const text = longTable(survey, {
      row: ({ panel, point, value }, show, i) => [
        ...[panel, point],
        i === 5 ? `(${show(value)})` : show(value),
      ],
    });
    return instance(`${text}\n[ ] = deleted\n`, survey, { refusedAt: 7 });
  }),
  layout('rows behind a # that a comment explains as struck out', 'read', (random) => {
    const survey = inventSurvey(random, { points: 4 });
    const lines = longTable(survey, { header: ['Panel', 'Point', 'Thickness (µm)'] }).split('\n');
    const kept = survey.shots.filter((_, i) => i !== 5);
    const text = lines.map((line, k) => (k === 6 ? `#${line}` : line)).join('\n');
    const truth = readingsOf({ ...survey, shots: kept });
    return instance(`# lines beginning with # were struck out\n${text}`, truth, {
      says: /left out/,
    });
  }),
  layout('rows behind a # that a comment explains as something else', 'refused', (random) => {
    const survey = inventSurvey(random, { points: 4 });
    const lines = longTable(survey, { header: ['Panel', 'Point', 'Thickness (µm)'] }).split('\n');
    const text = lines.map((line, k) => (k === 6 ? `#${line}` : line)).join('\n');
    return instance(`# lines beginning with # were read twice\n${text}`, survey, { refusedAt: 8 });
  }),
  layout('names of columns that were sorted in among the rows', 'read', (random) =>
    sortedIn(random, (lines) => lines, { says: /names the columns amid the rows/ }),
  ),
  layout('names of columns among rows, one of them with a cell too many', 'refused', (random) =>
    sortedIn(random, (lines) => lines.map((line, k) => (k === 2 ? `${line},9` : line))),
  ),
  layout('names of columns among rows, a point of which stands twice', 'refused', (random) =>
    sortedIn(random, ([first = '', ...lines]) => [first, ...lines, first]),
  ),
  layout('a header that another mark parts than the rows', 'read', (random) =>
    rewritten(random, (text) => text.replace(/^.*/u, (line) => line.replaceAll(';', ',')), {
      says: /another mark than the rows/,
    }),
  ),
  layout('a header that another mark parts than all rows but one', 'refused', (random) =>
    rewritten(random, (text) => {
      const [header = '', ...rows] = text.split('\n');
      const [first = '', ...others] = rows;
      return [header.replaceAll(';', ','), first.replaceAll(';', ','), ...others].join('\n');
    }),
  ),
  layout('a header that goes on in the line below', 'read', (random) =>
    rewritten(random, (text) => text.replace(/^.*/u, 'Panel;Point;Coating\nname;no.;thickness µm')),
  ),
  layout('a column for each point of each panel, in one row', 'read', (random) =>
    inOneRow(random, (panel, k) => `${panel} ${k}`),
  ),
  layout('columns of panels whose numbers do not count', 'refused', (random) =>
    inOneRow(random, (panel, k) => `${panel} ${k === 2 ? 3 : k}`),
  ),
  layout('columns of points, of which most panels have one', 'read', (random) =>
    inOneRow(random, (panel, k) => `${panel} ${k}`, { onePoint: ['Roof', 'Boot lid'] }),
  ),
  layout('columns of points that begin at 2 on a panel', 'refused', (random) =>
    inOneRow(random, (panel, k) => `${panel} ${panel === 'Roof' ? k + 1 : k}`, {
      onePoint: ['Roof', 'Boot lid'],
    }),
  ),
  layout('columns called by tags of 20 digits', 'read', (random) => {
    const panels = ['40172600000000000011', '40172600000000000012', '40172600000000000013'];
    const survey = inventSurvey(random, { points: 3, panels });
    const show = showing(survey);
    const rows = ['1', '2', '3'].map((point) =>
      [point, ...panels.flatMap((panel) => valuesAt(survey, panel, point).map(show))].join(','),
    );
    return instance(`${[`µm,${panels.join(',')}`, ...rows].join('\n')}\n`, survey);
  }),
  layout('columns called by days without marks', 'refused', (random) => {
    const panels = ['20240305', '20240412'];
    const survey = inventSurvey(random, { points: 3, panels });
    const show = showing(survey);
    const rows = ['1', '2', '3'].map((point) =>
      [point, ...panels.flatMap((panel) => valuesAt(survey, panel, point).map(show))].join(','),
    );
    return instance(`${[`µm,${panels.join(',')}`, ...rows].join('\n')}\n`, survey);
  }),
  layout('panels by code, explained in the cells of one line', 'read', (random) => {
    const { text, survey } = byCode(random, (names) =>
      ['Panel codes', ...names.map((name, k) => `${11 + k}=${name}`)].join(','),
    );
    return instance(text, survey, { says: /explains each of its codes/ });
  }),
  layout('panels by code, one of which no line explains', 'refused', (random) => {
    const { text, survey } = byCode(random, (names) =>
      ['Panel codes', ...names.slice(1).map((name, k) => `${12 + k}=${name}`)].join(','),
    );
    return instance(text, survey);
  }),
  layout('a column of values without a name, each with its unit', 'read', (random) =>
    rewritten(random, (text) => text.replace(/(\d)$/gmu, '$1 µm'), { says: /has no name/ }, ''),
  ),
  layout('a column of values without a name, one of them without a unit', 'refused', (random) =>
    rewritten(random, (text) => text.replace(/(\d)$/gmu, '$1 µm').replace(/ µm/u, ''), {}, ''),
  ),
  layout('sums of a block in one line below it', 'read', (random) =>
    sumsInALine(
      random,
      (own) => `Mean ${meanOf(own).toFixed(1)} µm / Min ${Math.min(...own)} µm / n ${own.length}`,
    ),
  ),
  layout('sums of a block that its numbers do not give', 'refused', (random) =>
    sumsInALine(random, (own) => `Mean ${(3 * meanOf(own)).toFixed(1)} µm / n ${own.length}`),
  ),
  layout('an index that counts within each panel, from 0', 'read', (random) => {
    const survey = inventSurvey(random, { points: ['0', '1', '2'] });
    return instance(longTable(survey, { header: ['Panel', 'Index', 'Thickness (µm)'] }), survey);
  }),
  layout('a note over several lines with a row that stands elsewhere', 'read', (random) => {
    const survey = inventSurvey(random, { points: 3 });
    const text = longTable(survey, {
      header: ['Panel', 'Point', 'Thickness (µm)', 'Note'],
      row: ({ panel, point, value }, show, i) => [
        ...[panel, point, show(value)],
        i === 4 ? `see below:\n${panel},${point},411,old list\nend of note` : '',
      ],
    });
    return instance(text, survey, { says: /as no row/ });
  }),
  layout('a note over several lines with a row that stands nowhere else', 'refused', (random) => {
    const survey = inventSurvey(random, { points: 3 });
    const text = longTable(survey, {
      header: ['Panel', 'Point', 'Thickness (µm)', 'Note'],
      row: ({ panel, point, value }, show, i) => [
        ...[panel, point, show(value)],
        i === 4 ? `see below:\n${panel},9,411,old list\nend of note` : '',
      ],
    });
    return instance(text, survey, { refusedAt: 6 });
  }),
];
