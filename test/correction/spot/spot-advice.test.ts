import { describe, expect, test } from 'vitest';
import { degreesCelsius, micrometres as um } from '../../../src/base/units.ts';
import {
  evidenceRemark,
  nextRemark,
  trialAdvice,
} from '../../../src/correction/spot/spot-advice.ts';
import type { NextCode } from '../../../src/correction/spot/spot-next.ts';
import { removedFilm, type SpotTrial } from '../../../src/correction/spot/spot-trial.ts';
import { filmModel } from '../../../src/formats/models.ts';
import { combination, marks, model, trial } from '../spot-trials.ts';

const MEDIUM = 'da/foam-medium/medium';

describe('what to do next', () => {
  const said = (code: NextCode, finish: 'unknown' | 'clear-over-base' = 'clear-over-base') => {
    const named = code.startsWith('stop-') && code !== 'stop-risk' ? null : combination(MEDIUM);
    const { code: remarkCode, text } = nextRemark(
      { code, combination: named },
      {
        trials: [trial(MEDIUM, { colourOnPad: true })],
        finishOf: () => finish,
        model,
        aim: 0.85,
        overruns: [],
      },
    );
    expect(remarkCode).toBe(`spot-${code}`);
    return text;
  };

  test('is said in one sentence with the combination and the aim', () => {
    expect(said('start')).toBe(
      `start with ${MEDIUM}: the mildest that may do within ${model.spot.sets} sets`,
    );
    expect(said('again')).toBe(
      `one more set of ${MEDIUM} on the same place: it may still reach 85 %, and two sets tell more than one`,
    );
    expect(said('step-up')).toBe(
      `not cleared: next rung ${MEDIUM}, on a fresh place, and wipe before you look`,
    );
    expect(said('refine')).toBe(
      `cleared but hazy: refine with ${MEDIUM} on the same place, then look again; that is no trial of its own, and gets no row`,
    );
    expect(said('stop-risk')).toBe(
      `stop: the next rung, ${MEDIUM}, takes more in one set than may go here; leave the rest, or settle for a lower aim`,
    );
    expect(said('stop-ladder')).toBe(
      `stop: no combination of the shop is likely to reach 85 % within ${model.spot.sets} sets`,
    );
  });

  test('tells in how many sets it was cleared, the fewest of several trials, and where that is more than a chance is told of', () => {
    const done = (...trials: readonly SpotTrial[]) =>
      nextRemark(
        { code: 'done', combination: combination(MEDIUM) },
        { trials, finishOf: () => 'clear-over-base', model, aim: 0.85, overruns: [] },
      ).text;
    const cleared = (sets: number) => trial(MEDIUM, { cleared: 0.86, sets });
    expect(done(cleared(1))).toBe(`${MEDIUM} did it in 1 set: no need for a stronger one`);
    expect(done(cleared(3))).toBe(
      `${MEDIUM} did it in 3 sets: no need for a stronger one (its chance below is of 2 sets)`,
    );
    const others = [
      trial(MEDIUM, { cleared: 0.5, sets: 1 }),
      trial('da/wool/heavy', { cleared: 1 }),
    ];
    expect(done(...others, cleared(3), cleared(2))).toBe(
      `${MEDIUM} did it in 2 sets: no need for a stronger one`,
    );
  });

  test('goes on at a place where a limit may be passed only once a survey lets it', () => {
    const said = (code: NextCode) =>
      nextRemark(
        { code, combination: combination(MEDIUM) },
        {
          ...{ trials: [], finishOf: () => 'clear-over-base' as const, model, aim: 0.85 },
          ...{ overruns: [], isPlaceShort: true },
        },
      ).text;
    expect(said('refine')).toContain(
      `cleared but hazy: once survey --spots lets more go there, refine with ${MEDIUM} on the same place`,
    );
    expect(said('again')).toMatch(/^once survey --spots lets more go there, one more set of /);
  });

  test('on colour depends on whether the finish is known', () => {
    expect(said('stop-colour')).toBe(
      'stop: colour on the pad under clear over base means that you are through the clear, or that the finish is not what was said; nothing is learnt from such a trial',
    );
    expect(said('stop-colour', 'unknown')).toBe(
      'stop: colour on the pad means single-stage paint, or that you are through the clear; find out which first; nothing is learnt from such a trial',
    );
  });
});

test('colour is of an unknown finish where one trial that gave colour was on such paint', () => {
  const known = trial(MEDIUM, { panel: 'wing' });
  const unknown = trial(MEDIUM, { panel: 'roof' });
  const seen = (one: SpotTrial): SpotTrial => ({ ...one, colourOnPad: true });
  const mayBeSingleStage = (...trials: readonly SpotTrial[]) =>
    nextRemark(
      { code: 'stop-colour', combination: null },
      {
        trials,
        finishOf: (panel) => (panel === 'roof' ? 'unknown' : 'clear-over-base'),
        model,
        aim: 0.85,
        overruns: [],
      },
    ).text.startsWith('stop: colour on the pad means single-stage paint, or');
  expect(mayBeSingleStage(seen(known), seen(unknown))).toBe(true);
  expect(mayBeSingleStage(known, seen(unknown))).toBe(true);
  expect(mayBeSingleStage(seen(known), unknown)).toBe(false);
});

describe('what a trial gives occasion to', () => {
  const film = (...pairs: readonly (readonly [number, number])[]) =>
    removedFilm(marks(...pairs), filmModel.measurement, model.spot.scatterDof);
  const clear = film([112, 104], [110, 102]);
  const advice = (rest: Partial<SpotTrial>, removed = clear) =>
    trialAdvice([{ trial: trial(MEDIUM, { cleared: 0.5, ...rest }), removed }], model).map(
      ({ code, text }) => [code, text],
    );

  test('is nothing where film went, the eye judged and nothing was warm', () => {
    expect(advice({})).toEqual([]);
  });

  test('is that nobody judged, or nobody read', () => {
    expect(advice({ cleared: null })).toEqual([
      ['spot-not-judged', 'A: nobody judged by eye what went, so the ladder stays where it is'],
    ]);
    expect(advice({}, null)).toEqual([
      [
        'spot-no-film',
        'A: no film was read, so it says nothing of the rate: read marks before and after',
      ],
    ]);
  });

  test('is what the gauge can tell where the removal is lost in its noise', () => {
    // s = 1.5 at two marks: 1.96·1.5 µm half of the time, (1.96 + 1.645)·1.5 for sure.
    expect(advice({}, film([112, 111], [110, 109]))).toEqual([
      [
        'spot-unresolved',
        expect.stringMatching(
          /^A: what went is lost in the gauge's noise, \d\.\d µm can be told from nothing at best, \d\.\d µm for sure$/,
        ),
      ],
    ]);
    expect(advice({}, film([110, 111], [110, 111]))[0]?.[0]).toBe('spot-unresolved');
  });

  test('is to read again where film came on', () => {
    expect(advice({}, film([104, 112], [102, 110]))).toEqual([
      [
        'spot-film-gained',
        'A: the film reads 8.0 µm more than before, so nothing is learnt from it of paint or rates: check the gauge, wipe off polish and wax, let it cool, read again',
      ],
    ]);
  });

  test('takes what just can be told from nothing as film that went, and as much the other way as noise', () => {
    const told = (mean: number) =>
      clear === null
        ? []
        : advice({}, { ...clear, mean: um(mean), resolvable: um(2), sure: um(4) });
    expect(told(2)).toEqual([]);
    expect(told(-2)[0]?.[1]).toBe(
      "A: what went is lost in the gauge's noise, 2.0 µm can be told from nothing at best, 4.0 µm for sure",
    );
    expect(told(-2.1)[0]?.[0]).toBe('spot-film-gained');
  });

  test('is to let it cool, the sooner the warmer, and nothing at the line itself', () => {
    const { caution, stop } = model.heat;
    const at = (celsius: number) => advice({ temperature: degreesCelsius(celsius) });
    expect(at(caution)).toEqual([]);
    expect(at(caution + 1)).toEqual([
      [
        'spot-heat',
        `A: ${caution + 1} °C is over the caution of ${caution} °C: move the arm faster, or rest between passes`,
      ],
    ]);
    expect(at(stop)[0]?.[1]).toContain('over the caution');
    expect(at(stop + 1)).toEqual([
      [
        'spot-heat',
        `A: ${stop + 1} °C is over the ${stop} °C to stop at: let it cool, move faster, fewer passes at a time`,
      ],
    ]);
    expect(advice({ temperature: null })).toEqual([]);
  });

  test('is to work wetter where a note says that it dusted', () => {
    for (const note of ['a lot of dust', 'Powder on the sill', 'Staub'])
      expect(advice({ notes: ['fine', note] })).toEqual([
        [
          'spot-dusting',
          'A: it dusted: clean the pad, take less product and stop a pass earlier, before it runs dry',
        ],
      ]);
    expect(advice({ notes: ['industrial estate'] })).toEqual([]);
  });
});

test('what would tell more of a rate is said with what each further trial makes of it', () => {
  const { code, text } = evidenceRemark(MEDIUM, 0.4, [
    { marks: 5, repeats: 1, sets: 1, logSd: 0.3 },
    { marks: 10, repeats: 3, sets: 2, logSd: 0.2 },
  ]);
  expect(code).toBe('spot-more-evidence');
  // e^(1.6449·0.4) = 1.93, e^(1.6449·0.3) = 1.64, e^(1.6449·0.2) = 1.39.
  expect(text).toBe(
    `the rate of ${MEDIUM} is known ×/÷ 1.9 (90 %); one more trial would make it: 5 marks and 1 set ×/÷ 1.6, 10 marks read 3 times and 2 stacked sets ×/÷ 1.4`,
  );
});

describe('the haze of one that did it', () => {
  const told = (seen: number, follows: string | null) =>
    nextRemark(
      {
        code: 'done',
        combination: combination(MEDIUM),
        haze: {
          seen,
          held: 1,
          allowed: 0,
          follows: follows === null ? null : combination(follows),
        },
      },
      {
        trials: [trial(MEDIUM, { cleared: 0.86, sets: 2 })],
        ...{ finishOf: () => 'clear-over-base', model, aim: 0.85, overruns: [] },
      },
    ).text;

  test('is told as the plan holds it, with what follows, and when that may stay out', () => {
    expect(told(0, 'da/foam-soft/fine')).toBe(
      `${MEDIUM} did it in 2 sets: no need for a stronger one; seen clean here, it is held to leave haze of grade 1 all the same, as one clean spot may be so by its light or its luck, and the aim lets 0 stand: a plan has a refining step follow (da/foam-soft/fine); where good light shows neither haze nor marks before it, leave it out`,
    );
  });

  test('and that it stays, where the shop has nothing to refine it', () => {
    expect(told(0, null)).toContain(
      'the aim lets 0 stand: the shop has no step that would refine it',
    );
    expect(told(2, null)).toContain('; its haze of grade 2 stays, as the shop has no step');
  });
});
