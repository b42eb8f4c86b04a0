import { describe, expect, it } from 'vitest';
import { micrometres } from '../../../src/base/units.ts';
import { panelWhy } from '../../../src/film/help/panel-why.ts';
import { allowanceSteps } from '../../../src/film/limits/allowance-steps.ts';
import { clearAllowance, clearRisk } from '../../../src/film/limits/removal-risk.ts';
import { filmModel } from '../../../src/formats/models.ts';
import { amongSound, fiveAround, standardTerms } from '../car-builder.ts';

const { logSd } = standardTerms;

describe('how a limit comes to what it allows', () => {
  it('is room over a factor where the room is exact: 12.7 ÷ e^{1.645 × 0.552} = 5.12', () => {
    const room = { of: micrometres(12.7), less: micrometres(0), sd: micrometres(0), risk: 0.05 };
    const steps = allowanceSteps(room, micrometres(5.12), logSd);
    if (steps.kind !== 'exact') throw new Error('the room is exact');
    expect(steps.factor).toBeCloseTo(Math.exp(1.6448536 * logSd), 6);
    expect(steps.room / steps.factor).toBeCloseTo(5.12, 2);
  });
  it('adds up to the room where that is uncertain: mean removal and so many SDs of both together', () => {
    const clear = { mean: micrometres(35.835), sd: micrometres(4.443) };
    const floor = micrometres(22.3);
    const median = clearAllowance(clear, floor, { risk: 0.05, logSd });
    expect(median).toBeCloseTo(4.032, 2);
    const room = { of: clear.mean, less: floor, sd: clear.sd, risk: 0.05 };
    const steps = allowanceSteps(room, median, logSd);
    if (steps.kind !== 'uncertain') throw new Error('the room is uncertain');
    expect(steps.removalMean + steps.sds * steps.togetherSd).toBeCloseTo(13.535, 9);
    // Lognormal: mean m·e^{σ²/2}, SD m·√(e^{σ²}(e^{σ²} − 1)).
    expect(steps.removalMean / median).toBeCloseTo(Math.exp(logSd ** 2 / 2), 9);
    expect(steps.togetherSd).toBeCloseTo(Math.hypot(4.443, steps.removalSd), 9);
    // Over the normal 1.645, as removals scatter to the large side, at the very risk that was asked for.
    expect(steps.sds).toBeGreaterThan(1.645);
    expect(clearRisk(clear, floor, { median, logSd })).toBeCloseTo(0.05, 5);
  });
  it('is told of every limit that leaves a room, and of none that allows nothing whatever the film', () => {
    const { panel } = amongSound(fiveAround('tested', 112));
    const told = panelWhy(panel, standardTerms, filmModel).limits;
    expect(told.map(({ limit, steps }) => [limit.code, steps?.kind])).toEqual([
      ['clear', 'uncertain'],
      ['life', 'exact'],
      ['total', 'exact'],
    ]);
    for (const { limit, steps } of told) {
      if (steps?.kind === 'exact') expect(steps.room / steps.factor).toBeCloseTo(limit.value, 9);
    }
    const matte = amongSound(fiveAround('tested', 112), { facts: { finish: 'matte' } }).panel;
    const [finish] = panelWhy(matte, standardTerms, filmModel).limits;
    expect([finish?.limit.code, finish?.steps]).toEqual(['finish', null]);
  });
});
