import { describe, expect, it } from 'vitest';
import { gatherPoints } from '../../src/film/panel-points.ts';
import type { PointPlace, Reading } from '../../src/film/reading.ts';
import { amongSound, onFace, reading } from './car-builder.ts';

const gathered = (...readings: readonly Reading[]) =>
  gatherPoints(readings).map(({ point, place, repeats }) => [point, place, repeats]);
const at = (place: PointPlace, um: number, point = '1', repeat = 1): Reading =>
  reading('bonnet', point, um, { place, repeat });

describe('points of one name on the face and at an edge', () => {
  it('are two, whichever of them was read again', () => {
    expect(gathered(at('face', 110), at('edge', 90), at('face', 112, '1', 2))).toEqual([
      ['1', 'face', [110, 112]],
      ['1', 'edge', [90]],
    ]);
    expect(gathered(at('edge', 90), at('face', 110), at('edge', 92, '1', 2))).toEqual([
      ['1', 'edge', [90, 92]],
      ['1', 'face', [110]],
    ]);
  });

  it('are two whatever they are called', () => {
    for (const point of ['', 'edge', '\u0000', '\u0000edge\u00001', 'é ½']) {
      expect(
        gathered(at('face', 110, point), at('edge', 90, '1'), at('face', 112, point, 2)),
      ).toEqual([
        [point, 'face', [110, 112]],
        ['1', 'edge', [90]],
      ]);
    }
  });

  it('are two among many points as among few', () => {
    const many = Array.from({ length: 14 }, (_, k) => `${k + 1}`).flatMap((point) => [
      at('face', 110, point),
      at('edge', 90, point),
    ]);
    expect(gathered(...many)).toEqual(
      many.map(({ point, place, thickness }) => [point, place, [thickness]]),
    );
    const [first] = many;
    if (first === undefined) throw new Error('there are 28');
    expect(gathered(...many, { ...first, repeat: 2 })[0]).toEqual(['1', 'face', [110, 110]]);
  });
});

describe('filler off the face', () => {
  const at = (place: 'edge' | 'shut', um: number) =>
    amongSound([...onFace('tested', 112, 113, 111, 112), reading('tested', '5', um, { place })]);
  it('makes the panel filler: nothing may go before a test spot, and the page says where it lies', () => {
    for (const place of ['edge', 'shut'] as const) {
      const { panel } = at(place, 640);
      expect(panel.condition).toBe('filler');
      expect([panel.budget, panel.boundBy.code]).toEqual([0, 'test-spot']);
      expect(panel.evidence[0]?.text).toContain(`point 5 (${place}) off the face reads 640.0 µm`);
      expect(panel.sureness?.sure).toBe('clear');
      expect(panel.sureness?.deciding.isBeyond).toBe(true);
      expect(panel.statistics?.max).toBe(113);
    }
  });
  it('is none at a thick edge: that is kept apart as ever', () => {
    expect(at('edge', 300).panel.condition).toBe('original');
    expect(at('edge', 300).panel.budget).toBe(
      amongSound(onFace('tested', 112, 113, 111, 112)).panel.budget,
    );
  });
  it('counts by its chance just under the line', () => {
    expect(at('edge', 497).panel.budget).toBe(0);
  });
});
