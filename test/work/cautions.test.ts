import { describe, expect, test } from 'vitest';
import { workModel } from '../../src/formats/models.ts';
import { planCautions } from '../../src/work/cautions.ts';
import type { WorkDay } from '../../src/work/day-plan.ts';

const day = (...points: readonly number[]) => ({ points }) as unknown as WorkDay;
const cautions = (days: readonly WorkDay[]) => planCautions({ days }, workModel);

describe('what every plan warns of', () => {
  test('is said each under a code of its own', () => {
    const all = cautions([]);
    expect(all.map(({ code }) => code)).toEqual([
      'maker',
      'not-a-promise',
      'pad',
      'colour-on-pad',
      'protection',
      'vibration',
      'chemicals',
      'old-paint',
      'hot-parts',
      'licensed',
    ]);
    for (const { code, text } of all) expect(text, code).toMatch(/^\p{L}.{18,}/u);
  });

  test('is vibration by the hands that have most of it on the worst day, in its words and in its figure', () => {
    const [said] = cautions([day(60, 20), day(10, 99.6)]).filter(
      ({ code }) => code === 'vibration',
    );
    expect(said?.text).toBe('vibration up to 100 points a hand in a day (action 100, limit 400)');
    expect(said?.value).toBe(99.6);
  });

  test('asks to share the machine and to keep hands warm past the action value, and not at it', () => {
    const texts = (points: number) => cautions([day(points)]).map(({ text }) => text);
    const advice = /: share the machine, keep hands warm, rest them$/;
    expect(texts(100).filter((text) => advice.test(text))).toEqual([]);
    expect(texts(100.1).filter((text) => advice.test(text))).toHaveLength(1);
  });

  test('has no points of vibration where no day is worked', () => {
    expect(cautions([])[5]?.text).toMatch(/^vibration up to 0 points/);
  });
});
