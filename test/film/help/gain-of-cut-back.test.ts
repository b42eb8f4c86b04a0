/** What would help a panel that lacks film to the others: it counts as gone from its topcoat whatever is learnt. */
import { expect, test } from 'vitest';
import { micrometres } from '../../../src/base/units.ts';
import { type HelpTerms, whatWouldHelp } from '../../../src/film/help/what-would-help.ts';
import { filmModel } from '../../../src/formats/models.ts';
import { amongSound, type CarOptions, fiveAround, inTwoZones, onFace } from '../car-builder.ts';
import { helpTerms } from '../help-terms.ts';

const help: HelpTerms = { ...helpTerms, logSdAfterSpot: 0.2, spotTakes: null };

/** Cut back by 16 µm, with so thick a clear stated that some may go all the same. */
const cutBack = (options: Pick<Partial<CarOptions>, 'terms' | 'facts'> = {}) =>
  amongSound(fiveAround('tested', 96), {
    ...options,
    facts: {
      clear: { mean: micrometres(60), sd: micrometres(2), of: 'car' },
      ...options.facts,
    },
  }).panel;

test('a test spot on film cut back gains what the same panel may lose at its SD', () => {
  const panel = cutBack();
  const after = cutBack({ terms: { logSd: 0.2 } });
  const spot = whatWouldHelp(panel, help, filmModel).find(({ code }) => code === 'test-spot');
  expect(panel.condition).toBe('cut-back');
  expect(panel.budget).toBeGreaterThan(0.5);
  expect(spot?.gain).toBeGreaterThan(0.1);
  expect(spot?.gain).toBeCloseTo(after.budget - panel.budget, 9);
});

test('a history of film cut back is what was taken off it as off the others, which they get back too', () => {
  const panel = cutBack({ facts: { taken: null } });
  const history = whatWouldHelp(panel, help, filmModel).find(({ code }) => code === 'history');
  const known = (taken: number) => cutBack({ facts: { taken: micrometres(taken) } }).budget;
  expect(history?.gain).toBeCloseTo(known(0) - panel.budget, 6);
  expect(history?.otherwise?.taken).toBe(2 * filmModel.earlier.unknownClear);
  expect(history?.otherwise?.gain).toBeCloseTo(
    known(2 * filmModel.earlier.unknownClear) - panel.budget,
    6,
  );
});

test('nothing helps film that is no factory’s, and what helps a zone is told of that zone', () => {
  const filled = amongSound(onFace('tested', 110, 112, 111, 900, 109)).panel;
  expect([filled.condition, whatWouldHelp(filled, help, filmModel)]).toEqual(['filler', []]);
  // What is allowed after a test spot of its own is told of a topcoat like that of the others.
  const spotted = { ...cutBack(), condition: 'refinished', also: ['thin'] } as const;
  expect(whatWouldHelp(spotted, help, filmModel)).toEqual([]);
  const beside = { ...cutBack(), condition: 'thin', also: ['cut-back'] } as const;
  expect(whatWouldHelp(beside, help, filmModel).map(({ code }) => code)).toContain('test-spot');
  const { zones } = amongSound(inTwoZones()).panel;
  const codes = zones.map((zone) => whatWouldHelp(zone, help, filmModel).map(({ code }) => code));
  expect(codes).toHaveLength(2);
  expect(codes[1]).toContain('test-spot');
});
