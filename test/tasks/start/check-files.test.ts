import { expect, test } from 'vitest';
import { renderText } from '../../../src/render/text.ts';
import { checkBlocks, checkRecord } from '../../../src/report/start/doctor-pages.ts';
import { checkFiles } from '../../../src/tasks/start/check-files.ts';

const shopWith = (material: string): string =>
  JSON.stringify({
    schema: 'leastcut/shop/1',
    name: 'Fernhollow Paintwork',
    prices: {
      currency: 'GBP',
      labour_minor_per_h: { polish: 5400, other: 4200 },
      materials: [{ id: material, pack: 1000, unit: 'ml', price_minor: 3450 }],
      tax: { preset: 'uk-vat' },
      kind: 'estimate',
    },
  });
const checked = (...materials: readonly string[]) =>
  checkFiles(
    materials.map((id) => ({ name: `${id}.json`, sha256: '0', text: shopWith(id) })),
    '',
  );
const pageOf = (files: ReturnType<typeof checked>['value']): string =>
  renderText(checkBlocks(files ?? []), { width: 200, paint: (text) => text });
const machine = { version: '0', node: 'v20', platform: 'linux x64', locale: 'en' };

test('a file whose warnings keep quotes from being made is not called sound, and one beside it still is', () => {
  const { value = [], diagnostics } = checked('mediun', 'medium');
  expect(diagnostics.map(({ code, severity }) => [code, severity])).toEqual([
    ['price-material', 'warning'],
  ]);
  const page = pageOf(value);
  expect(page).toMatch(/^Sound\n +medium\.json: shop file$/mu);
  expect(page).toMatch(
    /^To look at again, for what the warnings say\n +mediun\.json: shop file$/mu,
  );
  expect(checkRecord(value, machine, diagnostics)['checked']).toEqual([
    { file: 'medium.json', kind: 'shop' },
  ]);
});

test('nothing is called sound where every file has a warning, and nothing to look at again where none has', () => {
  expect(pageOf(checked('mediun').value)).not.toContain('Sound');
  expect(pageOf(checked('medium').value)).not.toContain('again');
});
