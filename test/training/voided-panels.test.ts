/** Which panels blunders void, and what is left of a survey and of its mark, one at a time. */
import { expect, test } from 'vitest';
import { type Reason, type ReasonCode, reason } from '../../src/training/reasons.ts';
import { asFarAsRead, mostOf, voidPanels } from '../../src/training/void-panels.ts';
import { readingAt, surveyOf } from './true-class.ts';

const readings = ['roof', 'boot', 'bonnet', 'roof'].map((panel, i) =>
  readingAt(panel, `${i + 1}`, 1, 110 + i),
);
const survey = surveyOf(readings);
const told = (code: ReasonCode, ...panels: readonly string[]): Reason =>
  reason(code, code, { panels });
const voidOf = (blunders: readonly Reason[], ...madeUp: readonly string[]) =>
  voidPanels(survey, blunders, new Set(madeUp)).map(({ panel, as }) => [panel.id, as]);
const slips = ['unit-slip', 'decimal-slip', 'sides-swapped', 'panels-swapped'] as const;
const noSlips = ['survey-copied', 'step-changes', 'values-alike', 'too-regular'] as const;

test('a slip makes the panels that it names wrong, and one that names none all that were read', () => {
  for (const code of slips) {
    expect(voidOf([told(code, 'roof')])).toEqual([['roof', 'wrong']]);
    expect(voidOf([told(code, 'wing-front-left')])).toEqual([]);
    expect(voidOf([told(code)]).map(([, as]) => as)).toEqual(['wrong', 'wrong', 'wrong']);
  }
});

test('a blunder that is no slip makes no panel wrong, whether it names any or none', () => {
  for (const code of noSlips) {
    expect(voidOf([told(code)])).toEqual([]);
    expect(voidOf([told(code, 'roof')])).toEqual([]);
  }
});

test('a panel that was made up is unread, though a slip names it as well', () => {
  expect(voidOf([told('unit-slip', 'roof', 'boot')], 'roof').sort()).toEqual([
    ['boot', 'wrong'],
    ['roof', 'unread'],
  ]);
});

test('a survey is left with the panels and the readings that nobody made up', () => {
  const voided = voidPanels(survey, [told('unit-slip', 'boot')], new Set(['roof']));
  const left = asFarAsRead(survey, voided);
  expect(left.readings.map(({ panel }) => panel)).toEqual(['boot', 'bonnet']);
  const ids = left.survey.panels.map(({ panel }) => panel.id);
  expect(ids).not.toContain('roof');
  const read = left.survey.panels.flatMap(({ panel, points }) =>
    points.length > 0 ? [panel.id] : [],
  );
  expect(read.sort()).toEqual(['bonnet', 'boot']);
});

test('a survey of which none was made up stays what it is, slips and all', () => {
  expect(asFarAsRead(survey, [])).toBe(survey);
  const slipped = voidPanels(survey, [told('unit-slip')], new Set());
  expect(slipped).toHaveLength(3);
  expect(asFarAsRead(survey, slipped)).toBe(survey);
});

test('a panel counts in full, as the model says where a slip spoilt it or numbers run the other way, and as nothing where it was made up', () => {
  const shares = { slippedShare: 0.4, questionableShare: 0.6 };
  const most = mostOf(voidPanels(survey, [told('unit-slip', 'boot')], new Set(['roof'])), shares);
  const of = (id: string): number => {
    const found = survey.survey.panels.find(({ panel }) => panel.id === id);
    return found === undefined ? Number.NaN : most(found);
  };
  expect(['roof', 'boot', 'bonnet'].map(of)).toEqual([0, 0.4, 1]);
  const codes = [told('points-turned', 'boot', 'bonnet'), told('panels-swapped', 'bonnet', 'roof')];
  const turned = voidPanels(survey, codes, new Set());
  expect(turned.map(({ panel, as }) => [panel.id, as])).toEqual(
    expect.arrayContaining([
      ['boot', 'turned'],
      ['bonnet', 'wrong'],
    ]),
  );
  const boot = turned.find(({ panel }) => panel.id === 'boot');
  expect(boot === undefined ? 0 : mostOf(turned, shares)(boot)).toBe(0.6);
});

test('a point whose reading is in another unit is left out, and its panel with the last of its points', () => {
  const without = (...keys: readonly string[]) =>
    asFarAsRead(survey, [], new Set(keys)).readings.map(({ panel, point }) => `${panel} ${point}`);
  expect(without('roof 4')).toEqual(['roof 1', 'boot 2', 'bonnet 3']);
  expect(without('boot 2')).toEqual(['roof 1', 'bonnet 3', 'roof 4']);
  // A key is of one panel: the others have points of that name too.
  expect(without('boot 1')).toEqual(['roof 1', 'boot 2', 'bonnet 3', 'roof 4']);
  const left = asFarAsRead(survey, [], new Set(['boot 2', 'roof 4']));
  const points = left.survey.panels.flatMap((one) =>
    one.points.map(({ point }) => `${one.panel.id} ${point}`),
  );
  expect(points.sort()).toEqual(['bonnet 3', 'roof 1']);
});
