/** Each sentence of a spot at a deep defect, by figures that are given. */
import { describe, expect, it } from 'vitest';
import { at } from '../../../src/base/at.ts';
import type { Remark } from '../../../src/base/remark.ts';
import { micrometres } from '../../../src/base/units.ts';
import {
  heldBack,
  heldToAim,
  lessThanOnPanel,
  mildestOfItsKind,
  overCut,
  tightestOf,
  whatComesOfIt,
} from '../../../src/correction/plan/local-remarks.ts';
import type { Spot, SpotPlace } from '../../../src/correction/plan/local-spot.ts';
import type { PanelPlan } from '../../../src/correction/plan/plan.ts';
import { amongSound, fiveAround } from '../../film/car-builder.ts';
import { defect } from '../shop.ts';
import { combination } from '../spot-trials.ts';

const { panel } = amongSound(fiveAround('tested', 112));
const scratch = defect('deep-scratches', 3);
const extra = [{ combination: combination('da-small/foam-medium/medium'), sets: 2 }];

/** A place from which so much goes and may go. */
const place = (taken: number, budget: number, name = 'clear'): SpotPlace => ({
  removal: { median: micrometres(taken), logSd: 0.5, withDepth: 0 },
  allowance: {
    topcoat: null,
    limits: [],
    budget: micrometres(budget),
    boundBy: { code: 'clear', text: `${name} would be thin`, value: micrometres(budget) },
  } as unknown as SpotPlace['allowance'],
  correction: 0.5,
  keepsFilm: true,
  keepsTechnique: true,
});

const spot = (correction: number, rest: Partial<Spot> = {}): Spot => ({
  steps: extra,
  removal: { median: micrometres(2), logSd: 0.5, withDepth: 0 },
  mean: 2.3,
  heldTo: 0.5,
  strongest: 3,
  pace: 10,
  correction,
  places: [place(2, 3)],
  ...rest,
});
/** No spot: what the panel's own steps take. */
const none = (correction: number, takes = 1, heldTo = 0.5): Spot =>
  spot(correction, {
    steps: [],
    removal: { median: micrometres(takes), logSd: 0.5, withDepth: 0 },
    heldTo,
  });
/** Parts of a panel from which so much may go. */
const parts = (...budgets: readonly number[]): readonly Pick<PanelPlan, 'survey'>[] =>
  budgets.map((budget) => ({ survey: { ...panel, budget: micrometres(budget) } }));
const said = (remarks: readonly Remark[]) => remarks.map(({ code, text }) => [code, text]);

describe('what comes of a deep defect', () => {
  const comes = (
    taken: Spot,
    own: Spot,
    {
      of = scratch,
      kept = [own],
      wasted = [],
      on = parts(3),
      isHeldByFilm = true,
    }: Partial<{
      of: typeof scratch;
      kept: readonly Spot[];
      wasted: readonly Spot[];
      on: ReturnType<typeof parts>;
      isHeldByFilm: boolean;
    }> = {},
  ) => {
    const { code, text, value } = whatComesOfIt(
      of,
      { taken, none: own, kept, wasted, isHeldByFilm },
      on,
    );
    return [code, text, value];
  };

  it('is what a spot clears, beside what the panel’s own steps clear', () => {
    expect(comes(spot(0.834), none(0.226))).toEqual([
      'local-spot',
      'deep scratches of grade 3: a spot clears 83 % (the panel’s own steps 23 %)',
      undefined,
    ]);
    // Even of a mark that is deeper than the clear.
    const deep = defect('deep-scratches', 3, 300);
    expect(comes(spot(0.3), none(0.1), { of: deep })[0]).toBe('local-spot');
  });

  it('is that no polishing mends it, where it is through the clear of every part it may lie in', () => {
    const deep = defect('deep-scratches', 3, 300);
    const told =
      'deep scratches of grade 3: left, 300 µm deep is more than all the paint there (112 µm): is the depth right? No polishing mends it, new paint does';
    const own = none(0.1);
    expect(comes(own, own, { of: deep })).toEqual(['deeper-than-clear', told, 300]);
    expect(comes(own, own, { of: deep, on: parts(3, 3) })).toEqual([
      'deeper-than-clear',
      told,
      300,
    ]);
    const thick = { survey: { ...panel, statistics: null, topcoat: null } };
    const oneOfTwo = comes(own, own, { of: deep, on: [...parts(3), thick] });
    expect(oneOfTwo[0]).toBe('local-left');
    expect(comes(own, own, { of: defect('deep-scratches', 3, 2) })[0]).toBe('local-left');
  });

  it('is that it is left to the panel’s own steps, if there are any', () => {
    expect(comes(none(0.4, 0.1), none(0.4, 0.1))).toEqual([
      'local-left',
      'deep scratches of grade 3: no spot, the panel’s own steps clear 40 % of such marks',
      undefined,
    ]);
  });

  it('is that it is left, with the most that what may go there clears', () => {
    const own = none(0, 0);
    expect(comes(own, own, { kept: [own, spot(0.04), spot(0.07), spot(0.05)] })).toEqual([
      'local-left',
      'deep scratches of grade 3: left, as what may go there clears 7 % of such marks at most',
      undefined,
    ]);
    expect(comes(own, own)[1]).toBe(
      'deep scratches of grade 3: left, as the mildest spot takes more than the 3.00 µm that may go there',
    );
    expect(comes(own, own, { isHeldByFilm: false })[1]).toBe(
      'deep scratches of grade 3: left, as the shop has nothing that ends a spot without haze',
    );
    const shut = { ...own, places: [place(0, 0)] };
    expect(comes(shut, shut)[1]).toBe('deep scratches of grade 3: left, as nothing may go there');
    expect(comes(own, own, { kept: [own, spot(0.01)], isHeldByFilm: false })[1]).toBe(
      'deep scratches of grade 3: left, as a spot by what the shop has clears 1 % of such marks at most',
    );
  });

  it('is that a spot is not worth its film, with the most it would clear and what that takes', () => {
    const wasted = [spot(0.11), spot(0.15, { places: [place(4.4, 4.51)] }), spot(0.12)];
    const for_ =
      'would clear 15 % of such marks for 4.40 µm of the 4.51 µm that may go there: not worth its film';
    const untouched = none(0, 0);
    expect(comes(untouched, untouched, { wasted })[1]).toBe(
      `deep scratches of grade 3: left, as a spot ${for_}`,
    );
    const own = none(0.04, 0.6);
    expect(comes(own, own, { wasted })[1]).toBe(
      `deep scratches of grade 3: no spot, the panel’s own steps clear 4 % of such marks; one ${for_}`,
    );
  });

  it('is that nothing more may go where too much came off', () => {
    expect(said([overCut(scratch)])).toEqual([
      [
        'local-over-cut',
        'deep scratches of grade 3: left, as more came off this panel on record than might, and nothing more may go',
      ],
    ]);
  });
});

describe('that less may go at a place than on the panel', () => {
  const why = (heldTo: number, ownHeldTo: number) =>
    said(
      lessThanOnPanel(spot(0.5, { heldTo }), none(0.1, 1, ownHeldTo), parts(3.2)),
    )[0]?.[1]?.replace(
      /^that is less than the 3\.20 µm that may go by the panel’s own steps, /u,
      '',
    );

  it('is because the spot is foretold less well than the panel’s own steps', () => {
    expect(why(0.6, 0.5)).toBe('as what a spot takes is foretold less well');
  });

  it('is because a place may be thin where it is foretold as well, or the panel has no steps', () => {
    const thin = 'as a single place may be thinner than the panel’s thinnest part is taken to be';
    expect(why(0.5, 0.5)).toBe(thin);
    expect(why(0.4, 0.5)).toBe(thin);
    expect(why(0.6, 0)).toBe(thin);
  });

  it('is told from a figure on that is read, of the part of which most may go', () => {
    const told = (...budgets: readonly number[]) =>
      said(
        lessThanOnPanel(
          spot(0.5, { places: budgets.map(() => place(2, 3)) }),
          none(0.1),
          parts(...budgets),
        ),
      ).map(([, text]) => /the (\S+) µm/u.exec(text ?? '')?.[1]);
    expect(told(3, 3)).toEqual([]);
    expect(told(3.3, 3.4)).toEqual(['3.40']);
    expect(told(3.4, 2)).toEqual(['3.40']);
  });
});

describe('what a spot is held by', () => {
  it('is the mildest of its kind, said of a spot and of nothing else', () => {
    expect(said(mildestOfItsKind(spot(0.5), 3))).toEqual([
      [
        'local-mildest',
        'the mildest combination of the smallest pad that clears as much in up to 3 sets: the less the panel’s own steps take there, the more is left to the spot',
      ],
    ]);
    expect(mildestOfItsKind(none(0.5), 3)).toEqual([]);
  });

  it('is the aim, told from just so much on as is worth its film', () => {
    // Binary fractions: .75 − .5 is .25 exactly.
    const held = (most: number) =>
      heldToAim(spot(0.5), [none(0.1), spot(most), spot(0.5)], {
        aim: 0.5,
        leastCorrection: 0.25,
      });
    expect(held(0.75)).toEqual([
      {
        code: 'local-aim',
        text: 'held to the aim of 50 %: a spot could clear up to 75 % of such marks',
        value: 75,
      },
    ]);
    expect(held(0.7499)).toEqual([]);
  });

  it('is the place with the least left over, the first of as tight ones', () => {
    const [wide, tight, same] = [place(1, 3), place(2, 3), place(1.5, 2.5)];
    expect(tightestOf(spot(0.5, { places: [wide, tight] }))).toBe(tight);
    expect(tightestOf(spot(0.5, { places: [tight, wide] }))).toBe(tight);
    expect(tightestOf(spot(0.5, { places: [same, tight] }))).toBe(same);
  });

  it('is the film of that place, with what more may go there and the limit that binds', () => {
    const better = spot(0.9, { places: [{ ...place(4, 3), keepsFilm: false }] });
    const held = (one: SpotPlace) => {
      const [told] = heldBack(spot(0.5, { places: [one] }), [better]);
      return [told?.code, told?.text, told?.value];
    };
    expect(held(place(2, 3.25, 'base'))).toEqual([
      'local-limit',
      '1.25 µm more may go there, and whatever clears more takes more than that: base would be thin',
      3.25,
    ]);
    expect(held(place(3, 3))[1]).toBe('no more may go there: clear would be thin');
    expect(held(place(0, 0))[1]).toBe('nothing may go there: clear would be thin');
    expect(at(heldBack(spot(0.5), [better]), 0).code).toBe('local-limit');
  });
});
