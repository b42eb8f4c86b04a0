import { describe, expect, test } from 'vitest';
import { readRates } from '../../src/formats/rates.ts';
import { told } from './told.ts';

const worked = '"date": "2026-03-31", "combination": "da/foam-medium/medium", "sets": 2';
const file = (...observations: readonly string[]): string =>
  `{ "schema": "leastcut/rates/1", "observations": [\n${observations.map((one) => `{ ${one} }`).join(',\n')}\n] }`;

test('observations are read in the order of the file, by gauge, by eye, or both', () => {
  const { value, diagnostics } = readRates(
    'rates.json',
    file(
      `${worked}, "vehicle": "FH-1", "panel": "bonnet", "removed_um": -0.2, "standard_error_um": 0.6, "cleared_pct": 70, "haze_grade": 1, "note": "dry"`,
      `${worked}, "cleared_pct": 0`,
    ),
  );
  expect(diagnostics).toEqual([]);
  const steps = [{ combination: 'da/foam-medium/medium', sets: 2 }];
  expect(value?.value).toStrictEqual({
    observations: [
      {
        date: '2026-03-31',
        steps,
        vehicle: 'FH-1',
        panel: 'bonnet',
        removed: { mean: -0.2, standardError: 0.6 },
        cleared: 0.7,
        hazeGrade: 1,
        note: 'dry',
      },
      { date: '2026-03-31', steps, cleared: 0 },
    ],
  });
});

test('several steps stand in a list, and what they took is of all of them', () => {
  const { value } = readRates(
    'rates.json',
    file(
      '"date": "2026-03-31", "steps": [{ "combination": "da/a/b", "sets": 3 }, { "combination": "da/c/d", "sets": 1 }], "removed_um": 3.1, "standard_error_um": 0.6',
    ),
  );
  expect(value?.value.observations[0]).toMatchObject({
    steps: [
      { combination: 'da/a/b', sets: 3 },
      { combination: 'da/c/d', sets: 1 },
    ],
    removed: { mean: 3.1 },
  });
});

test('a file without an observation yet is one', () => {
  expect(readRates('f', file()).value?.value).toEqual({ observations: [] });
});

describe('what people get wrong in a rates file', () => {
  test.each<[string, string, readonly string[]]>([
    [
      'film in mil',
      `${worked}, "removed_mil": 0.07, "standard_error_um": 0.6`,
      ['2:76 the key "removed_mil" means nothing here | write removed_um: 1.778'],
    ],
    [
      'film without what it may be off by',
      `${worked}, "removed_um": 1.8`,
      [
        '2:1 "observations[0]" lacks standard_error_um | say what "removed_um" may be off by, or leave both out',
      ],
    ],
    [
      'an error of nothing',
      `${worked}, "standard_error_um": 0.6, "cleared_pct": 70`,
      [
        '2:1 "observations[0]" lacks removed_um | "standard_error_um" is that of "removed_um": say both, or leave both out',
      ],
    ],
    [
      'nothing that was seen',
      worked,
      [
        '2:1 "observations[0]" shows nothing | say "removed_um" with "standard_error_um", or "cleared_pct", or all three',
      ],
    ],
    [
      'a combination with blanks',
      '"date": "2026-03-31", "combination": "da medium", "sets": 2, "cleared_pct": 70',
      [
        '2:40 "observations[0].combination" is "da medium"; it takes a combination: machine/pad/product',
      ],
    ],
    [
      'per cent with its sign',
      `${worked}, "cleared_pct": "70 %"`,
      [
        '2:91 "observations[0].cleared_pct" is "70 %"; it takes a number from 0 to 100 | write the number alone: 70',
      ],
    ],
    [
      'no word of what was worked',
      '"date": "2026-03-31", "cleared_pct": 70',
      [
        '2:1 "observations[0]" lacks combination and sets | say what was worked: "combination" and "sets", or "steps" where it was more than one',
      ],
    ],
    [
      'one step and several',
      `${worked}, "steps": [{ "combination": "da/a/b", "sets": 1 }], "cleared_pct": 70`,
      [
        '2:1 "observations[0]" has "steps" and what they replace | several steps stand in "steps" alone, each with its own sets',
      ],
    ],
    [
      'half a set',
      `"date": "2026-03-31", "combination": "da/a/b", "sets": 1.5, "cleared_pct": 70`,
      ['2:58 "observations[0].sets" is 1.5; it takes a whole number from 1 to 50'],
    ],
    [
      'null where nothing is known',
      `${worked}, "cleared_pct": 70, "panel": null`,
      [
        '2:104 "observations[0].panel" is null; it takes text that is not blank | leave the key out when nothing is known',
      ],
    ],
  ])('%s', (_, observation, sentences) => {
    expect(told(readRates, file(observation))).toEqual(sentences);
  });

  test('an object in place of the list', () => {
    expect(told(readRates, '{ "schema": "leastcut/rates/1", "observations": {} }')).toEqual([
      '1:49 "observations" is an object; it takes a list, each entry an object: { … }',
    ]);
  });
});
