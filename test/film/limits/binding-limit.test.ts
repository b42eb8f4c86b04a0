/** Which limit binds, and what a room allows. */
import { describe, expect, it } from 'vitest';
import { um as inUm, says } from '../../../src/base/sentence.ts';
import { micrometres } from '../../../src/base/units.ts';
import {
  bindingLimit,
  inWords,
  type LimitCode,
  removalIn,
  roomLeft,
} from '../../../src/film/limits/limit.ts';

const um = micrometres;
const binding = (...limits: readonly (readonly [LimitCode, number])[]) =>
  bindingLimit(limits.map(([code, value]) => ({ code, value: um(value) }))).code;

describe('the limit that binds', () => {
  it('is the least, and of several as low the first', () => {
    expect(binding(['clear', 3], ['life', 2], ['total', 4])).toBe('life');
    expect(binding(['clear', 2], ['life', 2], ['total', 2])).toBe('clear');
    expect(binding(['total', 2], ['life', 2])).toBe('total');
  });
  it('is the floor of the total where that allows nothing, before what more may be learnt of', () => {
    expect(binding(['clear', 0], ['life', 0], ['total', 0])).toBe('total');
    expect(binding(['near-line', 0], ['total', 0])).toBe('total');
    expect(binding(['life', 0], ['total', 0])).toBe('total');
    expect(binding(['clear', 0], ['life', 1], ['total', 1])).toBe('clear');
  });
  it('is not the total before what nothing lifts', () => {
    expect(binding(['covered', 0], ['total', 0])).toBe('covered');
    expect(binding(['fresh-paint', 0], ['clear', 0], ['total', 0])).toBe('fresh-paint');
  });
});

describe('what a room allows', () => {
  const room = { of: um(20), less: um(14), sd: um(0), risk: 0.05 };
  it('is what is left of it by the factor on the removal, where it is known exactly', () => {
    expect(roomLeft(room)).toBe(6);
    // 6 ÷ e^(1.6449·.4).
    expect(removalIn(room, 0.4)).toBeCloseTo(6 * Math.exp(-1.6448536 * 0.4), 6);
    expect(removalIn({ ...room, less: um(21) }, 0.4)).toBe(0);
  });
  it('is less where what is left is in doubt: 6 ± 2 µm less 1.645 SDs, of a removal that is foretold exactly', () => {
    expect(removalIn({ ...room, sd: um(2) }, 0.001)).toBeCloseTo(6 - 1.6448536 * 2, 2);
    expect(removalIn({ ...room, sd: um(4) }, 0.001)).toBe(0);
  });
});

it('a limit in words keeps its figure and its room, and has none where it has none', () => {
  const said = () => says`${inUm(um(6))} left`;
  const room = { of: um(20), less: um(14), sd: um(0), risk: 0.05 };
  const limit = inWords({ code: 'life', value: um(3), room, said });
  expect(limit).toMatchObject({ code: 'life', value: 3, room, text: '6.0 µm left' });
  expect('room' in inWords({ code: 'covered', value: um(0), said: () => 'covered' })).toBe(false);
});
