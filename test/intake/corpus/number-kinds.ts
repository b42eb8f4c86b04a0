/** How numbers are written, and how their unit is said. */
import { inventSurvey, type Survey } from './invented-survey.ts';
import { type Instance, instance, type Kind, kindsOf, type Rest, readingsOf } from './kind.ts';
import type { Random } from './random.ts';
import { type LongStyle, longTable, shown } from './write-table.ts';

const kind = kindsOf('numbers', 'cells');

const filled = (random: Random, decimals = 1): Survey =>
  inventSurvey(random, { filler: true, panelCount: 4, points: 4, decimals });

/** A column with thousands in it, written in one style. */
const thousands = (title: string, mark: string, decimal: string, delimiter = ';'): Kind =>
  kind(title, 'read', (random) => {
    const survey = filled(random);
    return instance(longTable(survey, { thousands: mark, decimal, delimiter }), survey);
  });

/** A long table of which each value is written by a function of its own. */
const valued = (
  title: string,
  expected: Kind['expected'],
  write: (value: number, index: number, random: Random) => string,
  style: LongStyle = {},
  rest: Rest = {},
  wish: { unit?: 'um' | 'mil'; decimals?: number } = {},
): Kind =>
  kind(title, expected, (random) => {
    const survey = inventSurvey(random, { panelCount: 4, points: 4, ...wish });
    const row: LongStyle['row'] = ({ panel, point, value }, _, i) => [
      panel,
      point,
      write(value, i, random),
    ];
    return instance(longTable(survey, { row, ...style }), survey, rest);
  });

const comma = { decimal: ',' } as const;
const bare: LongStyle = { header: ['panel', 'point', 'reading'], delimiter: ';' };
const scientific = (value: number): string =>
  value
    .toExponential(4)
    .toUpperCase()
    .replace(/E([+-])(\d)$/, 'E$10$2');
const inDigits =
  (zero: number, decimal: string) =>
  (value: number): string =>
    shown(value)
      .replace(/\d/g, (d) => String.fromCodePoint(zero + Number(d)))
      .replace('.', decimal);

/** Values just over 1 in steps of a thousandth: 1.234 micrometres, or 1234 of them. */
const undecidable = (random: Random, unit: 'um' | 'mil', decimal: string): Instance => {
  const survey = inventSurvey(random, { panelCount: 3, points: 3 });
  const shots = survey.shots.map((shot) => ({ ...shot, value: random.int(1011, 1989) / 1000 }));
  const text = longTable({ unit, shots }, { digits: 3, decimal, delimiter: ';' });
  const whole = readingsOf({
    unit,
    shots: shots.map((shot) => ({ ...shot, value: Math.round(shot.value * 1000) })),
  });
  return instance(text, whole, { says: /thousand|plausib|range|film|paint/i });
};

const marks: readonly Kind[] = [
  thousands('thousands by point, decimal comma', '.', ','),
  thousands('thousands by comma, decimal point, quoted', ',', '.', ','),
  thousands('thousands by comma, decimal point, semicolons', ',', '.'),
  thousands('thousands by a blank, decimal comma', ' ', ','),
  thousands('thousands by a hard space, decimal comma', '\u00a0', ','),
  thousands('thousands by a narrow hard space, decimal comma', '\u202f', ','),
  thousands('thousands by a thin space, decimal point', '\u2009', '.'),
  thousands('thousands by an apostrophe, decimal point', "'", '.'),
  thousands('thousands by a curly apostrophe, decimal point', '’', '.'),
  thousands('thousands by a curly apostrophe, decimal comma', '’', ','),
  kind('whole thousands by point among decimal commas', 'read', (random) => {
    const survey = filled(random);
    const shots = survey.shots.map((shot) =>
      shot.value > 1000 ? { ...shot, value: Math.round(shot.value) } : shot,
    );
    const row: LongStyle['row'] = ({ panel, point, value }) => [
      panel,
      point,
      shown(value, { decimal: ',', thousands: '.', digits: Number.isInteger(value) ? 0 : 1 }),
    ];
    return instance(longTable({ ...survey, shots }, { row, delimiter: ';' }), { ...survey, shots });
  }),
  kind('whole thousands by comma among decimal points', 'read', (random) => {
    const survey = filled(random);
    const shots = survey.shots.map((shot) =>
      shot.value > 1000 ? { ...shot, value: Math.round(shot.value) } : shot,
    );
    const row: LongStyle['row'] = ({ panel, point, value }) => [
      panel,
      point,
      shown(value, { thousands: ',', digits: Number.isInteger(value) ? 0 : 1 }),
    ];
    return instance(longTable({ ...survey, shots }, { row, delimiter: ';' }), { ...survey, shots });
  }),
  kind('one 1.234 among decimal points of one digit', 'refused', (random) => {
    const survey = inventSurvey(random, { panelCount: 3, points: 3 });
    const text = longTable(survey, {
      row: ({ panel, point, value }, show, i) => [panel, point, i === 4 ? '1.234' : show(value)],
    });
    return instance(text, survey, { refusedAt: 6 });
  }),
  ...(['.', ','] as const).map((mark) =>
    kind(`nothing but 1${mark}234 in micrometres`, 'either-but-never-wrong', (random) =>
      undecidable(random, 'um', mark),
    ),
  ),
  kind('one 2.345 among whole numbers', 'either-but-never-wrong', (random) => {
    const survey = inventSurvey(random, { panelCount: 2, points: 2, decimals: 0 });
    const shots = survey.shots.map((shot, i) => (i === 1 ? { ...shot, value: 2345 } : shot));
    const text = longTable(survey, {
      row: ({ panel, point, value }, _, i) => [
        panel,
        point,
        i === 1 ? '2.345' : shown(value, { digits: 0 }),
      ],
    });
    return instance(
      text,
      { ...survey, shots },
      { refusedAt: 3, says: /thousand|plausib|range|film|paint/i },
    );
  }),
  valued(
    'three decimals that cannot be thousands',
    'read',
    (value) => shown(value, { digits: 3 }),
    {},
    {},
    { decimals: 3 },
  ),
  valued(
    'three decimals after a comma that cannot be thousands',
    'read',
    (value) => shown(value, { digits: 3, ...comma }),
    { delimiter: ';' },
    {},
    { decimals: 3 },
  ),
  valued(
    'mil in three decimals',
    'read',
    (value) => shown(value, { digits: 3 }),
    { header: ['panel', 'point', 'reading_mil'] },
    {},
    { unit: 'mil', decimals: 3 },
  ),
  valued(
    'mil in three decimals after a comma',
    'read',
    (value) => shown(value, { digits: 3, ...comma }),
    { header: ['panel', 'point', 'reading_mil'], delimiter: ';' },
    {},
    { unit: 'mil', decimals: 3 },
  ),
  valued(
    'mil with decimal commas',
    'read',
    (value) => shown(value, { digits: 2, ...comma }),
    { header: ['panel', 'point', 'Thickness (mil)'], delimiter: ';' },
    {},
    { unit: 'mil' },
  ),
  valued(
    'decimal points and commas in turn',
    'read',
    (value, i) => shown(value, { decimal: i % 2 === 0 ? '.' : ',' }),
    { delimiter: ';' },
  ),
  valued(
    'one decimal point among commas',
    'read',
    (value, i) => shown(value, { decimal: i === 7 ? '.' : ',' }),
    { delimiter: ';' },
    { says: /1 with a decimal point/ },
  ),
  valued(
    'one decimal comma among points',
    'read',
    (value, i) => shown(value, { decimal: i === 7 ? ',' : '.' }),
    {},
    { says: /1 with a decimal comma/ },
  ),
  valued(
    'one decimal comma and two digits among points and one',
    'refused',
    (value, i) => (i === 7 ? shown(value, { decimal: ',', digits: 2 }) : shown(value)),
    {},
    { refusedAt: 9 },
  ),
  valued(
    'whole numbers only',
    'read',
    (value) => shown(value, { digits: 0 }),
    {},
    {},
    { decimals: 0 },
  ),
  valued('many decimals', 'read', (value) => shown(value, { digits: 8 }), {}, {}, { decimals: 8 }),
  valued(
    'many decimals after commas',
    'read',
    (value) => shown(value, { digits: 8, ...comma }),
    { delimiter: ';' },
    {},
    { decimals: 8 },
  ),
  valued(
    'a decimal mark set by a flag against nothing',
    'read',
    (value) => shown(value, { digits: 3 }),
    {},
    { options: { decimal: '.' } },
    { decimals: 3 },
  ),
  valued('leading zeros', 'read', (value) => `00${shown(value)}`),
  valued('a plus before every number', 'read', (value) => `+${shown(value)}`),
  valued(
    'a bare decimal mark behind whole numbers',
    'either-but-never-wrong',
    (value) => `${shown(value, { digits: 0 })}.`,
    {},
    {},
    { decimals: 0 },
  ),
  valued('a decimal mark in the middle of the line (·)', 'either-but-never-wrong', (value) =>
    shown(value, { decimal: '·' }),
  ),
];

const scripts: readonly Kind[] = [
  valued('scientific notation', 'read', scientific),
  valued('scientific notation in lower case, short', 'read', (value) => value.toExponential()),
  valued(
    'scientific notation with decimal commas',
    'read',
    (value) => scientific(value).replace('.', ','),
    { delimiter: ';' },
  ),
  valued('full-width digits', 'read', inDigits(0xff10, '．')),
  valued('full-width digits, ASCII mark', 'read', inDigits(0xff10, '.')),
  valued('Arabic digits with their own mark', 'read', inDigits(0x0660, '٫')),
  valued('Arabic digits with a point', 'read', inDigits(0x0660, '.')),
  valued('Persian digits', 'read', inDigits(0x06f0, '٫')),
  valued(
    'a letter O for a zero',
    'refused',
    (value, i) => (i === 3 ? '1O1.5' : shown(value)),
    {},
    { refusedAt: 5 },
  ),
  valued(
    'a letter l for a one',
    'refused',
    (value, i) => (i === 3 ? 'l21.5' : shown(value)),
    {},
    { refusedAt: 5 },
  ),
  valued(
    'a hexadecimal number',
    'refused',
    (value, i) => (i === 3 ? '0x65' : shown(value)),
    {},
    { refusedAt: 5 },
  ),
  valued(
    'two numbers in a cell',
    'refused',
    (value, i) => (i === 3 ? '101.5 102.5' : shown(value)),
    {},
    { refusedAt: 5 },
  ),
  valued(
    'two numbers with a slash in a cell',
    'refused',
    (value, i) => (i === 3 ? '101.5/102.5' : shown(value)),
    {},
    { refusedAt: 5 },
  ),
  valued(
    'a range in a cell',
    'refused',
    (value, i) => (i === 3 ? '95-105' : shown(value)),
    {},
    { refusedAt: 5 },
  ),
  valued('a value with a spread', 'either-but-never-wrong', (value, i) =>
    i === 3 ? `${shown(value)} ± 2` : shown(value),
  ),
  valued('a value with a star', 'either-but-never-wrong', (value, i) =>
    i === 3 ? `${shown(value)}*` : shown(value),
  ),
  valued('a value with a question mark', 'either-but-never-wrong', (value, i) =>
    i === 3 ? `${shown(value)}?` : shown(value),
  ),
  valued(
    'two decimal points in a number',
    'refused',
    (value, i) => (i === 3 ? '10.1.5' : shown(value)),
    {},
    { refusedAt: 5 },
  ),
  valued(
    'a number cut off with an ellipsis',
    'refused',
    (value, i) => (i === 3 ? '101…' : shown(value)),
    {},
    { refusedAt: 5 },
  ),
  valued(
    'numbers as formulas of text (="101.5")',
    'either-but-never-wrong',
    (value) => `="${shown(value)}"`,
    { quote: 'never' },
  ),
  valued(
    'numbers behind an apostrophe of a spreadsheet',
    'either-but-never-wrong',
    (value) => `'${shown(value)}`,
  ),
  ...(['-', '\u2212'] as const).flatMap((minus) =>
    (['before', 'after'] as const).map((where) =>
      kind(
        `a negative reading, ${minus === '-' ? 'hyphen' : 'U+2212'} ${where} it`,
        'read',
        (random) => {
          const survey = inventSurvey(random, { panelCount: 3, points: 4 });
          const shots = survey.shots.map((shot, i) => (i === 5 ? { ...shot, value: -2.5 } : shot));
          const signed = where === 'before' ? `${minus}2.5` : `2.5${minus}`;
          const row: LongStyle['row'] = ({ panel, point, value }, show) => [
            panel,
            point,
            value < 0 ? signed : show(value),
          ];
          const says = /negativ|below|under|less|[-−]/i;
          return instance(
            longTable({ ...survey, shots }, { row }),
            { ...survey, shots: shots.filter(({ value }) => value > 0) },
            { says, excluded: [['not-film']] },
          );
        },
      ),
    ),
  ),
];

const withUnit = (unit: string, style: LongStyle = {}): LongStyle => ({
  ...bare,
  row: ({ panel, point, value }, show) => [panel, point, `${show(value)}${unit}`],
  ...style,
});
const perRow = (column: string, unit: string): LongStyle => ({
  header: ['panel', 'point', 'reading', column],
  row: ({ panel, point, value }, show) => [panel, point, show(value), unit],
});
const mixedUnits = (random: Random) => {
  const um = inventSurvey(random, { panels: ['bonnet', 'roof'], points: 3 });
  const mil = inventSurvey(random, { panels: ['boot', 'tailgate'], points: 3, unit: 'mil' });
  return { um, mil, readings: [...readingsOf(um), ...readingsOf(mil)] };
};

const units: readonly Kind[] = [
  ...(
    [
      [' µm', 'um'],
      ['µm', 'um'],
      [' μm', 'um'],
      [' um', 'um'],
      [' microns', 'um'],
      ['\u00a0µm', 'um'],
      [' mil', 'mil'],
      ['mil', 'mil'],
      [' mils', 'mil'],
      [' MILS', 'mil'],
      [' thou', 'mil'],
    ] as const
  ).flatMap(([unit, of]) =>
    (['.', ','] as const).map((decimal) =>
      kind(`"${unit}" after every value, decimal "${decimal}"`, 'read', (random) => {
        const survey = inventSurvey(random, { unit: of });
        return instance(longTable(survey, withUnit(unit, { decimal })), survey);
      }),
    ),
  ),
  ...(
    [
      ['unit', 'µm', 'um'],
      ['Unit', 'mil', 'mil'],
      ['units', 'um', 'um'],
      ['Einheit', 'µm', 'um'],
      ['Unité', 'µm', 'um'],
    ] as const
  ).map(([column, unit, of]) =>
    kind(
      `a column "${column}" with ${unit} in every row`,
      'read',
      (random) => {
        const survey = inventSurvey(random, { unit: of });
        return instance(longTable(survey, perRow(column, unit)), survey);
      },
      'layout',
    ),
  ),
  kind(
    'a unit column that changes from row to row',
    'read',
    (random) => {
      const { um, mil, readings } = mixedUnits(random);
      const text =
        longTable(um, perRow('unit', 'µm')) +
        longTable(mil, perRow('unit', 'mil')).replace(/^.*\n/, '');
      return instance(text, readings, { says: /mil/ });
    },
    'layout',
  ),
  kind('a unit after every value that changes from row to row', 'read', (random) => {
    const { um, mil, readings } = mixedUnits(random);
    const text =
      longTable(um, withUnit(' µm')) + longTable(mil, withUnit(' mil')).replace(/^.*\n/, '');
    return instance(text, readings, { says: /mil/ });
  }),
  kind('a header of µm over one value in mil that is no film of µm', 'refused', (random) => {
    const survey = inventSurvey(random, { panelCount: 3, points: 3 });
    const text = longTable(survey, {
      header: ['panel', 'point', 'reading (µm)'],
      row: ({ panel, point, value }, show, i) => [panel, point, i === 4 ? '104 mil' : show(value)],
    });
    return instance(text, survey, { refusedAt: 6 });
  }),
  kind(
    'a header of µm over a unit column of mil',
    'refused',
    (random) => {
      const survey = inventSurvey(random, { panelCount: 3, points: 3 });
      const text = longTable(survey, {
        header: ['panel', 'point', 'reading (µm)', 'unit'],
        row: ({ panel, point, value }, show) => [panel, point, show(value), 'mil'],
      });
      return instance(text, survey);
    },
    'layout',
  ),
  ...(['µm', '(µm)', '[µm]'] as const).map((unit) =>
    kind(
      `a row of units under the header, ${unit}`,
      'read',
      (random) => {
        const survey = inventSurvey(random);
        const text = longTable(survey, { header: ['panel', 'point', 'reading'] }).replace(
          '\n',
          `\n,,${unit}\n`,
        );
        return instance(text, survey);
      },
      'layout',
    ),
  ),
  kind(
    'a row of units under the header with a unit for time',
    'read',
    (random) => {
      const survey = inventSurvey(random);
      const text = longTable(survey, {
        header: ['panel', 'point', 'time', 'reading'],
        row: ({ panel, point, value }, show, i) => [panel, point, String(i * 4), show(value)],
      }).replace('\n', '\n-,-,s,µm\n');
      return instance(text, survey);
    },
    'layout',
  ),
  kind(
    'a unit in a preamble',
    'read',
    (random) => {
      const survey = inventSurvey(random);
      return instance(
        `Unit: µm\n\n${longTable(survey, { header: ['panel', 'point', 'reading'] })}`,
        survey,
      );
    },
    'layout',
  ),
  kind(
    'a unit of mil in a preamble',
    'read',
    (random) => {
      const survey = inventSurvey(random, { unit: 'mil' });
      return instance(
        `Units;mil\n\n${longTable(survey, { header: ['panel', 'point', 'reading'], delimiter: ';' })}`,
        survey,
      );
    },
    'layout',
  ),
  kind(
    'a preamble of mil over a header of µm',
    'refused',
    (random) => {
      const survey = inventSurvey(random);
      return instance(`Unit: mil\n\n${longTable(survey)}`, survey);
    },
    'layout',
  ),
  kind(
    'no unit anywhere',
    'refused',
    (random) => {
      const survey = inventSurvey(random);
      return instance(longTable(survey, { header: ['panel', 'point', 'reading'] }), survey, {
        refusedAt: 1,
        hint: /reading-unit/,
      });
    },
    'layout',
  ),
  ...(['um', 'mil'] as const).map((unit) =>
    kind(
      `no unit, and --reading-unit ${unit}`,
      'read',
      (random) => {
        const survey = inventSurvey(random, { unit });
        return instance(longTable(survey, { header: ['panel', 'point', 'reading'] }), survey, {
          options: { unit },
        });
      },
      'layout',
    ),
  ),
  kind('values of mil under a header of µm', 'either-but-never-wrong', (random) => {
    const survey = inventSurvey(random, { unit: 'mil', panelCount: 5, points: 5 });
    const asWritten = readingsOf({ unit: 'um', shots: survey.shots });
    return instance(longTable(survey, { header: ['panel', 'point', 'reading_um'] }), asWritten, {
      says: /mil/,
    });
  }),
];

export const numberKinds: readonly Kind[] = [...marks, ...scripts, ...units];
