/** Where a file puts its panels, points and readings, and in whose words. */
import { inventSurvey, panelsOf, pointsOf, type Survey, valuesAt } from './invented-survey.ts';
import { instance, type Kind, kindsOf, readingsOf, type TrueReading } from './kind.ts';
import type { Random } from './random.ts';
import {
  csv,
  type Dialect,
  type LongStyle,
  longRows,
  longTable,
  type Show,
  showing,
  shown,
} from './write-table.ts';

const kind = kindsOf('layout', 'layout');
const semicolons: Dialect & { decimal: string } = { delimiter: ';', decimal: ',' };

/** One row per point with its repeats side by side. */
const repeatColumns = (
  title: string,
  head: (n: number) => string,
  expected: Kind['expected'] = 'read',
  front: readonly string[] = ['panel', 'point'],
  style: Dialect & { decimal?: string } = {},
  options: { unit?: 'um' } = {},
): Kind =>
  kind(title, expected, (random) => {
    const survey = inventSurvey(random, { repeats: random.int(2, 4), points: 3 });
    const show = showing(survey, style);
    const n = Math.max(...survey.shots.map(({ repeat }) => repeat));
    const heads = Array.from({ length: n }, (_, i) => head(i + 1));
    const rows = panelsOf(survey).flatMap((panel) =>
      pointsOf(survey).map((point) => [
        panel,
        ...(front.length > 1 ? [point] : []),
        ...valuesAt(survey, panel, point).map(show),
      ]),
    );
    return instance(csv([[...front, ...heads], ...rows], style), survey, {
      points: front.length > 1 ? 'stated' : 'grouped',
      options,
    });
  });

/** One column per panel, one row per point. */
function panelColumns(
  survey: Survey,
  style: Dialect & { decimal?: string },
  head: (panel: string) => string,
  pointHead?: string,
): string {
  const show = showing(survey, style);
  const panels = panelsOf(survey);
  const rows = pointsOf(survey).map((point) => [
    ...(pointHead === undefined ? [] : [point]),
    ...panels.map((panel) => valuesAt(survey, panel, point).map(show).join('')),
  ]);
  return csv(
    [[...(pointHead === undefined ? [] : [pointHead]), ...panels.map(head)], ...rows],
    style,
  );
}

/** Panels one below another, each with a caption. */
const blocks = (
  title: string,
  caption: (panel: string, show: Show, values: readonly number[]) => string,
  line: (point: string, value: string) => string,
  between: string,
  expected: Kind['expected'] = 'read',
  foot: (values: readonly number[]) => string = () => '',
): Kind =>
  kind(title, expected, (random) => {
    const survey = inventSurvey(random, { points: 4 });
    const show = showing(survey);
    const text = panelsOf(survey)
      .map((panel) => {
        const own = survey.shots.filter((shot) => shot.panel === panel);
        const values = own.map(({ value }) => value);
        return (
          caption(panel, show, values) +
          own.map(({ point, value }) => `${line(point, show(value))}\n`).join('') +
          foot(values)
        );
      })
      .join(between);
    return instance(text, survey);
  });

/** Every reading, and once more 40 µm thicker at the same point. */
const twice = ({ shots }: Survey): readonly TrueReading[] =>
  shots.flatMap(({ panel, point, value, vehicle }) =>
    [value, value + 40].map((um) => ({ vehicle, panel, point, um: Number(um.toFixed(1)) })),
  );
/** The readings, and one of 131.7 µm beside the fifth. */
const withOneMore = (survey: Survey): readonly TrueReading[] =>
  readingsOf(survey).flatMap((one, i) => (i === 4 ? [one, { ...one, um: 131.7 }] : [one]));

const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;

const tables: readonly Kind[] = [
  kind('long, a row per reading', 'read', (random) => {
    const survey = inventSurvey(random, { repeats: 3 });
    return instance(longTable(survey), survey);
  }),
  kind('long with a column of repeats', 'read', (random) => {
    const survey = inventSurvey(random, { repeats: 3 });
    return instance(
      longTable(survey, {
        header: ['panel', 'point', 'repeat', 'reading_um'],
        row: ({ panel, point, repeat, value }, show) => [panel, point, String(repeat), show(value)],
      }),
      survey,
    );
  }),
  kind('long with rows in no order and repeats numbered', 'read', (random) => {
    const survey = inventSurvey(random, { repeats: 2 });
    const shots = random.shuffled(survey.shots);
    return instance(
      longTable(
        { ...survey, shots },
        {
          header: ['reading_um', 'repeat', 'point', 'panel'],
          row: ({ panel, point, repeat, value }, show) => [
            show(value),
            String(repeat),
            point,
            panel,
          ],
        },
      ),
      survey,
    );
  }),
  kind('two vehicles in one file', 'read', (random) => {
    const survey = inventSurvey(random, { vehicles: ['VX01ABC', 'VX02DEF'] });
    return instance(
      longTable(survey, {
        header: ['vehicle', 'panel', 'point', 'reading_um'],
        row: ({ vehicle, panel, point, value }, show) => [vehicle ?? '', panel, point, show(value)],
      }),
      survey,
    );
  }),
  kind('no column of points', 'read', (random) => {
    const survey = inventSurvey(random);
    return instance(
      longTable(survey, {
        header: ['panel', 'reading_um'],
        row: ({ panel, value }, show) => [panel, show(value)],
      }),
      survey,
      { points: 'open' },
    );
  }),
  repeatColumns(
    'repeats side by side, r1 … rn',
    (n) => `r${n}`,
    'read',
    ['panel', 'point'],
    {},
    { unit: 'um' },
  ),
  repeatColumns('repeats side by side with their unit, r1 (µm)', (n) => `r${n} (µm)`),
  repeatColumns('repeats side by side, Reading 1 …', (n) => `Reading ${n} (µm)`),
  repeatColumns('repeats side by side, reading_1_um', (n) => `reading_${n}_um`),
  repeatColumns(
    'repeats side by side, Messung 1 …',
    (n) => `Messung ${n} (µm)`,
    'read',
    ['Bauteil', 'Messpunkt'],
    semicolons,
  ),
  repeatColumns(
    'repeats side by side, Mesure 1 …',
    (n) => `Mesure ${n} (µm)`,
    'read',
    ['Panneau', 'Point'],
    semicolons,
  ),
  repeatColumns(
    'repeats side by side, #1 …',
    (n) => `#${n}`,
    'either-but-never-wrong',
    ['panel', 'point'],
    {},
    { unit: 'um' },
  ),
  repeatColumns(
    'repeats side by side without a column of points',
    (n) => `r${n}`,
    'read',
    ['panel'],
    {},
    { unit: 'um' },
  ),
  kind('repeats side by side, some rows shorter', 'read', (random) => {
    const survey = inventSurvey(random, { repeats: 3, points: 3 });
    const shots = survey.shots.filter(({ point, repeat }) => !(point === '2' && repeat === 3));
    const kept = { ...survey, shots };
    const rows = panelsOf(kept).flatMap((panel) =>
      pointsOf(kept).map((point) => {
        const cells = valuesAt(kept, panel, point).map(showing(kept));
        return [panel, point, ...cells, ...Array.from({ length: 3 - cells.length }, () => '')];
      }),
    );
    return instance(csv([['panel', 'point', 'r1 (µm)', 'r2 (µm)', 'r3 (µm)'], ...rows]), kept);
  }),
  kind('points side by side, 1 to 5', 'read', (random) => {
    const survey = inventSurvey(random, { points: 5 });
    const rows = panelsOf(survey).map((panel) => [
      panel,
      ...valuesAt(survey, panel).map(showing(survey)),
    ]);
    return instance(csv([['panel', '1', '2', '3', '4', '5'], ...rows]), survey, {
      points: 'open',
      options: { unit: 'um' },
    });
  }),
  kind('points side by side, Point 1 (µm) …', 'read', (random) => {
    const survey = inventSurvey(random, { points: 4 });
    const rows = panelsOf(survey).map((panel) => [
      panel,
      ...valuesAt(survey, panel).map(showing(survey)),
    ]);
    return instance(
      csv([['panel', ...[1, 2, 3, 4].map((n) => `Point ${n} (µm)`)], ...rows]),
      survey,
      { points: 'open' },
    );
  }),
  ...(
    [
      ['with units in the header', (panel: string) => `${panel} (µm)`, undefined, {}],
      ['and the unit by flag', (panel: string) => panel, undefined, { unit: 'um' }],
      ['behind a column of points', (panel: string) => `${panel} (µm)`, 'point', {}],
      ['behind a column No.', (panel: string) => `${panel} (µm)`, 'No.', {}],
      ['behind a column #', (panel: string) => `${panel} [µm]`, '#', {}],
    ] as const
  ).map(([name, head, point, options]) =>
    kind(`one column per panel ${name}`, 'read', (random) => {
      const survey = inventSurvey(random, { points: 4 });
      return instance(panelColumns(survey, {}, head, point), survey, { points: 'open', options });
    }),
  ),
  kind('one column per panel, decimal commas', 'read', (random) => {
    const survey = inventSurvey(random, { points: 4 });
    return instance(
      panelColumns(survey, semicolons, (panel) => `${panel} (µm)`),
      survey,
      { points: 'open' },
    );
  }),
  kind('one column per panel of which some are shorter', 'read', (random) => {
    const survey = inventSurvey(random, { points: 5 });
    const last = panelsOf(survey).at(-1);
    const shots = survey.shots.filter(({ panel, point }) => panel !== last || Number(point) < 4);
    return instance(
      panelColumns({ ...survey, shots }, {}, (panel) => `${panel} (µm)`),
      { ...survey, shots },
      { points: 'open' },
    );
  }),
  kind('one row per panel, no header but the panel names', 'either-but-never-wrong', (random) => {
    const survey = inventSurvey(random, { points: 4 });
    const rows = panelsOf(survey).map((panel) => [
      panel,
      ...valuesAt(survey, panel).map(showing(survey)),
    ]);
    return instance(csv(rows), survey, { points: 'open', options: { unit: 'um' } });
  }),
  kind('a panel named only on the first of its rows', 'either-but-never-wrong', (random) => {
    const survey = inventSurvey(random);
    return instance(
      longTable(survey, {
        row: ({ panel, point, value }, show, i) => [
          survey.shots[i - 1]?.panel === panel ? '' : panel,
          point,
          show(value),
        ],
      }),
      survey,
    );
  }),
  kind('merged cells of a header over two rows', 'either-but-never-wrong', (random) => {
    const survey = inventSurvey(random, { points: 3, panels: ['bonnet', 'roof', 'boot'] });
    const panels = panelsOf(survey);
    const rows = [
      panels.flatMap((panel) => [panel, '', '']),
      panels.flatMap(() => ['1', '2', '3']),
      survey.shots.map(({ value }) => shown(value)),
    ];
    return instance(csv(rows), survey, { points: 'open', options: { unit: 'um' } });
  }),
  kind('a file on its side: names down, values across', 'either-but-never-wrong', (random) => {
    const survey = inventSurvey(random, { panelCount: 2, points: 3 });
    const rows = longRows(survey);
    return instance(
      csv(['panel', 'point', 'reading_um'].map((_, c) => rows.map((row) => row[c] ?? ''))),
      survey,
    );
  }),
];

const plainLine = (point: string, value: string): string => `${point},${value}`;
const blockKinds: readonly Kind[] = [
  blocks(
    'blocks under a caption, a header in each',
    (panel) => `${panel}\npoint,reading_um\n`,
    plainLine,
    '\n',
  ),
  blocks(
    'blocks under a caption without blank lines',
    (panel) => `${panel}\npoint,reading_um\n`,
    plainLine,
    '',
  ),
  blocks(
    'blocks under "Panel: name"',
    (panel) => `Panel: ${panel}\npoint,reading_um\n`,
    plainLine,
    '\n',
  ),
  blocks(
    'blocks under "Panel,name"',
    (panel) => `Panel,${panel}\nPoint,Reading (µm)\n`,
    plainLine,
    '\n',
  ),
  blocks(
    'blocks under [name]',
    (panel) => `[${panel}]\npoint,reading_um\n`,
    plainLine,
    '\n',
    'either-but-never-wrong',
  ),
  blocks(
    'blocks under === name ===',
    (panel) => `=== ${panel} ===\npoint,reading_um\n`,
    plainLine,
    '\n',
    'either-but-never-wrong',
  ),
  blocks(
    'blocks with a caption padded by delimiters',
    (panel) => `${panel},,\npoint,reading_um,note\n`,
    (point, value) => `${point},${value},`,
    ',,\n',
  ),
  blocks(
    'blocks with statistics under each',
    (panel) => `${panel}\npoint,reading_um\n`,
    plainLine,
    '\n',
    'read',
    (values) =>
      `Mean,${mean(values).toFixed(2)}\nMin,${Math.min(...values)}\nMax,${Math.max(...values)}\n`,
  ),
  blocks(
    'blocks with a count in the caption',
    (panel, _, values) => `${panel} (${values.length} readings)\npoint,reading_um\n`,
    plainLine,
    '\n',
    'either-but-never-wrong',
  ),
  blocks(
    'blocks of bare values under a caption',
    (panel) => `${panel}\n`,
    (_, value) => `${value} µm`,
    '\n',
    'either-but-never-wrong',
  ),
  blocks(
    'one header, captions between the rows',
    (panel) => `${panel}\n`,
    plainLine,
    '',
    'either-but-never-wrong',
  ),
  kind('a header repeated at every page', 'read', (random) => {
    const survey = inventSurvey(random, { panelCount: 5, points: 5 });
    const [head = [], ...rows] = longRows(survey);
    return instance(csv(rows.flatMap((row, i) => (i % 7 === 0 ? [head, row] : [row]))), survey);
  }),
  kind(
    'a header repeated with its columns in another order',
    'either-but-never-wrong',
    (random) => {
      const survey = inventSurvey(random, { panelCount: 4, points: 4 });
      const [head = [], ...rows] = longRows(survey);
      const turned = (row: readonly string[]) => [...row].reverse();
      return instance(
        csv([head, ...rows.slice(0, 8), turned(head), ...rows.slice(8).map(turned)]),
        survey,
      );
    },
  ),
  kind('a header repeated with another unit', 'either-but-never-wrong', (random) => {
    const um = inventSurvey(random, { panels: ['bonnet', 'roof'] });
    const mil = inventSurvey(random, { panels: ['boot', 'tailgate'], unit: 'mil' });
    return instance(longTable(um) + longTable(mil), [...readingsOf(um), ...readingsOf(mil)]);
  }),
];

const spoken = (
  language: string,
  header: readonly string[],
  style: LongStyle = {},
  expected: Kind['expected'] = 'read',
): Kind =>
  kind(`a header in ${language}: ${header.join(' ')}`, expected, (random) => {
    const survey = inventSurvey(random);
    const row: LongStyle['row'] =
      header.length === 4
        ? ({ panel, point, value }, show, i) => [
            panel,
            point,
            show(value),
            `10:${String(i).padStart(2, '0')}`,
          ]
        : undefined;
    return instance(
      longTable(survey, { header, ...(row === undefined ? {} : { row }), ...style }),
      survey,
    );
  });

const languages: readonly Kind[] = [
  spoken('German', ['Bauteil', 'Messpunkt', 'Schichtdicke (µm)'], semicolons),
  spoken('German', ['Teil', 'Punkt', 'Messwert (µm)', 'Uhrzeit'], semicolons),
  spoken('French', ['Panneau', 'Point', 'Épaisseur (µm)'], semicolons),
  spoken(
    'French',
    ['Élément', 'Point de mesure', 'Valeur (µm)', 'Heure'],
    semicolons,
    'either-but-never-wrong',
  ),
  spoken('Spanish', ['Panel', 'Punto', 'Espesor (µm)'], semicolons),
  spoken('Spanish', ['Panel', 'Punto', 'Lectura (µm)', 'Hora'], semicolons),
  spoken('Italian', ['Pannello', 'Punto', 'Spessore (µm)'], semicolons),
  spoken('Italian', ['Pannello', 'Punto', 'Lettura (µm)', 'Ora'], semicolons),
  spoken('Dutch', ['Paneel', 'Punt', 'Laagdikte (µm)'], semicolons),
  spoken('Dutch', ['Paneel', 'Meetpunt', 'Dikte (µm)', 'Tijd'], semicolons),
  spoken('Portuguese', ['Painel', 'Ponto', 'Espessura (µm)'], semicolons, 'either-but-never-wrong'),
  spoken('Polish', ['Panel', 'Punkt', 'Grubość (µm)'], semicolons, 'either-but-never-wrong'),
  spoken('Swedish', ['Panel', 'Punkt', 'Tjocklek (µm)'], semicolons, 'either-but-never-wrong'),
  spoken('Japanese', ['パネル', '測定点', '膜厚(μm)']),
  spoken('Japanese', ['パネル', 'ポイント', '厚さ（μm）', '時刻']),
  spoken('Japanese', ['部位', '測定点', '測定値 (µm)'], {}, 'either-but-never-wrong'),
  spoken('Chinese', ['面板', '测点', '厚度(μm)']),
  spoken('Chinese', ['面板', '点', '读数（微米）', '时间'], {}, 'either-but-never-wrong'),
  spoken('Russian', ['Панель', 'Точка', 'Толщина (мкм)'], semicolons),
  spoken('Russian', ['Панель', 'Точка', 'Показание, мкм', 'Время'], semicolons),
  spoken('capitals', ['PANEL', 'POINT', 'READING (UM)']),
  spoken('snake case', ['panel_name', 'point_no', 'thickness_um'], {}, 'either-but-never-wrong'),
  spoken(
    'one run of words',
    ['PanelName', 'PointNumber', 'ThicknessMicrons'],
    {},
    'either-but-never-wrong',
  ),
];

const oddHeaders: readonly Kind[] = [
  kind('no header, three columns and a unit by flag', 'either-but-never-wrong', (random) => {
    const survey = inventSurvey(random);
    return instance(csv(longRows(survey).slice(1)), survey, { options: { unit: 'um' } });
  }),
  kind('no header and the columns named by a flag', 'read', (random) => {
    const survey = inventSurvey(random);
    const columns = new Map([
      ['panel', '1'],
      ['point', '2'],
      ['reading', '3'],
    ]);
    return instance(csv(longRows(survey).slice(1)), survey, { options: { unit: 'um', columns } });
  }),
  kind('foreign column names settled by a flag', 'read', (random) => {
    const survey = inventSurvey(random);
    const columns = new Map([
      ['panel', 'Onderdeelnaam'],
      ['point', 'Plek'],
      ['reading', 'Uitslag'],
    ]);
    return instance(
      longTable(survey, {
        header: ['Plek', 'Uitslag', 'Onderdeelnaam'],
        row: ({ panel, point, value }, show) => [point, show(value), panel],
      }),
      survey,
      { options: { unit: 'um', columns } },
    );
  }),
  kind('a header line named by a flag', 'read', (random) => {
    const survey = inventSurvey(random);
    return instance(
      `panel,point,reading_um\nthe line above is an example\n\n${longTable(survey)}`,
      survey,
      { options: { headerLine: 4 } },
    );
  }),
  kind('panel names settled by a list', 'read', (random) => {
    const survey = inventSurvey(random, { panels: ['P1', 'P2'] });
    const names = new Map([
      ['P1', 'bonnet'],
      ['P2', 'roof'],
    ]);
    const renamed = {
      ...survey,
      shots: survey.shots.map((shot) => ({ ...shot, panel: names.get(shot.panel) ?? '' })),
    };
    return instance(longTable(survey), renamed, { options: { panelNames: names } });
  }),
  kind('a bare list of numbers and a unit by flag', 'either-but-never-wrong', (random) => {
    const survey = inventSurvey(random, { panels: [''], points: 12 });
    return instance(survey.shots.map(({ value }) => `${shown(value)}\n`).join(''), survey, {
      points: 'open',
      options: { unit: 'um' },
    });
  }),
  kind('a bare list of numbers each with its unit', 'either-but-never-wrong', (random) => {
    const survey = inventSurvey(random, { panels: [''], points: 12 });
    return instance(survey.shots.map(({ value }) => `${shown(value)} µm\n`).join(''), survey, {
      points: 'open',
    });
  }),
  kind('a bare list of numbers and no unit', 'refused', (random) => {
    const survey = inventSurvey(random, { panels: [''], points: 12 });
    return instance(survey.shots.map(({ value }) => `${shown(value)}\n`).join(''), survey);
  }),
  kind('a list of "panel: value"', 'either-but-never-wrong', (random) => {
    const survey = inventSurvey(random, { points: 1, panelCount: 6 });
    return instance(
      survey.shots.map(({ panel, value }) => `${panel}: ${shown(value)} µm\n`).join(''),
      survey,
      { points: 'open' },
    );
  }),
  kind('a list of "panel: value, value, value"', 'either-but-never-wrong', (random) => {
    const survey = inventSurvey(random, { points: 3 });
    return instance(
      panelsOf(survey)
        .map(
          (panel) =>
            `${panel}: ${valuesAt(survey, panel)
              .map((v) => shown(v))
              .join(', ')}\n`,
        )
        .join(''),
      survey,
      { points: 'open', options: { unit: 'um' } },
    );
  }),
  kind('records of key: value lines', 'either-but-never-wrong', (random) => {
    const survey = inventSurvey(random);
    return instance(
      survey.shots
        .map(
          ({ panel, point, value }) =>
            `Panel: ${panel}\nPoint: ${point}\nReading: ${shown(value)} µm\n\n`,
        )
        .join(''),
      survey,
    );
  }),
  kind('two reading columns of one name', 'either-but-never-wrong', (random) => {
    const survey = inventSurvey(random);
    return instance(
      longTable(survey, {
        header: ['panel', 'point', 'reading_um', 'reading_um'],
        row: ({ panel, point, value }, show) => [panel, point, show(value), show(value + 40)],
      }),
      twice(survey),
      { says: /reading_um/ },
    );
  }),
  kind('a nameless column of numbers', 'either-but-never-wrong', (random) => {
    const survey = inventSurvey(random);
    return instance(
      longTable(survey, {
        header: ['panel', 'point', 'reading_um', ''],
        row: ({ panel, point, value }, show) => [panel, point, show(value), show(value + 40)],
      }),
      survey,
      { says: /name|column/i, others: [{ readings: twice(survey), says: /name|column/i }] },
    );
  }),
  kind('two notes of one name', 'read', (random) => {
    const survey = inventSurvey(random);
    return instance(
      longTable(survey, {
        header: ['panel', 'point', 'reading_um', 'note', 'note'],
        row: ({ panel, point, value }, show) => [panel, point, show(value), 'dry', 'warm'],
      }),
      survey,
    );
  }),
  kind('a reading beyond the header in one row', 'either-but-never-wrong', (random) => {
    const survey = inventSurvey(random, { panelCount: 3, points: 3 });
    return instance(
      longTable(survey, {
        row: ({ panel, point, value }, show, i) => [
          panel,
          point,
          show(value),
          ...(i === 4 ? ['131.7'] : []),
        ],
      }),
      withOneMore(survey),
      { refusedAt: 6, says: /header|131\.7/ },
    );
  }),
  kind('a reading beyond the header of repeats', 'either-but-never-wrong', (random) => {
    const survey = inventSurvey(random, { panelCount: 3, points: 3, repeats: 3 });
    const rows = panelsOf(survey).flatMap((panel) =>
      pointsOf(survey).map((point) => [
        panel,
        point,
        ...valuesAt(survey, panel, point).map(showing(survey)),
      ]),
    );
    return instance(csv([['panel', 'point', 'r1 (µm)', 'r2 (µm)'], ...rows]), survey, {
      refusedAt: 2,
    });
  }),
  kind('a number in a column of its own beyond a title', 'either-but-never-wrong', (random) => {
    const survey = inventSurvey(random, { panelCount: 3, points: 3 });
    return instance(
      longTable(survey, {
        row: ({ panel, point, value }, show, i) => [
          panel,
          point,
          show(value),
          ...(i === 4 ? ['', '', '131.7'] : []),
        ],
      }),
      survey,
      {
        refusedAt: 6,
        says: /131\.7/,
        others: [{ readings: withOneMore(survey), says: /header|131\.7/ }],
      },
    );
  }),
  kind('a row without its reading', 'either-but-never-wrong', (random) => {
    const survey = inventSurvey(random, { panelCount: 3, points: 3 });
    const kept = readingsOf(survey).filter((_, i) => i !== 4);
    return instance(
      longTable(survey, {
        row: ({ panel, point, value }, show, i) =>
          i === 4 ? [panel, point] : [panel, point, show(value)],
      }),
      kept,
      { excluded: [['missing']], refusedAt: 6 },
    );
  }),
  kind(
    'a row cut off in the middle of a number at the end of the file',
    'either-but-never-wrong',
    (random) => {
      const survey = inventSurvey(random, { points: 3 });
      const text = longTable(survey, {
        header: ['panel', 'point', 'reading_um', 'operator'],
        row: ({ panel, point, value }, show) => [panel, point, show(value), 'Kim'],
      });
      return instance(text.slice(0, -5), readingsOf(survey));
    },
  ),
  kind('readings without a panel in one row, the first of its panel', 'refused', (random) => {
    const survey = inventSurvey(random, { panelCount: 3, points: 3 });
    return instance(
      longTable(survey, {
        header: ['point', 'panel', 'reading_um'],
        row: ({ panel, point, value }, show, i) => [point, i === 3 ? '' : panel, show(value)],
      }),
      survey,
      { refusedAt: 5 },
    );
  }),
  kind('readings without a panel in rows whose points count on', 'read', (random) => {
    const survey = inventSurvey(random, { panelCount: 3, points: 3 });
    return instance(
      longTable(survey, {
        header: ['point', 'panel', 'reading_um'],
        row: ({ panel, point, value }, show, i) => [point, i % 4 === 1 ? '' : panel, show(value)],
      }),
      survey,
      { says: /rows that name none go on with the last/ },
    );
  }),
  kind('µm and mil of the same readings side by side', 'either-but-never-wrong', (random) => {
    const survey = inventSurvey(random);
    return instance(
      longTable(survey, {
        header: ['panel', 'point', 'reading_um', 'reading_mil'],
        row: ({ panel, point, value }, show) => [
          panel,
          point,
          show(value),
          (value / 25.4).toFixed(2),
        ],
      }),
      survey,
    );
  }),
  ...(
    [
      ['temperature and humidity', ['temperature_c', 'humidity'], ['21.5', '45']],
      ['latitude and longitude', ['lat', 'lon'], ['48.137', '11.575']],
      ['a serial and a battery', ['serial', 'battery'], ['100234', '87']],
      ['a substrate and a mode', ['substrate', 'mode'], ['Fe', 'Auto']],
    ] as const
  ).map(([name, heads, cells]) =>
    kind(`columns of ${name} beside the readings`, 'read', (random) => {
      const survey = inventSurvey(random);
      return instance(
        longTable(survey, {
          header: ['No.', 'panel', 'point', 'reading_um', ...heads],
          row: ({ panel, point, value }, show, i) => [
            String(i + 1),
            panel,
            point,
            show(value),
            ...cells,
          ],
        }),
        survey,
      );
    }),
  ),
  kind('a header alone', 'refused', () => instance('panel,point,reading_um\n', [])),
  kind('one reading', 'read', (random) => {
    const survey = inventSurvey(random, { panelCount: 1, points: 1 });
    return instance(longTable(survey), survey);
  }),
  kind('one reading with a decimal comma', 'read', (random) => {
    const survey = inventSurvey(random, { panelCount: 1, points: 1 });
    return instance(longTable(survey, semicolons), survey);
  }),
];

/** Files as they come out of a program or a hand: several quirks at once. */
const everyday: readonly Kind[] = [
  kind('a log of a serial terminal', 'either-but-never-wrong', (random: Random) => {
    const survey = inventSurvey(random, { panels: [''], points: 10 });
    return instance(
      survey.shots
        .map(({ value }, i) => `10:15:${String(i + 10)}  ${shown(value)} um\r\n`)
        .join(''),
      survey,
      { points: 'open' },
    );
  }),
  kind('a table copied from a web page', 'read', (random) => {
    const survey = inventSurvey(random);
    return instance(
      longTable(survey, {
        delimiter: '\t',
        eol: '\r\n',
        header: ['Panel\u00a0', 'Point\u00a0', 'Thickness\u00a0(µm)'],
        row: ({ panel, point, value }, show) => [
          `${panel.replaceAll(' ', '\u00a0')}`,
          point,
          `${show(value)}\u00a0`,
        ],
      }),
      {
        ...survey,
        shots: survey.shots.map((shot) => ({
          ...shot,
          panel: shot.panel.replaceAll(' ', '\u00a0'),
        })),
      },
    );
  }),
  kind('a pivot with grand totals', 'either-but-never-wrong', (random) => {
    const survey = inventSurvey(random, { points: 4 });
    const show = showing(survey);
    const panels = panelsOf(survey);
    const rows = panels.map((panel) => [
      panel,
      ...valuesAt(survey, panel).map(show),
      mean(valuesAt(survey, panel)).toFixed(3),
    ]);
    const total = [
      'Grand Total',
      ...pointsOf(survey).map((point) =>
        mean(survey.shots.filter((s) => s.point === point).map(({ value }) => value)).toFixed(3),
      ),
      mean(survey.shots.map(({ value }) => value)).toFixed(3),
    ];
    return instance(
      csv([
        ['Average of reading_um', 'Column Labels', '', '', '', ''],
        ['Row Labels', ...pointsOf(survey), 'Grand Total'],
        ...rows,
        total,
      ]),
      survey,
      { points: 'open', options: { unit: 'um' } },
    );
  }),
  kind('a table quoted in a mail', 'either-but-never-wrong', (random) => {
    const survey = inventSurvey(random);
    return instance(longTable(survey).replace(/^(?=.)/gm, '> '), survey);
  }),
  kind('a report: title, preamble, table, statistics, signature', 'read', (random) => {
    const survey = inventSurvey(random, { points: 4 });
    const values = survey.shots.map(({ value }) => value);
    const de = (value: number) => shown(value, { decimal: ',', digits: 2 });
    const head =
      'Prüfbericht Lackschicht;;\r\n;;\r\nGerät;Handgerät;\r\nSeriennummer;004711;\r\nDatum;25.11.2026;\r\nPrüfer;K. Beispiel;\r\n;;\r\n';
    const foot = `;;\r\nMittelwert;;${de(mean(values))}\r\nMinimum;;${de(Math.min(...values))}\r\nMaximum;;${de(Math.max(...values))}\r\nAnzahl;;${values.length}\r\n;;\r\nUnterschrift:;;\r\n`;
    return instance(
      head +
        longTable(survey, {
          ...semicolons,
          eol: '\r\n',
          header: ['Bauteil', 'Messpunkt', 'Schichtdicke (µm)'],
        }) +
        foot,
      survey,
    );
  }),
];

export const layoutKinds: readonly Kind[] = [
  ...tables,
  ...blockKinds,
  ...languages,
  ...oddHeaders,
  ...everyday,
];
