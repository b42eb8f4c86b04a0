import { describe, expect, test } from 'vitest';
import { micrometres } from '../../../src/base/units.ts';
import { withOwnSpots } from '../../../src/film/limits/after-test-spot.ts';
import { allowanceAfterSpot, allowanceAt } from '../../../src/film/limits/allowance-at.ts';
import { isSound } from '../../../src/film/limits/sound-cap.ts';
import type { Survey } from '../../../src/film/survey.ts';
import { filmModel } from '../../../src/formats/models.ts';
import {
  fiveAround,
  panelOf,
  plainPanel,
  standardTerms,
  surveyOf,
  UNTRIED_LOG_SD,
} from '../car-builder.ts';

const grounds = { terms: standardTerms, model: filmModel };
const MIDDLE = ['bonnet', 'boot', 'roof'] as const;

/** Both right doors read 34 µm over the left ones. */
const carOf = (middle: readonly string[], left: readonly string[] = ['front-left', 'rear-left']) =>
  surveyOf({
    panels: [
      plainPanel('front-right', { mirror: 'front-left' }),
      plainPanel('rear-right', { mirror: 'rear-left' }),
      plainPanel('rear-left', { mirror: 'rear-right' }),
      plainPanel('front-left', { mirror: 'front-right' }),
      ...MIDDLE.map((id) => plainPanel(id)),
    ],
    readings: [
      ...['front-right', 'rear-right'].flatMap((id) => fiveAround(id, 149)),
      ...left.flatMap((id) => fiveAround(id, 115)),
      ...middle.flatMap((id) => fiveAround(id, id === 'roof' ? 230 : 115)),
    ],
    factsOf: (id) =>
      id === 'front-right'
        ? {
            recorded: {
              mean: micrometres(0.6),
              sd: micrometres(0.1),
              allOver: { mean: micrometres(0), sd: micrometres(0) },
            },
          }
        : {},
  });

const spotted = ({ panels }: Survey) =>
  withOwnSpots(panels, ({ panel }) => (panel.id === 'front-right' ? 0.4 : null), grounds);

test('a spot of its own without colour frees a panel of a side in doubt as it frees repaint, and no other of the side', () => {
  const survey = carOf(MIDDLE);
  const [before] = survey.panels;
  const panels = spotted(survey);
  const [front, rear] = panels;
  const least = Math.min(
    ...['bonnet', 'boot', 'front-left'].map((id) => panelOf(survey, id).budget),
  );
  expect(before?.budget).toBe(0);
  expect(front?.budget).toBeGreaterThan(1);
  expect(front?.budget).toBeLessThanOrEqual(least - 0.6);
  expect(front?.boundBy.code).toBe('sound-panels');
  expect([front?.otherSide, front?.sides.lost]).toEqual([null, []]);
  expect(front?.advice.map(({ code }) => code)).not.toContain('settle');
  expect(rear).toEqual(panelOf(survey, 'rear-right'));
});

test('a plan allows such a panel what its survey did', () => {
  const survey = carOf(MIDDLE);
  const panels = spotted(survey);
  const [front] = panels;
  if (front === undefined) throw new Error('no panel');
  expect(allowanceAfterSpot(front, panels, 0.4, grounds).budget).toBeCloseTo(front.budget, 9);
  expect(
    allowanceAfterSpot(panelOf(survey, 'front-right'), survey.panels, 0.4, grounds).budget,
  ).toBeCloseTo(front.budget, 9);
});

test('panels of a side in doubt are no measure of what may go from repaint', () => {
  const survey = carOf(MIDDLE);
  const { risk } = standardTerms;
  expect(['front-right', 'rear-right'].map((id) => isSound(panelOf(survey, id), risk))).toEqual([
    false,
    false,
  ]);
  expect(isSound(panelOf(survey, 'front-left'), risk)).toBe(true);
  expect(panelOf(survey, 'roof').advice.map(({ code }) => code)).toContain('test-spot');
});

test('where no panel is there to go by, such a spot frees nothing', () => {
  const survey = carOf(MIDDLE);
  const doubted = survey.panels.filter(({ panel }) => panel.id.endsWith('right'));
  const [front] = doubted;
  if (front === undefined) throw new Error('no panel');
  expect(withOwnSpots(doubted, () => UNTRIED_LOG_SD, grounds)).toEqual(doubted);
  expect(allowanceAfterSpot(front, doubted, 0.4, grounds)).toBe(front);
});

describe('a panel of neither side that is held with one', () => {
  const FILMS = { 'front-right': 145, 'rear-right': 145, bonnet: 143 } as const;
  const RECORDED = { mean: micrometres(2), sd: micrometres(0.5) };
  /** The bonnet has lost 2 µm on record, so that it allows least. */
  const carAt = (mirror: number) =>
    surveyOf({
      panels: [
        plainPanel('front-right', { mirror: 'front-left' }),
        plainPanel('rear-right', { mirror: 'rear-left' }),
        plainPanel('rear-left', { mirror: 'rear-right' }),
        plainPanel('front-left', { mirror: 'front-right' }),
        ...MIDDLE.map((id) => plainPanel(id)),
      ],
      readings: ['front-right', 'rear-right', 'rear-left', 'front-left', ...MIDDLE].flatMap((id) =>
        fiveAround(id, (FILMS as Readonly<Record<string, number>>)[id] ?? 115),
      ),
      factsOf: (id) => (id === 'bonnet' ? { recorded: RECORDED } : {}),
      model: {
        ...filmModel,
        conditions: { ...filmModel.conditions, mirror: micrometres(mirror) },
      },
    });
  const [asOne, inDoubt] = [carAt(100), carAt(25)];
  const least = panelOf(asOne, 'bonnet').budget;
  const after = (id: string, logSd: number) =>
    allowanceAfterSpot(panelOf(inDoubt, id), inDoubt.panels, logSd, grounds).budget;

  test('lets no spot on the side free more than it did before it was in doubt', () => {
    expect(panelOf(inDoubt, 'bonnet').budget).toBe(0);
    expect(least).toBeGreaterThan(0.5);
    const others = ['roof', 'boot', 'front-left'].map((id) => panelOf(inDoubt, id).budget);
    expect(Math.min(...others)).toBeGreaterThan(least);
    expect(isSound(panelOf(inDoubt, 'bonnet'), standardTerms.risk)).toBe(true);
    expect(after('front-right', standardTerms.logSd)).toBeCloseTo(least, 9);
    const wider = allowanceAt(panelOf(asOne, 'bonnet'), 0.9, grounds).budget;
    expect(after('front-right', 0.9)).toBeLessThanOrEqual(wider);
    expect(after('front-right', 0.9)).toBeLessThan(least);
  });

  test('is freed by a spot of its own, and gets no more than it did before either', () => {
    const spots = withOwnSpots(
      inDoubt.panels,
      ({ panel }) => (panel.id === 'bonnet' ? 0.4 : null),
      grounds,
    );
    const freed = spots.find(({ panel }) => panel.id === 'bonnet');
    expect(freed?.otherSide).toBeNull();
    expect(freed?.budget).toBeGreaterThan(0);
    expect(freed?.budget).toBeLessThanOrEqual(least);
    expect(spots.find(({ panel }) => panel.id === 'front-right')?.budget).toBe(0);
  });
});
