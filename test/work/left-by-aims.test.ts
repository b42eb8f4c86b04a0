import { describe, expect, test } from 'vitest';
import { remark } from '../../src/base/remark.ts';
import type { PanelPlan } from '../../src/correction/plan/plan.ts';
import { exclusionsOf } from '../../src/work/exclusions.ts';
import { type AimedPlan, leftAsFound } from '../../src/work/left-as-found.ts';
import { MEDIUM, panel, plan, step } from './small-plans.ts';

const worked = (id: string): PanelPlan => panel(id, 1, [step(MEDIUM, 2, 10)]);
const left = (id: string, code: string): PanelPlan => ({
  ...panel(id, 1),
  reasons: [remark(code, 'why')],
});
const at = (name: string, ...panels: readonly PanelPlan[]): AimedPlan => ({
  aim: { name, share: 0.9 },
  plan: plan(...panels),
});

test('what is left for one reason at other aims stands apart', () => {
  const [roof, bonnet] = [left('roof', 'nothing-fits'), left('bonnet', 'nothing-fits')];
  const told = leftAsFound(
    [
      at('enhance', roof, worked('bonnet')),
      at('correct', worked('roof'), bonnet),
      at('full', worked('roof'), bonnet),
    ],
    () => false,
  );
  expect(told.map(({ panels, aims }) => [panels, aims])).toEqual([
    [['roof'], ['enhance']],
    [['bonnet'], ['correct', 'full']],
  ]);
  const crossed = leftAsFound(
    [at('enhance', roof, worked('bonnet')), at('full', worked('roof'), bonnet)],
    () => false,
  );
  expect(crossed.map(({ panels, aims }) => [panels, aims])).toEqual([
    [['roof'], ['enhance']],
    [['bonnet'], ['full']],
  ]);
  const alike = leftAsFound([at('enhance', roof, bonnet), at('full', worked('roof'))], () => false);
  expect(alike.map(({ panels, aims }) => [panels, aims])).toEqual([
    [['roof', 'bonnet'], ['enhance']],
  ]);
});

describe('that the paint of a panel is thin', () => {
  const thin = (one: PanelPlan): PanelPlan => ({
    ...one,
    survey: { ...one.survey, condition: 'thin' },
  });
  const codes = (one: PanelPlan): readonly string[] =>
    exclusionsOf([at('full', thin(one))]).map(({ code }) => code);

  test('is said where nothing needs correcting: nothing is left for want of paint', () => {
    expect(codes(left('roof', 'nothing-to-correct'))).toEqual(['thin-paint']);
    expect(codes(left('roof', 'nothing-fits'))).toEqual(['left-alone']);
  });

  test('is said of a panel of which one zone is worked, though the other is left', () => {
    const zones = [
      { ...worked('roof'), zone: 'thicker' as const },
      { ...left('roof', 'nothing-fits'), zone: 'thinner' as const },
    ];
    expect(codes({ ...left('roof', 'nothing-fits'), zones })).toContain('thin-paint');
  });
});
