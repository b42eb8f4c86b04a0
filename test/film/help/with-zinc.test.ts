/** What might go were the steel of a car galvanised. */
import { describe, expect, it } from 'vitest';
import { assessFilm } from '../../../src/film/assess-film.ts';
import { budgetWithZinc } from '../../../src/film/help/with-zinc.ts';
import type { PanelSurvey } from '../../../src/film/survey.ts';
import type { SurveyRequest } from '../../../src/film/survey-request.ts';
import { filmModel } from '../../../src/formats/models.ts';
import {
  fiveAround,
  knownFacts,
  onFace,
  plainPanel,
  plainTemplate,
  standardTerms,
} from '../car-builder.ts';

const ids = ['a', 'b', 'c', 'd', 'bonnet', 'two', 'unread'];
const request: SurveyRequest = {
  template: plainTemplate(
    ...ids.map((id) => plainPanel(id, id === 'bonnet' ? { substrate: 'aluminium' } : {})),
  ),
  readings: [
    ...['a', 'b', 'c', 'd'].flatMap((id, i) => fiveAround(id, 112 + i)),
    ...fiveAround('bonnet', 108),
    ...onFace('two', 110, 113, 160, 112, 164),
  ],
  factsOf: (id) => ({ ...knownFacts, taken: id === 'a' ? knownFacts.taken : null }),
  terms: standardTerms,
  model: filmModel,
};
const galvanised: SurveyRequest = {
  ...request,
  factsOf: (id) => ({ ...request.factsOf(id), galvanised: true }),
};

const budgets = (panels: readonly PanelSurvey[], of: (part: PanelSurvey) => number) =>
  panels.map((part) => [part.panel.id, of(part)]);

describe('what might go were the steel galvanised', () => {
  it('is what the survey says of each panel and zone where the job states it', () => {
    const { panels } = assessFilm(request);
    const withZinc = budgetWithZinc(request);
    const stated = assessFilm(galvanised).panels;
    expect(budgets(panels, withZinc)).toEqual(budgets(stated, ({ budget }) => budget));
    const zonesOf = (all: readonly PanelSurvey[]) => all.flatMap(({ zones }) => zones);
    expect(zonesOf(panels)).toHaveLength(2);
    expect(budgets(zonesOf(panels), withZinc)).toEqual(
      budgets(zonesOf(stated), ({ budget }) => budget),
    );
  });

  it('is less than of plain steel, where the same total is less paint', () => {
    const { panels } = assessFilm(request);
    const withZinc = budgetWithZinc(request);
    const [steel] = panels;
    if (steel === undefined) throw new Error('the car has panels');
    expect(withZinc(steel)).toBeGreaterThan(0);
    expect(withZinc(steel)).toBeLessThan(steel.budget);
  });
});
