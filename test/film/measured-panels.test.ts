import { describe, expect, it } from 'vitest';
import { assessFilm } from '../../src/film/assess-film.ts';
import {
  type MeasuredPart,
  measuredPanels,
  measuredParts,
} from '../../src/film/measured-panels.ts';
import type { Reading } from '../../src/film/reading.ts';
import { filmModel } from '../../src/formats/models.ts';
import {
  fiveAround,
  knownFacts,
  onFace,
  plainPanel,
  plainTemplate,
  standardTerms,
} from './car-builder.ts';

const ids = ['a', 'b', 'c', 'd', 'tested', 'unread'];
const sound = ids.slice(0, 4).flatMap((id) => fiveAround(id, 112));
/** Two levels 30 µm apart. */
const inTwo = [110, 112, 114, 142, 144, 143];
const requestOf = (readings: readonly Reading[]) => ({
  template: plainTemplate(...ids.map((id) => plainPanel(id))),
  readings,
  factsOf: () => knownFacts,
  terms: standardTerms,
  model: filmModel,
});
const figures = ({ panel, points, readingCount, statistics }: MeasuredPart) => ({
  panel,
  points,
  readingCount,
  statistics,
});
/** The readings of two panels in turns, as somebody goes to and fro. */
const cars = {
  'of even panels': [...sound, ...fiveAround('tested', 106)],
  'with a panel in two zones': [...sound, ...onFace('tested', ...inTwo)],
  'with a panel that might be in two, on a car whose film varies as much': ids
    .slice(0, 5)
    .flatMap((id) => onFace(id, 95, 97, 99, 127, 129, 128)),
  'of which nothing was read': [],
};

describe('what was read on each panel, before anything is judged', () => {
  for (const [which, readings] of Object.entries(cars)) {
    it(`is what a survey begins with, on a car ${which}`, () => {
      const measured = measuredPanels(requestOf(readings));
      const { panels } = assessFilm(requestOf(readings));
      expect(measured.map(figures)).toEqual(panels.map(figures));
      expect(
        measured.map(({ zones }) => zones.map((zone) => ({ zone: zone.zone, ...figures(zone) }))),
      ).toEqual(
        panels.map(({ zones }) => zones.map((zone) => ({ zone: zone.zone, ...figures(zone) }))),
      );
    });
  }

  it('is that of the thinner zone, then of the thicker, where a panel is in two', () => {
    const [panel] = measuredPanels(requestOf(cars['with a panel in two zones'])).filter(
      ({ panel: { id } }) => id === 'tested',
    );
    if (panel === undefined) throw new Error('it is on the template');
    const { area } = plainPanel('tested');
    expect(measuredParts(panel)).toBe(panel.zones);
    expect(panel.zones.map(({ zone, statistics }) => [zone, statistics?.mean])).toEqual([
      ['thinner', 112],
      ['thicker', 143],
    ]);
    expect(panel.zones.map((zone) => zone.panel.area)).toEqual([area / 2, area / 2]);
    expect(panel.readingCount).toBe(6);
  });

  it('has an SD from two points on, which of two is what lies between them over √2', () => {
    const of = (...ums: readonly number[]) =>
      measuredPanels(requestOf([...sound, ...onFace('tested', ...ums)])).find(
        ({ panel: { id } }) => id === 'tested',
      )?.statistics;
    expect(of(110)).toEqual({ mean: 110, sd: null, min: 110, max: 110, median: 110 });
    expect(of(110, 114)?.sd).toBeCloseTo(4 / Math.SQRT2, 12);
    expect(of(110, 114, 112)?.sd).toBeCloseTo(2, 12);
  });

  it('is that of the panel itself where it is in one', () => {
    for (const panel of measuredPanels(requestOf(cars['of even panels']))) {
      expect(measuredParts(panel)).toEqual([panel]);
      expect(panel.zones).toEqual([]);
    }
  });
});
