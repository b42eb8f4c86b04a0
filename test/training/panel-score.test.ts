import { describe, expect, test } from 'vitest';
import type { Reading } from '../../src/film/reading.ts';
import { betweenPoints, readPanel } from '../../src/training/graded-survey.ts';
import {
  type Gauges,
  type PanelScore,
  type SigmaPt,
  scorePanel,
} from '../../src/training/panel-score.ts';
import { expertReference } from '../../src/training/reference.ts';
import { seededRandom } from '../samples/seeded-random.ts';
import {
  changed,
  drawCar,
  gradeAgainst,
  model,
  oneGauge,
  readCar,
  readingAt,
  sigmaPt,
  surveyOf,
  usualHabit,
} from './true-class.ts';

const rows = (panel: string, values: readonly number[], marked = false): readonly Reading[] =>
  values.map((value, i) => readingAt(panel, `${i + 1}`, 1, value, { marked, line: i + 2 }));
/** Four panels of one spread, and the bonnet as it is given. */
const car = (bonnet: readonly number[], marked = false): readonly Reading[] => [
  ...rows('bonnet', bonnet, marked),
  ...['roof', 'boot', 'wing-front-left'].flatMap((panel) => rows(panel, [108, 110, 112, 114, 116])),
];

function scored(
  own: readonly Reading[],
  theirs: readonly Reading[],
  { sigma = sigmaPt as SigmaPt, gauges = oneGauge as Gauges } = {},
): PanelScore {
  const [trainee, expert] = [surveyOf(own), surveyOf(theirs)];
  const reference = expertReference(expert);
  const [read, panel] = [readPanel(trainee, 'bonnet'), reference.panels.get('bonnet')];
  if (read === undefined || panel === undefined) throw new Error('the bonnet was read');
  return scorePanel(read, panel, { trainee, reference, sigmaPt: sigma, gauges }, model.scores);
}

const reference = [108, 110, 112, 114, 116];

test('a panel in two films varies by both of them, and is scored by that', () => {
  const random = seededRandom(8);
  const two = changed(
    readCar(random, drawCar(random), usualHabit),
    ({ panel, point, thickness }) =>
      panel === 'roof' && Number(point) > 3 ? thickness + 140 : thickness,
  );
  const survey = surveyOf(two);
  const roof = readPanel(survey, 'roof');
  expect(roof?.zones).toHaveLength(2);
  if (roof === undefined) throw new Error('the roof was read');
  expect(betweenPoints(roof)).toEqual({ sd: roof.statistics.sd, dof: 4 });
});

describe('a panel read at points of one’s own', () => {
  test('has z′ = d/√(σ² + s²/n + s²/n_ref), s the spread that the reference shows', () => {
    const { kind, z, difference } = scored(car([118, 120, 122]), car(reference));
    const s2 = surveyOf(car(reference)).survey.panels.find((p) => p.panel.id === 'bonnet')?.film
      ?.spread.sd;
    expect(kind).toBe('z-prime');
    expect(difference).toBeCloseTo(8, 12);
    expect(z).toBeCloseTo(8 / Math.sqrt(9 + (s2 ?? 0) ** 2 * (1 / 3 + 1 / 5)), 10);
  });
  test('is scored more mildly where the gauges are two, by the calibration of both', () => {
    const own = [114, 116, 118];
    const two = scored(car(own), car(reference), { gauges: { same: false, stated: false } });
    const only = scored(car(own), car(reference), {
      gauges: { same: false, stated: false, onlyOwn: true },
    });
    const one = scored(car(own), car(reference));
    const [ofOwn, ofTheirs] = [116, 112].map((t) => ((1 + 0.02 * t) / Math.sqrt(3)) ** 2);
    expect((4 / two.z) ** 2).toBeCloseTo((4 / one.z) ** 2 + (ofOwn ?? 0) + (ofTheirs ?? 0), 8);
    expect((4 / only.z) ** 2).toBeCloseTo((4 / one.z) ** 2 + (ofOwn ?? 0), 8);
  });
  test('is scored no more mildly where all doubt of both gauges cannot explain the difference', () => {
    const gauges = { same: false, stated: false };
    const [one, two] = [oneGauge, gauges].map((by) =>
      scored(car([128, 130, 132]), car(reference), { gauges: by }),
    );
    expect(two?.z).toBe(one?.z);
  });
  test('is scored more mildly on thick film where nobody named a gauge, by a share of what is over usual film on both sides', () => {
    const unnamed = { same: true, stated: false, unnamed: 0.02 };
    const raised = (by: number) => reference.map((value) => value + by);
    const [one, two] = [oneGauge, unnamed].map((gauges) =>
      scored(car(raised(212), true), car(raised(188), true), { gauges }),
    );
    // Of 300 µm 180 are over 120, however much the trainee reads.
    const allowed = (2 * (0.02 * 180) ** 2) / 3;
    expect(one?.z).toBeCloseTo(8, 12);
    expect((24 / (two?.z ?? 0)) ** 2).toBeCloseTo(9 + 1.5 ** 2 / 5 + allowed, 8);
    const usual = [oneGauge, unnamed].map((gauges) =>
      scored(car(raised(6), true), car(reference, true), { gauges }),
    );
    expect(usual[1]).toEqual(usual[0]);
  });
  test('leaves its own sampling out where σ is that of the class, which holds it already', () => {
    const sigma: SigmaPt = { ...sigmaPt, from: 'class' };
    const { z } = scored(car([118, 120, 122]), car(reference), { sigma });
    const s = surveyOf(car(reference)).survey.panels.find((p) => p.panel.id === 'bonnet')?.film;
    expect(z).toBeCloseTo(8 / Math.sqrt(9 + (s?.spread.sd ?? 0) ** 2 / 5), 10);
  });
});

describe('a panel read at the same marked points', () => {
  const shifted = reference.map((value) => value + 6);
  test('has a plain z of the differences point by point', () => {
    const found = scored(car(shifted, true), car(reference, true));
    expect(found).toMatchObject({ kind: 'z', shared: 5, verdict: 'satisfactory' });
    expect(found.z).toBeCloseTo(2, 12);
  });
  test('does not mind film that differs between points, nor points that only one of both read', () => {
    const found = scored(car(shifted.slice(0, 3), true), car(reference, true));
    expect(found).toMatchObject({ kind: 'z', shared: 3 });
    expect(found.difference).toBeCloseTo(6, 12);
  });
  test('has z′ where the reference is known to no better than 0.3 of σ', () => {
    const sigma: SigmaPt = { ...sigmaPt, value: 2 as SigmaPt['value'] };
    const found = scored(car(shifted, true), car(reference, true), { sigma });
    expect(found.kind).toBe('z-prime');
    expect(found.z).toBeCloseTo(6 / Math.sqrt(4 + 1.5 ** 2 / 5), 10);
  });
  test('counts a point as the same only where both read it at the mark', () => {
    expect(scored(car(shifted), car(reference, true)).shared).toBe(0);
    expect(scored(car(shifted, true), car(reference)).shared).toBe(0);
  });
  test('needs three marks in common where more was read: with fewer all points count', () => {
    const twoMarks = car(shifted).map((one) => ({ ...one, marked: Number(one.point) < 3 }));
    expect(scored(twoMarks, car(reference, true)).shared).toBe(0);
  });
  test('holds who read nothing but one or two marks to those, low as they may be', () => {
    for (const count of [1, 2]) {
      const low = car(reference.slice(0, count), true);
      expect(scored(low, car(reference, true))).toMatchObject({ shared: count, difference: 0 });
    }
  });
  test('has zeta by the noise of both, and E_n only where gauge files state it', () => {
    const found = scored(car(shifted, true), car(reference, true));
    expect(found.zeta).toBeCloseTo(6 / Math.sqrt((2 * 1.5 ** 2) / 5), 10);
    expect(found.en).toBeNull();
    const stated = scored(car(shifted, true), car(reference, true), {
      gauges: { same: true, stated: true },
    });
    expect(stated.en).toBeCloseTo((found.zeta ?? 0) / 2, 12);
  });
});

test('what a panel is uncertain by is no more for a slip elsewhere on the car, and the slip has no zeta', () => {
  const random = seededRandom(9);
  const drawn = drawCar(random);
  const expert = expertReference(surveyOf(readCar(random, drawn, usualHabit)));
  const own = readCar(random, drawn, usualHabit).filter(({ panel }) =>
    /^(bonnet|roof|boot)$/.test(panel),
  );
  const slipped = changed(own, ({ panel, point, thickness }) =>
    panel === 'roof' && point === '2' ? 10 * thickness : thickness,
  );
  const zetas = gradeAgainst(surveyOf(slipped), expert).scores.map(
    ({ panel, difference, zeta }) => ({
      panel: panel.id,
      u: zeta === null ? null : difference / zeta,
    }),
  );
  expect(zetas.find(({ panel }) => panel === 'roof')?.u).toBeNull();
  for (const { u } of zetas.filter(({ panel }) => panel !== 'roof')) {
    // Two means of five points of film that varies by 3.5 to 5.5 µm.
    expect(u).toBeGreaterThan(1);
    expect(u).toBeLessThan(5);
  }
});

test('a panel in two films is uncertain by both of them, a slip elsewhere on the car or none', () => {
  const random = seededRandom(11);
  const twoFilms = (readings: readonly Reading[]) =>
    changed(readings, ({ panel, point, thickness }) =>
      panel === 'roof' && Number(point) > 3 ? thickness + 140 : thickness,
    );
  const drawn = drawCar(random);
  const expert = expertReference(surveyOf(twoFilms(readCar(random, drawn, usualHabit))));
  const own = twoFilms(readCar(random, drawn, usualHabit));
  const slipped = changed(own, ({ panel, point, thickness }) =>
    panel === 'boot' && point === '2' ? 10 * thickness : thickness,
  );
  const roof = readPanel(surveyOf(own), 'roof');
  const u = Math.hypot(
    (roof?.statistics.sd ?? 0) / Math.sqrt(5),
    expert.panels.get('roof')?.uncertainty ?? 0,
  );
  for (const readings of [own, slipped]) {
    const score = gradeAgainst(surveyOf(readings), expert).scores.find(
      ({ panel }) => panel.id === 'roof',
    );
    expect(score?.zeta).toBeCloseTo((score?.difference ?? Number.NaN) / u, 9);
  }
});
