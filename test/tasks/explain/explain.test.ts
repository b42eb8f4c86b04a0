import { describe, expect, test } from 'vitest';
import { diagnosticCatalogue } from '../../../src/base/catalogue.ts';
import { listAllDefaults } from '../../../src/formats/data/all-defaults.ts';
import { explainerOf } from '../../../src/tasks/explain/explain.ts';
import { allTopics, sentence } from '../../../src/tasks/explain/explain-topics.ts';
import type { Explanation, OptionTopic } from '../../../src/tasks/explain/explanation.ts';
import { resolveSettings } from '../../../src/tasks/settings/settings.ts';
import { layersOf } from '../layers.ts';

const riskPct: OptionTopic = {
  name: '--risk-pct',
  also: ['-r', 'risk-pct'],
  summary: 'risk, per panel',
  takes: 'a number from 0.1 to 50',
  commands: ['survey', 'plan'],
  variable: 'LEASTCUT_RISK_PCT',
};
const sources = { options: [riskPct], numbers: new Map() };
const explain = explainerOf(sources);
const topics = (): readonly Explanation[] => allTopics(sources);

function topicsOf(...words: readonly string[]): readonly Explanation[] {
  const { value, diagnostics } = explain(words);
  if (value === undefined) throw new Error(diagnostics.map(({ message }) => message).join());
  return value.flatMap(({ topics }) => topics);
}
const named = (...words: readonly string[]): readonly string[] =>
  topicsOf(...words).map(({ kind, id }) => `${kind} ${id}`);
const detail = ({ details }: Explanation, label: string): string | undefined =>
  details.find((one) => one.label === label)?.text;

test('a word is known with the mark that stands after it on a page', () => {
  expect(named('thin?')).toEqual(named('thin'));
  expect(named('Stop:')).toEqual(named('stop'));
  expect(named('?')).toContain('word near the line');
});

test('a key is told first where it stands nearest to the record itself', () => {
  const places = topicsOf('survey budget_um').map((topic) => detail(topic, 'In records'));
  expect(places).toEqual(['survey: panels[].budget_um', 'survey: panels[].if_otherwise.budget_um']);
});

test('words of a question are passed over, and words that are one term are taken together', () => {
  expect(named('what', 'may', 'go')).toEqual(named('may go'));
  expect(named('What', 'is', 'a', 'low', 'spot?')).toEqual(named('low spot'));
  expect(named('risk', 'of', 'burn', 'through')).toEqual([
    ...named('risk'),
    ...named('burn-through'),
  ]);
  expect(named('what')).toContain('record key what');
  const { value, diagnostics } = explain(['is', 'the']);
  expect(value).toBeUndefined();
  expect(diagnostics.map(({ message }) => message)).toEqual([
    '"is" is nothing that explain knows',
    '"the" is nothing that explain knows',
  ]);
  expect(explain(['what', 'may', 'gobble']).value).toBeUndefined();
});

test('no place of a word is told twice', () => {
  const places = topics().flatMap((topic) =>
    (detail(topic, 'In records') ?? '').split('; ').map((place) => ({ of: topic, place })),
  );
  for (const { of, place } of places.filter((one) => one.place !== '')) {
    expect(
      detail(of, 'In records')
        ?.split('; ')
        .filter((one) => one === place),
      of.id,
    ).toHaveLength(1);
  }
  expect(topicsOf('batch', 'error').map((topic) => detail(topic, 'In records'))).toEqual([
    'batch: diagnostics[].message',
  ]);
});

test('stop is a word for warming and for work', () => {
  const meanings = topicsOf('stop').map(({ meaning }) => meaning);
  expect(meanings.some((one) => /temperature that a panel must not reach/.test(one))).toBe(true);
  expect(meanings.some((one) => /No more work on this panel/.test(one))).toBe(true);
});

test.each(['strip', 'points a hand', 'action value', 'dust out', 'take in', 'patch'])(
  '%s, which stands on a page, is explained',
  (word) => {
    expect(topicsOf(word)).not.toEqual([]);
  },
);

describe('a word', () => {
  test.each([
    ['dft', 'film'],
    ['clear', 'clear coat'],
    ['swirl', 'swirl marks'],
    ['orange peel', 'orange peel'],
    ['holograms', 'holograms'],
    ['burn-through', 'burn-through'],
    ['IPA wipe', 'panel wipe'],
    ['refinish', 'refinish'],
    ['filler', 'filler'],
    ['blend', 'blend'],
    ['thou', 'mil'],
    ['least', 'thinnest credible film'],
    ['may go', 'budget'],
  ])('%s is told as %s', (word, term) => {
    expect(named(word)).toContain(`word ${term}`);
  });

  test('is found however it is written: case, hyphens, blanks and underlines do not matter', () => {
    expect(named('Burn Through')).toEqual(named('burn-through'));
    expect(named('TEST_SPOT')).toEqual(named('test spot'));
    // The micro sign and the Greek letter look alike.
    expect(named('\u00b5m')).toEqual(named('\u03bcm'));
  });

  test('that means several things is told in all of them', () => {
    expect(named('finish')).toEqual(
      expect.arrayContaining(['word finish', 'key finish', 'remark finish']),
    );
  });

  test('of two parts is one term, else each is a term of its own', () => {
    expect(named('orange', 'peel')).toContain('word orange peel');
    expect(named('dft', 'haze')).toEqual(expect.arrayContaining(['word film', 'word haze']));
  });
});

describe('a diagnostic code', () => {
  test('is told with its exit code, what to do and the smallest example', () => {
    const [topic] = topicsOf('reading-ambiguous');
    if (topic === undefined) throw new Error('not explained');
    expect(topic.meaning).toBe(diagnosticCatalogue['reading-ambiguous'].meaning);
    expect(detail(topic, 'Exit code')).toBe('65: an input is refused');
    expect(detail(topic, 'What to do')).toContain('thousands');
    expect(topic.example?.files[0]?.text).toContain('1.234');
  });

  test.each([
    ['usage-unknown-option', '2: '],
    ['file-missing', '66: '],
    ['output-exists', '73: '],
    ['settings-invalid', '78: '],
    ['column-unknown', '0: '],
  ])('%s ends with exit code %s', (code, exit) => {
    const [topic] = topicsOf(code);
    expect(topic === undefined ? '' : detail(topic, 'Exit code')).toMatch(new RegExp(`^${exit}`));
  });
});

describe('a default', () => {
  const life = 'film.limits.life_um';

  test('is told with value, unit, basis, source, formula, use and how to change it', () => {
    const [topic] = topicsOf(life);
    expect(topic?.number).toMatchObject({
      value: 12.7,
      unit: 'µm',
      origin: 'built-in',
      basis: 'published',
      change: '"numbers": { "film.limits.life_um": 12.7 }',
    });
    expect(topic?.number?.source).toContain('Nissan 94-015');
    expect(topic?.number?.formula).toContain('P(removal');
    expect(topic?.number?.used).toContain('survey and plan');
  });

  test('set by a shop file is told with its line, and what is built in beside it', () => {
    const layers = layersOf({ shop: { numbers: { [life]: 10 } } });
    const { numbers } = resolveSettings(layers);
    const { value } = explainerOf({ options: [], numbers })([life]);
    const number = value?.[0]?.topics[0]?.number;
    expect(number).toMatchObject({ value: 10, origin: 'shop', builtIn: 12.7 });
    expect(number?.where).toMatch(/^shop\.json:\d+$/);
    expect(number?.change).toBe('"numbers": { "film.limits.life_um": 10 }');
  });

  test('takes the formula of the longest beginning that fits', () => {
    const formula = (id: string) => topicsOf(id)[0]?.number?.formula;
    expect(formula('film.earlier.unknown_clear_um')).not.toBe(
      formula('film.earlier.unknown_life_um'),
    );
    expect(formula('correction.heat.friction')).toBe(formula('correction.heat.panel_share'));
  });

  test('is listed with its neighbours by the beginning of their ids', () => {
    const ids = listAllDefaults().map(({ id }) => id);
    const limits = ids.filter((id) => id.startsWith('film.limits.'));
    expect(topicsOf('film.limits').map(({ id }) => id)).toEqual(limits);
    expect(topicsOf('film.limits.*').map(({ id }) => id)).toEqual(limits);
    expect(topicsOf('work').length).toBeGreaterThan(20);
  });
});

describe('options, keys, states and exit codes', () => {
  test('an option is found with and without its dashes, by its short form and its variable', () => {
    for (const word of ['--risk-pct', 'risk-pct', '-r', 'LEASTCUT_RISK_PCT']) {
      expect(named(word)).toContain('option --risk-pct');
    }
    const [topic] = topicsOf('--risk-pct');
    if (topic === undefined) throw new Error('not explained');
    expect(topic.meaning).toBe('Risk, per panel.');
    expect(detail(topic, 'Takes')).toBe('a number from 0.1 to 50');
    expect(detail(topic, 'Commands')).toBe('survey, plan');
    expect(detail(topic, 'In the environment')).toBe('LEASTCUT_RISK_PCT');
  });

  test('an option that is said anew for every run has no variable', () => {
    const job = { ...riskPct, name: '--job', also: [], takes: '', variable: null };
    const { value } = explainerOf({ ...sources, options: [job] })(['--job']);
    const option = value?.[0]?.topics.find(({ kind }) => kind === 'option');
    expect(option?.details.map(({ label }) => label)).toEqual(['Commands']);
  });

  test('a key says in which files it stands, with an example', () => {
    const key = topicsOf('taken_um').find(({ kind }) => kind === 'key');
    if (key === undefined) throw new Error('not explained');
    expect(detail(key, 'Stands in')).toContain('job file');
    expect(detail(key, 'For example')).toBe('"taken_um": 3');
  });

  test('a verdict, a condition, a basis and an exit code are told', () => {
    expect(named('lighter')).toContain('verdict lighter');
    expect(named('cut-back')).toContain('condition cut-back');
    expect(named('from memory')).toContain('basis from memory');
    expect(named('65')).toEqual(['exit code 65']);
    expect(named('exit code 78')).toEqual(['exit code 78']);
  });

  test('a defect is told with its depth by grade, or that polishing is no answer', () => {
    const defect = (word: string) => topicsOf(word).find(({ kind }) => kind === 'defect');
    const swirl = defect('swirl-marks');
    expect(swirl === undefined ? '' : detail(swirl, 'Median depth at grades 1 to 5')).toBe(
      '0.4, 0.7, 1.1, 1.7, 2.5 µm',
    );
    expect(defect('rids')?.meaning).toContain('local');
    expect(defect('orange-peel')?.details).toEqual([]);
    expect(defect('delamination')?.meaning).toContain('new paint');
  });
});

describe('a word that is not known', () => {
  const hints = (...words: readonly string[]) =>
    explain(words).diagnostics.map(({ code, message, hint }) => ({ code, message, hint }));

  test('is refused with the nearest', () => {
    expect(hints('holgrams')).toEqual([
      {
        code: 'usage-unknown-topic',
        message: '"holgrams" is nothing that explain knows',
        hint: 'did you mean "holograms"?',
      },
    ]);
  });

  test('is refused with words that hold it', () => {
    expect(hints('floor_u')[0]?.hint).toContain('floor');
    expect(hints('ambiguous')[0]?.hint).toContain('"reading-ambiguous"');
  });

  test('is refused with the way to the list where nothing is near', () => {
    expect(hints('xylophone')[0]?.hint).toBe('leastcut explain lists what it knows');
    expect(hints('qqqq')[0]?.hint).toBe('leastcut explain lists what it knows');
  });

  test('keeps the known ones from being told: every unknown one is named', () => {
    const { value } = explain(['dft', 'zebra', 'holgrams']);
    expect(value).toBeUndefined();
    expect(hints('dft', 'zebra', 'holgrams')).toHaveLength(2);
  });
});

test('everything listed is found by its own id', () => {
  const lost = allTopics(sources).filter(({ kind, id }) => !named(id).includes(`${kind} ${id}`));
  expect(lost.map(({ id }) => id)).toEqual([]);
});

test('a sentence has a capital at its head and one stop at its end', () => {
  expect(sentence('so it is')).toBe('So it is.');
  expect(sentence('So it is.')).toBe('So it is.');
});
