import { describe, expect, it } from 'vitest';
import { micrometres } from '../../../src/base/units.ts';
import { wordThatTakes } from '../../../src/film/condition/other-side.ts';
import { amongSound, byItsWord, fiveAround, ifWordHolds, onFace } from '../car-builder.ts';

const noFloor = { terms: { totalFloor: micrometres(1) } };

describe('the word that takes from what may go', () => {
  it('is that across the line, where less may go there', () => {
    const { panel } = amongSound(fiveAround('tested', 101), noFloor);
    expect(wordThatTakes(panel)).toBe('cut-back');
    expect(wordThatTakes(amongSound(fiveAround('tested', 118)).panel)).toBeNull();
  });
  it('is what it may be besides, where as much may go across the line', () => {
    const credible = amongSound(fiveAround('tested', 104)).panel.thinnest ?? Number.NaN;
    const { panel } = amongSound(fiveAround('tested', 104), {
      terms: { totalFloor: micrometres(credible - 0.001) },
    });
    expect(panel.otherSide).toMatchObject({ condition: 'thin' });
    expect(panel.otherSide?.budget).toBeCloseTo(panel.otherSide?.ifWordHolds ?? 0, 2);
    expect(panel.budget).toBeLessThan((panel.otherSide?.ifWordHolds ?? 0) - 0.1);
    expect(wordThatTakes(panel)).toBe('cut-back');
  });
});

describe('what a panel near its line would be otherwise', () => {
  it('is nothing where it is not near', () => {
    expect(amongSound(fiveAround('tested', 118)).panel.otherSide).toBeNull();
    expect(amongSound([]).panel.otherSide).toBeNull();
  });
  it('is cut-back for original film a little over that line, with all that such a panel lacks gone from its clear', () => {
    const { panel } = amongSound(fiveAround('tested', 101), noFloor);
    expect(panel.condition).toBe('original');
    expect(panel.otherSide?.condition).toBe('cut-back');
    // As on a panel that reads 100, on the line, of which those 12 µm are stated to be gone.
    const stated = amongSound(fiveAround('tested', 100), {
      ...noFloor,
      factsOf: (id) => ({ taken: micrometres(id === 'tested' ? 12 : 0) }),
    }).panel;
    const clear = byItsWord(stated, noFloor.terms).limits.find(({ code }) => code === 'clear');
    expect(panel.otherSide?.budget).toBeCloseTo(clear?.value ?? Number.NaN, 2);
    expect(panel.otherSide?.budget).toBeLessThan(ifWordHolds(panel, noFloor.terms));
  });
  it('is original for cut-back film a little under it', () => {
    const { panel } = amongSound(fiveAround('tested', 99), noFloor);
    expect(panel.condition).toBe('cut-back');
    expect(panel.otherSide?.condition).toBe('original');
    expect(panel.otherSide?.budget).toBeGreaterThan(panel.budget);
  });
  it('is a repaint for film a little under that line, of which nothing may go', () => {
    const { panel } = amongSound(fiveAround('tested', 150));
    expect(panel.condition).toBe('original');
    expect(panel.otherSide).toMatchObject({ condition: 'refinished', budget: 0 });
  });
  it('is thin, and as much may go, for film whose credible minimum is near the floor: that is no limit', () => {
    const credible = amongSound(fiveAround('tested', 112)).panel.thinnest ?? Number.NaN;
    const at = (by: number) =>
      amongSound(fiveAround('tested', 112), {
        terms: { totalFloor: micrometres(credible + by) },
      }).panel;
    const [over, under] = [at(-0.001), at(0.001)];
    expect([over.condition, over.sureness?.deciding.condition]).toEqual(['original', 'thin']);
    expect(over.otherSide).toMatchObject({ condition: 'thin', budget: over.budget });
    expect(under.condition).toBe('thin');
    expect(under.budget).toBeCloseTo(over.budget, 2);
  });
  it('is thin, and as much may go, for film whose smallest point is near the floor: that is held to it as it reads', () => {
    const at = (floor: number) =>
      amongSound(fiveAround('tested', 112), { terms: { totalFloor: micrometres(floor) } }).panel;
    // The smallest point reads 108; twice the room, twice the film.
    expect(at(107.5).otherSide?.budget ?? at(107.5).budget).toBe(at(107.5).budget);
    expect(at(107).budget).toBeCloseTo(2 * at(107.5).budget, 6);
    expect(at(108.1).budget).toBe(0);
  });
  it('has no budget of its own where the panel would be in two zones, or in two no more', () => {
    const two = amongSound(onFace('tested', 110, 150, 112, 131, 114)).panel;
    expect([two.condition, two.sureness?.sure]).toEqual(['mixed', 'near']);
    expect(two.otherSide).toMatchObject({ condition: 'original', budget: null });
  });
  it('is not asked before a value that looks keyed wrongly is', () => {
    const { panel } = amongSound(onFace('tested', 112, 115, 1120, 110, 113));
    expect(panel.sureness?.sure).toBe('near');
    expect(panel.otherSide).toBeNull();
  });
});

describe('what settles it', () => {
  const settling = (panel: ReturnType<typeof amongSound>['panel']) =>
    panel.advice.flatMap(({ code, text }) => (code.startsWith('settle') ? [text] : []));
  const BY_CLEAR = 'a clear read settles what may go, more points only narrow it';
  it('is a clear read on the very line, however many points are read', () => {
    expect(settling(amongSound(fiveAround('tested', 100.1), noFloor).panel)).toEqual([BY_CLEAR]);
  });
  it('is nine points where their doubt then leaves the other side under its share', () => {
    const settled = [101, 101.5, 102, 102.5, 103, 103.5, 104]
      .map((centre) => amongSound(fiveAround('tested', centre), noFloor).panel)
      .filter(({ sureness }) => sureness?.sure === 'near')
      .map((panel) => settling(panel).join());
    // The farther from the line, the less is asked; where it is no more near, nothing.
    expect(settled[0]).toBe(BY_CLEAR);
    expect(settled.at(-1)).toBe('9 points in all, if they read the same: settles it');
  });
  it('is no history: a panel that was never polished may still have been painted thin', () => {
    const stated = (taken: number | null) =>
      amongSound(fiveAround('tested', 100.5), {
        ...noFloor,
        facts: { taken: taken === null ? null : micrometres(taken) },
      }).panel;
    for (const taken of [null, 0, 3]) {
      expect(settling(stated(taken))).toEqual([BY_CLEAR]);
      expect(stated(taken).sureness?.sure).toBe('near');
    }
  });
  it('is that it was painted again for film near that line, which leaves no doubt of the word', () => {
    const near = amongSound(fiveAround('tested', 150)).panel;
    expect(settling(near).join()).toContain(
      'painted again (painted_days_ago in the job; word that it never was settles nothing)',
    );
    // A little farther from the line further points would do as well.
    const ways = [147, 147.5, 148, 148.5, 149].flatMap((centre) =>
      settling(amongSound(fiveAround('tested', centre)).panel),
    );
    expect(ways).toContain(
      'a test spot of its own without colour; or 9 points in all, if they read the same; or word that it was painted again (painted_days_ago in the job; word that it never was settles nothing): settles it',
    );
    const told = amongSound(fiveAround('tested', 150), {
      factsOf: (id) => ({ paintedDaysAgo: id === 'tested' ? 400 : null }),
    }).panel;
    expect([told.condition, told.sureness]).toEqual(['refinished', null]);
  });
  it('is the point that decides, read again, for a zone whose largest point is near the line of filler', () => {
    const { panel } = amongSound(onFace('tested', 110, 480, 112, 498, 114));
    expect([panel.condition, panel.sureness?.deciding.compared]).toEqual([
      'mixed',
      'largest-point',
    ]);
    // The gauge is most of what a reading of 498 µm is uncertain by: first that is to be checked.
    expect(settling(panel)).toEqual([
      'a checked gauge with that point read 3 more times, if it reads the same: settles it',
    ]);
  });
  it('is a clear read where it says so: with the clear stated as much may go on either side', () => {
    const { panel } = amongSound(fiveAround('tested', 100.5), noFloor);
    expect(settling(panel)).toEqual([BY_CLEAR]);
    const clear = { mean: micrometres(38), sd: micrometres(2), of: 'panel' } as const;
    const read = amongSound(fiveAround('tested', 100.5), {
      ...noFloor,
      factsOf: (id) => ({ clear: id === 'tested' ? clear : null }),
    }).panel;
    expect(read.otherSide?.budget).toBeCloseTo(ifWordHolds(read, noFloor.terms), 1);
    expect(read.budget).toBeGreaterThan(2);
    // Once it is read nothing is left to settle, and nothing is held back.
    expect(settling(read)).toEqual([]);
    expect(read.boundBy.code).not.toBe('near-line');
  });
  it('is said to be nothing where no more points and no checked gauge would', () => {
    // On the line of two zones: read again, it would lie there as well.
    const { panel } = amongSound(onFace('tested', 110, 500, 112, 499, 114));
    expect(settling(panel)).toEqual(['neither more points nor a checked gauge would settle it']);
  });
  it('is nothing where as much may go on either side', () => {
    const { panel } = amongSound(fiveAround('tested', 101), {
      facts: { finish: 'matte' },
      ...noFloor,
    });
    expect([panel.otherSide?.condition, panel.otherSide?.budget]).toEqual(['cut-back', 0]);
    expect(settling(panel)).toEqual([]);
  });
});
