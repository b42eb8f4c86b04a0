import { describe, expect, it } from 'vitest';
import { amongSound, fiveAround, panelOf } from '../car-builder.ts';

const painted = (days: number, centre: number) =>
  amongSound(fiveAround('tested', centre), {
    factsOf: (id) => ({ paintedDaysAgo: id === 'tested' ? days : null }),
  });

describe('a panel that the job says was painted', () => {
  it('is refinished by that word, whatever its total reads', () => {
    for (const centre of [85, 99, 112, 150, 260]) {
      const { panel } = painted(200, centre);
      expect([panel.condition, panel.topcoat, panel.sureness]).toEqual(['refinished', null, null]);
      expect(panel.evidence[0]?.text).toContain('painted 200 days ago, by the job');
      expect(panel.also).not.toContain('cut-back');
    }
  });
  it('gives nothing while it is fresh and nothing before a test spot later, never what factory clear would give', () => {
    expect(painted(30, 112).panel.boundBy.code).toBe('fresh-paint');
    expect(painted(90, 112).panel.boundBy.code).toBe('test-spot');
    for (const days of [30, 90]) {
      const { panel } = painted(days, 112);
      expect(panel.budget).toBe(0);
      expect(panel.limits.map(({ value }) => value)).toEqual(panel.limits.map(() => 0));
    }
  });
  it('says nothing of the usual film of the car, nor of how much that varies', () => {
    const { survey } = painted(200, 130);
    const without = amongSound([]).survey;
    expect(survey.baseline).toBe(without.baseline);
    expect(survey.spreadPrior).toEqual(without.spreadPrior);
    expect(panelOf(survey, 'sound-a').budget).toBe(panelOf(without, 'sound-a').budget);
  });
  it('says in one line how long ago, in the singular too', () => {
    expect(painted(1, 112).panel.boundBy.text).toBe('painted 1 day ago, under 90');
  });
});
