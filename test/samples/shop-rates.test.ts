import { expect, it } from 'vitest';
import { readRates } from '../../src/formats/rates.ts';
import { withRates } from '../../src/tasks/settings/rates-in-use.ts';
import { resolveSettings } from '../../src/tasks/settings/settings.ts';
import { layersOf } from '../tasks/layers.ts';
import { shopRates, trueRates } from './shop-rates.ts';

it('the true rates of the workshop lie within what its rates file teaches', () => {
  const file = readRates('rates.json', shopRates()).value;
  if (file === undefined) throw new Error('refused');
  const settings = resolveSettings(layersOf({}));
  const { value, diagnostics } = withRates(settings, { file, name: 'rates.json', origin: 'flag' });
  expect(diagnostics).toEqual([]);
  const learned = value?.correction.learned?.combinations;
  for (const [id, { factor }] of Object.entries(trueRates)) {
    const { mean = Number.NaN, sd = Number.NaN } = learned?.get(id)?.usual ?? {};
    expect(Math.abs(Math.log(factor) - mean)).toBeLessThan(1.645 * sd);
    // And it is nearer to the truth than what is built in, where that is far off.
    if (Math.abs(Math.log(factor)) > 0.3) {
      expect(Math.abs(Math.log(factor) - mean)).toBeLessThan(Math.abs(Math.log(factor)));
    }
  }
});
