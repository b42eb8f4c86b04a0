import { describe, expect, test } from 'vitest';
import { readGauge } from '../../src/formats/gauge.ts';
import { told } from './told.ts';

const stated = '"permitted_error": { "fixed_um": 1, "proportional_pct": 2 }';
const file = (rest: string): string => `{ "schema": "leastcut/gauge/1",\n${rest} }`;

test('a gauge that nobody checked is its permitted error alone', () => {
  const { value, diagnostics } = readGauge('gauge.json', file(stated));
  expect(diagnostics).toEqual([]);
  expect(value?.value).toStrictEqual({
    permitted: { fixed: 1, proportional: 0.02 },
    verdict: null,
    checks: [],
    drift: [],
    adjustment: null,
  });
});

test('a checked gauge is read key by key', () => {
  const { value } = readGauge(
    'gauge.json',
    file(`"$schema": "./gauge.schema.json", "instrument": "Invented G2", "serial": "0042",
      "date": "2026-03-31", ${stated}, "resolution_um": 0.1, "repeatability_um": 0.8,
      "repeatability_dof": 12,
      "verdict": "undecided",
      "checks": [{ "check": "after", "shim_um": 100, "shim_uncertainty_um": 0.5, "mean_um": 101.2, "n": 5,
        "error_um": 1.2, "expanded_um": 0.9, "verdict": "pass" }],
      "drift": [{ "shim_um": 100, "change_um": 0.6, "expanded_um": 0.4, "proved": true }],
      "adjustment": { "offset_um": -0.4, "slope": 0.99 }, "note": ["first", "second"]`),
  );
  expect(value?.value).toStrictEqual({
    instrument: 'Invented G2',
    serial: '0042',
    date: '2026-03-31',
    permitted: { fixed: 1, proportional: 0.02 },
    resolution: 0.1,
    repeatability: { sd: 0.8, dof: 12 },
    verdict: 'undecided',
    checks: [
      {
        check: 'after',
        shim: 100,
        shimUncertainty: 0.5,
        mean: 101.2,
        n: 5,
        error: 1.2,
        expanded: 0.9,
        verdict: 'pass',
      },
    ],
    drift: [{ shim: 100, change: 0.6, expanded: 0.4, proved: true }],
    adjustment: { offset: -0.4, slope: 0.99 },
  });
  expect(value?.placeOf(['verdict'])).toMatchObject({ line: 5, lineText: expect.any(String) });
});

test('a verdict and an adjustment may be null: not checked, not asked for', () => {
  const { value } = readGauge('f', file(`${stated}, "verdict": null, "adjustment": null`));
  expect(value?.value).toMatchObject({ verdict: null, adjustment: null });
});

describe('what people get wrong in a gauge file', () => {
  test.each<[string, string, readonly string[]]>([
    [
      'another unit in a key',
      '"permitted_error": { "fixed_mil": 0.04, "proportional_pct": 2 }',
      ['2:22 the key "fixed_mil" means nothing here | write fixed_um: 1.016'],
    ],
    [
      'a slip of the pen',
      `${stated}, "instument": "G2"`,
      ['2:62 the key "instument" means nothing here | did you mean "instrument"?'],
    ],
    [
      'one key twice',
      `${stated},\n"serial": "1", "serial": "2"`,
      ['3:16 the key "serial" is written twice; first on line 3 | keep one of the two'],
    ],
    [
      'a comment',
      `${stated} // from the data sheet\n`,
      ['2:61 this is a comment | JSON has no comments: remove it'],
    ],
    [
      'a number as text',
      '"permitted_error": { "fixed_um": "1", "proportional_pct": 2 }',
      [
        '2:34 "permitted_error.fixed_um" is "1"; it takes a number from 0 to 50 | write it without quotes: 1',
      ],
    ],
    [
      'a number with its unit',
      '"permitted_error": { "fixed_um": "0.1 mil", "proportional_pct": 2 }',
      [
        '2:34 "permitted_error.fixed_um" is "0.1 mil"; it takes a number from 0 to 50 | write it in µm: 2.5',
      ],
    ],
    [
      'a negative number',
      '"permitted_error": { "fixed_um": -1, "proportional_pct": 2 }',
      ['2:34 "permitted_error.fixed_um" is -1; it takes a number from 0 to 50'],
    ],
    [
      'a serial number that is no text',
      `${stated}, "serial": 42`,
      ['2:72 "serial" is 42; it takes text that is not blank'],
    ],
    [
      'a day written the way of many countries',
      `${stated}, "date": "1.4.2026"`,
      ['2:70 "date" is "1.4.2026"; it takes a date like "2026-03-31" | write "2026-04-01"'],
    ],
    [
      'a day that is another one elsewhere',
      `${stated}, "date": "01/04/2026"`,
      [
        '2:70 "date" is "01/04/2026"; it takes a date like "2026-03-31" | write the year first, then month and day in two digits each',
      ],
    ],
    [
      'another word for the verdict',
      `${stated}, "verdict": "passed"`,
      [
        '2:73 "verdict" is "passed"; it takes "pass", "fail", "undecided" or null | did you mean "pass"?',
      ],
    ],
    [
      'no permitted error',
      '"serial": "1"',
      ['1:1 "permitted_error" is missing; it takes an object: { … }'],
    ],
  ])('%s', (_, text, sentences) => {
    expect(told(readGauge, file(text))).toEqual(sentences);
  });

  test('a byte order mark is no mistake', () => {
    expect(told(readGauge, `\uFEFF${file(stated)}`)).toEqual([]);
  });
});
