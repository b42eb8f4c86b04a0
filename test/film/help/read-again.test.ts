/** What points that stand out would free, read again: held against a survey of the readings as they would be then. */
import { describe, expect, it } from 'vitest';
import { micrometres } from '../../../src/base/units.ts';
import { assessFilm } from '../../../src/film/assess-film.ts';
import { readAgainHelp } from '../../../src/film/help/read-again.ts';
import type { Help } from '../../../src/film/help/what-would-help.ts';
import type { Reading } from '../../../src/film/reading.ts';
import type { Survey } from '../../../src/film/survey.ts';
import type { SurveyRequest } from '../../../src/film/survey-request.ts';
import { filmModel } from '../../../src/formats/models.ts';
import {
  fiveAround,
  knownFacts,
  onFace,
  panelOf,
  plainPanel,
  plainTemplate,
  reading,
  standardTerms,
} from '../car-builder.ts';

const SOUND = ['a', 'b', 'c', 'd'] as const;
const NAMES = [...SOUND, 'short', 'tested'];

const requestOf = (tested: readonly Reading[]): SurveyRequest => ({
  template: plainTemplate(...NAMES.map((id) => plainPanel(id))),
  readings: [...SOUND.flatMap((id) => fiveAround(id, 119)), ...fiveAround('short', 114), ...tested],
  factsOf: () => ({ ...knownFacts, taken: null }),
  terms: standardTerms,
  model: filmModel,
});

const surveyed = (tested: readonly Reading[]): Survey => assessFilm(requestOf(tested));

const helpFor = (tested: readonly Reading[]): readonly Help[] => {
  const request = requestOf(tested);
  const survey = assessFilm(request);
  return readAgainHelp(survey, request)(panelOf(survey, 'tested'));
};
const helpOf = (code: string, tested: readonly Reading[]): Help | undefined =>
  helpFor(tested).find((one) => one.code === code);

/** Four points alike and one on a thin edge, which is held to be film of the face. */
const thinEdge = onFace('tested', 120, 117, 118, 123, 71);
const asNeighbours = onFace('tested', 120, 117, 118, 123, 118);
const asEdge = thinEdge.map((one) =>
  one.point === '5' ? { ...one, place: 'edge' as const } : one,
);

describe('a point that stands out, read again', () => {
  it('frees what a survey says with the reading that its neighbours have', () => {
    const before = panelOf(surveyed(thinEdge), 'tested');
    expect([before.condition, before.budget, before.lowPoints]).toEqual(['thin', 0, ['5']]);
    const after = panelOf(surveyed(asNeighbours), 'tested');
    const help = helpOf('read-again', thinEdge);
    expect(help?.gain).toBeCloseTo(after.budget - before.budget, 9);
    expect(help?.gain).toBeGreaterThan(2);
    expect(help?.otherwise?.gain).toBe(0);
    expect(help?.time).toBe(filmModel.measuring.pointTime);
  });
  it('frees on other panels what its own spread took from them', () => {
    const [before, after] = [surveyed(thinEdge), surveyed(asNeighbours)];
    const { elsewhere = [] } = helpOf('read-again', thinEdge) ?? {};
    const short = elsewhere.find(({ part }) => part.panel.id === 'short');
    expect(short?.gain).toBeCloseTo(
      panelOf(after, 'short').budget - panelOf(before, 'short').budget,
      9,
    );
    expect(short?.gain).toBeGreaterThan(0.5);
    expect(elsewhere.map(({ part }) => part.panel.id)).not.toContain('tested');
  });
  it('frees what a survey says with that point at an edge, where it is low', () => {
    const after = panelOf(surveyed(asEdge), 'tested');
    expect(helpOf('edge-point', thinEdge)?.gain).toBeCloseTo(after.budget, 9);
    expect(after.budget).toBeGreaterThan(2);
    const high = onFace('tested', 112, 111, 112, 113, 136);
    expect(panelOf(surveyed(high), 'tested').highPoints).toEqual(['5']);
    expect(helpOf('edge-point', high)).toBeUndefined();
  });
  it('may take film away where it stands out high, as the mean falls with it', () => {
    const high = onFace('tested', 108, 107, 108, 109, 136);
    const before = panelOf(surveyed(high), 'tested');
    const after = panelOf(surveyed(onFace('tested', 108, 107, 108, 109, 108)), 'tested');
    expect(before.highPoints).toEqual(['5']);
    expect(helpOf('read-again', high)?.gain ?? 0).toBeCloseTo(after.budget - before.budget, 9);
  });
  it('keeps its repeats apart as far as they were', () => {
    const repeats = [71, 73].map((um, i) => reading('tested', '5', um, { repeat: i + 1 }));
    const lower = [118, 120].map((um, i) => reading('tested', '5', um, { repeat: i + 1 }));
    const others = onFace('tested', 120, 117, 118, 123);
    const after = panelOf(surveyed([...others, ...lower]), 'tested').budget;
    expect(helpOf('read-again', [...others, ...repeats])?.gain).toBeCloseTo(after, 9);
  });
  it('is told of no panel whose points are alike, and of readings of single layers nothing', () => {
    expect(helpFor(fiveAround('tested', 119))).toEqual([]);
    const ofLayer = reading('tested', '5', 30, { layer: 'clear' });
    const gain = helpOf('read-again', thinEdge)?.gain ?? 0;
    expect(gain).toBeGreaterThan(0);
    const withLayer = helpOf('read-again', [
      ...thinEdge,
      { ...ofLayer, thickness: micrometres(42) },
    ]);
    const after = surveyed([...asNeighbours, { ...ofLayer, thickness: micrometres(42) }]);
    expect(withLayer?.gain).toBeCloseTo(panelOf(after, 'tested').budget, 9);
  });
});

describe('a point that stands out on a panel painted again', () => {
  it('frees nothing there, where no reading decides what may go', () => {
    const repaint = onFace('tested', 232, 230, 231, 233, 190);
    const survey = surveyed(repaint);
    expect(panelOf(survey, 'tested').lowPoints).toEqual(['5']);
    const own = helpFor(repaint).find(({ code }) => code === 'read-again');
    expect(own?.gain ?? 0).toBe(0);
  });
});
