import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { micrometres } from '../../../src/base/units.ts';
import { type RateObservation, readRates } from '../../../src/formats/rates.ts';
import { ratesFileText } from '../../../src/report/methods/rates-file.ts';
import { addObservations } from '../../../src/tasks/methods/add-observations.ts';

const observed = (removed: number, more: Partial<RateObservation> = {}): RateObservation => ({
  date: '2026-03-31',
  vehicle: 'FH-1',
  panel: 'bonnet',
  steps: [{ combination: 'da/foam-medium/medium', sets: 2 }],
  removed: { mean: micrometres(removed), standardError: micrometres(0.5) },
  ...more,
});

describe('new observations', () => {
  it('go to the end of those there are, whose remarks stay', () => {
    const before = { note: 'our bay', observations: [observed(1, { note: 'dry' })] };
    const { rates, added, already } = addObservations(before, [observed(2)]);
    expect(rates).toEqual({ note: 'our bay', observations: [...before.observations, observed(2)] });
    expect({ added, already }).toEqual({ added: 1, already: 0 });
  });

  it('are the first where there is no file yet', () => {
    expect(addObservations(undefined, [observed(2)]).rates).toEqual({
      observations: [observed(2)],
    });
  });

  it('that stand there already, or come twice, are not added again', () => {
    const { rates, added, already } = addObservations({ observations: [observed(1)] }, [
      observed(1),
      observed(2),
      observed(2),
      observed(1, { note: 'said otherwise' }),
    ]);
    expect(rates.observations).toEqual([observed(1), observed(2)]);
    expect({ added, already }).toEqual({ added: 1, already: 3 });
  });

  it.each<[string, Partial<RateObservation>]>([
    ['day', { date: '2026-04-01' }],
    ['vehicle', { vehicle: 'FH-2' }],
    ['panel', { panel: 'roof' }],
    ['work', { steps: [{ combination: 'da/foam-medium/medium', sets: 3 }] }],
    ['look', { cleared: 0.5 }],
    ['haze', { hazeGrade: 2 }],
    ['error', { removed: { mean: micrometres(1), standardError: micrometres(0.4) } }],
  ])('of another %s are others', (_, more) => {
    const { added } = addObservations({ observations: [observed(1)] }, [observed(1, more)]);
    expect(added).toBe(1);
  });

  it('are told from those of a file by the digits that a file has', () => {
    const third = observed(1 / 3);
    const { rates } = addObservations(undefined, [third]);
    const read = readRates('rates.json', ratesFileText(rates)).value?.value;
    expect(addObservations(read, [third])).toMatchObject({ added: 0, already: 1 });
  });

  it('are never said to be known better than a file may say', () => {
    const sure = observed(1, {
      removed: { mean: micrometres(1), standardError: micrometres(0.0001) },
    });
    const text = ratesFileText(addObservations(undefined, [sure]).rates);
    expect(readRates('rates.json', text).diagnostics).toEqual([]);
  });
});

describe('a rates file that is written', () => {
  it('reads back as what was written, an observation on each line', () => {
    const number = (min: number, max: number) =>
      fc.integer({ min: 100 * min, max: 100 * max }).map((value) => value / 100);
    const observation = fc.record(
      {
        date: fc.constant('2026-03-31'),
        vehicle: fc.constantFrom('FH-1', 'a "quoted" one', 'Käfer'),
        panel: fc.constantFrom('bonnet', 'roof'),
        steps: fc.array(
          fc.record({
            combination: fc.constantFrom('da/a/b', 'rotary/c/d'),
            sets: fc.integer({ min: 1, max: 9 }),
          }),
          { minLength: 1, maxLength: 3 },
        ),
        removed: fc.record({
          mean: number(-5, 50).map(micrometres),
          standardError: number(1, 9).map(micrometres),
        }),
        cleared: number(0, 1),
        hazeGrade: fc.integer({ min: 0, max: 4 }),
        note: fc.constantFrom('one line', 'another'),
      },
      { requiredKeys: ['date', 'steps', 'removed'] },
    );
    fc.assert(
      fc.property(fc.array(observation, { maxLength: 6 }), (observations) => {
        const text = ratesFileText({ observations });
        expect(readRates('rates.json', text).value?.value).toEqual({ observations });
        const inLines = observations.length === 0 ? 4 : observations.length + 5;
        expect(text.trimEnd().split('\n')).toHaveLength(inLines);
      }),
    );
  });
});
