/** A repaint that its own spot frees is worked no deeper than that spot showed it to be free of colour. */
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { at } from '../../../src/base/at.ts';
import { micrometres } from '../../../src/base/units.ts';
import type { SpotTrial } from '../../../src/correction/spot/spot-trial.ts';
import { bounded } from '../../../src/film/limits/allowance.ts';
import type { Limit, LimitCode } from '../../../src/film/limits/limit.ts';
import type { PanelSurvey } from '../../../src/film/survey.ts';
import { filmModel } from '../../../src/formats/models.ts';
import { heldToShown, withShownDepth } from '../../../src/tasks/survey/shown-at-spots.ts';
import type { PanelSpot } from '../../../src/tasks/survey/spots-on-record.ts';
import { askLeastcut } from '../../cli/ask-leastcut.ts';
import { temporaryFolder } from '../../cli/temporary-folder.ts';
import { untried } from '../../correction/shop.ts';
import { marks, model, trial } from '../../correction/spot-trials.ts';
import { amongSound, fiveAround } from '../../film/car-builder.ts';

const limit = (code: LimitCode, value: number): Limit => ({
  code,
  text: code,
  value: micrometres(value),
});
const sound = amongSound(fiveAround('tested', 112)).panel;
const freed = (...limits: readonly Limit[]): PanelSurvey => ({
  ...sound,
  topcoat: null,
  ...bounded(limits.length === 0 ? [limit('sound-panels', 3)] : limits),
});

const MILD = 'da/foam-soft/medium';
const SET = trial(MILD).combination.perSet;
const clean = (sets: number, rest: Partial<SpotTrial> = {}): SpotTrial =>
  trial(MILD, { sets, colourOnPad: false, cleared: 0.5, ...rest });
const made = (one: SpotTrial): PanelSpot => ({ trial: one, recorded: null });
const named = (one: SpotTrial): PanelSpot => ({
  trial: one,
  recorded: {
    written: {
      spot: one.spot,
      panel: 'tested',
      combination: one.combination.id,
      sets: one.sets,
      taken_um: 1,
      taken_sd_um: 0.2,
    },
    date: '2026-05-01',
    visit: 0,
    path: [],
    where: 'film record',
  } as unknown as NonNullable<PanelSpot['recorded']>,
});

function held(spots: readonly PanelSpot[], part = freed(), hasOwnSpot = true): PanelSurvey {
  const grounds = {
    madeSpots: new Map([['tested', spots]]),
    paint: { hasOwnSpot: () => hasOwnSpot, paintOf: () => untried },
    gauge: filmModel.measurement,
    scatterDof: model.spot.scatterDof,
  };
  return at(withShownDepth([part], grounds), 0);
}

describe('a repaint that its own spot frees', () => {
  test('gets what the sets of its deepest spot take in the middle, and says which', () => {
    const part = held([made(clean(1)), made(clean(2))]);
    expect(part.budget).toBeCloseTo(2 * SET, 12);
    expect(part.boundBy.code).toBe('spot-depth');
    expect(part.boundBy.text).toBe(
      `repaint is worked no deeper than its test spot showed free of colour: ${(2 * SET).toFixed(2)} µm, by 2 sets of ${MILD}; for more work that spot deeper first, and look at the pad`,
    );
  });

  test('gets no more where the spot went deeper than the other panels allow', () => {
    const part = held([made(clean(2))], freed(limit('sound-panels', 0.5)));
    expect([part.budget, part.boundBy.code]).toEqual([0.5, 'sound-panels']);
  });

  test('gets no more than its marks can have lost, however much is foretold', () => {
    const read = marks([230, 229.9], [231, 231], [229, 229], [230, 230.1], [231, 230.9]);
    const part = held([made(clean(3, { marks: read }))]);
    expect(part.budget).toBeGreaterThan(0.03);
    expect(part.budget).toBeLessThan(3 * SET - 0.1);
  });

  test('has what came off all over since a spot on record counted, and off none made just now', () => {
    const worked = (allOver: number | undefined): PanelSurvey => ({
      ...freed(),
      facts: {
        ...sound.facts,
        recorded: {
          mean: micrometres(1),
          sd: micrometres(0.2),
          ...(allOver === undefined
            ? {}
            : { allOver: { mean: micrometres(allOver), sd: micrometres(0.1) } }),
        },
      },
    });
    expect(held([named(clean(2))], worked(0.4)).budget).toBeCloseTo(2 * SET - 0.4, 12);
    expect(held([named(clean(2))], worked(9)).budget).toBe(0);
    expect(held([named(clean(2))], worked(0.4)).boundBy.text).toContain(
      `by 2 sets of ${MILD}, 0.40 µm that is gone since counted; for more`,
    );
    expect(held([named(clean(2))], worked(undefined)).budget).toBeCloseTo(2 * SET - 1, 12);
    expect(held([named(clean(2))]).budget).toBeCloseTo(2 * SET, 12);
    expect(held([made(clean(2))], worked(0.4)).budget).toBeCloseTo(2 * SET, 12);
  });

  test('has the same limit in each of its zones', () => {
    const zone = { ...freed(), zone: 'thicker' as const };
    const part = held([made(clean(1))], { ...freed(), zones: [zone] });
    expect(part.zones.map(({ budget }) => budget)).toEqual([SET]);
  });

  test.each([
    ['left colour unsaid', [made(clean(1, { colourOnPad: null }))]],
    ['is on record alone', [{ ...named(clean(1)), trial: null } as PanelSpot]],
    ['is none', []],
  ])('is held by no spot that %s', (_, spots) => {
    expect(held(spots).limits.map(({ code }) => code)).toEqual(['sound-panels']);
  });

  test('is another matter than a panel that no spot frees', () => {
    const spots = [made(clean(1))];
    const codes = (part: PanelSurvey) => part.limits.map(({ code }) => code);
    expect(codes(held(spots, freed(), false))).toEqual(['sound-panels']);
    expect(codes(held(spots, freed(limit('test-spot', 0))))).toEqual(['test-spot']);
    expect(codes(held(spots, freed(limit('sound-panels', 0))))).toEqual(['sound-panels']);
  });

  test('keeps that limit by whatever steps it is worked', () => {
    const part = held([made(clean(1))]);
    const asked = { topcoat: null, ...bounded([limit('sound-panels', 2)]) };
    expect(heldToShown(asked, part).budget).toBe(part.budget);
    expect(heldToShown(asked, freed())).toBe(asked);
  });
});

test('survey and plan of a car say so: no deeper than the spot went without colour', async () => {
  const folder = temporaryFolder();
  writeFileSync(
    join(folder, 'readings.csv'),
    [
      'panel,point,reading_um',
      ...['bonnet', 'roof', 'boot lid', 'left quarter'].flatMap((panel, i) =>
        [110, 112, 113, 111, 114].map((um, k) => `${panel},${k + 1},${um + i}`),
      ),
      ...[230, 233, 236, 231, 232].map((um, k) => `front left door,${k + 1},${um}`),
      '',
    ].join('\n'),
  );
  writeFileSync(
    join(folder, 'spots.csv'),
    [
      'spot,panel,machine,pad,product,sets,mark,before_um,after_um,defect,cleared_pct,haze_grade,colour_on_pad',
      ...['233.1,232.5', '229.0,228.5', '236.4,235.8'].map(
        (read, i) =>
          `R1,front left door,da,foam-soft,medium,1,${i + 1},${read},swirl-marks,45,0,no`,
      ),
      '',
    ].join('\n'),
  );
  const recordOf = async (command: string) => {
    const { out } = await askLeastcut([
      ...[command, `${folder}/readings.csv`, '--spots', `${folder}/spots.csv`],
      ...['--template', 'saloon', '--finish', 'clear-over-base', '--format', 'json'],
    ]);
    return JSON.parse(out).panels.find((one: { panel: string }) => one.panel === 'door-front-left');
  };
  const [survey, plan] = [await recordOf('survey'), await recordOf('plan')];
  expect(survey.budget_um).toBeGreaterThan(0.5);
  expect(survey.budget_um).toBeLessThan(1);
  expect(plan.budget_um).toBeCloseTo(survey.budget_um, 6);
  expect(plan.removal_um.median).toBeGreaterThan(0);
  expect(plan.removal_um.median).toBeLessThanOrEqual(plan.budget_um + 1e-6);
  expect(plan.reasons[0].text).toContain('that its spot showed free of colour: work that spot');
});
