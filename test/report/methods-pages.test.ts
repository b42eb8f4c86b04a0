import { describe, expect, test } from 'vitest';
import { renderJson } from '../../src/render/json.ts';
import { renderText } from '../../src/render/text.ts';
import { methodListBlocks } from '../../src/report/methods/method-list-blocks.ts';
import { methodListRecord, shownMethodRecord } from '../../src/report/methods/methods-record.ts';
import { shownMethodBlocks } from '../../src/report/methods/shown-method-blocks.ts';
import type { Block } from '../../src/report/model.ts';
import { listMethods, methodSources, showMethod } from '../../src/tasks/methods/methods.ts';
import { methodAssumptions } from '../../src/tasks/methods/methods-assumptions.ts';
import { resolveSettings } from '../../src/tasks/settings/settings.ts';
import { layersOf } from '../tasks/layers.ts';

type Said = Parameters<typeof layersOf>[0];

const context = { version: '0.0.0', diagnostics: [] };
const text = (blocks: readonly Block[]): string =>
  renderText(blocks, { width: 80, paint: (piece) => piece });
/** Without the breaks of its lines. */
const flowing = (page: string): string => page.replaceAll(/\s+/g, ' ');
const widest = (page: string): number => Math.max(...page.split('\n').map((line) => line.length));

function listed(said: Said = {}, unit: 'um' | 'mil' = 'um') {
  const settings = resolveSettings(layersOf(said));
  const methods = listMethods(methodSources(settings));
  const assumptions = methodAssumptions(settings);
  return {
    page: text(methodListBlocks(methods, assumptions, unit)),
    record: methodListRecord(methods, assumptions, context),
  };
}

function shown(id: string, said: Said = {}, unit: 'um' | 'mil' = 'um') {
  const { value } = showMethod(id, methodSources(resolveSettings(layersOf(said))));
  if (value === undefined) throw new Error(`${id} is not shown`);
  return {
    page: text(shownMethodBlocks(value, unit)),
    record: shownMethodRecord(value, [], context),
  };
}

describe('the page of methods', () => {
  const allMachines = { shop: { machines: ['rotary', 'da', 'da-forced', 'da-small'] } };

  test('is at most 80 columns wide with everything that is built in', () => {
    expect(widest(listed(allMachines).page)).toBeLessThanOrEqual(80);
  });

  test('gives each rate as a range, never as two bare digits', () => {
    const rows = listed()
      .page.split('\n')
      .filter((line) => /^[\w-]+\/[\w-]+\/[\w-]+ /.test(line));
    expect(rows).toHaveLength(48);
    for (const row of rows) expect(row).toMatch(/ \d+\.\d\d–\d+\.\d\d +\d+\.\d /);
  });

  test('says what it rests on, and what it leaves out', () => {
    const page = flowing(listed().page);
    expect(page).toContain('Assumed: machines rotary, da, da-small, hand');
    expect(page).toContain('Not listed: 12 combinations whose pad and product serve no stage');
    const own = flowing(
      listed({ shop: { machines: ['da'], pads: ['foam-soft'], products: ['fine'] } }).page,
    );
    expect(own).not.toContain('Assumed');
    expect(own).not.toContain('Not listed');
  });

  test('is in mil where that is asked for, with a digit more', () => {
    const { page } = listed({}, 'mil');
    expect(page).toContain('mil a set');
    expect(page).toMatch(/da\/foam-medium\/medium +0\.0142–0\.0875 /);
  });

  test('has forced rotation in the motion of the machine', () => {
    expect(listed(allMachines).page).toContain('8 mm, 4800/min + 480 rpm');
  });
});

describe('the page of one method', () => {
  const ids = ['da/foam-medium/medium', 'da-forced/foam-medium/medium', 'hand/wool/fine', 'wool'];

  test.each([...ids, 'rotary', 'hand', 'fine'])('of %s is at most 80 columns wide', (id) => {
    expect(widest(shown(id).page)).toBeLessThanOrEqual(80);
  });

  test('says the chain with value, unit, basis, origin, formula and how to change it', () => {
    const { page } = shown('da/foam-medium/medium');
    expect(page).toMatch(/^orbits per minute +4200 1\/min +assumption +built-in$/m);
    expect(page).toMatch(/^pressure +2770 Pa +force\/\(π·pad²\/4\)$/m);
    expect(page).toMatch(/^removal of a set +0\.36–2\.22 µm +coefficient·pressure/m);
    expect(page).toContain('"correction.machines.da.orbits_per_min": 4200');
    expect(flowing(page)).toContain('Nissan 94-015');
    expect(flowing(page)).toContain('4.4 min a section, 11.9 min/m²');
  });

  test('compares from the faster one, whichever was asked for', () => {
    const sentence =
      'Compared: rotary/wool/heavy takes 2.38 times as much film a minute as da/wool/heavy';
    expect(flowing(shown('rotary/wool/heavy').page)).toContain(sentence);
    expect(flowing(shown('da/wool/heavy').page)).toContain(sentence);
    expect(shown('hand/wool/heavy').page).not.toContain('Compared');
  });

  test('tells how warm each kind of panel gets, and how long the pad may stand', () => {
    const { page } = shown('rotary/wool/heavy');
    expect(page).toMatch(/^steel +3\.3 +11\.0 +17\.5 +38 cool +14 s$/m);
    expect(shown('hand').page).toMatch(/^steel .* over 99 s$/m);
    const warm = {
      shop: { numbers: { 'correction.heat.start_c': 35, 'correction.heat.room_c': 35 } },
    };
    expect(shown('rotary/wool/heavy', warm).page).toMatch(/^steel .* caution /m);
  });

  test('shows a measured rate beside the reckoned one, with its line and note', () => {
    const rates = {
      'da/foam-medium/medium': { rate_um_per_set: 0.6, ln_sd: 0.2, note: 'our van' },
    };
    const page = flowing(shown('da/foam-medium/medium', { shop: { rates } }).page);
    expect(page).toContain('Takes 0.30–1.22 µm a set');
    expect(page).toMatch(/Measured by the shop: 0\.30–1\.22 µm a set \(shop\.json:\d+\), our van;/);
    expect(page).toContain('reckoned it would be 0.36–2.22.');
  });

  test('says when something is built in and not the shop’s own', () => {
    expect(shown('wool', { shop: { pads: ['foam-soft'] } }).page).toContain('does not list it');
    expect(shown('wool').page).not.toContain('does not list it');
  });

  test('says when pad and product serve no stage together', () => {
    expect(flowing(shown('da/wool/fine').page)).toContain('serves no stage');
  });

  test('has no list of what to change where all of it is the shop’s own', () => {
    const pads = [{ id: 'velvet', factor: 1.3, haze: 2, stages: ['cut'] }];
    const { page } = shown('velvet', { shop: { pads } });
    expect(page).not.toContain('To change a number');
    expect(page).toMatch(/^Pad velvet\n/);
    expect(page).toMatch(/^factor of the pad +1\.3 +stated +shop, line \d+$/m);
    expect(page).toContain('Lines: shop file shop.json\n');
  });
});

describe('the record of methods', () => {
  test('is leastcut/methods/1 with everything in full', () => {
    const { record } = listed();
    expect(record['schema']).toBe('leastcut/methods/1');
    expect((record['combinations'] as readonly unknown[]).length).toBe(48);
    expect((record['machines'] as readonly object[])[0]).toEqual({
      machine: 'rotary',
      name: 'rotary',
      motion: 'rotary',
      rpm: 1500,
      throw_mm: null,
      orbits_per_min: null,
      forced_rpm: null,
      pad_mm: 150,
      force_n: 49,
      arm_speed_m_per_s: 0.12,
    });
  });

  test('of one combination has its numbers, chain and heat', () => {
    const { record } = shown('da/foam-medium/medium');
    expect(record).toMatchObject({
      shown: 'combination',
      id: 'da/foam-medium/medium',
      owned: true,
      compared_with: 'rotary/foam-medium/medium',
      measured_at: null,
    });
    const [combination] = record['combinations'] as readonly Record<string, unknown>[];
    expect(combination).toMatchObject({ basis: 'derived', measured_um_per_set: null });
    expect(combination?.['removal_um_per_set']).toMatchObject({ median: 0.896535 });
    expect((record['heat'] as readonly unknown[]).length).toBe(3);
    // Preston's coefficient is far below a millionth and is not rounded away.
    expect(renderJson(record)).toContain('7.8e-12');
  });

  test('of a pad has what may be done with it, and null for what a pad alone has not', () => {
    const { record } = shown('wool');
    expect(record).toMatchObject({ shown: 'pad', chain: null, heat: null, compared_with: null });
    expect((record['combinations'] as readonly unknown[]).length).toBe(8);
  });
});
