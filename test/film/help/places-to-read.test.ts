import { describe, expect, test } from 'vitest';
import { micrometres } from '../../../src/base/units.ts';
import type { PanelFacts, PlaceWorked } from '../../../src/film/film-model.ts';
import { placesToRead } from '../../../src/film/help/places-to-read.ts';
import { fiveAround, plainPanel, surveyOf } from '../car-builder.ts';

const DOORS = ['door-front', 'door-rear'] as const;
const PANELS = [
  ...DOORS.map((door) => plainPanel(`${door}-right`, { mirror: `${door}-left` })),
  ...DOORS.map((door) => plainPanel(`${door}-left`, { mirror: `${door}-right` })),
  plainPanel('bonnet'),
];

const place = (point: string, rest: Partial<PlaceWorked> = {}): PlaceWorked => ({
  ...{ date: '2026-03-01', defect: 'bird-etching', point },
  ...{ median: micrometres(2), high: micrometres(4) },
  ...rest,
});
const taken = { mean: micrometres(2), sd: micrometres(1) };

const carOf = (right: number, bonnet: Partial<PanelFacts> = {}) =>
  surveyOf({
    panels: PANELS,
    readings: PANELS.flatMap(({ id }) => fiveAround(id, id.endsWith('right') ? right : 115)),
    factsOf: (id) => (id === 'bonnet' ? bonnet : {}),
  }).panels;

const withPlaces = (places: readonly PlaceWorked[]): Partial<PanelFacts> => ({
  recorded: { mean: micrometres(0), sd: micrometres(0), places },
});

describe('what is to be read besides more points', () => {
  test('is nothing of a car of which nothing is in doubt and nothing on record', () => {
    expect(placesToRead(carOf(115))).toEqual([]);
  });

  test('is the shut of each door of a side in doubt and of those that face it, once', () => {
    expect(placesToRead(carOf(148))).toEqual(
      ['door-front-right', 'door-front-left', 'door-rear-right', 'door-rear-left'].map((panel) => ({
        ...{ panel, point: null, place: 'shut' },
      })),
    );
  });

  test('is each place worked deeper that nobody read since, by the name of its point, once', () => {
    const places = [
      place('bird etching 1'),
      place('bird etching 1', { date: '2026-05-01' }),
      place('bird etching 2'),
      place('bird etching 3', { taken }),
    ];
    expect(placesToRead(carOf(115, withPlaces(places)))).toEqual(
      ['bird etching 1', 'bird etching 2'].map((point) => ({
        ...{ panel: 'bonnet', point, place: 'face' },
      })),
    );
  });

  test('is no place of a panel that was painted since', () => {
    const facts = { ...withPlaces([place('bird etching 1')]), paintedDaysAgo: 400 };
    expect(placesToRead(carOf(115, facts))).toEqual([]);
  });
});
