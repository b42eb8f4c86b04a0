/** Film that came on between two visits: by as much as paint adds, it is repaint till somebody knows better. */
import { describe, expect, it } from 'vitest';
import { micrometres } from '../../../src/base/units.ts';
import { amongSound, fiveAround } from '../car-builder.ts';

const nothing = micrometres(0);
type Gain = { readonly date: string | null; readonly by: number };

const gained = (centre: number, ...gains: readonly Gain[]) =>
  amongSound(fiveAround('tested', centre), {
    factsOf: (id) =>
      id === 'tested'
        ? {
            recorded: {
              mean: nothing,
              sd: nothing,
              gains: gains.map(({ date, by }) => ({ date, by: micrometres(by) })),
            },
          }
        : {},
  }).panel;

describe('a panel that reads more film than before by as much as paint adds', () => {
  it('is refinished by that, with the day where the record has one', () => {
    const onRecord = gained(112, { date: '2026-03-14', by: 31 });
    expect([onRecord.condition, onRecord.sureness]).toEqual(['refinished', null]);
    expect(onRecord.evidence[0]?.text).toBe(
      'reads 31.0 µm more since 2026-03-14, by the film record: counts as repaint, unless a gauge, wax or other places made it',
    );
    const justNow = gained(112, { date: null, by: 31 });
    expect(justNow.evidence[0]?.text).toBe(
      'reads 31.0 µm more than before: counts as repaint, unless a gauge, wax or other places made it',
    );
    expect([justNow.budget, justNow.boundBy.code]).toEqual([0, 'test-spot']);
  });

  it('is told besides by what its film reads like', () => {
    expect(gained(200, { date: null, by: 90 }).evidence[0]?.text).toMatch(
      /^reads 90\.0 µm more than before: counts as repaint, .* made it.{1,3}median 200\.0 µm is over 152\.0 µm, which is 40\.0 µm over the baseline$/u,
    );
  });

  it('is told by the first of its gains, and is none without any', () => {
    expect(
      gained(112, { date: '2025-05-01', by: 20 }, { date: '2026-03-14', by: 31 }).evidence[0]?.text,
    ).toContain('reads 20.0 µm more since 2025-05-01');
    expect(gained(112).condition).toBe('original');
  });
});
