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
} from '../../../src/correction/plan/plan-remarks.ts';
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
    { of = machines, flatWidth = 600 } = {},
  ) => {
    const { code, text, value } = nothingFits(allowing(budget), best, ways, {
      machines: of,
      flatWidth: millimetres(flatWidth),
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
    expect(text).toBe('0.35 µm may go, the mildest steps take more');
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

  it('is the limit that binds, where the aim is out of reach', () => {
    expect(choiceReasons('lighter', survey)).toMatchObject([
      {
        code: 'aim-out-of-reach',
        text: 'the aim takes more than the 2.50 µm that may go: the clear would be thin',
        value: 2.5,
      },
    ]);
  });

  it('is by hand because no machine would do, and needs no reason where it is polished', () => {
    expect(choiceReasons('hand', survey)).toEqual([
      remark(
        'by-hand',
        'by hand: no pad of a machine that may end a panel lies flat, or the mildest machine step takes too much',
      ),
    ]);
    expect(choiceReasons('polish', survey)).toEqual([]);
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
    expect(few(4)).toEqual([['more-points', 'only 4 points: read 1 more point a panel first']]);
    expect(few(5)).toEqual([]);
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
});
