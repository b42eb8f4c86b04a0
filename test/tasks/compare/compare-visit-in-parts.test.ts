import { describe, expect, test } from 'vitest';
import { type Film, readingsText, soundFilm, toldBy, worked } from '../comparing.ts';

const job = { finish: 'clear-over-base', taken_um: 0 };
const only = (film: Film, isOf: (panel: string) => boolean): string =>
  readingsText(Object.fromEntries(Object.entries(film).filter(([panel]) => isOf(panel))));
const isBonnet = (panel: string): boolean => panel === 'bonnet';
const isOther = (panel: string): boolean => panel !== 'bonnet';
const off = worked(soundFilm, () => 2);
const partsTold = (visits: readonly string[], marked = true): readonly string[] =>
  toldBy({ visits, job, marked }).filter((one) => one.startsWith('compare-visit-in-parts'));

describe('a file that reads no point that the file before it reads', () => {
  test('is told as a visit of its own, whether it reads other panels or other points of them', () => {
    const told =
      'compare-visit-in-parts: visit-2.csv reads no point that visit-1.csv reads: it is taken for a visit of its own';
    const closer = 'panel,point,reading_um\nbonnet,e1,118\nbonnet,e2,119\nroof,e1,117';
    for (const marked of [true, false]) {
      const halves = [only(soundFilm, isBonnet), only(soundFilm, isOther), readingsText(off)];
      expect(partsTold(halves, marked)).toEqual([told]);
      expect(partsTold([readingsText(soundFilm), closer, readingsText(off)], marked)).toContain(
        told,
      );
    }
  });

  test('is told wherever it stands among the files', () => {
    const visits = [readingsText(soundFilm), only(off, isBonnet), only(off, isOther)];
    expect(partsTold(visits)).toHaveLength(1);
    expect(partsTold(visits)[0]).toContain('visit-3.csv reads no point that visit-2.csv reads');
  });

  test('is not told of visits that read a point again, nor of two files, which no one takes for one visit', () => {
    const all = [readingsText(soundFilm), only(off, isBonnet), readingsText(worked(off, () => 1))];
    expect(partsTold(all)).toEqual([]);
    expect(partsTold(all, false)).toEqual([]);
    expect(partsTold([only(soundFilm, isBonnet), only(off, isOther)])).toEqual([]);
  });
});
