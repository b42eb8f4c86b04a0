import { describe, expect, it } from 'vitest';
import { micrometres } from '../../../src/base/units.ts';
import type { PanelFacts } from '../../../src/film/film-model.ts';
import { filmModel } from '../../../src/formats/models.ts';
import { earlierWorkAssumptions } from '../../../src/tasks/settings/earlier-work-assumption.ts';
import type { EffectiveFacts } from '../../../src/tasks/settings/panel-facts.ts';
import { knownFacts, plainPanel, plainTemplate } from '../../film/car-builder.ts';

const template = plainTemplate(plainPanel('roof'), plainPanel('bonnet'));

const effective = (facts: PanelFacts): EffectiveFacts =>
  Object.fromEntries(
    Object.entries(facts).map(([key, value]) => [key, { value, origin: 'job', where: 'job.json' }]),
  ) as EffectiveFacts;

const told = (taken: number | null, onRecord: number | null, takenSd = 1): readonly string[] => {
  const recorded = onRecord === null ? null : { mean: micrometres(onRecord), sd: micrometres(0.5) };
  const facts = effective({
    ...knownFacts,
    taken: taken === null ? null : micrometres(taken),
    takenSd: micrometres(takenSd),
    recorded,
  });
  return toldOf(new Map([['bonnet', facts]]), () => true);
};

const toldOf = (
  facts: ReadonlyMap<string, EffectiveFacts>,
  isRead: (id: string) => boolean,
): readonly string[] =>
  earlierWorkAssumptions(facts, template, filmModel.earlier, isRead).map(({ text }) => text);

describe('what a job states as taken', () => {
  it('is said to be taken as exact where no sd stands beside it, but for nothing at all', () => {
    expect(told(5, null, 0)).toEqual(['"taken_um" of bonnet taken as exact (no sd)']);
    expect(
      [told(0, null, 0), told(null, null, 0), told(5, null, 0.5)].map((one) => one.length),
    ).toEqual([0, 0, 0]);
  });
  it('is spoken of on panels that were read, and on every panel where it is stated of all', () => {
    const facts = effective({ ...knownFacts, taken: micrometres(5), takenSd: micrometres(0) });
    const bonnet = new Map([['bonnet', facts]]);
    const both = new Map([...bonnet, ['roof', facts] as const]);
    expect(toldOf(bonnet, (id) => id === 'roof')).toEqual([]);
    expect(toldOf(both, (id) => id === 'roof')).toEqual([
      '"taken_um" of every panel taken as exact (no sd)',
    ]);
    const three = plainTemplate(plainPanel('roof'), plainPanel('bonnet'), plainPanel('boot-lid'));
    const isRead = (id: string): boolean => id === 'roof';
    const [told] = earlierWorkAssumptions(both, three, filmModel.earlier, isRead);
    expect(told?.text).toBe('"taken_um" of roof taken as exact (no sd)');
  });
  it('is said to let more go where it is less than what is allowed for where nobody knows', () => {
    const { unknownLife } = filmModel.earlier;
    expect(told(1, null)).toEqual([
      '"taken_um" of bonnet lets more go than "unknown" (2 µm of topcoat, 4 µm of life)',
    ]);
    expect(told(unknownLife, null)).toEqual([]);
    expect(told(unknownLife - 0.1, null)).toHaveLength(1);
  });
});

describe('a job and a film record that both speak of earlier work on a panel', () => {
  it('are said to count both, with what to do where they tell of one work', () => {
    expect(told(5, 3)).toEqual([
      'what is stated as taken counts besides what is on record of bonnet: leave out of "taken_um" what the record holds',
    ]);
  });
  it('are no question where either says nothing, or that nothing went', () => {
    expect([told(0, 3), told(null, 3), told(5, 0), told(5, null)].flat()).toEqual([]);
  });
});
