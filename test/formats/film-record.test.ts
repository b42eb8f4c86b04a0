import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { micrometres } from '../../src/base/units.ts';
import { readFilmRecord } from '../../src/formats/film-record.ts';
import { takenInAll } from '../../src/tasks/survey/taken-in-all.ts';

const record = `{
  "schema": "leastcut/film-record/1",
  "vehicle": "AB-12",
  "visits": [
    { "date": "2024-05-02", "panels": [
      { "panel": "hood", "taken_um": 2.1, "taken_sd_um": 0.9, "points": [{ "point": "1", "before_um": 112, "after_um": 110 }] },
      { "panel": "roof", "taken_um": -0.4, "taken_sd_um": 0.8 }
    ] },
    { "date": "2026-03-31", "panels": [{ "panel": "bonnet", "taken_um": 1.5, "taken_sd_um": 1.2 }] }
  ]
}`;

describe('a film record', () => {
  test('is read as every panel of every visit, each with its place', () => {
    const { value, diagnostics } = readFilmRecord('visits.json', record);
    expect(diagnostics).toEqual([]);
    expect(value?.value.vehicle).toBe('AB-12');
    expect(value?.value.panels.map(({ panel, taken }) => [panel, taken.mean, taken.sd])).toEqual([
      ['hood', 2.1, 0.9],
      ['roof', -0.4, 0.8],
      ['bonnet', 1.5, 1.2],
    ]);
    const [, , last] = value?.value.panels ?? [];
    expect(value?.placeOf([...(last?.path ?? []), 'panel'])).toMatchObject({ line: 9 });
  });

  test('keeps beside its panels the places that were worked deeper, of which nothing was measured', () => {
    const withPlace = record.replace(
      '"taken_sd_um": 1.2 }] }',
      '"taken_sd_um": 1.2 }], "places": [{ "panel": "boot", "defect": "deep-scratches", "median_um": 4.2, "high_um": 9.8 }] }',
    );
    const { value, diagnostics } = readFilmRecord('visits.json', withPlace);
    expect(diagnostics).toEqual([]);
    expect(value?.value.panels.at(-1)).toEqual({
      panel: 'boot',
      taken: {
        mean: 0,
        sd: 0,
        places: [
          {
            ...{ date: '2026-03-31', defect: 'deep-scratches', point: 'deep scratches 1' },
            ...{ median: 4.2, high: 9.8 },
          },
        ],
      },
      path: ['visits', 1, 'places', 0],
    });
    const [first] = value?.value.panels ?? [];
    const all = takenInAll(value?.value.panels.map(({ taken }) => taken) ?? []);
    expect(first?.taken.places).toBeUndefined();
    expect(all.places).toHaveLength(1);
  });

  describe('that contradicts its own points', () => {
    const told = (taken_um: number, besides: object = {}) => {
      const points = [
        { point: '1', before_um: 117.4, after_um: 114.1 },
        { point: '2', before_um: 117.2, after_um: 114.4 },
        { point: '3', before_um: 115 },
      ];
      const panel = { panel: 'bonnet', taken_um, taken_sd_um: 0.2, points, ...besides };
      const text = JSON.stringify(
        {
          schema: 'leastcut/film-record/1',
          visits: [{ date: '2026-03-31', panels: [panel] }],
        },
        null,
        1,
      );
      return readFilmRecord('visits.json', text).diagnostics.map(
        ({ severity, message, at, hint }) => ({ severity, message, line: at?.line, hint }),
      );
    };

    test.each([
      [0.003, 'that looks like mm: in µm it is 3'],
      [0.12, 'that looks like mil: in µm it is 3.048'],
      [-3.05, 'film that came off counts above 0: in µm it is 3.05'],
      [
        30.5,
        'correct the figure or the points, in µm; leave the points out where they are of other work',
      ],
    ])('%d µm for 2.8 to 3.3 is refused where it stands', (taken, hint) => {
      expect(told(taken)).toEqual([
        {
          severity: 'error',
          message: `"visits[0].panels[0].taken_um" is ${taken}, and its own points lost 2.8 to 3.3 µm (before_um less after_um)`,
          line: 9,
          hint,
        },
      ]);
    });

    test.each([2.8, 3.05, 3.3, 2.4, 3.7])(
      '%d µm, within what it may be off by, is taken',
      (taken) => {
        expect(told(taken)).toEqual([]);
      },
    );

    test('is refused in a zone as in the panel', () => {
      const zone = {
        zone: 'thinner',
        taken_um: 0.003,
        taken_sd_um: 0.2,
        points: [{ point: '1', before_um: 117, after_um: 114 }],
      };
      expect(told(3, { zones: [zone] })).toMatchObject([
        { message: expect.stringContaining('its own points lost 3 µm') },
      ]);
      expect(told(3, { zones: [{ ...zone, taken_um: 3 }] })).toEqual([]);
    });

    test('says nothing where paint came on, or where more went than a record can hold', () => {
      expect(told(0, { gained_um: 30 })).toEqual([]);
      const gained = [{ point: '1', before_um: 110, after_um: 140 }];
      expect(told(0, { points: gained })).toEqual([]);
      expect(told(3, { points: gained })).toHaveLength(1);
      const points = [{ point: '1', before_um: 290, after_um: 110 }];
      expect(told(100, { points })).toEqual([]);
    });
  });

  test('refuses a date that is none and a panel without its uncertainty, where they stand', () => {
    const wrong = record.replace('2024-05-02', '2.5.2024').replace(', "taken_sd_um": 0.8', '');
    const told = readFilmRecord('visits.json', wrong).diagnostics.map(
      ({ at, message }) => `${at?.line}: ${message}`,
    );
    expect(told).toEqual([
      '5: "visits[0].date" is "2.5.2024"; it takes a date like "2026-03-31"',
      '7: "visits[0].panels[1].taken_sd_um" is missing; it takes a number from 0 to 20',
    ]);
  });

  test('refuses a day that no calendar has', () => {
    const wrong = record.replace('2024-05-02', '2024-02-30');
    const told = readFilmRecord('visits.json', wrong).diagnostics.map(
      ({ at, message }) => `${at?.line}: ${message}`,
    );
    expect(told).toEqual(['5: "visits[0].date" is no day of the calendar']);
    const leap = record.replace('2024-05-02', '2024-02-29');
    expect(readFilmRecord('visits.json', leap).diagnostics).toEqual([]);
  });
});

describe('what visits took together', () => {
  const visit = (mean: number, sd: number) => ({ mean: micrometres(mean), sd: micrometres(sd) });

  test('is the sum of their means, with the root of the sum of their variances', () => {
    // 2.1 + 1.5; √(.9² + 1.2²) = 1.5
    const all = takenInAll([visit(2.1, 0.9), visit(1.5, 1.2)]);
    expect(all.mean).toBeCloseTo(3.6, 12);
    expect(all.sd).toBeCloseTo(1.5, 12);
  });

  test('is never a gain, however the differences came out', () => {
    expect(takenInAll([visit(-2, 1), visit(0.5, 1)]).mean).toBe(0);
    expect(takenInAll([visit(-2, 1), visit(3, 1)]).mean).toBe(1);
  });

  test('does not depend on the order of the visits', () => {
    const some = fc.record({
      mean: fc.double({ min: -5, max: 20, noNaN: true }),
      sd: fc.double({ min: 0, max: 5, noNaN: true }),
    });
    fc.assert(
      fc.property(fc.array(some, { minLength: 1, maxLength: 6 }), (visits) => {
        const made = visits.map(({ mean, sd }) => visit(mean, sd));
        const forth = takenInAll(made);
        const back = takenInAll([...made].reverse());
        expect(back.mean).toBeCloseTo(forth.mean, 9);
        expect(back.sd).toBeCloseTo(forth.sd, 9);
      }),
    );
  });
});
