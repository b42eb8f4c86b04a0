/** Units that no gauge for paint shows first, and readings that stand there in two units. */
import { inventSurvey } from './invented-survey.ts';
import { instance, type Kind, kindsOf, readingsOf } from './kind.ts';
import type { Random } from './random.ts';
import { longTable } from './write-table.ts';

const kind = kindsOf('units', 'layout');

const coarse = { mm: 1000, inch: 25400 } as const;
const digits = { mm: 4, inch: 6 } as const;

/** Values that survive the way through the other unit. */
const written = (um: number, unit: keyof typeof coarse, decimals: number = digits[unit]): string =>
  (um / coarse[unit]).toFixed(decimals);

function inUnit(random: Random, unit: keyof typeof coarse, header: string, decimal = '.') {
  const survey = inventSurvey(random);
  const show = (um: number): string => written(um, unit).replace('.', decimal);
  const shots = survey.shots.map((shot) => ({
    ...shot,
    value: Number((Number(written(shot.value, unit)) * coarse[unit]).toPrecision(12)),
  }));
  const text = longTable(survey, {
    delimiter: ';',
    header: ['panel', 'point', header],
    row: ({ panel, point, value }) => [panel, point, show(value)],
  });
  return instance(text, { ...survey, shots }, { says: /taken times/ });
}

const beside = (value: number): string => (value / 25.4).toFixed(2);

export const unitKinds: readonly Kind[] = [
  kind('millimetres in the header', 'read', (random) => inUnit(random, 'mm', 'reading (mm)')),
  kind('millimetres in the header, decimal commas', 'read', (random) =>
    inUnit(random, 'mm', 'Schichtdicke [mm]', ','),
  ),
  kind('inches in the header', 'read', (random) => inUnit(random, 'inch', 'reading (inch)')),
  kind('inches in the header, as "in"', 'read', (random) => inUnit(random, 'inch', 'reading (in)')),
  kind('millimetres behind every number', 'read', (random) => {
    const survey = inventSurvey(random);
    const text = longTable(survey, {
      header: ['panel', 'point', 'reading'],
      row: ({ panel, point, value }) => [panel, point, `${written(value, 'mm')} mm`],
    });
    return instance(text, survey, { says: /taken times 1000/ });
  }),
  kind('millimetres rounded to a hundredth', 'refused', (random) => {
    const survey = inventSurvey(random);
    const text = longTable(survey, {
      header: ['panel', 'point', 'reading (mm)'],
      row: ({ panel, point, value }) => [panel, point, written(value, 'mm', 2)],
    });
    return instance(text, survey, { refusedAt: 1, hint: /µm/ });
  }),
  kind('values of µm under a header of mm', 'refused', (random) => {
    const survey = inventSurvey(random);
    return instance(longTable(survey, { header: ['panel', 'point', 'reading (mm)'] }), survey, {
      refusedAt: 1,
      hint: /µm/,
    });
  }),
  kind('values of inches under a header of mm', 'refused', (random) => {
    const survey = inventSurvey(random);
    const text = longTable(survey, {
      header: ['panel', 'point', 'reading (mm)'],
      row: ({ panel, point, value }) => [panel, point, written(value, 'inch')],
    });
    return instance(text, survey, { refusedAt: 1, hint: /µm/ });
  }),
  kind('one value of µm among millimetres', 'refused', (random) => {
    const survey = inventSurvey(random, { points: 4 });
    const text = longTable(survey, {
      header: ['panel', 'point', 'reading (mm)'],
      row: ({ panel, point, value }, _, i) => [
        panel,
        point,
        i === 5 ? String(value) : written(value, 'mm'),
      ],
    });
    return instance(text, survey, { refusedAt: 7 });
  }),
  kind('nanometres in the header', 'read', (random) => {
    const survey = inventSurvey(random);
    const text = longTable(survey, {
      header: ['panel', 'point', 'reading (nm)'],
      row: ({ panel, point, value }) => [panel, point, String(Math.round(value * 1000))],
    });
    return instance(text, survey, { says: /times 0\.001 as µm/ });
  }),
  kind('nanometres in the header over numbers of µm', 'refused', (random) => {
    const survey = inventSurvey(random);
    const text = longTable(survey, { header: ['panel', 'point', 'reading (nm)'] });
    return instance(text, survey, { refusedAt: 1, hint: /divide the readings by 1000/ });
  }),
  kind('every reading in µm and again in mil', 'read', (random) => {
    const survey = inventSurvey(random);
    const text = longTable(survey, {
      header: ['panel', 'point', 'reading (µm)', 'reading (mil)'],
      row: ({ panel, point, value }, show) => [panel, point, show(value), beside(value)],
    });
    return instance(text, survey, { says: /agrees in every row/ });
  }),
  kind('every reading in mil and then in µm', 'read', (random) => {
    const survey = inventSurvey(random);
    const text = longTable(survey, {
      header: ['panel', 'point', 'mil', 'µm'],
      row: ({ panel, point, value }, show) => [panel, point, beside(value), show(value)],
    });
    return instance(text, survey, { says: /agrees in every row/ });
  }),
  kind('readings in µm and in mil that are not the same in one row', 'refused', (random) => {
    const survey = inventSurvey(random, { points: 4 });
    const text = longTable(survey, {
      header: ['panel', 'point', 'reading (µm)', 'reading (mil)'],
      row: ({ panel, point, value }, show, i) => [
        panel,
        point,
        show(value),
        beside(i === 5 ? value + 2 : value),
      ],
    });
    return instance(text, survey, { refusedAt: 7 });
  }),
  kind('a reading in mil only where others stand in both', 'refused', (random) => {
    const survey = inventSurvey(random, { points: 4 });
    const text = longTable(survey, {
      header: ['panel', 'point', 'reading (µm)', 'reading (mil)'],
      row: ({ panel, point, value }, show, i) => [
        panel,
        point,
        i === 5 ? '' : show(value),
        beside(value),
      ],
    });
    return instance(text, readingsOf(survey), { refusedAt: 7 });
  }),
];
