import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { customerBlocks } from '../../../src/report/quote/quote-customer-blocks.ts';
import { askLeastcut } from '../../cli/ask-leastcut.ts';
import { temporaryFolder } from '../../cli/temporary-folder.ts';
import { quoteOf, readingsOf } from '../../tasks/quotes.ts';

const page = { unit: 'um', verbose: false, date: null } as const;
const sound = readingsOf({ roof: 114, boot: 111, 'wing front left': 113 });

const ownerText = (rows: string, panels: readonly string[] = []): string => {
  const readings = `${sound}${rows}`;
  const result = quoteOf({
    readings,
    panels,
    job: { taken_um: 0 },
    shop: { prices: { currency: 'EUR', labour_minor_per_h: 4500 } },
  });
  return JSON.stringify(customerBlocks(result, page)).replaceAll('\u00a0', ' ');
};

const wrong = (where: string): string =>
  `Readings on the ${where} do not fit the rest: they are taken again before any panel is polished.`;

describe('the owner is told before any choice of readings that look wrong', () => {
  test('where a slip of the key makes filler of a sound panel', () => {
    const text = ownerText('bonnet,1,122.4\nbonnet,2,118.9\nbonnet,3,1250\n');
    expect(text).toContain('bonnet: by the readings there is filler');
    expect(text).toContain(wrong('bonnet'));
    expect(text.indexOf(wrong('bonnet'))).toBeLessThan(text.indexOf('what you get'));
  });

  test('where a point shows 0 and nothing else', () => {
    const text = ownerText('bonnet,1,112.4\nbonnet,2,118.9\nbonnet,3,0\n');
    expect(text).toContain(wrong('bonnet'));
  });

  test('and of none where all fit', () => {
    expect(ownerText('bonnet,1,112.4\nbonnet,2,118.9\n')).not.toContain('do not fit');
  });

  test('nor of a panel that is not quoted', () => {
    const slip = 'bonnet,1,122.4\nbonnet,2,118.9\nbonnet,3,1250\n';
    expect(ownerText(slip, ['roof'])).not.toContain('do not fit');
  });
});

describe('the owner is told before any choice of a gauge', () => {
  const folder = temporaryFolder();
  const pageBy = async (error: number): Promise<string> => {
    const gauge = join(folder, `off-by-${error}.json`);
    const shim = { shim_um: 100, shim_uncertainty_um: 0.5, expanded_um: 0.8, n: 5 };
    writeFileSync(
      gauge,
      JSON.stringify({
        schema: 'leastcut/gauge/1',
        permitted_error: { fixed_um: 1, proportional_pct: 1 },
        checks: [{ ...shim, mean_um: 100 + error, error_um: error, verdict: 'pass' }],
      }),
    );
    const car = 'samples/sound-saloon';
    const words = [
      `${car}/readings.csv`,
      '--job',
      `${car}/job.json`,
      '--shop',
      'samples/shop.json',
    ];
    const { out } = await askLeastcut(['quote', ...words, '--gauge', gauge, '--format', 'html']);
    return out.replace(/<[^>]+>/g, '').replaceAll('\u00a0', ' ');
  };

  test('that failed its check: by how much, what is done first, and that the price may change', async () => {
    const page = await pageBy(7.2);
    const told =
      'The gauge that measured this car failed its check: it may be off by 8.0 µm, or by more. ' +
      'The car is read again by a sound gauge before any panel is polished. ' +
      'What this page says of the paint, and what it costs, may change with that.';
    expect(page).toContain(told);
    expect(page.indexOf(told)).toBeLessThan(page.indexOf('what you get'));
  });

  test('and of none that passed', async () => {
    expect(await pageBy(0.1)).not.toContain('failed its check');
  });
});
