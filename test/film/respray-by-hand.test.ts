/** Which panels speak of the usual film of their car, and when they show that it is repaint: in round numbers. */
import { describe, expect, it } from 'vitest';
import { micrometres } from '../../src/base/units.ts';
import {
  type AlikeFilm,
  areMostGalvanised,
  broughtAlike,
  type SoundFilm,
  thinnestOf,
} from '../../src/film/baseline-makers.ts';
import { isRespray } from '../../src/film/panels-agree.ts';
import { zincOf } from '../../src/film/zinc.ts';
import { filmModel } from '../../src/formats/models.ts';
import { knownFacts, plainPanel } from './car-builder.ts';

const um = micrometres;
const conditions = {
  ...filmModel.conditions,
  refinishedAbove: um(30),
  refinishedAboveShare: 0.25,
};

const film = (value: number, painted = value): AlikeFilm => ({
  panel: plainPanel(`p${value}`),
  read: um(value),
  film: um(value),
  mean: um(value),
  painted: um(painted),
});

describe('a usual film that other panels show to be repaint', () => {
  const respray = (
    usual: number,
    thin: readonly AlikeFilm[],
    { readPanels = 6, agreeing = [150, 151, 152] } = {},
  ) => {
    const alike = [...agreeing.map((at) => film(at)), ...thin];
    return isRespray(
      um(usual),
      { alike, against: thin, factories: um(110), readPanels },
      conditions,
    );
  };
  it('is so by a third of the panels that are nearer to what factories paint', () => {
    const two = [film(111), film(113)];
    expect(respray(151, two)).toBe(true);
    expect(respray(151, two, { readPanels: 7 })).toBe(false);
    expect(respray(151, [film(111)], { readPanels: 3 })).toBe(true);
  });
  it('is not where it is none to what factories paint', () => {
    expect(respray(140, [film(105), film(107)])).toBe(false);
  });
  it('is not by panels half-way between, nor by such as are known to lack clear', () => {
    expect(respray(150, [film(130), film(130)])).toBe(false);
    expect(respray(151, [film(111, 140), film(113, 140)])).toBe(false);
  });
  it('is not where what agrees is no repaint to them', () => {
    expect(respray(151, [film(122), film(122)])).toBe(false);
  });
  it('is so by the middle of what agrees alone: the thin ones are none of it', () => {
    // 151 is over 120 + 30; of all five the middle would be 149.
    expect(respray(151, [film(119), film(121)], { agreeing: [149, 151, 153] })).toBe(true);
  });
});

describe('panels brought to one kind of metal', () => {
  const zinc = zincOf(filmModel.layers).mean;
  const sound = (galvanised: boolean): SoundFilm => ({
    panel: plainPanel('roof'),
    film: um(100),
    mean: um(101),
    lacking: 4,
    facts: knownFacts,
    galvanised,
    isWitness: true,
  });
  const brought = (galvanised: boolean, most: boolean) => {
    const [one] = broughtAlike([sound(galvanised)], most, filmModel);
    return [one?.read, one?.film, one?.mean, one?.painted];
  };
  it('have the zinc added or taken off, and what their clear lacks put back', () => {
    expect(brought(false, false)).toEqual([100, 100, 101, 104]);
    expect(brought(false, true)).toEqual([100, 100 + zinc, 101 + zinc, 104 + zinc]);
    expect(brought(true, false)).toEqual([100, 100 - zinc, 101 - zinc, 104 - zinc]);
    expect(brought(true, true)).toEqual([100, 100, 101, 104]);
  });
  it('are mostly galvanised where more than half are', () => {
    expect(areMostGalvanised([sound(true), sound(false)])).toBe(false);
    expect(areMostGalvanised([sound(true), sound(true), sound(false)])).toBe(true);
  });
  it('are thinnest by what they were painted with, the first of two as thin', () => {
    const shown = thinnestOf([film(112), film(90, 111), film(100, 111)]);
    expect([shown.panel.id, shown.read, shown.film]).toEqual(['p90', 90, 111]);
  });
});
