/** Which paint of a panel a test spot was made on: all of it, or a part. */
import { describe, expect, it } from 'vitest';
import { micrometres } from '../../../src/base/units.ts';
import { liesInFactoryFilm, liesInRepaint } from '../../../src/film/limits/spot-in-repaint.ts';
import type { PanelSurvey } from '../../../src/film/survey.ts';
import { filmModel } from '../../../src/formats/models.ts';
import { amongSound, fiveAround, onFace } from '../car-builder.ts';

const { nearRisk } = filmModel.conditions;
const tested = (...films: readonly number[]): PanelSurvey =>
  amongSound(onFace('tested', ...films)).panel;

const inRepaint = (panel: PanelSurvey, ...marks: readonly number[]): boolean =>
  liesInRepaint(panel, marks.map(micrometres), nearRisk);
const inFactoryFilm = (panel: PanelSurvey, ...marks: readonly number[]): boolean =>
  liesInFactoryFilm(panel, marks.map(micrometres));

/** The line of repaint lies at 112 + 40 µm. */
const LINE = 152;
const repaint = amongSound(fiveAround('tested', 200)).panel;
const sound = amongSound(fiveAround('tested', 112)).panel;
/** Factory film and repaint. */
const inTwo = tested(110, 112, 114, 198, 200, 202);

describe('a test spot on repaint', () => {
  it('is one whose marks all read over the line, on a panel that surely lies beyond it', () => {
    expect(inRepaint(repaint, 199, 202)).toBe(true);
    expect(inRepaint(repaint, 199, LINE)).toBe(false);
    expect(inRepaint(repaint, 199, LINE + 0.1)).toBe(true);
    expect(inRepaint(sound, 199, 202)).toBe(false);
  });

  it('is one anywhere on a panel that is repaint, where no mark says where it lies', () => {
    expect([repaint, sound, inTwo].map((panel) => inRepaint(panel))).toEqual([true, false, false]);
  });

  it('is one whose marks lie in the thicker zone of a panel in two', () => {
    expect(inTwo.zones).toHaveLength(2);
    expect(inRepaint(inTwo, 199, 201)).toBe(true);
    expect(inRepaint(inTwo, 112, 113)).toBe(false);
    expect(inRepaint(inTwo, 112, 201)).toBe(false);
  });

  it('is one on a panel that was painted by the job, whatever its marks read', () => {
    const { panel } = amongSound(fiveAround('tested', 112), {
      factsOf: (id) => ({ paintedDaysAgo: id === 'tested' ? 200 : null }),
    });
    expect([inRepaint(panel), inRepaint(panel, 112)]).toEqual([true, true]);
  });

  it('is not told under a wrap, nor among values to be asked about', () => {
    const { panel } = amongSound(fiveAround('tested', 200), {
      factsOf: (id) => ({ covered: id === 'tested' }),
    });
    expect([panel.condition, inRepaint(panel, 200)]).toEqual(['covered', false]);
    // Beside the slip its points lie surely beyond the line.
    const slipped = tested(200, 204, 196, 1980, 200);
    expect(slipped.keyingSlips).toHaveLength(1);
    expect([inRepaint(slipped), inRepaint(slipped, 200)]).toEqual([false, false]);
    expect(inRepaint({ ...slipped, keyingSlips: [] }, 200)).toBe(true);
    expect(inRepaint({ ...repaint, condition: 'covered' }, 200)).toBe(false);
  });

  it('is not told of a panel so near its line that it may lie on the other side', () => {
    const near = amongSound(fiveAround('tested', LINE + 2)).panel;
    const line = near.sureness?.comparisons.find(({ condition }) => condition === 'refinished');
    expect(line).toMatchObject({ isBeyond: true, line: LINE });
    const otherSide = line?.otherSide ?? Number.NaN;
    expect(otherSide).toBeGreaterThan(nearRisk);
    const marks = [LINE + 2].map(micrometres);
    expect(inRepaint(near, ...marks)).toBe(false);
    expect(liesInRepaint(near, marks, otherSide)).toBe(true);
    expect(liesInRepaint(near, marks, otherSide - 1e-9)).toBe(false);
    // Under the line it is none, and surely so.
    expect(liesInRepaint(sound, [micrometres(200)], 1)).toBe(false);
  });
});

describe('a test spot on factory film', () => {
  it('is any on a panel of one film, which is judged as that film is', () => {
    expect([sound, repaint].map((panel) => inFactoryFilm(panel, 200))).toEqual([true, true]);
  });

  it('is, on a panel in two zones, one whose marks all read no more than the line', () => {
    expect(inFactoryFilm(inTwo, 112, LINE)).toBe(true);
    expect(inFactoryFilm(inTwo, 112, LINE + 0.1)).toBe(false);
    expect(inFactoryFilm(inTwo, 199, 201)).toBe(false);
    expect(inFactoryFilm(inTwo)).toBe(false);
  });

  it('is told by the lower line, and by none where no line decides what the zones are', () => {
    const [thinner, thicker] = inTwo.zones;
    if (thinner === undefined || thicker === undefined) throw new Error('two zones are there');
    const lineAt = (zone: typeof thinner, line: number): typeof thinner => ({
      ...zone,
      sureness: zone.sureness && {
        ...zone.sureness,
        comparisons: zone.sureness.comparisons.map((one) => ({ ...one, line: micrometres(line) })),
      },
    });
    const apart = { ...inTwo, zones: [lineAt(thinner, 140), lineAt(thicker, 160)] };
    expect([inFactoryFilm(apart, 139), inFactoryFilm(apart, 150)]).toEqual([true, false]);
    const unjudged = inTwo.zones.map((zone) => ({ ...zone, sureness: null }));
    expect(inFactoryFilm({ ...inTwo, zones: unjudged }, 112)).toBe(false);
    expect(inRepaint({ ...inTwo, zones: unjudged }, 201)).toBe(false);
  });
});
