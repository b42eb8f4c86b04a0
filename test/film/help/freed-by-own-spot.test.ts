/** A panel that its own test spot frees gets no more by what is learned of it than that spot and the other panels allow. */
import { describe, expect, test } from 'vitest';
import { micrometres } from '../../../src/base/units.ts';
import { assessFilm } from '../../../src/film/assess-film.ts';
import { readAgainHelp } from '../../../src/film/help/read-again.ts';
import { whatWouldHelp } from '../../../src/film/help/what-would-help.ts';
import { bounded } from '../../../src/film/limits/allowance.ts';
import type { Limit, LimitCode } from '../../../src/film/limits/limit.ts';
import type { PanelSurvey } from '../../../src/film/survey.ts';
import type { SurveyRequest } from '../../../src/film/survey-request.ts';
import { filmModel } from '../../../src/formats/models.ts';
import {
  amongSound,
  fiveAround,
  knownFacts,
  onFace,
  panelOf,
  plainPanel,
  plainTemplate,
  standardTerms,
} from '../car-builder.ts';
import { helpTerms } from '../help-terms.ts';

const limit = (code: LimitCode, value: number): Limit => ({
  code,
  text: code,
  value: micrometres(value),
});
const heldTo = <Part extends PanelSurvey>(part: Part, ...limits: readonly Limit[]): Part => ({
  ...part,
  ...bounded([...part.limits, ...limits]),
});
const five = amongSound(fiveAround('tested', 106)).panel;
const terms = { ...helpTerms, withZinc: () => micrometres(0) };
const gainsOf = (part: PanelSurvey, gaugeKnown = true) =>
  new Map(
    whatWouldHelp(part, { ...terms, gaugeKnown }, filmModel).map(({ code, gain }) => [code, gain]),
  );

describe('of a panel that its own test spot frees', () => {
  test('nothing that its readings could tell is promised where that spot went no deeper', () => {
    const free = gainsOf(five);
    expect(free.get('clear')).toBeGreaterThan(0.3);
    expect(free.get('zinc')).toBeCloseTo(-five.budget, 6);
    const held = heldTo(five, limit('sound-panels', 4.7), limit('spot-depth', 0.8));
    expect(held.budget).toBe(0.8);
    expect([...gainsOf(held, false)]).toEqual([]);
  });

  test('a gain ends at what the spot and the other panels hold it to', () => {
    const held = heldTo(five, limit('sound-panels', five.budget + 0.1));
    expect(held.budget).toBe(five.budget);
    expect(gainsOf(held).get('clear')).toBeCloseTo(0.1, 6);
  });

  test('no point read again, on it or elsewhere, is said to change what may go there', () => {
    const ids = ['a', 'b', 'c', 'd', 'short', 'tested'];
    const request: SurveyRequest = {
      template: plainTemplate(...ids.map((id) => plainPanel(id))),
      readings: [
        ...['a', 'b', 'c', 'd'].flatMap((id) => fiveAround(id, 119)),
        ...fiveAround('short', 114),
        ...onFace('tested', 120, 117, 118, 123, 71),
      ],
      factsOf: () => ({ ...knownFacts, taken: null }),
      terms: standardTerms,
      model: filmModel,
    };
    const survey = assessFilm(request);
    const elsewhere = (...freed: readonly string[]): readonly string[] => {
      const panels = survey.panels.map((one) =>
        freed.includes(one.panel.id) ? heldTo(one, limit('spot-depth', 0.8)) : one,
      );
      const told = readAgainHelp({ ...survey, panels }, request)(panelOf(survey, 'tested'));
      return (told[0]?.elsewhere ?? []).map(({ part }) => part.panel.id);
    };
    expect(elsewhere()).toContain('short');
    expect(elsewhere('short')).toEqual(elsewhere().filter((id) => id !== 'short'));
    const own = heldTo(panelOf(survey, 'tested'), limit('spot-depth', 0));
    expect(readAgainHelp(survey, request)(own).map(({ gain }) => gain)).toEqual([0]);
  });
});
