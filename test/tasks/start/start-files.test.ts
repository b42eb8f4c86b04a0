import { describe, expect, it } from 'vitest';
import { readJob } from '../../../src/formats/job/read-job.ts';
import { readShop } from '../../../src/formats/shop/shop.ts';
import { resolveSettings } from '../../../src/tasks/settings/settings.ts';
import { startFiles } from '../../../src/tasks/start/start-files.ts';

const textOf = (name: string): string => {
  const file = startFiles().find((one) => one.name === name);
  if (file === undefined) throw new Error(`no ${name}`);
  return file.text;
};

describe('the files to start from', () => {
  const shop = readShop('shop.json', textOf('shop.json'));
  const job = readJob('job.json', textOf('job.json'));

  it('are valid', () => {
    expect(shop.diagnostics).toEqual([]);
    expect(job.diagnostics).toEqual([]);
    expect(startFiles().map(({ name }) => name)).toEqual([
      'shop.json',
      'job.json',
      'schemas/shop.schema.json',
      'schemas/job.schema.json',
    ]);
  });

  it('name the schemas that are written beside them, which are JSON', () => {
    for (const kind of ['shop', 'job'] as const) {
      const { $schema } = JSON.parse(textOf(`${kind}.json`)) as { $schema: string };
      const schema = JSON.parse(textOf($schema.replace('./', ''))) as { properties: object };
      expect(Object.keys(schema.properties)).toContain('$schema');
    }
  });

  it('hold the built-in values: every setting that is computed with stays as it is', () => {
    if (shop.value === undefined || job.value === undefined) throw new Error('refused');
    const bare = resolveSettings({ typed: {}, job: undefined, shops: [] });
    const begun = resolveSettings({
      typed: {},
      job: { file: job.value, folder: '' },
      shops: [{ origin: 'shop', file: shop.value, folder: '', named: 'flag' }],
    });
    for (const key of ['aim', 'hazeAllowed', 'hardness', 'terms', 'film', 'correction'] as const) {
      expect(begun[key], key).toEqual(bare[key]);
    }
    expect(begun.models.work).toEqual(bare.models.work);
    const values = (facts: typeof bare.facts) =>
      Object.fromEntries(Object.entries(facts).map(([key, { value }]) => [key, value]));
    expect(values(begun.facts)).toEqual(values(bare.facts));
  });

  it('state nothing of a panel by itself: a car that is matte, or worked before, is so all over', () => {
    const { panels } = JSON.parse(textOf('job.json')) as { panels: Record<string, object> };
    expect(Object.values(panels).map((panel) => Object.keys(panel))).toEqual([['note']]);
  });

  it('hold a price list to fill in, of which nothing is taken until it is no example any more', () => {
    if (shop.value === undefined) throw new Error('refused');
    const moneyOf = (text: string) => {
      const { value } = readShop('shop.json', text);
      if (value === undefined) throw new Error('refused');
      const layer = { origin: 'shop', file: value, folder: '', named: 'flag' } as const;
      return resolveSettings({ typed: {}, job: undefined, shops: [layer] }).money;
    };
    const begun = moneyOf(textOf('shop.json'));
    expect([begun.prices.value, begun.areExample]).toEqual([null, true]);
    const edited = moneyOf(textOf('shop.json').replace('"example": true,', ''));
    expect(edited.prices.value?.list.labour.bySkill.get('polish')).toBe(5000n);
    expect(edited.areExample).toBe(false);
  });

  it('explain every key a job may hold, by example or in a note', () => {
    const text = textOf('job.json');
    for (const key of [
      'finish',
      'taken_um',
      'galvanised',
      'covered',
      'painted_days_ago',
      'clear_um',
      'under_um',
      'hardness',
      'colour_depth',
      'template',
      'film_record',
      'substrate',
      'clear_coat_failure',
      'length_m',
      'panels',
    ]) {
      expect(text, key).toContain(key);
    }
  });

  it('stand on lines that a terminal of 120 columns shows whole', () => {
    for (const name of ['shop.json', 'job.json']) {
      expect(
        Math.max(
          ...textOf(name)
            .split('\n')
            .map((line) => line.length),
        ),
      ).toBeLessThan(110);
    }
  });
});
