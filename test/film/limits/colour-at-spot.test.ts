import { describe, expect, it } from 'vitest';
import { micrometres } from '../../../src/base/units.ts';
import type { Finish } from '../../../src/film/film-model.ts';
import {
  doubtsFinish,
  isColourNormal,
  isRepaintSaidWithoutClear,
  spotsNamed,
} from '../../../src/film/limits/colour-at-spot.ts';
import { amongSound, fiveAround, knownFacts, onFace } from '../car-builder.ts';

const nothing = micrometres(0);
const recordedAt = (...colourAt: readonly string[]) => ({ mean: nothing, sd: nothing, colourAt });

describe('colour on the pad at a test spot', () => {
  it('is what paint without a clear gives, and no other', () => {
    const normal: Readonly<Record<Finish, boolean>> = {
      'clear-over-base': false,
      'single-stage-solid': true,
      'single-stage-metallic': true,
      lacquer: true,
      matte: false,
      unknown: false,
    };
    for (const [finish, is] of Object.entries(normal)) {
      expect([finish, isColourNormal(finish as Finish)]).toEqual([finish, is]);
    }
  });

  it('is none of repaint’s, whatever the car is said to be painted with', () => {
    const repaint = (finish: Finish, ...films: readonly number[]): boolean =>
      isRepaintSaidWithoutClear(
        amongSound(onFace('tested', ...films), { facts: { finish } }).panel,
      );
    expect(repaint('single-stage-solid', 220, 221, 219, 222, 218)).toBe(true);
    expect(repaint('lacquer', 220, 221, 219, 222, 218)).toBe(true);
    expect(repaint('clear-over-base', 220, 221, 219, 222, 218)).toBe(false);
    expect(repaint('single-stage-solid', 112, 113, 111, 112, 112)).toBe(false);
    // Not read: nothing says that it was repainted.
    expect(repaint('single-stage-solid')).toBe(false);
  });

  it('is named by its spot, or by its spots', () => {
    expect(spotsNamed(['B'])).toBe('test spot B');
    expect(spotsNamed(['R', 'S'])).toBe('test spots R, S');
    const told = (...spots: readonly string[]) =>
      amongSound(fiveAround('tested', 112), {
        factsOf: (id) => (id === 'tested' ? { recorded: recordedAt(...spots) } : {}),
      }).panel;
    expect(told('R', 'S').boundBy.code).toBe('colour-at-spot');
    expect(told('R', 'S').budget).toBe(0);
  });

  it('puts the finish of the car in doubt where it is told to, whatever its panel is called', () => {
    const told = { ...knownFacts, recorded: recordedAt('B') };
    expect(doubtsFinish({ facts: { ...told, colourOfCar: ['B'] } })).toBe(true);
    expect(doubtsFinish({ facts: told })).toBe(false);
    expect(doubtsFinish({ facts: knownFacts })).toBe(false);
  });
});
