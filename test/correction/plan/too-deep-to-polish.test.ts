import { describe, expect, test } from 'vitest';
import { remark } from '../../../src/base/remark.ts';
import { micrometres } from '../../../src/base/units.ts';
import {
  type DefectGround,
  defectRemarks,
  throughClear,
} from '../../../src/correction/plan/plan-remarks.ts';
import { amongSound, fiveAround } from '../../film/car-builder.ts';
import { defect } from '../shop.ts';

const { panel } = amongSound(fiveAround('tested', 112));
if (panel.topcoat === null) throw new Error('the topcoat of a sound panel is known');
const { topcoat } = panel;

/** A survey of film 112 µm thick in all, of which the clear is so thick. */
const ground = (clear: number, finish = topcoat.finish) => ({
  statistics: panel.statistics,
  topcoat: { ...topcoat, finish, clear: { ...topcoat.clear, mean: micrometres(clear) } },
});
function said(depth: number | null, of: DefectGround = ground(40)): string | null {
  const told = throughClear({ depth: depth === null ? null : micrometres(depth) }, of);
  return told === null ? null : remark('deep', told).text;
}

describe('a mark whose depth was measured', () => {
  test('is through the clear from where the clear ends, and as deep as it was measured', () => {
    expect(said(39.9)).toBeNull();
    expect(said(40)).toBe(
      '40 µm deep is through the clear (40 µm reckoned at its thinnest): no polishing mends it, new paint does',
    );
    expect(said(55)).toContain('55 µm deep is through the clear (40 µm reckoned');
    expect(said(45, ground(40, 'single-stage'))).toContain(
      'is through the topcoat (40 µm reckoned at its thinnest)',
    );
    // What is reckoned may lie under nothing; no paint does.
    expect(said(1, ground(-3))).toContain('through the clear (0 µm reckoned');
  });

  test('is asked about where it is as deep as all the paint', () => {
    expect(said(111)).toContain('through the clear');
    const mean = panel.statistics?.mean ?? Number.NaN;
    expect(said(mean)).toBe(
      '112 µm deep is more than all the paint there (112 µm): is the depth right? No polishing mends it, new paint does',
    );
    expect(said(300, { ...ground(40), topcoat: null })).toContain('300 µm deep is more than all');
  });

  test('is held against nothing where nothing was read, or no depth was', () => {
    expect(said(300, { statistics: null, topcoat: null })).toBeNull();
    expect(said(90, { ...ground(40), topcoat: null })).toBeNull();
    expect(said(null)).toBeNull();
  });

  test('is told of marks of the whole panel by their names, with the depth', () => {
    const remarks = (depth: number) => defectRemarks([defect('swirl-marks', 3, depth)], ground(40));
    expect(remarks(20)).toEqual([]);
    expect(remarks(60)).toMatchObject([
      {
        code: 'deeper-than-clear',
        text: 'swirl marks: 60 µm deep is through the clear (40 µm reckoned at its thinnest): no polishing mends it, new paint does',
        value: 60,
      },
    ]);
  });
});
