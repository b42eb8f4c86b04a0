/** Files that look read after a glance: neighbours of the readings, odd numbers, two cars in one export. */
import { inventSurvey, type Survey } from './invented-survey.ts';
import { instance, type Kind, kindsOf, readingsOf, type TrueReading } from './kind.ts';
import { csv, type LongStyle, longTable, shown } from './write-table.ts';

const cells = kindsOf('traps', 'cells');
const layout = kindsOf('traps', 'layout');
const either = 'either-but-never-wrong';

/** One cell of the column holds something that is nearly a number; its value must never be made up. */
const nearly = (text: string, um?: number): Kind =>
  cells(`${JSON.stringify(text)} where a reading stands`, either, (random) => {
    const survey = inventSurvey(random, { panelCount: 3, points: 4 });
    const row: LongStyle['row'] = ({ panel, point, value }, show, i) => [
      panel,
      point,
      i === 5 ? text : show(value),
    ];
    const all = readingsOf(survey);
    const without = all.filter((_, i) => i !== 5);
    const meant =
      um === undefined ? without : all.map((one, i) => (i === 5 ? { ...one, um } : one));
    const aloud = /./;
    return instance(longTable(survey, { row, delimiter: ';' }), meant, {
      refusedAt: 7,
      ...(um === undefined ? {} : { others: [{ readings: without, says: aloud }] }),
    });
  });

/** A column of film figures beside the readings that are none. */
const neighbour = (
  name: string,
  at: 'before' | 'after',
  expected: Kind['expected'] = either,
): Kind =>
  layout(`a column "${name}" ${at} the readings`, expected, (random) => {
    const survey = inventSurvey(random);
    const put = (own: string, other: string) => (at === 'before' ? [other, own] : [own, other]);
    return instance(
      longTable(survey, {
        header: ['panel', 'point', ...put('Thickness (µm)', name)],
        row: ({ panel, point, value }, show, i) => [
          panel,
          point,
          ...put(show(value), String(90 + (i % 7))),
        ],
      }),
      survey,
    );
  });

const report = (facts: string, survey: Survey, header = ['panel', 'point', 'reading_um']): string =>
  `${facts}\n\n${longTable(survey, { header })}`;
const ofVehicle = (survey: Survey, vehicle: string): readonly TrueReading[] =>
  readingsOf(survey).map((one) => ({ ...one, vehicle }));
const same = { panels: ['bonnet', 'roof', 'boot'], points: 3 };

/** Lines between the rows of one table that change what the rows below them are. */
const lineBetween: readonly Kind[] = [
  layout('a line between two rows that names another unit', 'read', (random) => {
    // Numbers of mil are no paint in µm, and can be read as such; the other way they may be beyond any gauge.
    const survey = inventSurvey(random, { unit: 'mil', panelCount: 2, points: 3 });
    const rows = longTable(survey, { header: ['panel', 'point', 'reading'] }).split('\n');
    const text = ['Unit: µm', ...rows.slice(0, 4), 'Unit: mil', ...rows.slice(4)].join('\n');
    const readings = readingsOf(survey).map((one, i) =>
      i < 3 ? { ...one, um: survey.shots[i]?.value ?? 0 } : one,
    );
    return instance(text, readings, { says: /mil/ });
  }),
  layout('a line between two rows that tells of a later stage', 'refused', (random) => {
    const rows = longTable(inventSurvey(random, { panelCount: 2, points: 3 })).split('\n');
    const text = [...rows.slice(0, 4), 'After polishing', ...rows.slice(1)].join('\n');
    return instance(text, [], { refusedAt: 5 });
  }),
  layout('columns "Before" and "After", and a unit named by hand', 'refused', (random) => {
    const survey = inventSurvey(random, { panelCount: 3, points: 1 });
    const rows = survey.shots.map(({ panel, value }) => `${panel},${value},${value - 2}`);
    const text = `panel,Before,After\n${rows.join('\n')}\n`;
    return instance(text, [], { refusedAt: 1, options: { unit: 'um' } });
  }),
];

const numbers: readonly Kind[] = [
  nearly('101²'),
  nearly('10½'),
  nearly('①②③'),
  nearly('1٠1.5', 101.5),
  nearly('1\u200b01.5', 101.5),
  nearly('\u200e101.5\u200e', 101.5),
  nearly('1\u00ad01.5', 101.5),
  nearly('(101.5)'),
  nearly('~~101.5~~'),
  nearly('1.2k'),
  nearly('0.1015 mm', 101.5),
  nearly('4 1/2 mil'),
  nearly('12.345.678'),
  nearly('1,23,456'),
  nearly('12,34'),
  nearly('1 01.5'),
  nearly('101. 5'),
  nearly('101.5e'),
  nearly('1e2e3'),
  nearly('+-101.5'),
  nearly('--101.5'),
  nearly('101.5-102'),
  nearly('101.5 %'),
  nearly('$101.5'),
  nearly('101.5 µm 4.0 mil'),
  nearly('101.5 V'),
  nearly('4.00 mil', 101.6),
  nearly('1E400'),
  nearly('1e-400'),
  nearly('-0'),
  nearly('CI'),
  nearly('Ⅳ'),
  nearly('一百'),
  nearly('101.5\u0000'),
  nearly('≈101.5'),
  nearly('≥101.5'),
  nearly('101.5?'),
  nearly('=100+1.5'),
  nearly('TRUE'),
  nearly('10:15'),
  nearly('1.5.2026'),
  nearly('5-Jan'),
  nearly('Jan-98'),
  nearly('45678'),
  cells('two values in a quoted cell of two lines', 'refused', (random) => {
    const survey = inventSurvey(random, { panelCount: 3, points: 3 });
    return instance(
      longTable(survey, {
        row: ({ panel, point, value }, show, i) => [
          panel,
          point,
          i === 4 ? `${show(value)}\n${show(value)}` : show(value),
        ],
      }),
      survey,
      { refusedAt: 6 },
    );
  }),
  cells('a bare number among values of two units', 'refused', (random) => {
    const survey = inventSurvey(random, { panelCount: 3, points: 4 });
    return instance(
      longTable(survey, {
        header: ['panel', 'point', 'reading'],
        row: ({ panel, point, value }, show, i) => [
          panel,
          point,
          i === 7
            ? show(value)
            : i % 2 === 0
              ? `${show(value)} µm`
              : `${(value / 25.4).toFixed(2)} mil`,
        ],
      }),
      survey,
      { refusedAt: 9 },
    );
  }),
  ...(['.', ','] as const).map((mark) =>
    cells(`three thousand whole readings, then decimals with "${mark}"`, 'read', (random) => {
      const survey = inventSurvey(random, {
        panels: ['bonnet', 'roof', 'boot'],
        points: Array.from({ length: 1100 }, (_, i) => `p${i}`),
      });
      const shots = survey.shots.map((shot, i) =>
        i < 3000 ? { ...shot, value: Math.round(shot.value) } : shot,
      );
      const row: LongStyle['row'] = ({ panel, point, value }, _, i) => [
        panel,
        point,
        shown(value, { digits: i < 3000 ? 0 : 1, decimal: mark }),
      ];
      return instance(longTable({ ...survey, shots }, { row, delimiter: ';' }), {
        ...survey,
        shots,
      });
    }),
  ),
  cells('three thousand decimal points, then one comma', 'read', (random) => {
    const survey = inventSurvey(random, {
      panels: ['bonnet', 'roof', 'boot'],
      points: Array.from({ length: 1100 }, (_, i) => `p${i}`),
    });
    const row: LongStyle['row'] = ({ panel, point, value }, show, i) => [
      panel,
      point,
      i === 3200 ? shown(value, { decimal: ',' }) : show(value),
    ];
    return instance(longTable(survey, { row, delimiter: ';' }), survey, { refusedAt: 3202 });
  }),
];

const neighbours: readonly Kind[] = [
  ...[
    'Limit (µm)',
    'Target (µm)',
    'Nominal (µm)',
    'Spec µm',
    'Tolerance (µm)',
    'Calibration (µm)',
    'Offset (µm)',
    'Resolution (µm)',
    'Profile (µm)',
    'Ra (µm)',
    'Uncertainty (µm)',
  ].flatMap((name) => [neighbour(name, 'before'), neighbour(name, 'after')]),
  ...[
    'Reading no.',
    'Reading #',
    'Measurement',
    'Messung Nr.',
    'Seq',
    'Index',
    'ID',
    'Gloss (GU)',
    'Haze',
    'Speed',
    'Height',
    'Angle',
    'x',
    'y',
    'Position (mm)',
    'Hardness',
  ].map((name) => neighbour(name, 'before')),
  layout('film before and after polishing side by side', either, (random) => {
    const survey = inventSurvey(random);
    const text = longTable(survey, {
      header: ['panel', 'point', 'Before (µm)', 'After (µm)'],
      row: ({ panel, point, value }, show) => [panel, point, show(value + 3), show(value)],
    });
    return instance(text, survey, { says: /before|after/i });
  }),
  layout('clear, base, primer and total side by side', either, (random) => {
    const survey = inventSurvey(random);
    const parts = (um: number) =>
      [um * 0.4, um * 0.15, um * 0.45, um].map((part) => Number(part.toFixed(1)));
    const text = longTable(survey, {
      header: ['panel', 'point', 'clear_um', 'base_um', 'primer_um', 'total_um'],
      row: ({ panel, point, value }, show) => [panel, point, ...parts(value).map(show)],
    });
    const all = readingsOf(survey).flatMap((one) => parts(one.um).map((um) => ({ ...one, um })));
    return instance(text, survey, { others: [{ readings: all, says: /layer|clear/i }] });
  }),
  layout('only means, minima and maxima of panels', either, (random) => {
    const survey = inventSurvey(random, { points: 1, panelCount: 5 });
    const text = longTable(survey, {
      header: ['panel', 'mean_um', 'min_um', 'max_um', 'count'],
      row: ({ panel, value }, show) => [panel, show(value), show(value - 6), show(value + 6), '5'],
    });
    return instance(text, survey, { points: 'open', says: /mean/i });
  }),
  layout('steel and aluminium columns of one reading', either, (random) => {
    const survey = inventSurvey(random);
    const text = longTable(survey, {
      header: ['panel', 'point', 'Fe (µm)', 'NFe (µm)'],
      row: ({ panel, point, value }, show, i) => [
        panel,
        point,
        ...(i % 2 === 0 ? [show(value), ''] : ['', show(value)]),
      ],
    });
    return instance(text, survey);
  }),
  layout('a column of limits among one column per panel', either, (random) => {
    const survey = inventSurvey(random, { ...same });
    const rows = ['1', '2', '3'].map((point) => [
      point,
      ...same.panels.map((panel) =>
        shown(survey.shots.find((s) => s.panel === panel && s.point === point)?.value ?? 0),
      ),
      '180',
    ]);
    return instance(
      csv([['point', ...same.panels.map((panel) => `${panel} (µm)`), 'limit (µm)'], ...rows]),
      survey,
      { points: 'open' },
    );
  }),
];

const cars: readonly Kind[] = [
  layout('two reports in one file, a vehicle in each preamble', either, (random) => {
    const [a, b] = [inventSurvey(random, same), inventSurvey(random, same)];
    return instance(`${report('Vehicle: VX01ABC', a)}\n${report('Vehicle: VX02DEF', b)}`, [
      ...ofVehicle(a, 'VX01ABC'),
      ...ofVehicle(b, 'VX02DEF'),
    ]);
  }),
  layout('two reports in one file, a registration in each preamble', either, (random) => {
    const [a, b] = [inventSurvey(random, same), inventSurvey(random, same)];
    return instance(
      `${report('Registration: VX01ABC\nOperator: Kim', a)}\n${report('Registration: VX02DEF\nOperator: Kim', b)}`,
      [...ofVehicle(a, 'VX01ABC'), ...ofVehicle(b, 'VX02DEF')],
    );
  }),
  layout('two reports in one file in two units', either, (random) => {
    const a = inventSurvey(random, { panels: ['bonnet', 'roof'] });
    const b = inventSurvey(random, { panels: ['boot', 'tailgate'], unit: 'mil' });
    const header = ['panel', 'point', 'reading'];
    return instance(`${report('Unit: µm', a, header)}\n${report('Unit: mil', b, header)}`, [
      ...readingsOf(a),
      ...readingsOf(b),
    ]);
  }),
  layout('two reports in one file in two dialects', either, (random) => {
    const a = inventSurvey(random, { panels: ['bonnet', 'roof'] });
    const b = inventSurvey(random, { panels: ['boot', 'tailgate'] });
    return instance(`${longTable(a)}\n${longTable(b, { delimiter: ';', decimal: ',' })}`, [
      ...readingsOf(a),
      ...readingsOf(b),
    ]);
  }),
  layout('a vehicle named on the first of its rows only', either, (random) => {
    const survey = inventSurvey(random, { ...same, vehicles: ['VX01ABC', 'VX02DEF'] });
    const row: LongStyle['row'] = ({ vehicle, panel, point, value }, show, i) => [
      survey.shots[i - 1]?.vehicle === vehicle ? '' : (vehicle ?? ''),
      panel,
      point,
      show(value),
    ];
    return instance(
      longTable(survey, { header: ['vehicle', 'panel', 'point', 'reading_um'], row }),
      survey,
    );
  }),
  layout('a survey before and a survey after, told apart by a caption', either, (random) => {
    const [a, b] = [inventSurvey(random, same), inventSurvey(random, same)];
    return instance(
      `Before polishing\n${longTable(a)}\nAfter polishing\n${longTable(b)}`,
      readingsOf(b),
      { says: /polishing/i },
    );
  }),
];

export const trapKinds: readonly Kind[] = [...numbers, ...neighbours, ...lineBetween, ...cars];
