import { describe, expect, it } from 'vitest';
import { micrometres } from '../../src/base/units.ts';
import { filmModel } from '../../src/formats/models.ts';
import {
  amongSound,
  fiveAround,
  onFace,
  panelOf,
  plainPanel,
  reading,
  surveyOf,
} from './car-builder.ts';

const codes = (list: readonly { readonly code: string }[]): readonly string[] =>
  list.map(({ code }) => code);

describe('the condition of a panel', () => {
  it('is original where nothing else applies', () => {
    const { panel } = amongSound(fiveAround('tested', 114));
    expect(panel.condition).toBe('original');
    expect(panel.also).toEqual([]);
    expect(codes(panel.evidence)).toEqual(['original']);
  });

  it('is filler from the first point over 500 µm, whatever else applies, which stands in also', () => {
    const { panel } = amongSound(onFace('tested', 240, 260, 501, 250, 75));
    expect(panel.condition).toBe('filler');
    expect(panel.also).toEqual(['refinished', 'thin']);
    expect(codes(panel.evidence).slice(0, 3)).toEqual(['filler', 'refinished', 'thin']);
    // Two populations of film: a normal bound would speak of neither.
    expect(panel.thinnest).toBeNull();
  });

  it('is no filler at 500 µm exactly', () => {
    const { panel } = amongSound(onFace('tested', 240, 260, 500, 250, 245));
    expect(panel.condition).toBe('refinished');
  });

  it('is refinished with a median over 200 µm even when no baseline is known', () => {
    const survey = surveyOf({ panels: [plainPanel('a')], readings: fiveAround('a', 205) });
    expect(survey.baseline).toBeNull();
    expect(panelOf(survey, 'a').condition).toBe('refinished');
  });

  it('draws the spread of a repaint towards a twentieth of its own mean, not towards the sound panels', () => {
    const { panel } = amongSound(fiveAround('tested', 260));
    expect(panel.condition).toBe('refinished');
    const mean = panel.statistics?.mean ?? Number.NaN;
    const { fallbackShare } = filmModel.spread;
    expect(panel.moderation?.prior.variance).toBeCloseTo((fallbackShare * mean) ** 2, 9);
  });

  it.each([
    // 35 % of 112 is 39.2, so 40 µm is the greater: over 152 is a repaint.
    [152, 'original'],
    [152.5, 'refinished'],
  ])('against a baseline of 112 µm, a median of %d µm is %s', (centre, condition) => {
    const { survey, panel } = amongSound(fiveAround('tested', centre));
    expect(survey.baseline).toBe(112);
    expect(panel.condition).toBe(condition);
  });

  it('takes 35 % of the baseline where that is more than 40 µm', () => {
    const ids = ['a', 'b', 'c'];
    const survey = surveyOf({
      panels: [...ids, 'd', 'e'].map((id) => plainPanel(id)),
      readings: [
        ...ids.flatMap((id) => fiveAround(id, 140)),
        ...fiveAround('d', 188.9),
        ...fiveAround('e', 189.1),
      ],
    });
    // 140 + 49 = 189; the five medians have 140 in their middle.
    expect(panelOf(survey, 'd').condition).toBe('original');
    expect(panelOf(survey, 'e').condition).toBe('refinished');
  });

  it('is thin with one point under the floor of 80 µm', () => {
    const { panel } = amongSound(onFace('tested', 112, 110, 79.9, 115, 111));
    expect(panel.condition).toBe('thin');
    expect(panel.evidence[0]?.text).toContain('a point reads 79.9 µm');
    expect(panel.evidence[0]?.value).toBe(79.9);
  });

  it('may be thin when all points stand over the floor but thinner film is credible', () => {
    const { panel } = amongSound(onFace('tested', 89, 113, 89, 101, 113));
    expect(panel.statistics?.min).toBe(89);
    expect(panel.thinnest).toBeLessThan(80);
    expect(panel.condition).toBe('thin');
    expect(panel.also).toEqual([]);
    expect(panel.evidence[0]?.text).toContain('may be thin');
    expect(panel.evidence[0]?.value).toBe(panel.thinnest);
  });

  it('is cut back more than 12 µm under the baseline, and thin comes before it', () => {
    const { panel } = amongSound(fiveAround('tested', 99), {
      terms: { totalFloor: micrometres(60) },
    });
    expect(panel.condition).toBe('cut-back');
    expect(panel.evidence[0]?.text).toContain('13');
    const both = amongSound(fiveAround('tested', 82)).panel;
    expect([both.condition, ...both.also]).toEqual(['thin', 'cut-back']);
    const still = amongSound(fiveAround('tested', 100), { terms: { totalFloor: micrometres(60) } });
    expect(still.panel.condition).toBe('original');
  });

  it('is covered where the job says so, and nothing else: what it reads holds what covers it', () => {
    const { panel } = amongSound(onFace('tested', 510, 520, 510, 515, 512), {
      factsOf: (id) => ({ covered: id === 'tested' }),
    });
    expect(panel.condition).toBe('covered');
    expect(panel.also).toEqual([]);
    expect(panel.evidence.map(({ code }) => code)).toEqual(['covered']);
    expect(panel.budget).toBe(0);
    expect(panel.boundBy.code).toBe('covered');
    const thin = amongSound(onFace('tested', 60, 62, 61), {
      factsOf: (id) => ({ covered: id === 'tested' }),
    });
    expect([thin.panel.condition, ...thin.panel.also]).toEqual(['covered']);
  });

  it('is unread without a reading, with no statistics and never 0', () => {
    const { panel } = amongSound([]);
    expect(panel).toMatchObject({
      condition: 'unread',
      statistics: null,
      film: null,
      thinnest: null,
      topcoat: null,
      budget: 0,
    });
    expect(panel.boundBy.code).toBe('no-data');
    expect(panel.evidence.map(({ text }) => text)).toEqual([
      'no reading: what paint it carries is not known',
    ]);
    expect(panel.advice[0]?.text).toBe('read 5 points on the face');
    // A minute a point.
    expect(panel.advice[0]?.time).toBe(5);
  });

  it.each(['plastic', 'composite'] as const)(
    'is unread on %s, whatever a gauge showed there',
    (substrate) => {
      const { survey, panel } = amongSound(fiveAround('tested', 60), { panel: { substrate } });
      expect(panel.condition).toBe('unread');
      expect(panel.film).toBeNull();
      expect(panel.evidence[0]?.text).toContain(substrate);
      expect(codes(panel.advice)).toContain('ultrasound');
      expect(survey.baseline).toBe(112);
    },
  );

  it('is unread on plastic without a reading, where its limit says why and no test spot is promised', () => {
    const { panel } = amongSound([], { panel: { substrate: 'plastic' } });
    expect(codes(panel.evidence)).toEqual(['unread']);
    expect(panel.boundBy.text).toBe('a gauge for metal reads no film on plastic');
    expect(panel.advice.map(({ text }) => text)).toEqual(['ultrasonic gauge, or leave it alone']);
  });

  it('is filler at the points that are named, with what the others read and what that is like', () => {
    const evidence = (...ums: readonly number[]) =>
      amongSound(onFace('tested', ...ums)).panel.evidence[0]?.text;
    expect(evidence(232, 212, 227, 354, 640)).toBe(
      'point 5 reads 640.0 µm, over 500 µm; the other 4 read 212.0 to 354.0 µm, like repaint',
    );
    expect(evidence(112, 640, 114, 113, 115)).toBe(
      'point 2 reads 640.0 µm, over 500 µm; the other 4 read 112.0 to 115.0 µm, like factory film',
    );
    expect(evidence(510, 600)).toBe('all of its points over 500 µm, at 510.0 to 600.0 µm');
  });

  it('names the one line that a repaint is over: the car’s own, unless the one for any car is lower', () => {
    const { panel } = amongSound(fiveAround('tested', 260));
    expect(panel.evidence[0]?.text).toBe(
      'median 260.0 µm is over 152.0 µm, which is 40.0 µm over the baseline',
    );
    const alone = surveyOf({ panels: [plainPanel('a')], readings: fiveAround('a', 260) });
    expect(panelOf(alone, 'a').evidence[0]?.text).toBe(
      'median 260.0 µm is over 200.0 µm, the line for any car',
    );
  });

  it('says covered beside unread on a covered panel that nobody read', () => {
    const { panel } = amongSound([], { facts: { covered: true } });
    expect(panel.condition).toBe('unread');
    expect(panel.also).toEqual(['covered']);
  });
});

describe('the baseline of a car', () => {
  it('is the median of the panel medians, repaints over 200 µm left out', () => {
    const survey = surveyOf({
      panels: ['a', 'b', 'c', 'd'].map((id) => plainPanel(id)),
      readings: [
        ...fiveAround('a', 100),
        ...fiveAround('b', 110),
        ...fiveAround('c', 130),
        ...fiveAround('d', 300),
      ],
    });
    expect(survey.baseline).toBe(110);
  });

  it('is null without a metal panel that was read', () => {
    const survey = surveyOf({
      panels: [plainPanel('a', { substrate: 'plastic' }), plainPanel('b')],
      readings: fiveAround('a', 100),
    });
    expect(survey.baseline).toBeNull();
    expect(survey.panels.map(({ condition }) => condition)).toEqual(['unread', 'unread']);
  });
});

describe('the budget of a panel', () => {
  it('falls on a cut-back panel, where what is missing counts as clear already taken', () => {
    const roomy = { terms: { totalFloor: micrometres(40) } };
    const cut = amongSound(fiveAround('tested', 98), roomy).panel;
    const known = amongSound(fiveAround('tested', 98), {
      ...roomy,
      factsOf: () => ({ taken: micrometres(14) }),
      model: { ...filmModel, conditions: { ...filmModel.conditions, cutBack: micrometres(50) } },
    }).panel;
    expect(cut.condition).toBe('cut-back');
    expect(known.condition).toBe('original');
    // 112 − 98 = 14 µm gone, found or stated: the same clear is left.
    expect(cut.topcoat?.clear.mean).toBeCloseTo(known.topcoat?.clear.mean ?? Number.NaN, 9);
    expect(cut.budget).toBeLessThan(amongSound(fiveAround('tested', 108), roomy).panel.budget);
  });

  it('is nothing on a matte finish', () => {
    const { panel } = amongSound(fiveAround('tested', 112), { facts: { finish: 'matte' } });
    expect(panel.budget).toBe(0);
    expect(panel.boundBy.code).toBe('finish');
  });

  it('is nothing on paint of 89 days, and asks for a test spot on paint of 90', () => {
    const aged = (paintedDaysAgo: number) =>
      amongSound(fiveAround('tested', 112), {
        factsOf: (id) => (id === 'tested' ? { paintedDaysAgo } : {}),
      }).panel;
    expect(aged(89).budget).toBe(0);
    expect(aged(89).boundBy.code).toBe('fresh-paint');
    expect(aged(90).boundBy.code).toBe('test-spot');
  });

  it('is nothing from a single point, which asks for more', () => {
    const { panel } = amongSound(onFace('tested', 112));
    expect(panel.budget).toBe(0);
    expect(panel.boundBy.code).toBe('readings');
    expect(panel.statistics?.sd).toBeNull();
    expect(panel.thinnest).toBeNull();
    expect(panel.advice[0]).toMatchObject({ code: 'more-points', points: 4 });
  });

  it('rests on the pooled spread alone with two points', () => {
    const { panel } = amongSound(onFace('tested', 108, 116));
    // Four sound panels, each with s² = 16 on 4 degrees: the pool is 16 exactly.
    expect(panel.film?.spread.sd).toBeCloseTo(4, 9);
    expect(panel.budget).toBeGreaterThan(0);
    expect(panel.advice[0]).toMatchObject({ code: 'more-points', points: 3 });
  });

  it('is nothing on a refinished panel, with the original panel that allows least as a cap for a test spot', () => {
    const { survey, panel } = amongSound(fiveAround('tested', 260));
    const least = Math.min(
      ...survey.panels
        .filter(({ condition }) => condition === 'original')
        .map(({ budget }) => budget),
    );
    expect(panel.budget).toBe(0);
    expect(panel.boundBy.code).toBe('test-spot');
    expect(panel.evidence.find(({ code }) => code === 'sound-panel-cap')?.value).toBe(least);
    expect(codes(panel.advice)).toContain('test-spot');
    // A total says nothing of refinish clear: there is no estimate to state a risk from.
    expect(panel.topcoat).toBeNull();
    expect(codes(panel.advice)).toContain('repair-edge');
  });

  it('leaves the cap remark off where no sound panel was read', () => {
    const survey = surveyOf({ panels: [plainPanel('a')], readings: fiveAround('a', 260) });
    expect(codes(panelOf(survey, 'a').advice)).not.toContain('sound-panel-cap');
  });

  it.each([
    ['as it is', 20, 'clear-over-base'],
    ['that asks more of single-stage paint', 30, 'single-stage'],
  ] as const)(
    'of an unknown finish is the worse of clear over base and single-stage, by a model %s',
    (_, floor, finish) => {
      const limits = { ...filmModel.limits, singleStageFloor: micrometres(floor) };
      const as = (stated: 'unknown' | 'clear-over-base' | 'single-stage-metallic') =>
        amongSound(fiveAround('tested', 112), {
          facts: { finish: stated },
          terms: { totalFloor: micrometres(60) },
          model: { ...filmModel, limits },
        }).panel;
      const both = [as('clear-over-base'), as('single-stage-metallic')];
      const worst = both.reduce((a, b) => (a.budget <= b.budget ? a : b));
      expect(both[0]?.budget).not.toBe(both[1]?.budget);
      expect(as('unknown').budget).toBe(worst.budget);
      expect(as('unknown').topcoat?.finish).toBe(finish);
      expect(worst.topcoat?.finish).toBe(finish);
    },
  );

  it('under the strict policy keeps 35.6 µm (GM 86-10-24, 1986) and so allows nothing by a total', () => {
    const { panel } = amongSound(fiveAround('tested', 112), { terms: { policy: 'strict' } });
    expect(panel.topcoat?.clearFloor).toBe(35.6);
    expect(panel.budget).toBe(0);
    expect(panel.boundBy.code).toBe('clear');
  });

  it('on solid single-stage may take 25.4 µm over the life (Lexus 1992), else 12.7 (GM 1991)', () => {
    const life = (finish: 'single-stage-solid' | 'single-stage-metallic' | 'lacquer') =>
      amongSound(fiveAround('tested', 112), { facts: { finish } }).panel.limits.find(
        ({ code }) => code === 'life',
      )?.value ?? Number.NaN;
    const atRisk = Math.exp(-1.6448536 * Math.hypot(0.35, 0.4, 0.15));
    expect(life('single-stage-solid')).toBeCloseTo(25.4 * atRisk, 6);
    expect(life('single-stage-metallic')).toBeCloseTo(12.7 * atRisk, 6);
    expect(life('lacquer')).toBeCloseTo(12.7 * atRisk, 6);
  });

  it('takes 2 µm of clear and 4 µm of the life limit to be gone where nobody knows', () => {
    const unknown = amongSound(fiveAround('tested', 112), { facts: { taken: null } }).panel;
    const none = amongSound(fiveAround('tested', 112)).panel;
    const drop = (none.topcoat?.clear.mean ?? 0) - (unknown.topcoat?.clear.mean ?? 0);
    expect(drop).toBeCloseTo(2, 9);
    const life = unknown.limits.find(({ code }) => code === 'life');
    expect(life?.value).toBeCloseTo(8.7 * Math.exp(-1.6448536 * Math.hypot(0.35, 0.4, 0.15)), 6);
    expect(life?.text).toContain('4.0 µm of it taken to be gone');
    expect(codes(unknown.advice)).toContain('history');
    expect(codes(none.advice)).not.toContain('history');
  });

  it('follows the user’s own floor for the total, compared with the smallest point', () => {
    const at = (floor: number) =>
      amongSound(fiveAround('tested', 112), { terms: { totalFloor: micrometres(floor) } }).panel;
    expect(at(107).boundBy.code).toBe('total');
    // The smallest point is 108: one micrometre is free, and R's upper 95 % must stay in it.
    expect(at(107).budget).toBeCloseTo(Math.exp(-1.6448536 * Math.hypot(0.35, 0.4, 0.15)), 6);
    expect(at(108).budget).toBe(0);
    expect(at(107).totalFloor).toBe(107);
  });

  it.each([
    ['clear-over-base', 80],
    ['unknown', 80],
    ['matte', 80],
    ['single-stage-solid', 60],
    ['single-stage-metallic', 60],
    ['lacquer', 60],
  ] as const)('on %s stops at a total of %d µm', (finish, floor) => {
    expect(amongSound(fiveAround('tested', 112), { facts: { finish } }).panel.totalFloor).toBe(
      floor,
    );
  });

  it('is less on galvanised steel read magnetically, where the same total holds less paint', () => {
    const zinc = amongSound(fiveAround('tested', 112), { facts: { galvanised: true } }).panel;
    const bare = amongSound(fiveAround('tested', 112)).panel;
    expect(zinc.topcoat?.clear.mean).toBeLessThan(bare.topcoat?.clear.mean ?? 0);
  });

  it('is bound by the smallest of its limits', () => {
    const { panel } = amongSound(fiveAround('tested', 112));
    expect(panel.limits.map(({ code }) => code)).toEqual(['clear', 'life', 'total']);
    expect(panel.budget).toBe(Math.min(...panel.limits.map(({ value }) => value)));
  });
});

describe('points of a survey', () => {
  it('near an edge stand apart and change no statistic', () => {
    const edge = reading('tested', 'e1', 70, { place: 'edge' });
    const { panel } = amongSound([...fiveAround('tested', 112), edge]);
    expect(panel.statistics).toEqual(amongSound(fiveAround('tested', 112)).panel.statistics);
    expect(panel.condition).toBe('original');
    expect(panel.otherPoints.map(({ point }) => point)).toEqual(['e1']);
  });

  it('are all a panel is read by: edge points alone leave it unread', () => {
    const { panel } = amongSound([reading('tested', 'e1', 70, { place: 'edge' })]);
    expect(panel.condition).toBe('unread');
    expect(panel.evidence.map(({ text }) => text)).toEqual([
      'no reading on its face, only off it: what paint it carries is not known',
    ]);
  });

  it('with repeats count once, as their mean', () => {
    const repeated = fiveAround('tested', 112).flatMap((one) => [
      one,
      { ...one, repeat: 2, thickness: micrometres(one.thickness + 2) },
    ]);
    const { panel } = amongSound(repeated);
    expect(panel.points).toHaveLength(5);
    expect(panel.readingCount).toBe(10);
    expect(panel.statistics?.mean).toBe(113);
  });

  it('read layer by layer do not enter the total', () => {
    const layers = [1, 2, 3].map((n) => reading('tested', `${n}`, 42, { layer: 'clear' }));
    const { survey, panel } = amongSound([...fiveAround('tested', 112), ...layers]);
    expect(survey.notes.find(({ code }) => code === 'layer-readings')?.value).toBe(3);
    expect(panel.statistics?.mean).toBe(112);
    expect(panel.readingCount).toBe(5);
  });

  it('that lie low or high against the other panels’ spread are flagged and kept', () => {
    const { panel } = amongSound(onFace('tested', 112, 113, 90, 111, 140));
    expect(panel.lowPoints).toEqual(['3']);
    expect(panel.highPoints).toEqual(['5']);
    expect(panel.points).toHaveLength(5);
    expect(panel.statistics?.min).toBe(90);
  });

  it('are flagged just past t·s·√(1 + 1.57/n) of the median', () => {
    // Pool 16 µm² (four panels of s² = 16 on 4 degrees), ν = 16, n = 5: t(.99; 16) = 2.5835 (table).
    const reach = 2.5835 * 4 * Math.sqrt(1 + 1.57 / 5);
    const low = (by: number) =>
      amongSound(onFace('tested', 112, 112, 112, 112, 112 - by)).panel.lowPoints;
    expect(low(reach - 0.01)).toEqual([]);
    expect(low(reach + 0.01)).toEqual(['5']);
  });

  it('are judged by their own panel alone where fewer than three others can be pooled, from five on', () => {
    const survey = surveyOf({
      panels: ['a', 'b', 'c'].map((id) => plainPanel(id)),
      readings: [
        ...fiveAround('a', 112),
        ...fiveAround('b', 112),
        ...onFace('c', 112, 113, 40, 111, 112),
      ],
    });
    expect(panelOf(survey, 'c').lowPoints).toEqual(['3']);
    const four = surveyOf({
      panels: [plainPanel('a')],
      readings: onFace('a', 112, 113, 40, 111),
    });
    expect(panelOf(four, 'a').lowPoints).toEqual([]);
    expect(amongSound(onFace('tested', 112, 60)).panel.lowPoints).toEqual([]);
  });

  it('on fewer than three panels carry the assumed spread of 5 %, at least 4 µm, on 6 degrees', () => {
    const survey = surveyOf({
      panels: [plainPanel('a')],
      readings: onFace('a', 120, 120, 120, 120, 120),
    });
    // s² = 1.5² as the least the gauge puts there: (6·36 + 4·2.25)/10 — the step of 10 gives 100/12 more.
    const spread = panelOf(survey, 'a').film?.spread;
    expect(spread?.sd).toBeCloseTo(Math.sqrt((6 * 36 + (4 * 100) / 12) / 10), 9);
    expect(spread?.dof).toBe(10);
  });

  it('take the repeatability from five degrees of repeats on, the assumed 1.5 µm before', () => {
    const still = (repeats: number) => {
      const survey = surveyOf({
        panels: [plainPanel('a')],
        readings: [1, 2, 3].flatMap((n) =>
          Array.from({ length: repeats }, (_, i) =>
            reading('a', `${n}`, 112.1 + (i % 2 === 0 ? 0.3 : -0.3), { repeat: i + 1 }),
          ),
        ),
      });
      return panelOf(survey, 'a').film?.spread.sd ?? Number.NaN;
    };
    // Three points of equal mean: own variance is the gauge's part, 1.5²/2 with 3 degrees of repeats.
    const prior = 6 * (0.05 * 112.1) ** 2;
    expect(still(2)).toBeCloseTo(Math.sqrt((prior + 2 * 1.125) / 8), 9);
    // Six degrees: the pooled s² is .12 and a third of it is left in the mean of three readings.
    const mean = 112.1 + 0.1;
    expect(still(3)).toBeCloseTo(Math.sqrt((6 * (0.05 * mean) ** 2 + (2 * 0.12) / 3) / 8), 9);
  });
});

describe('notes on mirrored panels', () => {
  const pair = (left: number, right: number) =>
    surveyOf({
      panels: [
        plainPanel('door-left', { mirror: 'door-right' }),
        plainPanel('door-right', { mirror: 'door-left' }),
        plainPanel('roof', { mirror: 'missing' }),
      ],
      readings: [...fiveAround('door-left', left), ...fiveAround('door-right', right)],
    }).notes;

  it('are given once for a pair more than 25 µm apart', () => {
    expect(pair(112, 137)).toEqual([]);
    expect(pair(112, 137.5)).toMatchObject([
      {
        code: 'mirror-difference',
        text: 'door left and door right differ by 25.5 µm; sides painted alike do by under 25.0 µm as a rule',
        value: 25.5,
      },
    ]);
  });

  it('are given from 25 % of the thinner one where that is less', () => {
    expect(pair(80, 100)).toEqual([]);
    expect(codes(pair(80, 101))).toEqual(['mirror-difference']);
  });

  it('need both sides read', () => {
    expect(
      surveyOf({
        panels: [plainPanel('l', { mirror: 'r' }), plainPanel('r', { mirror: 'l' })],
        readings: fiveAround('l', 112),
      }).notes,
    ).toEqual([]);
  });
});

describe('notes on mirrored panels of which one is in two zones', () => {
  it('are not given: what its zones read says more than its mean', () => {
    const panels = [
      plainPanel('l', { mirror: 'r' }),
      plainPanel('r', { mirror: 'l' }),
      ...['c', 'd', 'e'].map((id) => plainPanel(id)),
    ];
    const readings = [
      ...['c', 'd', 'e'].flatMap((id) => fiveAround(id, 112)),
      ...onFace('l', 110, 158, 112, 161, 114),
    ];
    const survey = surveyOf({ panels, readings: [...readings, ...fiveAround('r', 90)] });
    expect(panelOf(survey, 'l').zones).toHaveLength(2);
    expect(survey.notes).toEqual([]);
  });
});

describe('a note on readings of single layers', () => {
  const notes = (...layers: readonly string[]) =>
    amongSound([
      ...fiveAround('tested', 112),
      ...layers.map((layer, i) => reading('tested', `${i + 1}`, 35, { layer })),
    ]).survey.notes;

  it('says how many there are, and how many of them the clear is told from', () => {
    expect(notes('clear', 'primer', 'clear').map(({ text }) => text)).toEqual([
      '3 readings are of a single layer, not of the whole film: kept apart, 2 of the clear used for it',
    ]);
    expect(notes('primer')).toEqual([
      {
        code: 'layer-readings',
        text: '1 reading is of a single layer, not of the whole film: kept apart, not used',
        value: 1,
      },
    ]);
    expect(notes()).toEqual([]);
  });
});

describe('a value that looks keyed wrongly', () => {
  const painted = (...ums: readonly number[]) =>
    amongSound(onFace('tested', ...ums), {
      factsOf: (id) => ({ paintedDaysAgo: id === 'tested' ? 200 : null }),
    }).panel;

  it('leaves a word near its line that its figure decides, and decides nothing where the job does', () => {
    const slip = amongSound(onFace('tested', 112, 11.2, 113, 111, 112)).panel;
    expect(slip.sureness?.sure).toBe('near');
    const stated = painted(250, 25, 251, 249, 252);
    expect(stated.keyingSlips.map(({ point, factor }) => [point, factor])).toEqual([['2', 0.1]]);
    expect([stated.condition, stated.sureness]).toEqual(['refinished', null]);
  });
  it('is to be read again before anything else that is advised', () => {
    const { advice, evidence } = painted(250, 25, 251, 249, 252);
    expect(advice[0]).toMatchObject({
      code: 'read-again',
      text: 'read point 2 again before anything else: if 250 µm was meant, it is refinished and nothing may go',
    });
    expect(advice.length).toBeGreaterThan(1);
    expect(evidence[0]?.text).toBe(
      'point 2 reads 25 µm, a tenth of its neighbours: keyed wrongly?',
    );
  });
  it('is no witness of how film varies over the other panels, nor takes anything from them', () => {
    const film = (value: number) => onFace('tested', 112, value, 113, 111, 115);
    const [sound, slipped, tenth] = [114, 1140, 11.4].map((value) => amongSound(film(value)));
    if (sound === undefined) throw new Error('three cars');
    const others = ({ survey }: typeof sound) =>
      survey.panels
        .filter(({ panel }) => panel.id !== 'tested')
        .map(({ condition, thinnest, budget }) => ({ condition, thinnest, budget }));
    for (const car of [slipped, tenth]) {
      for (const [i, other] of others(car ?? sound).entries()) {
        const as = others(sound)[i];
        expect(other.condition).toBe('original');
        // What a fifth even panel says of the spread is missing, and no more.
        expect(Math.abs((other.thinnest ?? 0) - (as?.thinnest ?? 0))).toBeLessThan(3);
        expect(Math.abs(other.budget - (as?.budget ?? 0))).toBeLessThan(0.2);
      }
    }
  });
  it('is told with what its panel would be if it was one, and what might go then', () => {
    const { panel } = amongSound(onFace('tested', 112, 1140, 113, 111, 115));
    const meant = amongSound(onFace('tested', 112, 114, 113, 111, 115)).panel;
    expect([panel.condition, panel.budget]).toEqual(['filler', 0]);
    expect(panel.keyingSlips).toEqual([
      { point: '2', thickness: 1140, factor: 10, condition: 'original', budget: meant.budget },
    ]);
    expect(panel.advice[0]?.text).toBe(
      `read point 2 again before anything else: if 114 µm was meant, it is original and ${meant.budget.toFixed(2)} µm may go`,
    );
  });
  it('is put right with all others of the car, for what each would be without', () => {
    const slips = [
      ...onFace('tested', 112, 1140, 113, 111, 115),
      ...onFace('other', 118, 119, 11.7, 121, 116),
    ];
    const meant = [
      ...onFace('tested', 112, 114, 113, 111, 115),
      ...onFace('other', 118, 119, 117, 121, 116),
    ];
    const panels = ['tested', 'other', 'third', 'fourth'].map((id) => plainPanel(id));
    const rest = ['third', 'fourth'].flatMap((id) => fiveAround(id, 115));
    const [read, right] = [slips, meant].map(
      (some) => surveyOf({ panels, readings: [...some, ...rest] }).panels,
    );
    expect(read?.slice(0, 2).map(({ keyingSlips }) => keyingSlips[0]?.budget)).toEqual(
      right?.slice(0, 2).map(({ budget }) => budget),
    );
  });
  it('is one alone: of two that read ten times the others neither is', () => {
    expect(painted(112, 1120, 1120, 112, 112).keyingSlips).toEqual([]);
  });
});

describe('a panel that nobody read', () => {
  it('has no film, zone, point that stands out or doubt, and is no matter of other sides', () => {
    for (const panel of [
      amongSound([]).panel,
      amongSound(fiveAround('tested', 60), { panel: { substrate: 'plastic' } }).panel,
    ]) {
      expect(panel).toMatchObject({
        film: null,
        moderation: null,
        uncertainty: null,
        thinnest: null,
        sureness: null,
        sides: { lost: [], cutBack: null },
        otherSide: null,
        also: [],
        topcoat: null,
        zones: [],
        lowPoints: [],
        highPoints: [],
        flagRule: 'none',
        keyingSlips: [],
        ashmanD: null,
      });
    }
  });
  it('was perhaps read on metal after all, where a gauge for metal showed something', () => {
    const plastic = (readings: Parameters<typeof amongSound>[0]) =>
      amongSound(readings, { panel: { substrate: 'plastic' } }).panel.advice.map(
        ({ text }) => text,
      );
    expect(plastic(fiveAround('tested', 60))).toEqual([
      'metal after all? State its substrate in the job',
      'ultrasonic gauge, or leave it alone',
    ]);
    expect(plastic([])).toEqual(['ultrasonic gauge, or leave it alone']);
  });
  it('is left alone where its clear was read as a layer, which is not used: nothing tells repaint there', () => {
    const clear = onFace('tested', 50, 51, 49).map((one) => ({ ...one, layer: 'clear' }));
    const { survey, panel } = amongSound([...fiveAround('tested', 121), ...clear], {
      panel: { substrate: 'plastic' },
    });
    expect(panel.budget).toBe(0);
    expect(panel.advice.map(({ text }) => text)).toEqual([
      'its clear was read, but no total tells whether that is the factory’s: leave it alone',
    ]);
    const note = survey.notes.find(({ code }) => code === 'layer-readings')?.text;
    expect(note).toContain('3 readings are of a single layer');
    expect(note).toMatch(/kept apart, not used$/);
  });
});

describe('a survey', () => {
  it('names the panels that its baseline is the middle of, and none where factories make it', () => {
    expect(amongSound(fiveAround('tested', 260)).survey.baselineMakers.map(({ id }) => id)).toEqual(
      ['sound-a', 'sound-b', 'sound-c', 'sound-d'],
    );
    const few = surveyOf({ panels: [plainPanel('a')], readings: fiveAround('a', 150) });
    expect([few.baseline, few.baselineMakers]).toEqual([112, []]);
    const none = surveyOf({ panels: [plainPanel('a')], readings: [] });
    expect([none.baseline, none.baselineMakers]).toEqual([null, []]);
  });
  it('holds a car of thick paint to its own baseline, and its panels to the line for any car besides', () => {
    // 35 % over 165 µm is over 222: the line of 200 µm for any car lies lower.
    const ids = ['a', 'b', 'c'];
    const survey = surveyOf({
      panels: [...ids, 'd'].map((id) => plainPanel(id)),
      readings: [...ids.flatMap((id) => fiveAround(id, 165)), ...fiveAround('d', 205)],
    });
    const panel = panelOf(survey, 'd');
    expect([panel.condition, panel.evidence[0]?.text]).toEqual([
      'refinished',
      'median 205.0 µm is over 200.0 µm, the line for any car',
    ]);
  });
  it('lists all panels of the template in walking order, read or not', () => {
    const survey = surveyOf({
      panels: ['c', 'a', 'b'].map((id) => plainPanel(id)),
      readings: fiveAround('b', 112),
    });
    expect(survey.panels.map(({ panel }) => panel.id)).toEqual(['c', 'a', 'b']);
  });
});
