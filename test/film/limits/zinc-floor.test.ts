import { describe, expect, test } from 'vitest';
import { micrometres } from '../../../src/base/units.ts';
import { amongSound, byItsWord, fiveAround, onFace } from '../car-builder.ts';

describe('the floor of the total on galvanised steel', () => {
  const at = (galvanised: boolean, floor = 80) =>
    amongSound(fiveAround('tested', 112), {
      facts: { galvanised },
      terms: { totalFloor: micrometres(floor) },
    }).panel;
  const totalOf = (panel: ReturnType<typeof at>) =>
    byItsWord(panel, { totalFloor: micrometres(80) }).limits.find(({ code }) => code === 'total');

  test('is a floor for the paint: the 7 µm of zinc that are read with it are none', () => {
    const [bare, zinc] = [totalOf(at(false)), totalOf(at(true))];
    // The smallest point reads 108: 28 µm of room, and 21.
    expect([bare?.room?.less, zinc?.room?.less]).toEqual([80, 87]);
    expect((zinc?.value ?? 0) / (bare?.value ?? 1)).toBeCloseTo(21 / 28, 6);
    expect(zinc?.text).toBe('smallest point reads 108.0 µm, 87 must stay, 7 of it zinc');
    expect(bare?.text).toBe('smallest point reads 108.0 µm, 80 must stay');
  });

  test('is raised over a floor of the user’s own too', () => {
    expect([at(false, 90).totalFloor, at(true, 90).totalFloor]).toEqual([90, 97]);
  });

  test('makes a panel thin whose paint alone is under it', () => {
    const read = (galvanised: boolean) =>
      amongSound(onFace('tested', 84, 100, 101, 99, 102), { facts: { galvanised } }).panel;
    expect([read(true).condition, read(true).budget]).toEqual(['thin', 0]);
    expect(
      read(true)
        .evidence.map(({ text }) => text)
        .join(),
    ).toContain('under the floor of 87.0 µm');
    expect(
      read(false)
        .evidence.map(({ text }) => text)
        .join(),
    ).not.toContain('a point reads');
  });

  test('is what binds where the clear and the total both allow nothing: a clear read would lift the one only', () => {
    const { panel } = amongSound(fiveAround('tested', 83));
    expect(panel.limits.filter(({ value }) => value === 0).map(({ code }) => code)).toContain(
      'clear',
    );
    expect(panel.boundBy.code).toBe('total');
  });
});
