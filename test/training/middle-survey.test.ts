import { expect, test } from 'vitest';
import { middleSurvey } from '../../src/training/middle-survey.ts';
import { panelIds, readingAt, surveyOf } from './true-class.ts';

const readAt = (level: number, panels = panelIds) =>
  surveyOf(panels.map((panel) => readingAt(panel, '1', 1, level)));

test('the middle of a class is the survey whose level is, however far off others are', () => {
  const [low, middle, high, mil] = [readAt(108), readAt(111), readAt(115), readAt(4.4)];
  expect(middleSurvey([high, low, middle])).toBe(middle);
  expect(middleSurvey([high, middle, mil])).toBe(middle);
  // Of four the lower of the two in the middle.
  expect(middleSurvey([high, low, middle, mil])).toBe(low);
});

test('the middle is of those that read half as many panels as who read most, or more', () => {
  const panels = panelIds.slice(0, 8);
  const [low, middle, high] = [readAt(108, panels), readAt(111, panels), readAt(115, panels)];
  const some = (level: number, count: number) => readAt(level, panels.slice(0, count));
  expect(middleSurvey([low, middle, high, some(180, 3), some(181, 3)])).toBe(middle);
  expect(middleSurvey([low, middle, high, some(180, 4), some(181, 4)])).toBe(high);
});

test('there is no middle of nobody, nor of surveys of nothing', () => {
  expect(middleSurvey([])).toBeUndefined();
  expect(middleSurvey([surveyOf([])])).toBeUndefined();
});
