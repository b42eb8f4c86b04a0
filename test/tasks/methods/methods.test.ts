import { describe, expect, test } from 'vitest';
import { listAllDefaults } from '../../../src/formats/data/all-defaults.ts';
import {
  listMethods,
  type MethodList,
  methodSources,
  type ShownMethod,
  showMethod,
} from '../../../src/tasks/methods/methods.ts';
import { methodAssumptions } from '../../../src/tasks/methods/methods-assumptions.ts';
import { resolveSettings } from '../../../src/tasks/settings/settings.ts';
import { layersOf } from '../layers.ts';

type Said = Parameters<typeof layersOf>[0];

const sourcesOf = (said: Said = {}) => methodSources(resolveSettings(layersOf(said)));
const listed = (said: Said = {}): MethodList => listMethods(sourcesOf(said));
const ids = (things: readonly { readonly id: string }[]): readonly string[] =>
  things.map(({ id }) => id);
const combinationsOf = ({ combinations }: MethodList): readonly string[] =>
  ids(combinations.map(({ combination }) => combination));

function shown(id: string, said: Said = {}): ShownMethod {
  const { value } = showMethod(id, sourcesOf(said));
  if (value === undefined) throw new Error(`${id} is not shown`);
  return value;
}
function shownCombination(id: string, said: Said = {}) {
  const one = shown(id, said);
  if (one.kind !== 'combination') throw new Error(`${id} is a ${one.kind}`);
  return one;
}
const numberOf = (method: ShownMethod, name: string) =>
  method.numbers.find((one) => one.name === name);

/** One dual-action machine and three pads, one of them the shop's own. */
const smallShop = {
  machines: ['da', { id: 'long-throw', like: 'da', throw_mm: 21, min_per_section: 4 }],
  pads: ['foam-soft', 'foam-medium', { id: 'velvet', factor: 1.3, stages: ['cut'] }],
  products: ['fine', 'medium'],
};

describe('the list of methods', () => {
  test('holds what a shop usually owns where nobody says, and says that it is assumed', () => {
    expect(ids(listed().machines)).toEqual(['rotary', 'da', 'da-small', 'hand']);
    const settings = resolveSettings(layersOf({}));
    expect(methodAssumptions(settings).map(({ code }) => code)).toEqual(['machines']);
  });

  test('holds what the shop owns, its own things like the built-in ones', () => {
    const list = listed({ shop: smallShop });
    expect(ids(list.machines)).toEqual(['da', 'long-throw', 'hand']);
    expect(ids(list.pads)).toEqual(['foam-soft', 'foam-medium', 'velvet']);
    expect(combinationsOf(list)).toContain('long-throw/velvet/medium');
    expect(methodAssumptions(resolveSettings(layersOf({ shop: smallShop })))).toEqual([]);
  });

  test('is filtered by a project or user file as by the shop file', () => {
    expect(ids(listed({ project: smallShop }).pads)).toEqual(ids(listed({ shop: smallShop }).pads));
    expect(ids(listed({ user: smallShop }).pads)).toEqual(ids(listed({ shop: smallShop }).pads));
  });

  test('goes from mild to strong and leaves out what serves no stage, counting it', () => {
    const { combinations, idle } = listed();
    const medians = combinations.map(({ rate }) => rate.median);
    expect(medians).toEqual([...medians].sort((a, b) => a - b));
    // A fine polish on firm foam, microfibre or wool, for each of four machines.
    expect(idle).toBe(12);
    expect(combinations).toHaveLength(4 * 5 * 3 - 12);
    expect(combinations.every(({ stages }) => stages.length > 0)).toBe(true);
  });

  test('puts a rate that the shop measured in the place of the reckoned one, and on its rung', () => {
    const rates = { 'da/foam-medium/medium': { rate_um_per_set: 0.05, ln_sd: 0.2 } };
    const before = combinationsOf(listed()).indexOf('da/foam-medium/medium');
    const list = listed({ shop: { rates } });
    const after = combinationsOf(list).indexOf('da/foam-medium/medium');
    expect(after).toBeLessThan(before);
    expect(list.combinations[after]?.rate.median).toBe(0.05);
    expect(list.combinations[after]?.derived.median).toBeCloseTo(0.897, 3);
  });

  test('warms less where the shop takes longer to wipe a section between the sets', () => {
    const warmth = (wipe: number) =>
      listed({ shop: { minutes: { wipe_min_per_section: wipe } } }).combinations.at(-1)?.heat[0]
        ?.perStep ?? 0;
    expect(warmth(5)).toBeLessThan(warmth(0));
  });
});

describe('a combination shown', () => {
  test('has every number of its chain with basis and origin', () => {
    const { numbers } = shownCombination('rotary/wool/heavy');
    expect(numbers.map(({ name }) => name)).toEqual([
      'turns per minute',
      'pad diameter',
      'force on the pad',
      'arm speed',
      'factor of the pad',
      'haze of the pad',
      'factor of the product',
      'haze of the product',
      'passes of a set',
      'overlap of strokes',
      'section',
      'Preston coefficient',
    ]);
    expect(numbers.every(({ where }) => where === 'built-in')).toBe(true);
    expect(numberOf(shown('rotary/wool/heavy'), 'turns per minute')).toMatchObject({
      value: 1500,
      basis: 'published',
      source: 'Acura/Honda 96-010: 1500–1800',
      id: 'correction.machines.rotary.rpm',
    });
  });

  test('names ids that are those of the defaults, each with the value in force', () => {
    const defaults = new Map(listAllDefaults().map(({ id, value }) => [id, value]));
    for (const id of ['rotary/wool/heavy', 'da-forced/foam-soft/fine', 'hand/microfibre/medium']) {
      for (const number of shown(id).numbers) {
        expect(defaults.get(number.id ?? ''), `${id} ${number.name}`).toBe(number.value);
      }
    }
  });

  test('traces each number to the line that set it', () => {
    const said = { shop: { ...smallShop, numbers: { 'correction.removal.passes': 5 } } };
    const method = shownCombination('long-throw/velvet/medium', said);
    const where = (name: string) => numberOf(method, name)?.where;
    expect(where('throw')).toMatch(/^shop\.json:\d+$/);
    expect(numberOf(method, 'throw')).toMatchObject({ value: 21, basis: 'stated', id: null });
    expect(where('orbits per minute')).toBe('built-in');
    expect(numberOf(method, 'orbits per minute')?.id).toBe('correction.machines.da.orbits_per_min');
    expect(where('arm speed')).toMatch(/^shop\.json:\d+$/);
    expect(where('passes of a set')).toMatch(/^shop\.json:\d+$/);
    expect(numberOf(method, 'passes of a set')).toMatchObject({ value: 5, origin: 'shop' });
    expect(numberOf(method, 'factor of the pad')).toMatchObject({ value: 1.3, basis: 'stated' });
    expect(numberOf(method, 'haze of the pad')).toMatchObject({ basis: 'assumption', id: null });
  });

  test('uses the values it shows: the chain follows from them', () => {
    const said = { shop: { ...smallShop, numbers: { 'correction.removal.passes': 5 } } };
    const { numbers, chain } = shownCombination('long-throw/velvet/medium', said);
    const value = (name: string) => numbers.find((one) => one.name === name)?.value ?? Number.NaN;
    const force = value('force on the pad');
    const speed = (Math.PI * value('throw') * value('orbits per minute')) / 60_000;
    const spread =
      (value('pad diameter') / 1000) * value('arm speed') * (1 - value('overlap of strokes'));
    const coefficient =
      value('Preston coefficient') * value('factor of the pad') * value('factor of the product');
    // κ·F·v·passes/(s·d·(1 − o)), in µm.
    const rate = (coefficient * force * speed * value('passes of a set') * 1e6) / spread;
    expect(chain.rate.median).toBeCloseTo(rate, 9);
    expect(chain.sectionMinutes).toBeCloseTo(4, 9);
  });

  test('is compared with the other kind of machine: rotary 2.38 times as fast as dual action', () => {
    const rotary = shownCombination('rotary/foam-medium/medium');
    expect(rotary.compared?.with).toBe('da/foam-medium/medium');
    expect(rotary.compared?.times).toBeCloseTo(2.38, 2);
    const da = shownCombination('da/foam-medium/medium');
    expect(da.compared?.with).toBe('rotary/foam-medium/medium');
    expect(da.compared?.times).toBeCloseTo(1 / 2.381, 3);
  });

  test('is compared with nothing by hand, or where the shop has no other kind', () => {
    expect(shownCombination('hand/wool/heavy').compared).toBeNull();
    expect(
      shownCombination('da/foam-medium/medium', { shop: { machines: ['da'] } }).compared,
    ).toBeNull();
  });

  test('prefers a free-spinning pad to compare with, of two machines of one size', () => {
    const both = { shop: { machines: ['rotary', 'da-forced', 'da'] } };
    expect(shownCombination('rotary/wool/heavy', both).compared?.with).toBe('da/wool/heavy');
  });

  test('says where its rate was measured', () => {
    const rates = { 'da/foam-medium/medium': { rate_um_per_set: 0.6, note: 'our van' } };
    const method = shownCombination('da/foam-medium/medium', { shop: { rates } });
    expect(method.measuredAt).toMatch(/^shop\.json:\d+$/);
    expect(method.chain.own).toMatchObject({ rate: 0.6, note: 'our van' });
    expect(shownCombination('da/foam-soft/fine').measuredAt).toBeNull();
  });
});

describe('a machine, pad or product shown', () => {
  test('has its numbers and what may be done with it, mildest first', () => {
    const wool = shown('wool');
    expect(wool).toMatchObject({ kind: 'pad', owned: true });
    if (wool.kind === 'combination') throw new Error('wool is a pad');
    expect(wool.combinations).toHaveLength(4 * 2);
    expect(wool.combinations.every(({ combination }) => combination.pad.id === 'wool')).toBe(true);
    expect(shown('medium').kind).toBe('product');
    expect(shown('hand').numbers.map(({ name }) => name)).toContain('rubbing speed');
    expect(shown('da-forced').numbers.map(({ name }) => name)).toContain('forced turns per minute');
  });

  test('is shown though the shop does not own it, and says so', () => {
    expect(shown('wool', { shop: smallShop }).owned).toBe(false);
    expect(shown('da-forced/wool/heavy').owned).toBe(false);
    expect(shown('velvet', { shop: smallShop }).owned).toBe(true);
    const wool = shown('wool', { shop: smallShop });
    if (wool.kind === 'combination') throw new Error('wool is a pad');
    const machines = new Set(wool.combinations.map(({ combination }) => combination.machine.id));
    expect([...machines].sort()).toEqual(['da', 'hand', 'long-throw']);
  });

  test('by hand takes its time and speed from the keys of a machine', () => {
    const basisOf = (key: string, value: number, name: string) =>
      numberOf(shown('hand', { shop: { machines: [{ id: 'hand', [key]: value }] } }), name)?.basis;
    expect(basisOf('min_per_section', 6, 'time of a set')).toBe('stated');
    expect(basisOf('arm_speed_m_per_s', 0.5, 'rubbing speed')).toBe('stated');
  });
});

describe('an id that is not known', () => {
  const hintOf = (id: string, said: Said = {}) =>
    showMethod(id, sourcesOf(said)).diagnostics.map(({ code, hint }) => [code, hint]);

  test.each([
    ['wol', 'did you mean "wool"?'],
    ['da/foam-medum/medum', 'did you mean "da/foam-medium/medium"?'],
    ['da/zebra/medium', 'leastcut methods list names them; a combination is machine/pad/product'],
    ['da/wool', 'leastcut methods list names them; a combination is machine/pad/product'],
    ['zebra', 'leastcut methods list names them; a combination is machine/pad/product'],
  ])('%s: %s', (id, hint) => {
    expect(hintOf(id)).toEqual([['usage-unknown-method', hint]]);
  });

  test('may be a slip in the shop’s own word', () => {
    expect(hintOf('velvt', { shop: smallShop })).toEqual([
      ['usage-unknown-method', 'did you mean "velvet"?'],
    ]);
  });
});
