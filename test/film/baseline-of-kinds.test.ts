/** Which kind of steel the usual film of a car is told of: that of most of the panels that make it. */
import { describe, expect, test } from 'vitest';
import { factoryFilm } from '../../src/film/factory-film.ts';
import { zincOf } from '../../src/film/zinc.ts';
import { filmModel } from '../../src/formats/models.ts';
import {
  fiveAround,
  knownFacts,
  onFace,
  panelOf,
  plainPanel,
  reading,
  surveyOf,
} from './car-builder.ts';

const zinc = zincOf(filmModel.layers).mean;
const ofFactories = (galvanised: boolean): number =>
  factoryFilm({ ...knownFacts, galvanised }, filmModel.layers).value;

/** Panels named g… are of galvanised steel; how many points each was read at. */
function car(points: Readonly<Record<string, number>>, galvanisedFilm = 112, otherFilm = 112) {
  const ids = Object.keys(points);
  return surveyOf({
    panels: ids.map((id) => plainPanel(id)),
    readings: ids.flatMap((id) => {
      const film = id.startsWith('g') ? galvanisedFilm : otherFilm;
      return points[id] === 1 ? onFace(id, film) : fiveAround(id, film);
    }),
    factsOf: (id) => ({ galvanised: id.startsWith('g') }),
  });
}

describe('the usual film of a car', () => {
  test('is told of galvanised steel where most of the panels that make it are, and of as many it is not', () => {
    expect(zinc).toBe(7);
    // 119 of galvanised steel is 112 of other.
    expect(car({ g1: 5, g2: 5, g3: 5, o1: 5 }, 119, 112).baseline).toBe(119);
    expect(car({ g1: 5, g2: 5, o1: 5, o2: 5 }, 119, 112).baseline).toBe(112);
    expect(car({ g1: 5, o1: 5, o2: 5, o3: 5 }, 119, 112).baseline).toBe(112);
  });

  test('is told by the panels that make it, and not by those of one point', () => {
    const survey = car({ o1: 5, o2: 5, o3: 5, o4: 5, g1: 1, g2: 1, g3: 1, g4: 1, g5: 1 }, 119, 112);
    expect(survey.baseline).toBe(112);
    expect(panelOf(survey, 'g1').baseline).toBe(119);
    expect(survey.baselineMakers.map(({ id }) => id)).toEqual(['o1', 'o2', 'o3', 'o4']);
  });

  test('is what factories paint on the steel of most panels where each has one point', () => {
    expect(ofFactories(true)).toBeGreaterThan(ofFactories(false));
    expect(car({ g1: 1, g2: 1, o1: 1 }).baseline).toBe(ofFactories(true));
    expect(car({ g1: 1, o1: 1, o2: 1 }).baseline).toBe(ofFactories(false));
    expect(car({ g1: 1, o1: 1 }).baseline).toBe(ofFactories(false));
    expect(car({ g1: 1, g2: 1, o1: 1 }).baselineMakers).toEqual([]);
  });

  test('is made of panels with no point over the line of filler, on the face or off it', () => {
    const makers = (edge: number) =>
      surveyOf({
        panels: ['a', 'b', 'c', 'd'].map((id) => plainPanel(id)),
        readings: [
          ...['a', 'b', 'c', 'd'].flatMap((id) => fiveAround(id, 112)),
          reading('d', '6', edge, { place: 'edge' }),
        ],
      }).baselineMakers.map(({ id }) => id);
    const { filler } = filmModel.conditions;
    expect(makers(filler)).toEqual(['a', 'b', 'c', 'd']);
    expect(makers(filler + 0.1)).toEqual(['a', 'b', 'c']);
  });
});
