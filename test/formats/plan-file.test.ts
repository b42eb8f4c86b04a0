import { describe, expect, test } from 'vitest';
import { readPlanFile } from '../../src/formats/plan-file.ts';
import { recordedOutputs } from './recorded-files.ts';

const step = {
  machine: 'da',
  pad: 'foam-medium',
  product: 'medium',
  sets: 3,
  passes: 4,
  removal_um: 2.7,
  time_min: 20,
};
const roof = {
  panel: 'roof',
  verdict: 'polish',
  steps: [step],
  // ln-SD .5: e^(1.644854·.5)
  removal_um: { median: 3, mean: 3.4, low: 1.318, high: 3 * Math.exp(1.6448536 * 0.5) },
  zones: [],
};
const plan = { schema: 'leastcut/plan/1', vehicle: 'FH-1', panels: [roof], order: [] };
const read = (text: object) => readPlanFile('plan.json', JSON.stringify(text, null, 1));

describe('a plan read again', () => {
  test('is what was to be worked and to be taken, whatever else the record holds', () => {
    const { value, diagnostics } = read(plan);
    expect(diagnostics).toEqual([]);
    const [panel] = value?.value.panels ?? [];
    expect(panel?.steps).toEqual([{ combination: 'da/foam-medium/medium', sets: 3, removal: 2.7 }]);
    expect(panel?.removal?.median).toBe(3);
    expect(panel?.removal?.logSd).toBeCloseTo(0.5, 6);
  });

  test('foretold nothing of a panel that it leaves alone', () => {
    const left = {
      ...roof,
      verdict: 'leave',
      steps: [],
      removal_um: { median: 0, mean: 0, low: 0, high: 0 },
    };
    expect(read({ ...plan, panels: [left] }).value?.value.panels[0]?.removal).toBeNull();
  });

  test('has its zones, each by its name', () => {
    const zones = [
      { ...roof, zone: 'thinner', points: [] },
      { ...roof, zone: 'thicker', points: [] },
    ];
    const [panel] = read({ ...plan, panels: [{ ...roof, zones }] }).value?.value.panels ?? [];
    expect(panel?.zones.map(({ zone, path }) => [zone, path.at(-1)])).toEqual([
      ['thinner', 0],
      ['thicker', 1],
    ]);
  });

  test('keeps the stages of the trade in their order, or is refused with the reason', () => {
    const messages = (...stages: readonly string[]) =>
      read({ ...plan, stages: stages.map((stage) => ({ stage })) }).diagnostics.map(
        ({ code, message, at }) => [code, message, at?.line],
      );
    const washed = ['pre-wash', 'wash', 'tar', 'wash-again', 'clay', 'dry'];
    expect(messages(...washed)).toEqual([]);
    const swapped = messages('pre-wash', 'wash', 'clay', 'tar', 'wash-again', 'dry');
    expect(swapped).toEqual([
      [
        'stage-order',
        '"clay" stands before "wash-again": the solvent must be off the paint before clay',
        expect.any(Number),
      ],
    ]);
    const early = messages('wash', 'dry', 'inspect', 'read', 'mask', 'finish', 'clay');
    expect(early.map(([, message]) => message)).toContain(
      '"finish" stands before "clay": a machine would grind in what is not off yet',
    );
  });

  test('keeps its days to that order too, and to the time that a coating cures', () => {
    const stages = [{ stage: 'coating', wait_min: 720 }, { stage: 'glass-last' }];
    const told = (...glassDay: readonly number[]) =>
      read({
        ...{ ...plan, stages, scope: { hours_per_day: 8 } },
        days: [
          { day: 1, stages: [{ stage: 'coating', clock_min: 160 }] },
          ...glassDay.map((day) => ({ day, stages: [{ stage: 'glass-last', clock_min: 12 }] })),
        ],
      }).diagnostics.map(({ code, message, at }) => [code, message, at?.lineText?.trim()]);
    expect(told(2)).toEqual([]);
    expect(told(1)).toEqual([
      [
        'stage-order',
        '"glass-last" is begun before "coating" has waited: 720\u00a0min pass after it',
        '"stage": "glass-last",',
      ],
    ]);
    const swapped = [
      { day: 2, stages: [{ stage: 'coating', clock_min: 160 }] },
      { day: 1, stages: [{ stage: 'glass-last', clock_min: 12 }] },
    ];
    expect(read({ ...plan, days: swapped }).diagnostics.map(({ message }) => message)).toEqual([
      '"glass-last" stands before "coating": glass is cleaned last: all else smears it',
    ]);
  });

  test('is never refused as the program writes it', () => {
    const plans = recordedOutputs().filter(({ text }) => text.includes('"leastcut/plan/1"'));
    const read = plans.map(({ text }) => readPlanFile('plan.json', text));
    expect(read.filter(({ value }) => value !== undefined).length).toBeGreaterThan(5);
    const told = read.flatMap(({ diagnostics }) => diagnostics);
    expect(told.filter(({ code }) => code === 'stage-order')).toEqual([]);
  });

  test('is refused where it is the record of another command, or of a plan that came to nothing', () => {
    const messages = (text: object) => read(text).diagnostics.map(({ message }) => message);
    expect(messages({ ...plan, schema: 'leastcut/survey/1' })[0]).toBe(
      'this is a survey file, where a plan file is wanted',
    );
    const { panels: _, ...failed } = plan;
    expect(messages(failed)).toEqual([
      '"panels" is missing; it takes a list, each entry an object: { … }',
    ]);
  });
});
