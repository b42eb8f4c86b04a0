import { describe, expect, it } from 'vitest';
import { modelWithRates } from '../../../src/correction/rates/model-with-rates.ts';
import { ladder } from '../../../src/correction/removal/combination.ts';
import {
  foreseenLogSd,
  foretell,
  paintKnowledge,
  removalLogSd,
} from '../../../src/correction/removal/removal-knowledge.ts';
import { readRates } from '../../../src/formats/rates.ts';
import { ratesReport } from '../../../src/tasks/methods/rates-report.ts';
import { withoutOwnObservations, withRates } from '../../../src/tasks/settings/rates-in-use.ts';
import { resolveSettings, type Settings } from '../../../src/tasks/settings/settings.ts';
import { flag, layersOf } from '../layers.ts';

type Keys = Readonly<Record<string, unknown>>;

const observed = (vehicle: string, removed: number, more: Keys = {}): Keys => ({
  date: '2026-01-15',
  vehicle,
  panel: 'bonnet',
  combination: 'da/foam-medium/medium',
  sets: 2,
  removed_um: removed,
  standard_error_um: 0.4,
  ...more,
});

/** Settings with such observations, the first on line 4 of the file. */
function learned(observations: readonly Keys[], said: Parameters<typeof layersOf>[0] = {}) {
  const lines = observations.map((one) => JSON.stringify(one)).join(',\n');
  const text = `{\n"schema": "leastcut/rates/1",\n"observations": [\n${lines}\n] }`;
  const file = readRates('rates.json', text).value;
  if (file === undefined) throw new Error('a rates file that cannot be read');
  return withRates(resolveSettings(layersOf(said)), { file, name: 'rates.json', origin: 'flag' });
}

const settingsOf = (...all: Parameters<typeof learned>): Settings => {
  const { value } = learned(...all);
  if (value === undefined) throw new Error('no settings');
  return value;
};
const told = (...all: Parameters<typeof learned>): readonly string[] =>
  learned(...all).diagnostics.map(
    ({ code, at, message, hint }) => `${at?.line}:${at?.column} ${code}: ${message} | ${hint}`,
  );
const ratesLine = ({ assumptions }: Settings): string | undefined =>
  assumptions.find(({ code }) => code === 'rates')?.text;

const fast = ['a', 'b', 'c', 'd'].map((vehicle) => observed(vehicle, 3));

describe('the shop’s own observations', () => {
  it('move a combination’s rate and narrow its removal, on the ladder and in a plan', () => {
    const [plain, { correction, terms }] = [settingsOf([]), settingsOf(fast)];
    const rate = (model: Settings['correction']): number =>
      ladder(model).find(({ id }) => id === 'da/foam-medium/medium')?.perSet ?? 0;
    expect(rate(correction)).toBeGreaterThan(1.3 * rate(plain.correction));
    expect(terms.logSd).toBeLessThan(plain.terms.logSd - 0.03);
    const combination = ladder(correction).find(({ id }) => id === 'da/foam-medium/medium');
    if (combination === undefined) throw new Error('no such combination');
    const paint = paintKnowledge([], 'unknown', correction);
    const { logSd } = foretell([{ combination, sets: 2 }], paint, correction.removal.stepLogSd);
    expect(logSd).toBeCloseTo(terms.logSd, 12);
    expect(logSd).toBeGreaterThan(correction.removal.stepLogSd);
  });

  it('leave everything built in as it is, to the last digit, where none is of film', () => {
    const byEye = { date: '2026-01-15', combination: 'da/wool/heavy', sets: 1, cleared_pct: 60 };
    const [plain, eye] = [resolveSettings(layersOf({})), settingsOf([byEye])];
    expect(eye.correction).toEqual(plain.correction);
    expect(eye.terms).toEqual(plain.terms);
    expect(foreseenLogSd(plain.correction)).toBe(removalLogSd(plain.correction.removal));
    expect(ratesLine(eye)).toBe(
      'built-in rates, for rates.json has no removal to learn from (1 by eye alone says nothing of film)',
    );
    expect(ratesReport(eye)).toBeNull();
  });

  it('let a declared hardness act beside what they taught', () => {
    const { correction } = settingsOf(fast);
    const hardness = (word: 'hard' | 'unknown'): number =>
      paintKnowledge([], word, correction).removal.hardness.mean;
    expect(hardness('hard') - hardness('unknown')).toBeCloseTo(Math.log(0.65), 12);
    expect(hardness('unknown')).toBeGreaterThan(0.02);
  });

  it('start from a rate that the shop states, and as sure as it states it', () => {
    const rates = { 'da/foam-medium/medium': { rate_um_per_set: 1.5, ln_sd: 0.1 } };
    const { correction } = settingsOf(fast, { shop: { rates } });
    const known = correction.learned?.combinations.get('da/foam-medium/medium');
    expect(Math.exp(known?.own.mean ?? 1)).toBeCloseTo(1, 1);
    expect(known?.next.sd).toBeLessThan(Math.hypot(0.35, 0.1));
  });

  it('are counted in words, with what was left out', () => {
    expect(ratesLine(settingsOf(fast))).toBe(
      'rates from 4 observations of 4 vehicles in rates.json',
    );
    const foreign = observed('e', 3, { combination: 'da/sponge/medium' });
    const byEye = { date: '2026-01-15', combination: 'da/wool/heavy', sets: 1, cleared_pct: 60 };
    expect(ratesLine(settingsOf([...fast, foreign, byEye, { ...byEye, sets: 2 }]))).toBe(
      'rates from 4 observations of 4 vehicles in rates.json (2 by eye alone say nothing of film; 1 with what is not known here left out)',
    );
  });

  it('of no vehicle are one vehicle a day', () => {
    const nameless = (date: string, removed: number): Keys => {
      const { vehicle: _, ...rest } = observed('', removed, { date });
      return rest;
    };
    const { rates } = settingsOf([
      nameless('2026-01-15', 2),
      nameless('2026-01-15', 3),
      nameless('2026-01-16', 2),
    ]);
    expect(new Set(rates?.evidence.map(({ evidence }) => evidence.vehicle)).size).toBe(2);
  });
});

describe('what is odd in a rates file is told, and where', () => {
  it('a thing that is not known here, with what was meant', () => {
    expect(told([observed('a', 2, { combination: 'da/foam-medum/medium' })])).toEqual([
      '4:67 rates-unknown: "foam-medum" is no pad that is known here: the observation is left out | did you mean "foam-medium"?',
    ]);
    expect(told([observed('a', 2, { combination: 'belt/foam-medium/medium' })])).toEqual([
      '4:67 rates-unknown: "belt" is no machine that is known here: the observation is left out | describe it under "machines" of the shop file, and it counts',
    ]);
  });

  it('a combination that the shop does not have, once; its vehicle’s paint counts', () => {
    const rotary = ['a', 'b'].map((vehicle) =>
      observed(vehicle, 9, { combination: 'rotary/wool/heavy' }),
    );
    const shop = { machines: ['da'] };
    expect(told(rotary, { shop })).toEqual([
      '4:67 rates-not-owned: this shop does not have "rotary/wool/heavy": what was observed with it tells of its vehicle\'s paint alone | list its machine, pad and product in the shop file, if the shop has them',
    ]);
    const { correction } = settingsOf(rotary, { shop });
    expect(correction.learned?.usualPaint.mean).toBeGreaterThan(0.01);
  });

  it('an observation that stands there twice, which counts once', () => {
    const twice = [...fast, observed('a', 3)];
    expect(told(twice)).toEqual([
      '8:1 rates-twice: this observation stands in the file before, the same in all: counted once | take one of the two out; if both were made, tell them apart by panel or note',
    ]);
    expect(settingsOf(twice).correction).toEqual(settingsOf(fast).correction);
  });

  it('a removal that so many sets can hardly take', () => {
    expect(told([observed('a', 18, { standard_error_um: 0.4 })])).toEqual([
      '4:113 rates-unlikely: 18.00 µm is far from the 1.79 µm that so many sets usually take | look for a slip: mil for µm, a decimal, sets left out, polish left on the panel',
    ]);
    expect(told([observed('a', 5)])).toEqual([]);
  });
});

describe('what was observed on the vehicle at hand', () => {
  const spots = {
    name: 'spots.csv',
    sha256: '',
    bytes: new TextEncoder().encode(
      [
        'spot,panel,machine,pad,product,sets,mark,before_um,after_um',
        ...[1, 2, 3].map((mark) => `A,bonnet,da,foam-medium,medium,2,${mark},112,110`),
        '',
      ].join('\n'),
    ),
  };

  it('does not count for it again, by its id however that is written', () => {
    const all = settingsOf([...fast, observed('FH-9', 1)]);
    const own = withoutOwnObservations(all, ' fh-9', []);
    expect(own.correction).toEqual(settingsOf(fast).correction);
    expect(ratesLine(own)).toBe(
      'rates from 4 observations of 4 vehicles in rates.json (1 of this vehicle left out)',
    );
    expect(withoutOwnObservations(all, 'another', [])).toBe(all);
    expect(withoutOwnObservations(all, null, [])).toBe(all);
  });

  it('nor by the figures of its test spots, where it has no name', () => {
    const [first] = settingsOf(fast).rates?.evidence ?? [];
    expect(first).toBeDefined();
    // Three marks with no scatter of their own: s·√2·√(6/8)/√3, s = 1.5 µm, and 2 % of 2 µm.
    const error = Math.hypot(
      (1.5 * Math.SQRT2 * Math.sqrt(6 / 8)) / Math.sqrt(3),
      0.04 / Math.sqrt(3),
    );
    const kept = observed('a', 2, { standard_error_um: Math.round(error * 1e6) / 1e6 });
    const own = withoutOwnObservations(settingsOf([...fast.slice(1), kept]), null, [spots]);
    expect(own.correction).toEqual(settingsOf(fast.slice(1)).correction);
    expect(withoutOwnObservations(settingsOf(fast), null, [spots]).rates?.ofThisVehicle).toBe(0);
  });
});

describe('the path of the rates file', () => {
  const layers = {
    typed: { rates: flag('typed.json', '--rates') },
    shop: { rates_file: 'own.json' },
    project: { rates_file: 'project.json' },
  };

  it('is said by the first layer that speaks, and listed with where', () => {
    const { ratesFile, effective } = resolveSettings(layersOf(layers));
    expect(ratesFile).toMatchObject({ value: 'typed.json', folder: '' });
    expect(effective.find(({ name }) => name === 'rates_file')).toMatchObject({
      value: 'typed.json',
      where: '--rates',
    });
  });

  it('is relative to the shop file that says it', () => {
    const { typed: _, ...files } = layers;
    const { ratesFile } = resolveSettings(layersOf(files));
    expect(ratesFile).toMatchObject({ value: 'own.json', folder: 'shop', where: 'shop.json:3' });
  });
});

it('a model without evidence is the model itself', () => {
  const { correction } = resolveSettings(layersOf({}));
  expect(modelWithRates(correction, [])).toEqual(correction);
});
