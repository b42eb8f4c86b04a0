import { describe, expect, it } from 'vitest';
import { remark } from '../../../src/base/remark.ts';
import { micrometres, millimetres } from '../../../src/base/units.ts';
import type { RatedCandidate } from '../../../src/correction/plan/choose-steps.ts';
import {
  asElsewhere,
  cautionsOf,
  choiceReasons,
  defectRemarks,
  nothingFits,
  otherThanSurveyed,
} from '../../../src/correction/plan/plan-remarks.ts';
import type { Finish } from '../../../src/film/film-model.ts';
import type { Limit } from '../../../src/film/limits/limit.ts';
import type { PanelSurvey } from '../../../src/film/survey.ts';
import { amongSound, fiveAround, onFace, reading } from '../../film/car-builder.ts';
import { defect, shopWith } from '../shop.ts';
import { combination } from '../spot-trials.ts';

const allowing = (budget: number): Pick<PanelSurvey, 'boundBy' | 'budget'> => ({
  budget: micrometres(budget),
  boundBy: {
    ...remark('clear', 'the clear would be thin', budget),
    code: 'clear',
  } as Limit,
});

/** A way that clears so much, by one set of a combination. */
const way = (correction: number, id = 'da/foam-soft/fine'): RatedCandidate => ({
  steps: [{ combination: combination(id), sets: 1 }],
  removal: { median: micrometres(1), logSd: 0.5, withDepth: 0 },
  mean: 1.1,
  strongest: 0,
  pace: 10,
  correction,
  heldTo: 0.5,
});

describe('why nothing is done on a panel', () => {
  const { machines } = shopWith('rotary', 'da', 'hand');
  const why = (
    budget: number,
    best: RatedCandidate | undefined,
    ways = 9,
    { of = machines, flatWidth = 600, isHeldByFilm = true } = {},
  ) => {
    const { code, text, value } = nothingFits(allowing(budget), best, ways, {
      machines: of,
      flatWidth: millimetres(flatWidth),
      isHeldByFilm,
    });
    return [code, text, value];
  };

  it('is that nothing may go, by the limit that says so', () => {
    expect(why(0, undefined)).toEqual([
      'limit-clear',
      'nothing may go: the clear would be thin',
      0,
    ]);
  });

  it('is that the mildest steps take more than may go', () => {
    const [code, text, value] = why(0.35, undefined);
    expect([code, value]).toEqual(['nothing-fits', 0.35]);
    expect(text).toBe(
      '0.35 µm may go, the mildest steps take more: a softer pad or a finer product takes less',
    );
  });

  it('is that the shop has nothing strong enough, where the film is not what holds it back', () => {
    const [code, text, value] = why(5, way(0.07), 9, { isHeldByFilm: false });
    expect([code, value]).toEqual(['shop-too-mild', 5]);
    expect(text).toBe(
      '5.00 µm may go, and what the shop has clears 7 % of the marks at most: a stronger pad, product or machine clears more',
    );
  });

  it('is that what may go clears too little, with how much', () => {
    const [code, text, value] = why(0.35, way(0.07));
    expect([code, value]).toEqual(['not-worth-it', 0.35]);
    expect(text).toBe('the 0.35 µm that may go would clear 7 % of the marks: not worth the film');
  });

  it('is what the shop lacks, where no way by machine keeps to technique', () => {
    const lacking = (flatWidth: number, ...ids: readonly string[]) => {
      const [code, text] = why(3, way(0.05), 0, { of: shopWith(...ids).machines, flatWidth });
      expect(code).toBe('no-technique');
      return text;
    };
    expect(lacking(600, 'hand')).toBe(
      'the shop has no machine, and by hand the marks hardly clear',
    );
    expect(lacking(600, 'rotary', 'hand')).toBe(
      'every machine of the shop is a rotary, which leaves holograms: the last step needs a dual action, and by hand the marks hardly clear',
    );
    expect(lacking(100, 'rotary', 'da', 'hand')).toBe(
      'no machine of the shop lies flat here and ends without rotary holograms',
    );
    for (const [flatWidth, machine] of [
      [600, 'da-small'],
      [150, 'da'],
    ] as const)
      expect(lacking(flatWidth, 'rotary', machine, 'hand')).toBe(
        'no pad and product of the shop end without haze: the last step needs a softer pad or a finer product',
      );
  });
});

describe('why a panel is worked as it is', () => {
  const { panel } = amongSound(fiveAround('tested', 112));
  const survey = { ...panel, ...allowing(2.5) };
  const { machines } = shopWith('rotary', 'da', 'hand');
  const by = { machines, isHeldByFilm: true, isShort: true };

  it('is the limit that binds, where the aim is out of reach', () => {
    expect(choiceReasons('lighter', survey, by)).toMatchObject([
      {
        code: 'aim-out-of-reach',
        text: 'the aim takes more than the 2.50 µm that may go: the clear would be thin',
        value: 2.5,
      },
    ]);
  });

  it('is by hand because no machine would do, and needs no reason where it is polished', () => {
    expect(choiceReasons('hand', survey, by)).toEqual([
      remark(
        'by-hand',
        'by hand: no pad of a machine that may end a panel lies flat, or the mildest machine step takes too much',
      ),
    ]);
    expect(choiceReasons('polish', survey, by)).toEqual([]);
  });

  it('is what the shop has, where all of it takes less than may go', () => {
    const told = choiceReasons('lighter', survey, { ...by, isHeldByFilm: false });
    expect(told.map(({ code, text, value }) => [code, text, value])).toEqual([
      [
        'shop-too-mild',
        'what the shop has clears no more, though more may go: a stronger pad, product or machine clears more',
        2.5,
      ],
    ]);
  });

  it('is by hand in a shop without a machine, and that no more clears so where it falls short', () => {
    const hand = { machines: shopWith('hand').machines, isHeldByFilm: false, isShort: true };
    const texts = (more: Partial<typeof hand>) =>
      choiceReasons('hand', survey, { ...hand, ...more }).map(({ text }) => text);
    const alone = 'by hand: the shop has no machine';
    expect(texts({})).toEqual([alone, 'by hand no more clears, though more may go']);
    expect(texts({ isShort: false })).toEqual([alone]);
    expect(texts({ isHeldByFilm: true })).toEqual([alone]);
  });

  it('is that other panels are worked so, with what would be as good', () => {
    const [own, other] = [way(0.8), way(0.8, 'da/foam-medium/medium')];
    expect(asElsewhere(own, own)).toEqual([]);
    expect(asElsewhere(other, own)).toEqual([
      remark(
        'as-elsewhere',
        'as other panels are worked, for fewer set-ups: da/foam-soft/fine×1 would be as good here',
      ),
    ]);
  });
});

describe('that more or less may go by the planned steps than the survey says', () => {
  const told = (ofSteps: number) =>
    otherThanSurveyed(allowing(2), allowing(ofSteps)).map(({ text, value }) => [text, value]);

  it('is said with both, and with how much more', () => {
    expect(told(2.5)).toEqual([
      [
        '2.00 µm may go by a step not tried on this paint, as the survey says; these steps are foretold better, so 2.50 µm',
        0.5,
      ],
    ]);
    expect(told(1.75)).toEqual([
      [
        '2.00 µm may go by a step not tried on this paint, as the survey says; these steps are foretold worse, so 1.75 µm',
        -0.25,
      ],
    ]);
  });

  it('is not said where both read alike', () => {
    expect([2, 2.004, 1.996].flatMap(told)).toEqual([]);
    expect([2.006, 1.994].flatMap(told)).toHaveLength(2);
  });
});

describe('what is said of defects', () => {
  it('names deep ones and those that no polishing removes, and no general one', () => {
    const said = defectRemarks(
      [
        defect('swirl-marks', 3),
        defect('bird-etching', 2),
        defect('orange-peel', 1),
        defect('deep-scratches', 0),
        defect('clear-coat-failure', 1),
      ],
      { statistics: null, topcoat: null },
    );
    expect(said.map(({ code, text }) => [code, text])).toEqual([
      ['local-defect', 'bird etching of grade 2: local work or left'],
      ['not-polishing', 'orange peel is not a polishing matter'],
    ]);
  });
});

describe('what to mind while a panel is worked', () => {
  const figures = { edgeWidth: millimetres(25), heat: shopWith('da').heat };
  const step = (id: string) => ({ combination: combination(id), sets: 1 });
  const plain = () => amongSound(fiveAround('tested', 112)).panel;
  const said = (...args: Parameters<typeof cautionsOf>) =>
    cautionsOf(...args).map(({ code, text }) => [code, text]);

  it('is nothing on a plain panel by dual action', () => {
    expect(said(plain(), [step('da/foam-medium/medium')], figures)).toEqual([]);
  });

  it('is the rotary’s heat wherever one is used, with the temperatures at which to slow and stop', () => {
    const steps = [step('rotary/foam-medium/medium'), step('da/foam-soft/fine')];
    expect(said(plain(), steps, figures)).toEqual([
      [
        'rotary-heat',
        `rotary: keep it moving, slow down at ${figures.heat.caution} °C, stop at ${figures.heat.stop} °C`,
      ],
    ]);
  });

  it('is to keep off edges that were read apart, and off low points', () => {
    const readings = [
      ...onFace('tested', 112, 113, 90, 111, 88, 112, 112, 113, 111),
      reading('tested', 'e1', 85, { place: 'edge' }),
    ];
    const { panel } = amongSound(readings);
    expect(panel.lowPoints.length).toBeGreaterThan(1);
    expect(said(panel, [], figures)).toEqual([
      ['edges-read', 'edge points were read apart: pad off the outer 25 mm'],
      ['low-points', `low at ${panel.lowPoints.join(', ')}: fewer passes there`],
    ]);
  });

  it('is that few points were read, and how many more to read before it is worked', () => {
    const few = (count: number) =>
      said(amongSound(fiveAround('tested', 112).slice(0, count)).panel, [], figures);
    expect(few(2)).toEqual([['more-points', 'only 2 points: read 3 more points a panel first']]);
    expect(few(3)).toEqual([['more-points', 'only 3 points: read 2 more points a panel']]);
    expect(few(4)).toEqual([['more-points', 'only 4 points: read 1 more point a panel']]);
    expect(few(5)).toEqual([]);
  });

  it('begins with what came off too far at a visit on record', () => {
    const [mean, sd, allowed] = [micrometres(3), micrometres(0.2), micrometres(0.5)];
    const overruns = [{ date: '2025-11-20', mean, sd, allowed, surely: true }];
    const { panel } = amongSound(fiveAround('tested', 112), {
      facts: { recorded: { mean, sd, overruns } },
    });
    expect(said(panel, [step('rotary/foam-medium/medium')], figures)).toEqual([
      ['overrun-on-record', expect.stringContaining('on 2025-11-20 more came off than might go')],
      ['rotary-heat', expect.stringContaining('rotary: keep it moving')],
    ]);
  });

  it('is not an edge where a point of another place was read apart', () => {
    const { panel } = amongSound(fiveAround('tested', 112));
    const apart = [{ ...reading('tested', 'j1', 85), place: 'jamb' }];
    expect(
      cautionsOf({ ...panel, otherPoints: apart } as unknown as PanelSurvey, [], figures),
    ).toEqual([]);
  });

  it('is that colour on the pad is normal, on single-stage paint of any kind and no other', () => {
    const colour = ['colour-on-pad', 'colour on the pad is normal on single-stage paint'];
    for (const finish of ['single-stage-solid', 'single-stage-metallic'] as const) {
      const { panel } = amongSound(fiveAround('tested', 112), { facts: { finish } });
      expect(said(panel, [], figures)).toEqual([colour]);
    }
    const { panel } = amongSound(fiveAround('tested', 112), { facts: { finish: 'lacquer' } });
    expect(said(panel, [], figures)).toEqual([]);
  });

  it('never is that colour is normal on repaint, which may have a clear whatever the car left the factory with', () => {
    const repainted = (finish: Finish) =>
      said(amongSound(fiveAround('tested', 220), { facts: { finish } }).panel, [], figures);
    const stop = [
      'colour-on-repaint',
      'repainted, perhaps with a clear: first colour on the pad: stop, no more there',
    ];
    expect(repainted('single-stage-solid')).toEqual([stop]);
    expect(repainted('lacquer')).toEqual([stop]);
    expect(repainted('clear-over-base')).toEqual([]);
    // What the job states of the panel itself is what it was painted with.
    const facts = { finish: 'single-stage-solid', isOwnFinish: true } as const;
    const stated = amongSound(fiveAround('tested', 220), { facts }).panel;
    expect(said(stated, [], figures)).toEqual([
      ['colour-on-pad', 'colour on the pad is normal on single-stage paint'],
    ]);
  });
});
