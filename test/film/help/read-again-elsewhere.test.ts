import { expect, test } from 'vitest';
import { LEAST_TOLD } from '../../../src/base/rounding.ts';
import { assessFilm } from '../../../src/film/assess-film.ts';
import { readAgainHelp } from '../../../src/film/help/read-again.ts';
import type { SurveyRequest } from '../../../src/film/survey-request.ts';
import { filmModel } from '../../../src/formats/models.ts';
import {
  fiveAround,
  knownFacts,
  onFace,
  panelOf,
  plainPanel,
  plainTemplate,
  standardTerms,
} from '../car-builder.ts';

const ids = ['a', 'b', 'c', 'd', 'short', 'painted', 'unread', 'tested'];
const request: SurveyRequest = {
  template: plainTemplate(...ids.map((id) => plainPanel(id))),
  readings: [
    ...['a', 'b', 'c', 'd'].flatMap((id) => fiveAround(id, 119)),
    ...fiveAround('short', 114),
    ...fiveAround('painted', 260),
    ...onFace('tested', 120, 117, 118, 123, 71),
  ],
  factsOf: () => ({ ...knownFacts, taken: null }),
  terms: standardTerms,
  model: filmModel,
};

test('a point read again is told to free film of the panels that gain by it, and of no others', () => {
  const survey = assessFilm(request);
  const [help] = readAgainHelp(survey, request)(panelOf(survey, 'tested'));
  const elsewhere = help?.elsewhere?.map(({ part, gain }) => [part.panel.id, gain] as const) ?? [];
  expect(elsewhere.map(([id]) => id)).toContain('short');
  // Off factory film nothing hangs on the readings of others.
  expect(elsewhere.map(([id]) => id)).not.toContain('painted');
  expect(elsewhere.map(([id]) => id)).not.toContain('unread');
  expect(elsewhere.filter(([, gain]) => Math.abs(gain) < LEAST_TOLD)).toEqual([]);
});
