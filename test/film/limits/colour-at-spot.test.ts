import { describe, expect, it } from 'vitest';
import { micrometres } from '../../../src/base/units.ts';
import type { Condition } from '../../../src/film/condition/condition.ts';
import type { Finish } from '../../../src/film/film-model.ts';
import {
  doubtsFinish,
  isColourNormal,
  spotsNamed,
} from '../../../src/film/limits/colour-at-spot.ts';
import { amongSound, fiveAround, knownFacts } from '../car-builder.ts';

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

  describe('puts the finish of the car in doubt', () => {
    const doubts = (
      conditions: readonly [Condition, ...Condition[]],
      finish: Finish = 'clear-over-base',
      spots: readonly string[] = ['B'],
    ): boolean => {
      const [condition, ...also] = conditions;
      const facts = { ...knownFacts, finish, recorded: recordedAt(...spots) };
      return doubtsFinish({ facts, condition, also });
    };

    it('on factory film, and where nobody read the film', () => {
      expect(doubts(['original'])).toBe(true);
      expect(doubts(['thin', 'cut-back'])).toBe(true);
      expect(doubts(['unread'])).toBe(true);
    });

    it('not on repaint or in part repaint, whose coats are its own', () => {
      expect(doubts(['refinished'])).toBe(false);
      expect(doubts(['original', 'mixed'])).toBe(false);
      expect(doubts(['filler'])).toBe(false);
    });

    it('not where such paint gives colour, and not without any', () => {
      expect(doubts(['original'], 'lacquer')).toBe(false);
      expect(doubts(['original'], 'single-stage-solid')).toBe(false);
      expect(doubts(['original'], 'clear-over-base', [])).toBe(false);
      expect(doubtsFinish({ facts: knownFacts, condition: 'original', also: [] })).toBe(false);
    });
  });
});
