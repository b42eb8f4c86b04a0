/** What went at one place of a panel comes off in full from what may go from that panel. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { tell } from '../../../src/base/sentence.ts';
import { micrometres } from '../../../src/base/units.ts';
import type { PanelFacts, RecordedRemoval } from '../../../src/film/film-model.ts';
import { type Allowance, allowance, budgetOf } from '../../../src/film/limits/allowance.ts';
import { type AllowanceCase, allowanceCase } from '../../../src/film/limits/allowance-case.ts';
import { placeLimits } from '../../../src/film/limits/gone-at-place.ts';
import { filmModel } from '../../../src/formats/models.ts';
import { inFull } from '../../in-full.ts';
import { amongSound, fiveAround, knownFacts, onFace, standardTerms } from '../car-builder.ts';

const some = (min: number, max: number) =>
  fc.integer({ min: 1000 * min, max: 1000 * max }).map((thousandths) => thousandths / 1000);

const lost = (all: number, more: number, sd = 0.5): RecordedRemoval => ({
  mean: micrometres(all + more),
  sd: micrometres(Math.hypot(0.3, sd)),
  allOver: { mean: micrometres(all), sd: micrometres(0.3) },
});

const caseOf = (level: number): AllowanceCase => {
  const one = allowanceCase(amongSound(fiveAround('tested', level)).panel);
  if (one === null) throw new Error('it was read');
  return one;
};
const levels = [97, 104, 112, 124].map(caseOf);

const left = (panel: AllowanceCase, facts: Partial<PanelFacts>): Allowance =>
  allowance({ ...panel, facts: { ...panel.facts, ...facts } }, standardTerms, filmModel);

describe('film that went at one place of a panel beyond what went all over it', () => {
  it('lowers what may go by all of itself, down to nothing, whatever limit binds', () => {
    let lowered = 0;
    fc.assert(
      fc.property(
        fc.noBias(
          fc.record({
            panel: fc.constantFrom(...levels),
            all: some(0, 2),
            more: fc.tuple(some(0, 1.5), some(0, 2)),
            sd: some(0, 1.5),
            known: fc.record({
              finish: fc.constantFrom(
                'clear-over-base' as const,
                'unknown' as const,
                'single-stage-solid' as const,
              ),
              taken: fc.constantFrom(null, micrometres(0), micrometres(0), micrometres(2)),
              clear: fc.constantFrom(null, {
                mean: micrometres(38),
                sd: micrometres(2),
                of: 'panel' as const,
              }),
            }),
          }),
        ),
        ({ panel, all, more: [first, second], sd, known }) => {
          const at = (more: number): Allowance =>
            left(panel, { ...known, recorded: lost(all, more, sd) });
          const [before, after] = [at(first), at(first + second)];
          expect(after.budget).toBeLessThanOrEqual(Math.max(0, before.budget - second) + 1e-9);
          const everywhere = { mean: lost(all, first).mean, sd: lost(all, first, sd).sd };
          expect(before.budget).toBeLessThanOrEqual(
            left(panel, { ...known, recorded: everywhere }).budget + 1e-9,
          );
          if (before.budget > second && second > 0.1) lowered += 1;
        },
      ),
      { numRuns: 150 },
    );
    if (inFull) expect(lowered).toBeGreaterThan(20);
  });

  it('counts the same where the budget alone is asked for', () => {
    for (const panel of levels) {
      for (const more of [0, 0.5, 1.5, 30]) {
        const facts = { ...panel.facts, recorded: lost(1, more) };
        const asked = { ...panel, facts };
        expect(budgetOf(asked, standardTerms, filmModel)).toBeCloseTo(left(panel, facts).budget, 6);
      }
    }
  });

  it('counts beside what a comparison left of the panel, which has it taken off already', () => {
    const [panel] = levels.slice(2);
    if (panel === undefined) throw new Error('there are four');
    const heldTo = {
      date: '2026-03-31',
      most: micrometres(0.4),
      points: 5,
      mean: micrometres(112),
    };
    const held = left(panel, { recorded: lost(1, 0.3), heldTo });
    const free = left(panel, { recorded: lost(1, 0.3) });
    expect(free.budget).toBeGreaterThan(0.4);
    expect(held.budget).toBe(0.4);
  });

  it('is no limit where nothing went, or all over the panel alone', () => {
    for (const recorded of [null, { mean: micrometres(2), sd: micrometres(1) }, lost(2, 0)]) {
      expect(placeLimits({ ...knownFacts, recorded }, () => micrometres(4))).toEqual([]);
    }
  });

  it('is told with what says so', () => {
    const said = (recorded: RecordedRemoval) =>
      placeLimits({ ...knownFacts, recorded }, ({ recorded: whole }) => {
        expect(whole).toEqual({ ...recorded, mean: 1 });
        return micrometres(4);
      }).map(({ said: text, value }) => {
        const told = text();
        return [value, typeof told === 'string' ? told : tell(told, 'um')];
      });
    expect(said(lost(1, 1.5))).toEqual([
      [2.5, 'at one place of it 1.5 µm more are gone by the film record: 2.50 µm are left there'],
    ]);
    expect(said({ ...lost(1, 5), by: 'test spots' })).toEqual([
      [0, 'at one place of it 5.0 µm more are gone by the test spots: nothing is left there'],
    ]);
  });

  it('is none of repaint, of which the total says nothing', () => {
    const repaint = allowanceCase(amongSound(onFace('tested', 251, 249, 262, 255, 248)).panel);
    if (repaint === null) throw new Error('it was read');
    expect(left(repaint, { recorded: lost(1, 1) }).limits.map(({ code }) => code)).not.toContain(
      'place',
    );
  });
});
