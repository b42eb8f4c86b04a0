import { describe, expect, it } from 'vitest';
import { micrometres } from '../../../src/base/units.ts';
import { usefulAdvice } from '../../../src/film/help/useful-advice.ts';
import { amongSound, fiveAround, onFace } from '../car-builder.ts';

const textsOf = (advice: readonly { readonly text: string }[]) => advice.map(({ text }) => text);
const codesOf = (advice: readonly { readonly code: string }[]) => advice.map(({ code }) => code);

describe('what is advised for a panel', () => {
  it('is a test spot and the edge of the repair on repaint, and nothing of a history that decides nothing there', () => {
    for (const readings of [fiveAround('tested', 260), onFace('tested', 240, 640, 260, 250, 245)]) {
      const { panel } = amongSound(readings, { facts: { taken: null } });
      expect(codesOf(panel.advice)).toEqual(['test-spot', 'repair-edge']);
    }
  });
  it('is to wait as long as young paint still hardens', () => {
    const aged = (paintedDaysAgo: number) =>
      textsOf(
        amongSound(fiveAround('tested', 112), {
          factsOf: (id) => (id === 'tested' ? { paintedDaysAgo } : {}),
        }).panel.advice,
      );
    expect(aged(30)).toContain(
      'wait 60 more days, till the paint is hard, then make a test spot on it',
    );
    expect(aged(89)).toContain(
      'wait 1 more day, till the paint is hard, then make a test spot on it',
    );
    expect(aged(90)).toHaveLength(1);
    expect(aged(90)[0]).toMatch(/^test spot of its own: /);
  });
  it('is to read a covered panel again once it is bare', () => {
    const { panel } = amongSound(fiveAround('tested', 112), { facts: { covered: true } });
    expect(codesOf(panel.advice)).toEqual(['uncover']);
  });
});

describe('advice without a figure', () => {
  it('leaves out what was reckoned to free nothing, and says so where nothing is left', () => {
    const { panel } = amongSound(fiveAround('tested', 70), { facts: { taken: null } });
    expect(panel.budget).toBe(0);
    expect(codesOf(panel.advice)).toContain('history');
    expect(codesOf(usefulAdvice(panel, []))).toEqual(['beyond-help']);
  });
  it('is not beyond help where something frees film, where waiting does, or where its word may be wrong', () => {
    const gain = { code: 'clear', gain: micrometres(0.4), time: null, points: null } as const;
    const thin = amongSound(fiveAround('tested', 70), { facts: { taken: null } }).panel;
    expect(usefulAdvice(thin, [gain])).toEqual([]);
    const young = amongSound(fiveAround('tested', 112), { facts: { paintedDaysAgo: 30 } }).panel;
    expect(codesOf(usefulAdvice(young, []))).toEqual(['wait']);
    const near = amongSound(fiveAround('tested', 99), { facts: { taken: null } }).panel;
    expect(codesOf(usefulAdvice(near, []))).not.toContain('beyond-help');
  });
  it('leaves nothing out where there is no estimate of the topcoat to reckon with', () => {
    const { panel } = amongSound(onFace('tested', 260, 262, 258));
    expect(panel.topcoat).toBeNull();
    expect(codesOf(panel.advice)).toContain('more-points');
    expect(usefulAdvice(panel, [])).toBe(panel.advice);
  });
  it('is beyond help on a matte finish', () => {
    const { panel } = amongSound(fiveAround('tested', 112), { facts: { finish: 'matte' } });
    expect(codesOf(usefulAdvice(panel, []))).toEqual(['beyond-help']);
  });
});
