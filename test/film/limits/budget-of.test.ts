import fc from 'fast-check';
import { expect, test } from 'vitest';
import { micrometres } from '../../../src/base/units.ts';
import { NO_SIDES } from '../../../src/film/condition/possible-sides.ts';
import type { PanelFacts } from '../../../src/film/film-model.ts';
import { budgetOf, unsaidAllowance } from '../../../src/film/limits/allowance.ts';
import { allowanceCase } from '../../../src/film/limits/allowance-case.ts';
import { filmModel } from '../../../src/formats/models.ts';
import { inFull } from '../../in-full.ts';
import { amongSound, onFace, standardTerms } from '../car-builder.ts';

const thickness = fc
  .constantFrom(null, 0, 3, 9)
  .map((um) => (um === null ? null : micrometres(um)));
const facts: fc.Arbitrary<Partial<PanelFacts>> = fc.record({
  finish: fc.constantFrom('clear-over-base', 'unknown', 'single-stage-solid', 'matte'),
  taken: thickness,
  recorded: fc.constantFrom(null, { mean: micrometres(2), sd: micrometres(0.5) }),
  clear: fc.constantFrom(null, { mean: micrometres(40), sd: micrometres(3), of: 'panel' as const }),
  galvanised: fc.boolean(),
  covered: fc.constantFrom(false, false, false, true),
});

test('the budget asked for by itself is that of all limits together, whatever the panel reads and is', () => {
  const bound = new Set<string>();
  fc.assert(
    fc.property(
      fc.array(fc.integer({ min: 850, max: 1700 }), { minLength: 1, maxLength: 7 }),
      facts,
      fc.constantFrom(0.002, 0.05, 0.2),
      fc.constantFrom(0.1, 0.37, 0.55),
      fc.boolean(),
      (tenths, known, risk, logSd, byWord) => {
        const terms = { ...standardTerms, risk, logSd };
        const read = onFace('tested', ...tenths.map((one) => one / 10));
        const asked = allowanceCase(amongSound(read, { facts: known, terms }).panel);
        if (asked === null) throw new Error('the panel was read');
        const panel = byWord ? { ...asked, sides: NO_SIDES } : asked;
        const { budget, limits } = unsaidAllowance(panel, terms, filmModel);
        for (const { code, value } of limits) if (value === budget) bound.add(code);
        expect(Math.abs(budgetOf(panel, terms, filmModel) - budget)).toBeLessThan(1e-6);
      },
    ),
    { numRuns: 120, seed: 11 },
  );
  const all = ['clear', 'life', 'total', 'test-spot', 'covered', 'readings', 'finish'];
  if (inFull) expect([...bound]).toEqual(expect.arrayContaining(all));
});
