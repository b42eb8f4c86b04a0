/** Test spots on repaint that free nothing of it: what is said, and what is asked for. */
import { describe, expect, it } from 'vitest';
import { type IdleSpots, withOwnSpots } from '../../../src/film/limits/after-test-spot.ts';
import type { PanelSurvey } from '../../../src/film/survey.ts';
import { filmModel } from '../../../src/formats/models.ts';
import { amongSound, fiveAround, standardTerms } from '../car-builder.ts';

const grounds = { terms: standardTerms, model: filmModel };
/** One point as well, which is another limit, and a point to read besides. */
const { panel, survey } = amongSound(fiveAround('tested', 260).slice(0, 1));

const idle = (spots: Partial<IdleSpots>): PanelSurvey => {
  const told = withOwnSpots(
    survey.panels,
    () => null,
    grounds,
    () => ({
      unsaid: [],
      risen: [],
      ...spots,
    }),
  );
  const found = told.find((one) => one.panel.id === 'tested');
  if (found === undefined) throw new Error('the panel is there');
  return found;
};
const textOf = (all: readonly { readonly code: string; readonly text: string }[], code: string) =>
  all.filter((one) => one.code === code).map(({ text }) => text);

describe('a test spot on repaint of which nobody said whether colour came', () => {
  const unsaid = (): PanelSurvey => idle({ unsaid: ['R', 'S'] });

  it('frees nothing, and that is the limit', () => {
    const told = unsaid();
    expect([told.budget, told.boundBy.code]).toEqual([0, 'test-spot']);
    expect(told.boundBy.text).toBe(
      'whether colour came on the pad at test spots R, S is not said: it frees nothing',
    );
    expect(textOf(told.limits, 'test-spot')).toEqual([told.boundBy.text]);
  });

  it('is asked about in place of another spot', () => {
    expect(textOf(unsaid().advice, 'test-spot')).toEqual([
      'say whether colour came on the pad at test spots R, S, in its column colour_on_pad: yes, leave it alone; no, it has clear',
    ]);
  });

  it('leaves the other limits and what else is advised as they are', () => {
    const others = <One extends { readonly code: string }>(all: readonly One[]) =>
      all.filter(({ code }) => code !== 'test-spot');
    const told = unsaid();
    expect(others(panel.limits).length).toBeGreaterThan(0);
    expect(others(told.limits)).toEqual(others(panel.limits));
    expect(others(panel.advice).length).toBeGreaterThan(0);
    expect(others(told.advice)).toEqual(others(panel.advice));
  });
});

describe('a test spot on repaint whose marks all rose', () => {
  it('frees nothing, and is to be read again, whatever else is not said', () => {
    for (const unsaid of [[], ['S']]) {
      const told = idle({ risen: ['R'], unsaid });
      expect(told.boundBy.text).toBe(
        'all marks of test spot R read more after than before: it frees nothing',
      );
      expect(textOf(told.advice, 'test-spot')).toEqual([
        'read test spot R again, gauge checked, panel wiped and cool, or make another test spot',
      ]);
    }
  });
});

it('changes nothing of repaint where no spot was made in vain, nor of other panels', () => {
  expect(idle({})).toEqual(panel);
  const told = withOwnSpots(
    survey.panels,
    () => null,
    grounds,
    () => ({
      unsaid: ['R'],
      risen: ['S'],
    }),
  );
  const without = (all: readonly PanelSurvey[]) => all.filter((one) => one.panel.id !== 'tested');
  expect(without(told)).toEqual(without(survey.panels));
});
