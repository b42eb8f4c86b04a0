/** What is expected of a topcoat, in the words of a page. */
import { expect, test } from 'vitest';
import { spoken } from '../../../src/base/remark.ts';
import { micrometres } from '../../../src/base/units.ts';
import { clearExpected } from '../../../src/film/limits/clear-expected.ts';
import type { Besides, PlainTopcoat } from '../../../src/film/limits/topcoat-cases.ts';
import { amongSound, fiveAround } from '../car-builder.ts';

const um = micrometres;

/** A topcoat so thick on the thinnest share, of which 20 µm must stay. */
function clearAt(mean: number): PlainTopcoat {
  const { topcoat } = amongSound(fiveAround('tested', 112)).panel;
  if (topcoat === null) throw new Error('factory film has a topcoat');
  return { ...topcoat, clear: { mean: um(mean), sd: um(4.9) }, clearFloor: um(20) };
}

const told = (besides: readonly Besides[], mean = 37.7): string =>
  spoken(clearExpected({ ...clearAt(mean), besides }, ['thin', 'cut-back'])).text;

test('a topcoat that can be nothing else is told with what must stay', () => {
  expect(told([])).toBe('37.7 ± 4.9 µm expected, 20.0 must stay');
  expect(told([], -3)).toBe('0.0 ± 4.9 µm expected, 20.0 must stay');
});

test('each that it may be besides is told with its chance, its own word first', () => {
  expect(
    told([
      { condition: 'refinished', chance: 0.02, topcoat: null },
      { condition: 'original', chance: 0.25, topcoat: clearAt(41) },
    ]),
  ).toBe(
    '37.7 ± 4.9 µm expected if cut-back, none to go by if refinished (2.0 %), 41.0 ± 4.9 µm if original (25 %), 20.0 must stay',
  );
});

test('what it is beyond two lines is told once, by the chance of either, and apart with a topcoat', () => {
  const lost = { condition: 'refinished', topcoat: null } as const;
  expect(
    told([
      { ...lost, chance: 0.02 },
      { condition: 'refinished', chance: 0.25, topcoat: clearAt(41) },
      { ...lost, chance: 0.05 },
    ]),
  ).toBe(
    '37.7 ± 4.9 µm expected if cut-back, none to go by if refinished (7.0 %), 41.0 ± 4.9 µm if refinished (25 %), 20.0 must stay',
  );
});

test('a chance under half a per cent is left to the sum', () => {
  const at = (chance: number) => told([{ condition: 'filler', chance, topcoat: null }]);
  expect(at(0.0049)).toBe('37.7 ± 4.9 µm expected, 20.0 must stay');
  expect(at(0.005)).toMatch(/ expected if cut-back, none to go by if filler \(/);
});
