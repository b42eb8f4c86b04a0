/** A car of round figures: what is told of each fault, word by word, with its panels and its line. */
import { describe, expect, test } from 'vitest';
import { micrometres } from '../../src/base/units.ts';
import type { Reading } from '../../src/film/reading.ts';
import { type GradedSurvey, readPanel } from '../../src/training/graded-survey.ts';
import { expertReference, type Reference } from '../../src/training/reference.ts';
import { gradeAgainst, model, panelIds, readingAt, surveyOf } from './true-class.ts';

/** Mean 112. */
const FILM = [108, 116, 110, 114, 112];
const UNREAD = Number.NaN;

/** Each panel at five points, five lines a panel from line 2 on. */
const read = (
  of: (panel: string, film: number, point: number) => number = (_, film) => film,
  marked = false,
): readonly Reading[] =>
  panelIds.flatMap((panel, i) =>
    FILM.flatMap((film, k) => {
      const value = of(panel, film, k + 1);
      const line = 2 + 5 * i + k;
      return Number.isNaN(value) ? [] : [readingAt(panel, `${k + 1}`, 1, value, { line, marked })];
    }),
  );
const lineOf = (panel: string, point = 1): number => 1 + 5 * panelIds.indexOf(panel) + point;

/** All panels carry the same figures here, which is told as well, and is to prove nothing. */
const graded = (trainee: GradedSurvey, reference: Reference) =>
  gradeAgainst(trainee, reference, { ...model, slips: { ...model.slips, provedAlarm: 0 } });
const told = (trainee: readonly Reading[], reference = read()) =>
  graded(surveyOf(trainee), expertReference(surveyOf(reference))).reasons.filter(
    ({ code }) => code !== 'values-repeated' && code !== 'not-repeated',
  );
const textsOf = (...all: Parameters<typeof told>) => told(...all).map(({ text }) => text);

test('panels that were not read, points too few and a panel too many are told with their names', () => {
  const trainee = read((panel, film, point) =>
    panel === 'roof' || panel === 'boot' || (panel === 'bonnet' && point > 3) ? UNREAD : film,
  );
  const reference = read((panel, film) => (panel === 'wing-front-left' ? UNREAD : film));
  const file = 'a.csv';
  expect(told(trainee, reference)).toEqual([
    {
      code: 'panels-unread',
      text: 'not read: boot lid and roof (2 of 10 panels): walk round the car in one order, and read every panel',
      panels: ['boot', 'roof'],
      ...{ file, line: 2 },
    },
    {
      code: 'few-points',
      text: '38 of the reference’s 50 points: fewer than the reference on bonnet',
      panels: ['bonnet'],
      ...{ file, line: lineOf('bonnet') },
    },
    {
      code: 'panel-extra',
      text: 'no reference for front left wing: not scored',
      panels: ['wing-front-left'],
      ...{ file, line: lineOf('wing-front-left') },
    },
  ]);
});

describe('a hand that reads more or less all over the car', () => {
  const off = (by: number, bonnet: number) =>
    read((panel, film) => film + (panel === 'bonnet' ? bonnet : by));
  const car = (side: string) =>
    `reads 7.0 µm ${side} than the reference all over the car (7.0 to 7.0 µm): set the gauge to zero, check it on a shim, hold it square without pressing, wipe the paint first`;
  const bonnet = (is: string, z: string) =>
    `bonnet: ${is} µm, the reference 112.0 µm (z′ ${z}): read it again on clean, dry paint, the probe square and flat, away from edges`;

  test('is told once, and no panel that is off as the whole car is', () => {
    expect(textsOf(off(7, 7))).toEqual([car('more')]);
    expect(textsOf(off(-7, -7))).toEqual([car('less')]);
    expect(textsOf(off(7, 13))).toEqual([car('more')]);
  });

  test('invents no repair by reading factory film as thick as repaint', () => {
    expect(textsOf(off(90, 90)).map((text) => text.slice(0, 30))).toEqual([
      'reads 90.0 µm more than the re',
    ]);
    expect(told(off(90, 290)).map(({ code }) => code)).toContain('repair-invented');
  });

  test('leaves a panel to be told that is off twice as far, or the other way', () => {
    // z′ = d/√(3² + 2·s²/5) with s² = 10 on both sides: 30/√13 = 8.32 and −13/√13 = −3.61.
    expect(textsOf(off(7, 30))).toEqual([car('more'), bonnet('142.0', '8.3')]);
    expect(textsOf(off(-7, -30))).toEqual([car('less'), bonnet('82.0', '−8.3')]);
    expect(textsOf(off(7, -13))).toEqual([car('more'), bonnet('99.0', '−3.6')]);
  });
});

test('points read once are told at the first of them, since nobody can say how well they repeat', () => {
  const { reasons } = graded(surveyOf(read()), expertReference(surveyOf(read())));
  expect(reasons.find(({ code }) => code === 'not-repeated')).toEqual({
    code: 'not-repeated',
    text: 'no point was read twice, so nobody can say how well your readings repeat: read each point three times',
    panels: [],
    ...{ file: 'a.csv', line: 2 },
  });
});

test('a panel that is off is told with the line of its farthest reading', () => {
  const trainee = read((panel, film) => film + (panel === 'door-front-left' ? 14 : 0));
  // The second of its five is 130 where the reference is 112.
  expect(told(trainee)).toMatchObject([
    { code: 'panel-off', panels: ['door-front-left'], line: lineOf('door-front-left', 2) },
  ]);
});

test('a panel that is doubtful is to be read again, without a word of how', () => {
  // 9/√13 = 2.50.
  const trainee = read((panel, film) => film + (panel === 'door-front-left' ? 9 : 0));
  expect(told(trainee)).toMatchObject([
    {
      code: 'panel-doubtful',
      text: 'front left door: 121.0 µm, the reference 112.0 µm (z′ 2.5): read it again',
    },
  ]);
});

test('at marks a score is a plain z', () => {
  const off = (by: number) => read((panel, film) => film + (panel === 'roof' ? by : 0), true);
  expect(textsOf(off(7.5), off(0))).toEqual([
    'roof: 119.5 µm, the reference 112.0 µm (z 2.5): read it again',
  ]);
});

test('the film of a car varies as its even panels do, whatever the others show', () => {
  // s² = 10 on four degrees of freedom a panel; a repaint and a single point tell nothing.
  const film = (of: readonly Reading[]) => expertReference(surveyOf(of)).film;
  expect(film(read())).toEqual({ variance: expect.closeTo(10, 9), dof: 44 });
  const some = read((panel, value, point) =>
    panel === 'roof'
      ? 250 + 20 * point
      : panel === 'boot' && point > 1
        ? UNREAD
        : panel === 'boot'
          ? 112
          : value,
  );
  expect(film(some)).toEqual({ variance: expect.closeTo(10, 9), dof: 36 });
  // Nor does a panel with a point that stands out of it, though it be factory film.
  const spot = read((panel, value, point) => (panel === 'roof' && point === 4 ? 92 : value));
  const roof = readPanel(surveyOf(spot), 'roof');
  expect([roof?.condition, roof?.also, roof?.lowPoints]).toEqual(['original', [], ['4']]);
  expect(film(spot)).toEqual({ variance: expect.closeTo(10, 9), dof: 40 });
});

test('a panel in two films is mixed in the words that are compared', () => {
  const reference = read();
  const trainee = read((panel, film, point) => film + (panel === 'roof' && point > 3 ? 150 : 0));
  const { conditions } = graded(surveyOf(trainee), expertReference(surveyOf(reference)));
  expect(conditions).toMatchObject({
    of: 11,
    alike: 10,
    otherwise: [{ panel: { id: 'roof' }, own: 'mixed', theirs: 'original' }],
  });
  expect(expertReference(surveyOf(trainee)).panels.get('roof')?.repaired).toBe(true);
});

test('the panel that is farthest off by its score is told first', () => {
  const trainee = read((panel, film) => film + ({ bonnet: 14, roof: -40, boot: 25 }[panel] ?? 0));
  expect(told(trainee).map(({ panels }) => panels)).toEqual([['roof'], ['boot'], ['bonnet']]);
});

test('repairs missed and invented and a low spot are told with what each side shows', () => {
  const reference = read((panel, film, point) =>
    panel === 'quarter-left'
      ? 240 + 10 * point
      : panel === 'wing-front-right' && point === 4
        ? 78
        : film,
  );
  const trainee = read((panel, film, point) => (panel === 'roof' ? 330 + 10 * point : film));
  const all = told(trainee, reference).filter(({ code }) => code !== 'panel-off');
  expect(all.map(({ code, panels, line }) => [code, panels, line])).toEqual([
    ['repair-missed', ['quarter-left'], lineOf('quarter-left')],
    ['repair-invented', ['roof'], lineOf('roof')],
    ['low-spot-missed', ['wing-front-right'], lineOf('wing-front-right')],
  ]);
  expect(all.map(({ text }) => text)).toEqual([
    'left quarter: repaired, which the reference shows (refinished, 270.0 µm) and your readings do not: read more points, nearer to each other',
    'roof: your readings say refinished (360.0 µm), the reference does not: read it again',
    'front right wing: the low spot (78.0 µm at point 4) was not found, your lowest reading is 108.0 µm: feel and look for sanded places, read closer points there; it may lie between points of your own, and takes no marks',
  ]);
});

test('of two low points the lowest is the low spot, whichever was read first', () => {
  const films = [...FILM, 109, 115, 111, 113];
  const spotOf = (second: number, fourth: number) => {
    const reference = panelIds.flatMap((panel) =>
      films.map((film, k) => {
        const low = panel === 'roof' ? [film, second, film, fourth][k] : film;
        return readingAt(panel, `${k + 1}`, 1, low ?? film);
      }),
    );
    return expertReference(surveyOf(reference)).panels.get('roof')?.lowSpot;
  };
  expect(spotOf(88, 90)).toEqual({ point: '2', thickness: 88 });
  expect(spotOf(90, 88)).toEqual({ point: '4', thickness: 88 });
});

describe('several low points on one panel', () => {
  const nine = [...FILM, 109, 115, 111, 113, 110, 114];
  const surveyed = (...low: readonly number[]) =>
    surveyOf(
      panelIds.flatMap((panel) =>
        nine.map((film, k) => {
          const roof = panel === 'roof' ? (low[k] ?? film) : film;
          return readingAt(panel, `${k + 1}`, 1, roof);
        }),
      ),
    );
  const roofOf = (...low: readonly number[]) =>
    expertReference(surveyed(...low)).panels.get('roof');

  test('are a low spot of it and no repair, though the panel reads as of two films', () => {
    const roof = roofOf(80, 78);
    expect(roof).toMatchObject({
      condition: 'mixed',
      repaired: false,
      lowSpot: { point: '2', thickness: 78 },
    });
  });

  test('are none where more film than the car has lies on the panel', () => {
    expect(roofOf(160, 158)).toMatchObject({ condition: 'mixed', repaired: true, lowSpot: null });
    expect(roofOf(250, 258)).toMatchObject({ repaired: true, lowSpot: null });
  });

  test('are no repair that anybody invents, and none that anybody misses', () => {
    const read = (trainee: GradedSurvey, theirs: GradedSurvey): readonly string[] =>
      graded(trainee, expertReference(theirs)).reasons.map(({ code }) => code);
    expect(read(surveyed(112, 78), surveyed(80, 78))).not.toContain('repair-missed');
    expect(read(surveyed(80, 78), surveyed(112, 78))).not.toContain('repair-invented');
    expect(read(surveyed(160, 158), surveyed())).toContain('repair-invented');
    expect(read(surveyed(), surveyed(160, 158))).toContain('repair-missed');
  });
});

describe('a low spot', () => {
  const spot = (low: number, marked: boolean) =>
    read(
      (panel, film, point) => (panel === 'wing-front-right' && point === low ? 78 : film),
      marked,
    );
  const found = (trainee: readonly Reading[], reference: readonly Reading[]) =>
    graded(surveyOf(trainee), expertReference(surveyOf(reference))).lowSpots.found;

  test('at a mark is to be found at that mark', () => {
    expect(found(spot(4, true), spot(4, true))).toBe(1);
    expect(found(spot(1, true), spot(4, true))).toBe(0);
    // Numbered from the other end it is found, and the numbers are told.
    expect(found(spot(2, true), spot(4, true))).toBe(1);
  });

  test('takes its share of the marks, found or missed at a mark, and none where nobody marked it', () => {
    const share = (trainee: readonly Reading[], reference: readonly Reading[]) =>
      graded(surveyOf(trainee), expertReference(surveyOf(reference))).mark.criteria.find(
        ({ criterion }) => criterion === 'lowPoints',
      )?.share;
    const two = (...panels: readonly string[]) =>
      read((panel, film, point) => (panels.includes(panel) && point === 4 ? 78 : film), true);
    const reference = two('wing-front-right', 'boot');
    expect(share(reference, reference)).toBe(1);
    expect(share(two('boot'), reference)).toBe(0.5);
    expect(share(two(), reference)).toBe(0);
    expect(share(read(), spot(4, false))).toBeNull();
  });

  test('is found at any point where either side read points of its own', () => {
    expect(found(spot(2, false), spot(4, true))).toBe(1);
    expect(found(spot(2, true), spot(4, false))).toBe(1);
    expect(found(read(), spot(4, false))).toBe(0);
  });
});

describe('repeats', () => {
  const twice = (apart: (index: number) => number) =>
    read().flatMap((one, i) => [
      one,
      { ...one, repeat: 2, thickness: micrometres(one.thickness + apart(i)) },
    ]);
  const ofRepeats = (apart: (index: number) => number) =>
    told(twice(apart)).filter(({ code }) => code === 'repeats-apart');

  test('far apart are told with their SD, what is usual, and the line of the widest', () => {
    // 54 pairs 4 apart and one 9 apart: √((54·8 + 40.5)/55) = 2.931.
    const [one, ...others] = ofRepeats((i) => (i === 7 ? 9 : 4));
    expect(others).toEqual([]);
    expect(one).toMatchObject({ panels: [], line: 9 });
    expect(one?.text).toMatch(
      /^readings of one point differ by 2\.93 µm \(SD of 55 repeats\), up to 1\.73 µm is usual: /,
    );
  });

  test('as near as is usual are not told', () => {
    // 2/√2 = 1.41.
    expect(ofRepeats(() => 2)).toEqual([]);
    expect(ofRepeats(() => 2.5)).toHaveLength(1);
  });
});

describe('values that nobody read', () => {
  const all = (trainee: readonly Reading[]) =>
    graded(surveyOf(trainee), expertReference(surveyOf(read()))).reasons;

  test('are told with their panels, the first four by name, and the line of the first', () => {
    const [repeated] = all(read());
    expect(repeated).toMatchObject({
      code: 'values-repeated',
      text: 'bonnet, front right wing, front right door, rear right door and 7 more: the same values in the same order: write each panel while you stand before it',
      panels: panelIds,
      ...{ file: 'a.csv', line: 2 },
    });
  });

  test('are not told of panels read at unlike counts of points, though the shorter is the beginning of the longer', () => {
    const own = new Map(
      panelIds.map((id, i) => [id, FILM.map((film, k) => film + ((7 * i + 3 * k * i) % 11))]),
    );
    const of = (copied: boolean, points: number) =>
      all(
        read((panel, _, point) => {
          if (panel === 'boot' && point > points) return UNREAD;
          const from = panel === 'boot' && copied ? 'roof' : panel;
          return own.get(from)?.[point - 1] ?? UNREAD;
        }),
      ).flatMap(({ code, panels }) => (code === 'values-repeated' ? [panels] : []));
    expect(of(true, 5)).toEqual([['boot', 'roof']]);
    expect(of(true, 4)).toEqual([]);
    expect(of(false, 5)).toEqual([]);
  });

  test('all alike on one panel may be chance where the display is coarse: λ = Σ (δ/(σ√2π))ⁿ⁻¹/√n over all panels', () => {
    // σ = √10, δ = 1: .1262⁴/√5 = 1.13e-4 a panel. Of 11 panels 1 − e^−.00125 is over the .001 of a false alarm, of 8 not.
    const codes = (panels: number) =>
      all(
        read((panel, film) => {
          const place = panelIds.indexOf(panel);
          return place >= panels ? UNREAD : place === 0 ? 113 : film + (place % 3);
        }),
      ).map(({ code }) => code);
    expect(codes(11)).not.toContain('values-alike');
    expect(codes(8)).toContain('values-alike');
  });

  test('all alike are told with the film that the car shows', () => {
    const trainee = read((panel, film) => (panel === 'roof' || panel === 'boot' ? 112 : film));
    // √10 within each panel.
    expect(all(trainee)[0]).toMatchObject({
      code: 'values-alike',
      text: 'boot lid and roof: all points read the same, and on this car film varies by 3.2 µm over a panel: read each point, and write what the gauge shows',
      panels: ['boot', 'roof'],
      ...{ file: 'a.csv', line: lineOf('boot') },
    });
  });
});

test('a panel that would agree under two other names is told with the surer of them', () => {
  const cars = (bonnet: number, boot: number, roof: number) =>
    read((panel, film) => film - 112 + ({ bonnet, boot, roof }[panel] ?? 112));
  // Bonnet for boot lid leaves 5 and 3 µm, bonnet for roof 1 and 1 µm; all of them are under 3·√13.
  const found = told(cars(123, 103, 101), cars(100, 118, 124));
  expect(found.filter(({ code }) => code === 'panels-swapped').map(({ panels }) => panels)).toEqual(
    [['bonnet', 'roof']],
  );
});

describe('sides', () => {
  const doors = ['door-front-left', 'door-front-right'];
  /** Two doors of one mean, whose film goes up where that of the other goes down. */
  const car = (marked: boolean, flip: boolean, points = [1, 2, 3, 4, 5]) =>
    read((panel, film, point) => {
      if (!doors.includes(panel)) return film;
      if (!points.includes(point)) return UNREAD;
      const up = (panel === doors[0]) !== flip ? 1 : -1;
      return 112 + up * ([20, -20, 0, 15, -15][point - 1] ?? 0);
    }, marked);
  const swapped = (trainee: readonly Reading[], reference: readonly Reading[]) =>
    told(trainee, reference).filter(({ code }) => code === 'sides-swapped');

  test('swapped on two doors are told by their marks, in whatever order these were read', () => {
    const [one, ...others] = swapped(car(true, true), car(true, false));
    expect(others).toEqual([]);
    expect(one).toMatchObject({
      text: 'left and right are swapped, front right door and front left door: with the sides changed the readings agree with the reference; sides are as seen from the driver’s seat',
      panels: ['door-front-right', 'door-front-left'],
      line: lineOf('door-front-right'),
    });
    const backwards = [...car(true, true)].reverse();
    expect(swapped(backwards, car(true, false))).toHaveLength(1);
    expect(swapped(car(true, false), car(true, false))).toEqual([]);
  });

  test('are none on a car of which no pair was read', () => {
    const trainee = read((panel, film) => (/-(left|right)$/.test(panel) ? UNREAD : film));
    expect(told(trainee, trainee)).toEqual([]);
  });

  test('all over the car need proof all together: pairs that differ by little are no proof', () => {
    const sides = (right: number, left: number) =>
      read(
        (panel, film) => film + (/-left$/.test(panel) ? left : /-right$/.test(panel) ? right : 0),
      );
    // Four pairs, each z² = d²/(3² + 2·10/5) on both sides: 4·2·d²/13 is 5.5 for 3 µm, 22.2 for 6; proof is 2·ln 1000 = 13.8.
    const found = (by: number) => swapped(sides(by, 0), sides(0, by)).length;
    expect(found(3)).toBe(0);
    expect(found(6)).toBe(1);
  });

  test('need three marks on either side: with fewer the means are compared, which are alike', () => {
    expect(swapped(car(true, true, [1, 2, 3]), car(true, false))).toHaveLength(1);
    expect(swapped(car(true, true, [1, 2]), car(true, false))).toEqual([]);
    const fewOnOne = car(true, true).filter(
      ({ panel, point }) => panel !== doors[1] || Number(point) < 3,
    );
    expect(swapped(fewOnOne, car(true, false))).toEqual([]);
    expect(swapped(car(false, true), car(true, false))).toEqual([]);
  });

  test('are called swapped all over the car only where every pair agrees once changed back', () => {
    const left = (panel: string) => panel.endsWith('-left');
    const reference = read((panel, film) => film + (left(panel) ? 12 : 0));
    const mirrored = (also: number) =>
      read(
        (panel, film) => film + (left(panel) ? 0 : 12) + (panel === 'wing-front-left' ? also : 0),
      );
    // A single pair is told by the names of its two.
    const onlyDoors = (of: readonly Reading[]) =>
      of.filter(({ panel }) => !/-(left|right)$/.test(panel) || panel.startsWith('door-front'));
    expect(swapped(onlyDoors(mirrored(0)), reference)[0]?.text).toMatch(
      /^left and right seem swapped, front right door and front left door: /,
    );
    const sided = panelIds.filter((panel) => /-(left|right)$/.test(panel));
    const where = (trainee: readonly Reading[]) =>
      swapped(trainee, reference).map(({ panels }) => panels.length);
    expect(where(mirrored(0))).toEqual([sided.length]);
    expect(where(mirrored(60))).not.toContain(sided.length);
  });
});

describe('beside a blunder', () => {
  const codes = (trainee: readonly Reading[]) =>
    told(trainee).map(({ code, panels }) => `${code} ${panels.join(' ')}`);

  test('that says how a panel was written down, the panel is not told as off, and others are', () => {
    const trainee = read((panel, film) =>
      panel === 'roof' ? film * 10 : panel === 'boot' ? film + 30 : film,
    );
    expect(codes(trainee)).toEqual(['decimal-slip roof', 'panel-off boot']);
  });

  test('that says how a panel was written down, its repair is not told as missed', () => {
    const painted = read((panel, _, point) => (panel === 'roof' ? 240 + 10 * point : 112 + point));
    const inMil = read((panel, film, point) =>
      panel === 'roof' ? (240 + 10 * point) / 25.4 : film,
    );
    expect(told(inMil, painted).map(({ code }) => code)).toEqual(['unit-slip']);
  });

  test('of another kind a panel that is off is told as well', () => {
    const trainee = read((panel, film) => (panel === 'roof' || panel === 'boot' ? 150 : film));
    expect(codes(trainee)).toEqual(['values-alike boot roof', 'panel-off boot', 'panel-off roof']);
  });
});
