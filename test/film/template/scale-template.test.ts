import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { metres, millimetres, squareMetres } from '../../../src/base/units.ts';
import { scaledDimensions, scaleTemplate } from '../../../src/film/template/scale-template.ts';
import type { Panel, VehicleTemplate } from '../../../src/film/template/template.ts';
import { builtInTemplates } from '../../../src/formats/data/templates.ts';
import { plainPanel, plainTemplate } from '../car-builder.ts';

const size = (length: number, width: number, height: number) => ({
  length: metres(length),
  width: metres(width),
  height: metres(height),
});

/** A car of 4 × 2 × 1 m with one panel of 2 m², 400 mm flat, 3 m of trim. */
const carWith = (panel: Partial<Panel>): VehicleTemplate => ({
  ...plainTemplate(
    plainPanel('panel', { area: squareMetres(2), flatWidth: millimetres(400), ...panel }),
  ),
  size: size(4, 2, 1),
});

const scaled = (panel: Partial<Panel>, ...to: [number, number, number]) => {
  const [only] = scaleTemplate(carWith(panel), size(...to)).panels;
  if (only === undefined) throw new Error('no panel');
  return only;
};

describe('a template scaled to a vehicle', () => {
  // Factors by hand: length 5/4 = 1.25, width 2.2/2 = 1.1, height 1.2/1 = 1.2.
  test('grows a roof with length and width, its flat width with the width', () => {
    const roof = scaled({ spans: ['length', 'width'] }, 5, 2.2, 1.2);
    expect(roof.area).toBeCloseTo(2 * 1.25 * 1.1, 12);
    expect(roof.trimLength).toBeCloseTo((3 * (1.25 + 1.1)) / 2, 12);
    expect(roof.flatWidth).toBeCloseTo(400 * 1.1, 12);
  });

  test('grows a side with length and height', () => {
    const side = scaled({ spans: ['length', 'height'] }, 5, 2.2, 1.2);
    expect(side.area).toBeCloseTo(2 * 1.25 * 1.2, 12);
    expect(side.flatWidth).toBeCloseTo(400 * 1.2, 12);
  });

  test('grows a panel of one measure with that alone, and one of none not at all', () => {
    const rail = scaled({ spans: ['length'] }, 5, 2.2, 1.2);
    expect([rail.area, rail.trimLength, rail.flatWidth]).toEqual([2.5, 3.75, 400]);
    expect(scaled({ spans: [] }, 5, 2.2, 1.2)).toMatchObject({
      area: 2,
      trimLength: 3,
      flatWidth: 400,
    });
  });

  test.each([
    ['horizontal', 1.25 * 1.1],
    ['vertical', 1.25 * 1.2],
    ['low', 1.1 * 1.2],
  ] as const)('grows a %s panel that says nothing as it faces', (facing, factor) => {
    expect(scaled({ facing }, 5, 2.2, 1.2).area).toBeCloseTo(2 * factor, 12);
  });

  test('keeps what is not known as it is', () => {
    const template = carWith({ spans: ['length', 'width'] });
    const longer = scaleTemplate(template, { length: metres(5) });
    expect(longer.panels[0]?.area).toBe(2.5);
    expect(longer.size).toEqual(size(5, 2, 1));
    const { size: _, ...unsized } = template;
    expect(scaleTemplate(unsized, size(5, 2, 1))).toBe(unsized);
    expect(scaledDimensions(unsized, size(5, 2, 1))).toEqual([]);
  });

  test('is itself again when it is scaled back', () => {
    const factor = fc.double({ min: 0.6, max: 1.6, noNaN: true });
    fc.assert(
      fc.property(fc.constantFrom(...builtInTemplates), factor, factor, factor, (one, f, g, h) => {
        const own = { ...size(1, 1, 1), ...one.size };
        const there = scaleTemplate(one, size(own.length * f, own.width * g, own.height * h));
        const back = scaleTemplate(there, own);
        for (const [i, panel] of back.panels.entries()) {
          const before = one.panels[i];
          expect(panel.area).toBeCloseTo(before?.area ?? Number.NaN, 9);
          expect(panel.flatWidth).toBeCloseTo(before?.flatWidth ?? Number.NaN, 7);
        }
      }),
    );
  });
});
