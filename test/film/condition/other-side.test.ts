import { describe, expect, it } from 'vitest';
import { micrometres } from '../../../src/base/units.ts';
import { amongSound, fiveAround, onFace, UNTRIED_LOG_SD } from '../car-builder.ts';
import { gridRisk } from '../grid-risk.ts';

const noFloor = { terms: { totalFloor: micrometres(1) } };

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
    const clear = stated.limits.find(({ code }) => code === 'clear')?.value;
    expect(panel.otherSide?.budget).toBeCloseTo(clear ?? Number.NaN, 2);
    expect(panel.otherSide?.budget).toBeLessThan(panel.budget);
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
  it('is thin with nothing to go for film whose credible minimum is near the floor', () => {
    const credible = amongSound(fiveAround('tested', 112)).panel.thinnest ?? Number.NaN;
    const { panel } = amongSound(fiveAround('tested', 112), {
      terms: { totalFloor: micrometres(credible - 0.5) },
    });
    expect([panel.condition, panel.sureness?.deciding.condition]).toEqual(['original', 'thin']);
    expect(panel.otherSide).toMatchObject({ condition: 'thin', budget: 0 });
  });
  it('has no budget of its own where the panel would be in two zones, or in two no more', () => {
    const two = amongSound(onFace('tested', 110, 150, 112, 131, 114)).panel;
    expect([two.condition, two.sureness?.sure]).toEqual(['mixed', 'near']);
    expect(two.otherSide).toEqual({ condition: 'original', budget: null, overBoth: null });
  });
  it('is not asked before a value that looks keyed wrongly is', () => {
    const { panel } = amongSound(onFace('tested', 112, 115, 1120, 110, 113));
    expect(panel.sureness?.sure).toBe('near');
    expect(panel.otherSide).toBeNull();
  });
});

describe('what may go at the risk taken, the chance of the other side counted in', () => {
  const near = (centre: number) => {
    const { panel } = amongSound(fiveAround('tested', centre), noFloor);
    const { otherSide, budget } = panel;
    const overBoth = otherSide?.overBoth;
    if (overBoth == null) throw new Error('not near');
    return { panel, budget, overBoth };
  };
  it('is less than where the word holds, and never less than on the other side', () => {
    for (const centre of [100.2, 101, 102]) {
      const { panel, budget, overBoth } = near(centre);
      expect(overBoth.riskOfBudget).toBeGreaterThan(0.05);
      expect(overBoth.workTo).toBeLessThan(budget);
      expect(overBoth.workTo).toBeGreaterThanOrEqual(panel.otherSide?.budget ?? Number.NaN);
    }
  });
  it('grows as film lies farther from the line', () => {
    const worked = [100.2, 101, 102].map((centre) => near(centre).overBoth.workTo);
    expect(worked).toEqual([...worked].sort((a, b) => a - b));
  });
  it('takes all of a panel that would be a repaint for a panel lost', () => {
    const { panel } = amongSound(fiveAround('tested', 150));
    const chance = panel.sureness?.deciding.otherSide ?? Number.NaN;
    if (panel.topcoat === null) throw new Error('no topcoat');
    const { clear, clearFloor } = panel.topcoat;
    const own = gridRisk(clear.mean, clear.sd, clearFloor, panel.budget, UNTRIED_LOG_SD);
    expect(panel.otherSide?.overBoth?.riskOfBudget).toBeCloseTo(chance + (1 - chance) * own, 3);
    expect(panel.otherSide?.overBoth?.workTo).toBe(0);
  });
  it('is not asked where as much or more may go on the other side', () => {
    expect(amongSound(fiveAround('tested', 99), noFloor).panel.otherSide?.overBoth).toBeNull();
  });
});

describe('what settles it', () => {
  const settling = (panel: ReturnType<typeof amongSound>['panel']) =>
    panel.advice.flatMap(({ code, text }) => (code === 'settle' ? [text] : []));
  const BY_CLEAR = 'a clear read settles what may go, points would not';
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
    expect(settled.at(-1)).toBe('9 points would settle it');
  });
  it('is its history where nobody stated it, and not where the job does', () => {
    const stated = (taken: number | null) =>
      settling(
        amongSound(fiveAround('tested', 100.5), {
          ...noFloor,
          facts: { taken: taken === null ? null : micrometres(taken) },
        }).panel,
      );
    expect(stated(null)).toEqual(['its history would settle it']);
    expect(stated(0)).toEqual([BY_CLEAR]);
    expect(stated(3)).toEqual([BY_CLEAR]);
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
