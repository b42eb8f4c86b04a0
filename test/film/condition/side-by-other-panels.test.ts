import { expect, test } from 'vitest';
import { exactly } from '../../../src/base/uncertainty.ts';
import { micrometres } from '../../../src/base/units.ts';
import { compareWithLine } from '../../../src/film/condition/line-comparison.ts';
import { mirrorNotes } from '../../../src/film/condition/mirror-notes.ts';
import { withChances } from '../../../src/film/condition/possible-sides.ts';
import type { PanelSurvey } from '../../../src/film/survey.ts';
import { filmModel } from '../../../src/formats/models.ts';
import { fiveAround, plainPanel, surveyOf } from '../car-builder.ts';

const line = {
  ...compareWithLine({
    compared: 'median',
    condition: 'refinished',
    side: 'over',
    figure: exactly(micrometres(130)),
    line: exactly(micrometres(140)),
  }),
  otherSide: 0.2,
};
const byRoof = { ...line, otherSide: 0.3, shownBy: 'roof' };

test('what would be measured of a panel moves the chances of its own lines, and not that of a car painted over', () => {
  const { lost, cutBack } = withChances({ lost: [line, byRoof], cutBack: byRoof }, () => 0.05);
  expect(lost.map(({ otherSide }) => otherSide)).toEqual([0.05, 0.3]);
  expect(cutBack?.otherSide).toBe(0.3);
  expect(withChances({ lost: [], cutBack: line }, () => 0.05).cutBack?.otherSide).toBe(0.05);
  expect(withChances({ lost: [], cutBack: null }, () => 0.05)).toEqual({ lost: [], cutBack: null });
});

test('sides that differ are not spoken of while a value of either is asked about', () => {
  const { panels } = surveyOf({
    panels: [
      plainPanel('door-left', { mirror: 'door-right' }),
      plainPanel('door-right', { mirror: 'door-left' }),
      ...['roof', 'bonnet', 'boot'].map((id) => plainPanel(id)),
    ],
    readings: [
      ...fiveAround('door-left', 85),
      ...['door-right', 'roof', 'bonnet', 'boot'].flatMap((id) => fiveAround(id, 115)),
    ],
  });
  const slip = {
    point: '3',
    thickness: micrometres(11),
    factor: 0.1,
    condition: 'original' as const,
    budget: micrometres(3),
  };
  const notes = (slipOn: string) =>
    mirrorNotes(
      panels.map(
        (one): PanelSurvey => (one.panel.id === slipOn ? { ...one, keyingSlips: [slip] } : one),
      ),
      filmModel.conditions,
    ).map(({ code, value }) => [code, value]);
  expect(notes('none')).toEqual([['mirror-difference', 30]]);
  expect(notes('roof')).toEqual([['mirror-difference', 30]]);
  expect(notes('door-left')).toEqual([]);
  expect(notes('door-right')).toEqual([]);
});
