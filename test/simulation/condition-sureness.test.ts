/**
 * Panels whose true film is known, read at a few points: how often is a word that was called clear-cut not the
 * one that their true film deserves? Their film lies anywhere about a line with even chances, which is the
 * worst that a word can be asked. Stated: in at most 5 % of the clear-cut ones, and in as many of all as the
 * chances that are told add up to.
 */
import { beforeAll, describe, expect, it } from 'vitest';
import { micrometres } from '../../src/base/units.ts';
import type { PanelSurvey } from '../../src/film/survey.ts';
import { onFace, panelOf, plainPanel, surveyOf } from '../film/car-builder.ts';
import { normal, seededRandom } from '../samples/seeded-random.ts';

const CARS = 350;
const FILM_SD = 5;
const REPEATABILITY = 1.5;
const OTHERS = ['a', 'b', 'c', 'd', 'e', 'f', 'g', 'h'];
/** The usual film of the others, and how far their own lie about it. */
const USUAL = 112;
const PANEL_SD = 4;

type Counts = { clear: number; clearAndWrong: number; wrong: number; told: number };

function judge(line: number, words: readonly [under: string, over: string], n: number): Counts {
  const random = seededRandom(4_400 + n + line);
  const read = (centre: number) => {
    const off = (2 * random() - 1) * (1 + 0.02 * centre);
    return Array.from({ length: n }, () => {
      const film = centre + FILM_SD * normal(random) + REPEATABILITY * normal(random);
      return Math.round(10 * (film + off)) / 10;
    });
  };
  const counts = { clear: 0, clearAndWrong: 0, wrong: 0, told: 0 };
  for (let car = 0; car < CARS; car += 1) {
    const truth = line + 40 * (random() - 0.5);
    const panel = surveyed(
      OTHERS.map(() => read(USUAL + PANEL_SD * normal(random))),
      read(truth),
    );
    const deserved = truth < line ? words[0] : words[1];
    const { sureness, condition } = panel;
    if (sureness === null || !words.includes(condition)) continue;
    const wrong = condition !== deserved;
    const clear = sureness.sure === 'clear';
    counts.clear += clear ? 1 : 0;
    counts.clearAndWrong += clear && wrong ? 1 : 0;
    counts.wrong += wrong ? 1 : 0;
    counts.told += sureness.deciding.otherSide;
  }
  return counts;
}

function surveyed(others: readonly (readonly number[])[], own: readonly number[]): PanelSurvey {
  const survey = surveyOf({
    panels: [...OTHERS, 'tested'].map((id) => plainPanel(id)),
    readings: [
      ...others.flatMap((values, i) => onFace(OTHERS[i] ?? '', ...values)),
      ...onFace('tested', ...own),
    ],
    terms: { totalFloor: micrometres(1) },
  });
  return panelOf(survey, 'tested');
}

describe.each([
  ['a repaint', USUAL + 40, ['original', 'refinished']],
  ['a panel cut before', USUAL - 12, ['cut-back', 'original']],
] as const)('the word for %s', (_, line, words) => {
  describe.each([3, 5])('read at %d points', (n) => {
    let counts: Counts;
    beforeAll(() => {
      counts = judge(line, words, n);
    });
    it('is wrong on at most 5 % of those called clear-cut', () => {
      expect(counts.clear).toBeGreaterThan(CARS / 3);
      expect(counts.clearAndWrong / counts.clear).toBeLessThanOrEqual(0.05);
    });
    it('is wrong about as often as the chances add up to', () => {
      expect(counts.wrong).toBeGreaterThan(20);
      // Three standard deviations of the count.
      expect(Math.abs(counts.wrong - counts.told)).toBeLessThanOrEqual(3 * Math.sqrt(counts.told));
    });
  });
});
