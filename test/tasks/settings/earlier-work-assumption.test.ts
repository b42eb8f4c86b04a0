import { describe, expect, it } from 'vitest';
import { micrometres } from '../../../src/base/units.ts';
import type { PanelFacts } from '../../../src/film/film-model.ts';
import { earlierWorkAssumption } from '../../../src/tasks/settings/earlier-work-assumption.ts';
import type { EffectiveFacts } from '../../../src/tasks/settings/panel-facts.ts';
import { knownFacts, plainPanel, plainTemplate } from '../../film/car-builder.ts';

const template = plainTemplate(plainPanel('roof'), plainPanel('bonnet'));

const effective = (facts: PanelFacts): EffectiveFacts =>
  Object.fromEntries(
    Object.entries(facts).map(([key, value]) => [key, { value, origin: 'job', where: 'job.json' }]),
  ) as EffectiveFacts;

const told = (taken: number | null, onRecord: number | null): readonly string[] => {
  const recorded = onRecord === null ? null : { mean: micrometres(onRecord), sd: micrometres(0.5) };
  const facts = effective({
    ...knownFacts,
    taken: taken === null ? null : micrometres(taken),
    recorded,
  });
  return earlierWorkAssumption(new Map([['bonnet', facts]]), template).map(({ text }) => text);
};

describe('a job and a film record that both speak of earlier work on a panel', () => {
  it('are said to count both, with what to do where they tell of one work', () => {
    expect(told(2, 3)).toEqual([
      'what is stated as taken counts besides what is on record of bonnet: leave out of "taken_um" what the record holds',
    ]);
  });
  it('are no question where either says nothing, or that nothing went', () => {
    expect([told(0, 3), told(null, 3), told(2, 0), told(2, null)].flat()).toEqual([]);
  });
});
