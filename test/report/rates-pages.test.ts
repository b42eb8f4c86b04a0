import { describe, expect, test } from 'vitest';
import { readRates } from '../../src/formats/rates.ts';
import { methodsRecordSchema } from '../../src/formats/records/methods-record.ts';
import { renderText } from '../../src/render/text.ts';
import { methodListBlocks } from '../../src/report/methods/method-list-blocks.ts';
import { methodListRecord } from '../../src/report/methods/methods-record.ts';
import { shownMethodBlocks } from '../../src/report/methods/shown-method-blocks.ts';
import type { Block } from '../../src/report/model.ts';
import { listMethods, methodSources, showMethod } from '../../src/tasks/methods/methods.ts';
import { methodAssumptions } from '../../src/tasks/methods/methods-assumptions.ts';
import { ratesReport } from '../../src/tasks/methods/rates-report.ts';
import { withRates } from '../../src/tasks/settings/rates-in-use.ts';
import { resolveSettings } from '../../src/tasks/settings/settings.ts';
import { layersOf } from '../tasks/layers.ts';

type Reading = readonly [vehicle: string, combination: string, sets: number, removed: number];

function learnedFrom(readings: readonly Reading[]) {
  const observations = readings.map(([vehicle, combination, sets, removed]) => ({
    date: '2026-01-15',
    vehicle,
    panel: 'bonnet',
    combination,
    sets,
    removed_um: removed,
    standard_error_um: 0.3,
  }));
  const text = JSON.stringify({ schema: 'leastcut/rates/1', observations });
  const file = readRates('rates.json', text).value;
  if (file === undefined) throw new Error('a rates file that cannot be read');
  const named = { file, name: 'rates.json', origin: 'flag' as const };
  const { value } = withRates(resolveSettings(layersOf({})), named);
  if (value === undefined) throw new Error('no settings');
  return { settings: value, rates: ratesReport(value) };
}

/** Without the breaks of its lines. */
const flowing = (blocks: readonly Block[]): string =>
  renderText(blocks, { width: 80, paint: (piece) => piece }).replaceAll(/\s+/g, ' ');

function listed(readings: readonly Reading[]) {
  const { settings, rates } = learnedFrom(readings);
  const methods = listMethods(methodSources(settings));
  const assumptions = methodAssumptions(settings);
  return {
    page: flowing(methodListBlocks(methods, assumptions, 'um', rates)),
    record: methodListRecord(methods, assumptions, { version: '0', diagnostics: [] }, rates),
  };
}

function shown(id: string, readings: readonly Reading[]): string {
  const { settings, rates } = learnedFrom(readings);
  const { value } = showMethod(id, methodSources(settings));
  if (value === undefined) throw new Error(`${id} is not shown`);
  return flowing(shownMethodBlocks(value, 'um', rates));
}

const medium = 'da/foam-medium/medium';
/** Two sets take 3 µm on each of so many vehicles, where 1.79 is built in. */
const fast = (vehicles: number): readonly Reading[] =>
  Array.from({ length: vehicles }, (_, i) => [`V${i}`, medium, 2, 3] as const);

describe('own rates on the page of methods', () => {
  test('say what they rest on, and mark what was learned and what is related', () => {
    const { page } = listed(fast(6));
    expect(page).toContain('6 observations of 6 vehicles in rates.json.');
    expect(page).toMatch(/da\/foam-medium\/medium \S+ 4\.4 1 cut refine learned \(6\)/);
    expect(page).toMatch(/rotary\/foam-medium\/heavy \S+ 2\.8 4 cut related/);
    expect(page).toMatch(/rotary\/wool\/heavy \S+ 2\.8 4 cut derived/);
  });

  test('say how far off they are, beside the built-in rates and the gauge’s noise', () => {
    const { page, record } = listed(fast(6));
    const told = record['own_rates'] as { foretelling: Record<string, number> };
    const { error_um_per_set: error, built_in_error_um_per_set: builtIn } = told.foretelling;
    expect(builtIn).toBeCloseTo((3 - 2 * 0.8965) / 2, 2);
    expect(error).toBeLessThan((builtIn ?? 0) / 2);
    expect(page).toContain(`by the built-in rates ${(builtIn ?? 0).toFixed(2)}`);
    expect(page).toContain(`each vehicle by the others alone is ${(error ?? 0).toFixed(2)} µm`);
    expect(page).toContain('of either, 0.15 is the gauge’s own noise');
    expect(page).toContain('6 of 6 vehicles nearer');
    expect(page).not.toContain('a hint, no proof');
  });

  test('say when there is too little to tell, when it is little, and when they are no better', () => {
    expect(listed(fast(4)).page).toContain('too few to say how well they foretell');
    expect(listed(fast(5)).page).toContain('From so few vehicles that is a hint, no proof.');
    const wild = [0.4, 4.6, 0.5, 4.4, 0.3, 4.5].map(
      (removed, i) => [`V${i}`, medium, 2, removed] as const,
    );
    expect(listed(wild).page).toContain('no better than the built-in ones');
    expect(listed(fast(6)).page).not.toContain('no better');
  });

  test('name the line of an observation that is unlike the others', () => {
    const { page } = listed([...fast(8), ['V9', medium, 2, 0.1]]);
    expect(page).toMatch(
      /Unlike the others: rates\.json:1 took 0\.1 where the others let expect 2\./,
    );
    expect(listed(fast(8)).page).not.toContain('Unlike');
  });

  test('keep to the schema of the record', () => {
    expect(methodsRecordSchema.safeParse(listed(fast(6)).record).error).toBeUndefined();
    expect(methodsRecordSchema.safeParse(listed(fast(1)).record).error).toBeUndefined();
  });
});

describe('own rates on the page of one combination', () => {
  test('show each of its observations beside what is foretold without that vehicle', () => {
    const page = shown(medium, [...fast(3), ['V7', 'da/wool/heavy', 1, 2]]);
    expect(page).toContain('from 3 observations on 3 vehicles; reckoned it would be 0.36–2.22.');
    expect(page.match(/2026-01-15 V\d bonnet 2 3\.0 ± 0\.3 2\.\d 1\.8/g)).toHaveLength(3);
    expect(page).not.toContain('V7');
  });

  test('say of a combination without any why it moves all the same', () => {
    expect(shown('da/foam-medium/heavy', fast(3))).toContain(
      'Not observed: none of the observations in rates.json is of this combination; they move it as far as it shares its machine, pad or product',
    );
  });
});
