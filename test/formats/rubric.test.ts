import { describe, expect, test } from 'vitest';
import { readRubric } from '../../src/formats/rubric.ts';
import { told } from './told.ts';

const file = (rest: string): string => `{ "schema": "leastcut/rubric/1",\n${rest} }`;
const weights = '"weights": { "accuracy": 3, "coverage": 1 }';

test('weights become shares that sum to one; what is left out has none', () => {
  const { value, diagnostics } = readRubric(
    'rubric.json',
    file(`"name": "Term 1", "pass_mark_pct": 70, ${weights}, "sigma_pt_um": 3`),
  );
  expect(diagnostics).toEqual([]);
  expect(value?.value).toStrictEqual({
    name: 'Term 1',
    passMark: 0.7,
    weights: { accuracy: 0.75, coverage: 0.25, lowPoints: 0, repairs: 0, repeatability: 0 },
    sigmaPt: 3,
  });
});

test('only the ratios of the weights count', () => {
  const marks = (typed: string) =>
    readRubric('f', file(`"pass_mark_pct": 70, "weights": ${typed}`)).value?.value.weights;
  expect(marks('{ "low_points": 2, "repairs": 1, "repeatability": 1 }')).toEqual(
    marks('{ "low_points": 50, "repairs": 25, "repeatability": 25 }'),
  );
});

test('the deviation may be left to the class', () => {
  const { value } = readRubric(
    'f',
    file(`"pass_mark_pct": 70, ${weights}, "sigma_pt_um": "class"`),
  );
  expect(value?.value.sigmaPt).toBe('class');
});

describe('what people get wrong in a rubric', () => {
  test.each<[string, string, readonly string[]]>([
    [
      'weights of nothing',
      '"pass_mark_pct": 70, "weights": { "accuracy": 0 }',
      [
        '2:33 "weights" gives weight to nothing | at least one weight is above 0, such as "accuracy": 1',
      ],
    ],
    [
      'a misspelt weight',
      '"pass_mark_pct": 70, "weights": { "acuracy": 3 }',
      ['2:35 the key "acuracy" means nothing here | did you mean "accuracy"?'],
    ],
    [
      'a negative weight',
      '"pass_mark_pct": 70, "weights": { "accuracy": 3, "coverage": -1 }',
      ['2:62 "weights.coverage" is -1; it takes a number from 0 to 1000'],
    ],
    [
      'a pass mark with its sign',
      `"pass_mark_pct": "70 %", ${weights}`,
      [
        '2:18 "pass_mark_pct" is "70 %"; it takes a number from 0 to 100 | write the number of per cent alone, such as 70',
      ],
    ],
    [
      'no unit in the key',
      `"pass_mark": 70, ${weights}`,
      ['2:1 the key "pass_mark" means nothing here | write pass_mark_pct'],
    ],
    [
      'a weight outside its place',
      `"pass_mark_pct": 70, ${weights}, "repairs": 1`,
      ['2:67 the key "repairs" means nothing here | "repairs" stands inside "weights"'],
    ],
    [
      'the deviation in mil',
      `"pass_mark_pct": 70, ${weights}, "sigma_pt_mil": 0.1`,
      ['2:67 the key "sigma_pt_mil" means nothing here | write sigma_pt_um: 2.54'],
    ],
  ])('%s', (_, text, sentences) => {
    expect(told(readRubric, file(text))).toEqual(sentences);
  });
});
