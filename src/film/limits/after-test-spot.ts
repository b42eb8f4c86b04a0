/**
 * What a test spot on repaint would allow, and how it is made and judged: no more than on the sound panel of the car
 * that allows least, so nothing where none is sound.
 */
import { remark } from '../../base/remark.ts';
import { says, um } from '../../base/sentence.ts';
import type { FilmModel } from '../film-model.ts';
import type { SurveyAdvice } from '../help/survey-advice.ts';
import type { PanelSurvey } from '../survey.ts';
import { isSound } from './allowance-at.ts';

/** The panels, those that wait for a test spot of their own with what it would allow. */
export function withAfterTestSpot(
  panels: readonly PanelSurvey[],
  { measuring }: Pick<FilmModel, 'measuring'>,
): readonly PanelSurvey[] {
  const least = allowsLeast(panels.filter(isSound));
  const told = <Part extends PanelSurvey>(part: Part): Part =>
    part.boundBy.code === 'test-spot' && part.zones.length === 0
      ? {
          ...part,
          evidence: [...part.evidence, ...capOf(least)],
          advice: part.advice.map((one) =>
            one.code === 'test-spot' ? spotOnRepaint(least, measuring) : one,
          ),
        }
      : part;
  return panels.map((panel) =>
    panel.zones.length === 0 ? told(panel) : { ...panel, zones: panel.zones.map(told) },
  );
}

function allowsLeast(sound: readonly PanelSurvey[]): PanelSurvey | null {
  const [first, ...others] = sound;
  return first === undefined
    ? null
    : others.reduce((least, one) => (one.budget < least.budget ? one : least), first);
}

const capOf = (least: PanelSurvey | null) =>
  least === null
    ? []
    : [
        remark(
          'sound-panel-cap',
          says`after a test spot on it no more than on ${least.panel.name}, the original panel that allows least: ${um(least.budget, 2)}`,
          least.budget,
        ),
      ];

/** What is asked of the patch, and what it yields. */
function spotOnRepaint(
  least: PanelSurvey | null,
  { testSpotTime }: FilmModel['measuring'],
): SurveyAdvice {
  if (least === null || least.budget === 0) {
    const why =
      least === null
        ? 'no original panel is there to go by'
        : `nothing may go from ${least.panel.name}, and repaint gets no more`;
    return remark('beyond-help', `${why}: leave it alone, a test spot frees nothing`);
  }
  const cap = um(least.budget, 2);
  return {
    ...remark(
      'test-spot',
      says`test spot of its own: hand-sized patch off any filler, mildest step first; colour on a white pad: leave it alone; no colour: it has clear, ${cap} at most may go, patch included (plan --spots), as on the original panel that allows least, at a risk not known: no clear read counts on repaint (coats unknown), only such a spot`,
    ),
    time: testSpotTime,
  };
}
