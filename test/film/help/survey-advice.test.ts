import { describe, expect, it } from 'vitest';
import { micrometres } from '../../../src/base/units.ts';
import { usefulAdvice } from '../../../src/film/help/useful-advice.ts';
import { amongSound, fiveAround, onFace, reading } from '../car-builder.ts';

const textsOf = (advice: readonly { readonly text: string }[]) => advice.map(({ text }) => text);
const codesOf = (advice: readonly { readonly code: string }[]) => advice.map(({ code }) => code);

describe('what is advised for a panel', () => {
  it('is a test spot and the edge of the repair on repaint, and nothing of a history that decides nothing there', () => {
    for (const readings of [fiveAround('tested', 260), onFace('tested', 240, 640, 260, 250, 245)]) {
      const { panel } = amongSound(readings, { facts: { taken: null } });
      expect(codesOf(panel.advice)).toEqual(['test-spot', 'repair-edge']);
    }
  });
  it('names the points of a repair that read under the line of repaint: its edge lies beside them', () => {
    const edgeOf = (...films: readonly number[]) =>
      textsOf(
        amongSound(onFace('tested', ...films)).panel.advice.filter(
          ({ code }) => code === 'repair-edge',
        ),
      );
    // Beside 112 µm film reads like repaint over 152.
    expect(edgeOf(165, 168, 118, 170, 166)).toEqual([
      'point 3 reads under the line of repaint: closer points between it and the others find the edge of the repair',
    ]);
    expect(edgeOf(640, 151, 660, 118, 153)).toEqual([
      'points 2, 4 read under the line of repaint: closer points between them and the others find the edge of the repair',
    ]);
    expect(edgeOf(165, 168, 171)).toEqual(['closer points find the edge of the repair']);
  });
  it('names none where no other point of its face reads like repaint', () => {
    const { panel } = amongSound([
      ...fiveAround('tested', 112),
      reading('tested', 'e', 640, { place: 'edge' }),
    ]);
    expect(panel.condition).toBe('filler');
    expect(textsOf(panel.advice)).toContain('closer points find the edge of the repair');
  });
  it('counts what is known as taken as film of such a point', () => {
    const { panel } = amongSound(onFace('tested', 165, 168, 150, 170, 166), {
      factsOf: (id) => (id === 'tested' ? { taken: micrometres(3) } : {}),
    });
    expect(textsOf(panel.advice)).toContain('closer points find the edge of the repair');
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
