/** What a test spot on repaint changes of its panel, and what stays as it was. */
import { describe, expect, it } from 'vitest';
import { micrometres } from '../../../src/base/units.ts';
import { withOwnSpots } from '../../../src/film/limits/after-test-spot.ts';
import type { PanelSurvey } from '../../../src/film/survey.ts';
import { filmModel } from '../../../src/formats/models.ts';
import {
  amongSound,
  byItself,
  fiveAround,
  onFace,
  plainPanel,
  standardTerms,
  surveyOf,
  UNTRIED_LOG_SD,
} from '../car-builder.ts';

const grounds = { terms: standardTerms, model: filmModel };
const codes = (all: readonly { readonly code: string }[]) => all.map(({ code }) => code);
const spotted = (panels: readonly PanelSurvey[]): PanelSurvey => {
  const logSdOf = ({ panel }: PanelSurvey) => (panel.id === 'tested' ? UNTRIED_LOG_SD : null);
  const found = withOwnSpots(panels, logSdOf, grounds).find(({ panel }) => panel.id === 'tested');
  if (found === undefined) throw new Error('the panel is there');
  return found;
};

describe('repaint with a test spot of its own', () => {
  // Four points: a fifth is advised as well.
  const { panel, survey } = amongSound(onFace('tested', 256, 260, 264, 258));

  it('keeps what was found of it, but for what a spot would allow', () => {
    expect(codes(panel.evidence)).toEqual(['refinished', 'sound-panel-cap']);
    expect(spotted(survey.panels).evidence).toEqual(panel.evidence.slice(0, 1));
  });

  it('keeps what else is advised, and nothing is added', () => {
    expect(codes(panel.advice)).toContain('test-spot');
    const others = panel.advice.filter(({ code }) => code !== 'test-spot');
    expect(codes(others)).toContain('more-points');
    expect(spotted(survey.panels).advice).toEqual(others);
  });
});

describe('repaint that a test spot frees nothing of', () => {
  it('keeps its other limits, and the sound panels stand in place of the spot', () => {
    const one = onFace('tested', 260);
    const spent = amongSound(one, { facts: { taken: micrometres(12.7) } }).panel;
    expect(codes(spent.limits)).toEqual(
      codes(amongSound(one).panel.limits).map((code) =>
        code === 'test-spot' ? 'sound-panels' : code,
      ),
    );
    expect(codes(spent.limits)).toContain('readings');
  });

  it('is to be left alone where no original panel is there to go by, and no cap is told', () => {
    const alone = surveyOf({
      panels: [plainPanel('tested')],
      readings: fiveAround('tested', 260),
      model: byItself,
    }).panels[0];
    expect(alone?.boundBy).toMatchObject({
      code: 'sound-panels',
      value: 0,
      text: 'repaint gets no more than the original panels, of which none is there to go by: a test spot frees nothing',
    });
    expect(alone?.advice).toContainEqual(
      expect.objectContaining({
        code: 'beyond-help',
        text: 'no original panel is there to go by: leave it alone, a test spot frees nothing',
      }),
    );
    expect(codes(alone?.evidence ?? [])).toEqual(['refinished']);
  });
});

it('repaint that the job states as well is told by both its word and its film', () => {
  const { panel } = amongSound(fiveAround('tested', 200), {
    factsOf: (id) => ({ paintedDaysAgo: id === 'tested' ? 200 : null }),
  });
  expect(panel.evidence[0]?.text).toMatch(
    /^painted 200 days ago, by the job.{1,3}median 200\.0 µm is over 152\.0 µm, which is 40\.0 µm over the baseline$/u,
  );
  const thin = amongSound(fiveAround('tested', 112), {
    factsOf: (id) => ({ paintedDaysAgo: id === 'tested' ? 200 : null }),
  }).panel;
  expect(thin.evidence[0]?.text).toBe(
    'painted 200 days ago, by the job, so no factory film, whatever the total reads',
  );
});
