import { describe, expect, test } from 'vitest';
import { micrometres as um } from '../../../src/base/units.ts';
import { samePlace, type WorkedPlace } from '../../../src/correction/spot/same-place.ts';
import type { NextCode } from '../../../src/correction/spot/spot-next.ts';
import type { RemovedFilm, SpotTrial } from '../../../src/correction/spot/spot-trial.ts';
import { combination, trial } from '../spot-trials.ts';

const MEDIUM = 'da/foam-medium/medium';
const HEAVY = 'da/microfibre/heavy';
const FINE = combination('da/foam-medium/fine');

const place = (
  one: SpotTrial,
  removed: number | null,
  allowed: number | null = 3.29,
  gone = removed ?? 0,
): WorkedPlace => ({
  trial: one,
  removed: removed === null ? null : ({ mean: um(removed) } as RemovedFilm),
  allowed: allowed === null ? null : um(allowed),
  gone: um(gone),
});

const told = (code: NextCode, places: readonly WorkedPlace[], step: string | null = FINE.id) => {
  const trials = places.map((one) => one.trial);
  const ladder = [MEDIUM, HEAVY].map((id) => ({ combination: combination(id) }));
  return samePlace(
    { code, combination: step === null ? null : combination(step) },
    { trials, ladder: ladder as never, aim: 0.85 },
    places,
  ).map((one) => [one.code, one.text]);
};

const hazy = trial(HEAVY, { spot: 'S2', cleared: 0.92, haze: 2.5 });

describe('where a place is worked on', () => {
  test('that has lost more than might go there, it is said before, with what is to be done first', () => {
    expect(told('refine', [place(hazy, 3.9)])).toEqual([
      [
        'spot-place-short',
        'on the place of test spot S2 a limit may be passed: it took 3.9 µm, da/foam-medium/fine takes about 0.40 µm more, and 3.29 µm might go by its marks. Run survey with --spots first; if too much came off, leave that place, and try a milder step or fewer sets on a fresh one',
      ],
    ]);
  });

  test('the step that comes counts, and nothing is said where both may go', () => {
    const codes = (removed: number) => told('refine', [place(hazy, removed)]).map(([code]) => code);
    expect(codes(3.29 - FINE.perSet)).toEqual([]);
    expect(codes(3.29 - FINE.perSet + 0.01)).toEqual(['spot-place-short']);
  });

  test('what others took that may be the same place counts with it', () => {
    expect(told('refine', [place(hazy, 1)])).toEqual([]);
    expect(told('refine', [place(hazy, 1, 3.29, 3)])[0]?.[1]).toMatch(
      /it took 3\.0 µm with those that may be the same place, /,
    );
  });

  test('of which the marks do not tell what may go, that is said', () => {
    const unknown = [
      [
        'spot-place-unknown',
        'what may still go at the place of test spot S2 its marks do not tell: run survey with --spots before it is worked on',
      ],
    ];
    expect(told('refine', [place(hazy, null)])).toEqual(unknown);
    expect(told('refine', [place(hazy, 1, null)])).toEqual(unknown);
  });

  test('only the places of the step that is gone on with are told of', () => {
    const [left, cleared] = [0.5, 0.9].map((share) =>
      trial(HEAVY, { spot: `${share}`, cleared: share }),
    );
    if (left === undefined || cleared === undefined) throw new Error('two trials');
    const other = trial(MEDIUM, { spot: 'M', cleared: 0.2 });
    const spots = (code: NextCode, places: readonly WorkedPlace[], step: string) =>
      told(code, places, step).map(([, text]) => /test spot (\S+)/.exec(text ?? '')?.[1]);
    const places = [place(left, 9), place(cleared, 9), place(other, 9)];
    expect(spots('refine', places, FINE.id)).toEqual(['0.9']);
    expect(spots('again', [place(left, 9), place(other, 9)], HEAVY)).toEqual(['0.5']);
    expect(spots('again', [place(left, 9), place(other, 9)], MEDIUM)).toEqual(['M']);
  });

  test('nothing is said of a place where the next step goes on elsewhere, or stops', () => {
    for (const code of ['done', 'step-up', 'start'] as const)
      expect(told(code, [place(hazy, 3.9)]), code).toEqual([]);
    expect(told('stop-ladder', [place(hazy, 3.9)], null)).toEqual([]);
  });
});
