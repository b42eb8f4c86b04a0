/** Numbers with something around them: a formula's sign, a mark without decimals, a stated ±. */
import { inventSurvey } from './invented-survey.ts';
import { instance, type Kind, kindsOf, readingsOf } from './kind.ts';
import { longTable } from './write-table.ts';

const kind = kindsOf('dressed numbers', 'cells');

type Dress = (shown: string, index: number) => string;

const dressed = (
  title: string,
  expected: Kind['expected'],
  dress: Dress,
  rest: { readonly says?: RegExp; readonly refusedAt?: number; readonly decimals?: number } = {},
): Kind =>
  kind(title, expected, (random) => {
    const { decimals = 1, ...told } = rest;
    const survey = inventSurvey(random, { points: 4, decimals });
    const text = longTable(survey, {
      delimiter: ';',
      digits: decimals,
      row: ({ panel, point, value }, show, i) => [panel, point, dress(show(value), i)],
    });
    return instance(text, survey, told);
  });

export const dressedKinds: readonly Kind[] = [
  dressed('every number as a formula =101.5', 'read', (text) => `=${text}`),
  dressed('one number as a sum =101.5+2', 'refused', (text, i) => (i === 4 ? `=${text}+2` : text), {
    refusedAt: 6,
  }),
  ...(['.', ','] as const).flatMap((mark) => [
    dressed(`a "${mark}" without decimals behind every number`, 'read', (text) => text + mark, {
      decimals: 0,
      says: /all are whole numbers/,
    }),
    dressed(
      `a "${mark}" without decimals behind some numbers`,
      'refused',
      (text, i) => (i % 3 === 1 ? `${text.split('.')[0] ?? ''}${mark}` : text),
      { refusedAt: 3 },
    ),
  ]),
  ...['±2', ' ± 2.5', ' +/- 3'].map((spread) =>
    dressed(`every number with "${spread}"`, 'read', (text) => text + spread, {
      says: /its ± is not/,
    }),
  ),
  dressed('a ± larger than its number', 'refused', (text, i) => (i === 4 ? '2±101' : text), {
    refusedAt: 6,
  }),
  ...['1.#INF', '1.#QNAN', '-1.#IND00', '#DIV/0!', '#N/A'].map((word) =>
    kind(`a "${word}" where a program could not compute`, 'read', (random) => {
      const survey = inventSurvey(random, { points: 4 });
      const kept = survey.shots.filter((_, i) => i !== 5);
      const text = longTable(survey, {
        row: ({ panel, point, value }, show, i) => [panel, point, i === 5 ? word : show(value)],
      });
      return instance(text, readingsOf({ ...survey, shots: kept }), { excluded: [['error']] });
    }),
  ),
  kind('a number below one µm among paint', 'read', (random) => {
    const survey = inventSurvey(random, { points: 4 });
    const shots = survey.shots.map((shot, i) => (i === 5 ? { ...shot, value: 0.101 } : shot));
    const text = longTable(survey, {
      row: ({ panel, point, value }, show, i) => [panel, point, i === 5 ? '.101' : show(value)],
    });
    return instance(text, { ...survey, shots }, { says: /thinner than any film/ });
  }),
];
