/** Whatever the tool says, or lets one write, can be asked for: collected from the sources themselves. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import * as z from 'zod';
import { diagnosticCatalogue } from '../../src/base/catalogue.ts';
import { exitCodes } from '../../src/cli/exit-code.ts';
import { optionTopics } from '../../src/cli/options/option-topics.ts';
import { helpOption, optionSpecs } from '../../src/cli/options.ts';
import { readingColumns } from '../../src/formats/csv-columns.ts';
import { listAllDefaults } from '../../src/formats/data/all-defaults.ts';
import { currencies } from '../../src/formats/data/currencies.ts';
import { defaultUses } from '../../src/formats/data/formulas.ts';
import { glossary } from '../../src/formats/data/glossary.ts';
import { keyMeanings } from '../../src/formats/data/key-meanings.ts';
import { remarkMeanings } from '../../src/formats/data/remark-meanings.ts';
import { stageFacts } from '../../src/formats/data/stages.ts';
import {
  basisMeanings,
  conditionMeanings,
  exitCodeMeanings,
  verdictMeanings,
} from '../../src/formats/data/state-meanings.ts';
import { tableColumns } from '../../src/formats/data/table-columns.ts';
import { fileKinds } from '../../src/formats/file-kinds.ts';
import { correctionModel } from '../../src/formats/models.ts';
import { keyOfPlace, placeText, recordKeyPlaces } from '../../src/formats/records/record-keys.ts';
import { explainerOf } from '../../src/tasks/explain/explain.ts';
import { allTopics } from '../../src/tasks/explain/explain-topics.ts';
import type { TopicKind } from '../../src/tasks/explain/explanation.ts';
import { askLeastcut } from '../cli/ask-leastcut.ts';
import { projectRoot } from '../cli/run-leastcut.ts';
import { temporaryFolder } from '../cli/temporary-folder.ts';

const sources = { options: optionTopics([]), numbers: new Map() };
const topics = allTopics(sources);
const explain = explainerOf(sources);

/** Words that explain does not know, or knows as nothing of the kinds wanted. */
const unexplained = (words: Iterable<string>, ...kinds: readonly TopicKind[]): readonly string[] =>
  [...new Set(words)].filter((word) => {
    const [found] = explain([word]).value ?? [];
    return !(found?.topics ?? []).some(({ kind }) => kinds.length === 0 || kinds.includes(kind));
  });

const textOf = (file: string): string => readFileSync(file, 'utf8');
const sourceFiles = (...rooms: readonly string[]): readonly string[] =>
  rooms.flatMap((room) =>
    readdirSync(join(projectRoot, 'src', room), { recursive: true, encoding: 'utf8' })
      .filter((name) => name.endsWith('.ts'))
      .map((name) => join(projectRoot, 'src', room, name)),
  );
const found = (files: readonly string[], pattern: RegExp): readonly string[] =>
  files.flatMap((file) => [...textOf(file).matchAll(pattern)].map(([, word = '']) => word));

/** The members of a union of literals, or the values of a record, as they are written in a source. */
function literalsAfter(file: string, beginning: string): readonly string[] {
  const text = textOf(join(projectRoot, 'src', file));
  const start = text.indexOf(beginning);
  if (start < 0) throw new Error(`${file} has no ${beginning}`);
  const block = text.slice(start, text.indexOf(';', start));
  return [...block.matchAll(/'([^']+)'/g)].map(([, literal = '']) => literal);
}

test('a word that nobody explained is caught, and so is one explained as something else', () => {
  expect(unexplained(['no-such-code', 'polish'])).toEqual(['no-such-code']);
  expect(unexplained(['polish'], 'diagnostic')).toEqual(['polish']);
});

describe('everything that comes out of the tool is explained', () => {
  test('each diagnostic code, with what to do about it and the smallest input that shows it', () => {
    const codes = Object.keys(diagnosticCatalogue);
    expect(codes.length).toBeGreaterThan(50);
    expect(unexplained(codes, 'diagnostic')).toEqual([]);
    const bare = topics.filter(
      ({ kind, details, example }) =>
        kind === 'diagnostic' &&
        (example === null ||
          !['Exit code', 'What to do'].every((label) =>
            details.some((one) => one.label === label && one.text !== ''),
          )),
    );
    expect(bare.map(({ id }) => id)).toEqual([]);
  });

  test('each condition, verdict, basis and exit code', () => {
    expect(
      unexplained(literalsAfter('film/condition/condition.ts', 'export type Condition =')),
    ).toEqual([]);
    expect(unexplained(literalsAfter('correction/plan/plan.ts', 'export type Verdict ='))).toEqual(
      [],
    );
    expect(unexplained(literalsAfter('training/scores.ts', 'export type ScoreVerdict ='))).toEqual(
      [],
    );
    expect(unexplained(literalsAfter('formats/default.ts', 'export type Basis ='))).toEqual([]);
    expect(
      unexplained(literalsAfter('correction/heat/heat.ts', 'export type HeatVerdict =')),
    ).toEqual([]);
    expect(exitCodeMeanings.map(({ code }) => code)).toEqual(
      Object.values(exitCodes).sort((a, b) => a - b),
    );
    expect(unexplained(Object.values(exitCodes).map(String), 'exit code')).toEqual([]);
  });

  test('each limit, whether it binds a panel or forbids its work', () => {
    const limits = literalsAfter('film/limits/limit.ts', 'export type LimitCode =');
    expect(limits.length).toBeGreaterThan(5);
    expect(unexplained(limits, 'remark')).toEqual([]);
    expect(unexplained(limits.map((code) => `limit-${code}`))).toEqual([]);
  });

  test('each code of an assumption, advice, reason, caution or note that a source can write', () => {
    // What is unusual about a template is told as one diagnostic, whatever its code.
    const files = sourceFiles('film', 'correction', 'work', 'training', 'tasks', 'report').filter(
      (file) => !file.endsWith('unusual-template.ts'),
    );
    const codes = [
      ...found(files, /\b(?:remark|reason)\(\s*'([^']+)'/g),
      ...found(files, /\bcode: '([^']+)'/g),
      ...literalsAfter('training/reasons.ts', 'export type BlunderCode ='),
      ...literalsAfter('training/reasons.ts', 'export type FaultCode ='),
      ...found(files, /\bassumed\(\s*[^,()]+,\s*'([\w-]+)'/g),
      ...found(files, /\bfinding\(\s*'([^']+)'/g),
    ];
    expect(codes).toContain('more-points');
    expect(codes).toContain('history');
    expect(codes).toContain('settings-file');
    expect(unexplained(codes)).toEqual([]);
  });

  test('each heading of a table', () => {
    const files = sourceFiles('report');
    const headings = [
      ...found(files, /\b(?:column|figures|film|money)\(\s*'([^']+)'/g),
      ...found(files, /\bsaid: '([^']+)'/g),
      ...found(files, /\bmeasures\(\s*('[^']+', '[^']+')/g).map((words) =>
        words.replaceAll(/[',]/g, ''),
      ),
      ...found(files, /\b(?:column|figures|film)\(\s*`([^`]+)`/g).flatMap((heading) =>
        ['µm', 'mil'].map((unit) =>
          heading.replace(/\$\{unitName\(\w+\)\}/, unit).replace(/ \(.*\)$/, ''),
        ),
      ),
      ...found(files, /\btitle: '([^']+)'/g),
    ];
    expect(headings).toContain('mean ± sd');
    expect(headings).toContain('points');
    expect(headings).toContain('panel');
    expect(headings).toContain('mil a set');
    // The two words of `measures` are put together in its own source.
    expect(unexplained(headings.filter((one) => !one.includes('${')))).toEqual([]);
  });

  test('each word for the limit that binds', () => {
    const words = literalsAfter('report/survey/film-table.ts', 'const LIMIT_WORDS').filter(
      (word) => word !== 'fresh-paint',
    );
    expect(words).toContain('spot 1st');
    expect(unexplained(words)).toEqual([]);
  });

  test('each word that stands in a column with a sentence of its own, and not with that of its column', () => {
    const limits = literalsAfter('report/survey/film-table.ts', 'const LIMIT_WORDS').filter(
      (word) => !word.includes('-'),
    );
    const states = [...Object.keys(conditionMeanings), ...Object.keys(verdictMeanings)];
    const columns = ['bound by', 'condition', 'verdict', 'plan', 'risk', 'chance'];
    const saidOf = (word: string): string => {
      const [one] = explain([word]).value ?? [];
      return (one?.topics ?? []).map(({ meaning }) => meaning).join(' ');
    };
    const said = new Map([...limits, ...states, ...columns].map((word) => [word, saidOf(word)]));
    const alike = [...said].filter(([word, meaning]) =>
      [...said].some(([other, of]) => other !== word && of === meaning),
    );
    // What a plan says of a panel is its verdict, whichever of the two heads the column.
    expect(
      alike.map(([word]) => word).filter((word) => !['plan', 'verdict'].includes(word)),
    ).toEqual([]);
    expect(saidOf('chance')).toMatch(/More is better/);
    expect(saidOf('risk')).toMatch(/under its floor/);
    expect(saidOf('chance')).not.toContain(saidOf('risk'));
    expect(saidOf('line')).not.toContain('allows least, and so decides');
  });

  test('each state of a job and of a material to buy, and each row of the parts of a price', () => {
    const states = [
      ...literalsAfter('report/batch/batch-record.ts', 'export type JobStatus ='),
      ...found(
        [join(projectRoot, 'src/report/batch/reorder-table.ts')],
        /(?:return|\?|:) '([\w-]+)'/g,
      ),
    ];
    for (const state of ['refused', 'buy', 'not-on-price-list', 'counted-at']) {
      expect(states).toContain(state);
    }
    const rows = [
      ...found([join(projectRoot, 'src/report/quote/quote-lines.ts')], /^ {2}\w+: '([a-z ]+)',$/gm),
      ...found([join(projectRoot, 'src/report/quote/quote-lines.ts')], /row\('\w+', '([^']+)'/g),
    ];
    expect(rows).toContain('washing and cleaning the paint');
    expect(rows).toContain('subtotal');
    expect(unexplained([...states, ...rows])).toEqual([]);
  });

  test('each heading of a paragraph or a list of quote and batch', () => {
    // What the owner of the car is told explains itself.
    const labels = found(
      sourceFiles('report/quote', 'report/batch').filter(
        (file) => !/quote-(customer-blocks|choices)|owner-head/.test(file),
      ),
      /\b(?:paragraph|list)\(\s*'([^']+)'/g,
    );
    expect(labels).toContain('To buy');
    expect(labels).toContain('Short of the aim');
    expect(unexplained(labels)).toEqual([]);
  });

  test('each heading of a paragraph or a list of survey, plan and read', () => {
    const pages = sourceFiles('report').filter((file) =>
      /(survey|plan|read|assumption)-blocks/.test(file),
    );
    const labels = [
      ...found(pages, /\bparagraph\(\s*'([^']+)'/g),
      ...found(pages, /\blist\(\s*'([^']+)'/g),
    ];
    expect(labels).toContain('Assumed');
    expect(unexplained(labels)).toEqual([]);
  });

  test('each heading that says what is to be done first, on whichever page it stands', () => {
    // Lists of what can be asked for, of files and of methods explain themselves, and so does what an owner is told.
    const pages = sourceFiles('report').filter(
      (file) => !/\/(quote|explain|start|template|methods|gauge)\//.test(file),
    );
    const labels = [
      ...found(pages, /\b(?:paragraph|list|notice)\(\s*'([^']+)'/g),
      ...found(pages, /\bexport const [A-Z_]+ = '([A-Z][a-z]+ [a-z ]+)';/g),
      ...found(pages, /\bconst WAYS = \['([^']+)'/g),
    ];
    for (const label of ['Read more first', 'Read again first', 'Settle first', 'Stop', 'Mind']) {
      expect(labels).toContain(label);
    }
    expect(unexplained(labels)).toEqual([]);
  });
});

describe('everything that stands in a record', () => {
  const places = recordKeyPlaces();

  test('is explained as a key of one, by the key alone', () => {
    const keys = places.map(keyOfPlace);
    expect(keys).toContain('gauge_rr');
    expect(keys).toContain('confidence_pct');
    expect(unexplained(keys, 'record key', 'key')).toEqual([]);
  });

  test('and with its command, or the keys that lead to it, with that place alone', () => {
    const told = (word: string): string => {
      const [found] = explain([word]).value ?? [];
      return (found?.topics ?? [])
        .flatMap(({ details }) => details.map(({ text }) => text))
        .join('; ');
    };
    const lost = places.filter(
      (place) => !told(`${place.record}.${placeText(place)}`).includes(placeText(place)),
    );
    expect(lost.map(placeText)).toEqual([]);
    expect(told('quote kind')).toContain('quote: options[].lines[].kind');
    expect(told('quote kind')).not.toContain('doctor');
    expect(told('survey.panels[].clear.low_um')).toBe('survey: panels[].clear.low_um');
    expect(told('clear.low_um')).toBe('survey: panels[].clear.low_um');
    expect(told('compare removed_low_um')).toContain('compare: panels[].removed_um.low');
  });

  test('is told in each of its meanings, where it has several', () => {
    const meanings = (word: string): readonly string[] =>
      (explain([word]).value?.[0]?.topics ?? [])
        .filter(({ kind }) => kind === 'record key')
        .map(({ meaning }) => meaning);
    expect(meanings('verdict').length).toBeGreaterThan(5);
    expect(meanings('sha256')).toHaveLength(2);
    expect(meanings('p50_min')).toHaveLength(1);
    expect(meanings('verdict')).toEqual([...new Set(meanings('verdict'))]);
  });
});

test('each column of the csv of each command that lets one choose columns', async () => {
  const saloon = 'samples/sound-saloon/readings.csv';
  const shop = ['--shop', 'samples/shop.json'];
  const week = ['batch', 'samples/week/jobs.csv', ...shop];
  const runs: readonly (readonly [string, readonly string[]])[] = [
    ['survey', ['survey', saloon]],
    ['plan', ['plan', saloon]],
    ['quote', ['quote', saloon, ...shop]],
    ['compare', ['compare', saloon, 'samples/sound-saloon/after.csv', '--marked']],
    ['gauge', ['gauge', 'samples/gauge-checks.csv']],
    ['grade', ['grade', 'samples/class/reference.csv', 'samples/class/anneke.csv']],
    ...['survey', 'plan', 'quote'].map(
      (command) => [`batch --command ${command}`, [...week, '--command', command]] as const,
    ),
    ['template list', ['template', 'list']],
    ['template show', ['template', 'show', 'saloon']],
    ['template sheet', ['template', 'sheet', 'saloon', '--repeats', '2']],
    ['read', ['read', saloon]],
  ];
  const { commands } = optionTopics([]).find(({ name }) => name === '--fields') ?? { commands: [] };
  expect(runs.map(([table]) => table.split(' ')[0])).toEqual(expect.arrayContaining([...commands]));
  for (const [table, words] of runs) {
    const { out } = await askLeastcut([...words, '--format', 'csv', '--fields=']);
    const [head, ...names] = out.trim().split(/\r?\n/);
    expect(head, table).toBe('field');
    const all = Object.keys(tableColumns[table] ?? {});
    // A column of readings stands only where a reading fills it, one of places where a shut is asked for.
    const isByRows = table === 'read' || table === 'template sheet';
    expect(names, table).toEqual(isByRows ? all.filter((one) => names.includes(one)) : all);
  }
  const reorder = join(temporaryFolder(), 'to-buy.csv');
  await askLeastcut([...week, '--reorder', reorder]);
  const toBuy = (textOf(reorder).split(/\r?\n/)[0] ?? '').split(',');
  expect(toBuy).toEqual(Object.keys(tableColumns['batch --reorder'] ?? {}));
  expect(
    found([join(projectRoot, 'src/report/read/readings-table.ts')], /\bname: '(\w+)'/g),
  ).toEqual(Object.keys(tableColumns['read'] ?? {}));
  expect(
    unexplained(Object.values(tableColumns).flatMap((columns) => Object.keys(columns))),
  ).toEqual([]);
});

test.each([
  ['survey also', /besides its condition/],
  ['gauge check', /before the work or after/],
  ['compare clear_um', /thinnest part of the panel/],
  ['batch command', /survey, plan or quote/],
  ['grade date', /day of the survey/],
  ['batch error', /first thing that is wrong/],
  ['batch job', /name of the job/],
  ['quote kind', /estimate/],
  ['quote line_kind', /labour, material/],
  ['batch material', /bought or washed/],
  ['survey mean_um', /Mean of the points/],
  ['grade n', /How many points/],
  ['compare removed_um', /came off the panel/],
  ['read repeat', /Which reading/],
  ['batch shop', /price list/],
  ['batch status', /job|buy/],
  ['batch stock', /on the shelf, in the unit of the row/],
  ['read time', /When it was taken/],
  ['read u', /across the panel/],
  ['batch unit', /amounts of the row/],
  ['read v', /down the panel/],
])('the column "%s" is explained with its command', (asked, meaning) => {
  const [command = '', name = ''] = asked.split(' ');
  const told = (explain([asked]).value?.[0]?.topics ?? []).filter(
    ({ id, details }) =>
      id === name &&
      details.some(
        ({ label, text }) => label === 'In csv of' && new RegExp(`\\b${command}\\b`).test(text),
      ),
  );
  expect(told.map((one) => one.meaning).join(' ')).toMatch(meaning);
});

describe('everything that one may write is explained', () => {
  test('each option, long and short', () => {
    const flags = [...Object.values(optionSpecs), helpOption].flatMap(
      (spec) => spec.flags.match(/--?[\w-]+/g) ?? [],
    );
    expect(flags).toContain('--risk-pct');
    expect(flags).toContain('-v');
    expect(unexplained(flags, 'option')).toEqual([]);
  });

  test('each key of each settings file, and none is explained that no file has', () => {
    // A plan is a record: what its keys mean stands in its schema.
    const inFiles = fileKinds
      .filter(({ kind }) => kind !== 'plan')
      .map(({ kind, schema }) => ({
        file: kind.replace('-', ' '),
        keys: keysOf(z.toJSONSchema(schema, lenient)),
      }));
    expect(inFiles.length).toBeGreaterThan(7);
    for (const { file, keys } of inFiles) {
      expect(keys.size, file).toBeGreaterThan(4);
      const elsewhere = new Set([
        ...listAllDefaults().map(({ id }) => id),
        ...(file === 'decisions' ? readingColumns.map(({ role }) => role) : []),
      ]);
      // What is a column of readings may be a key of the file as well.
      const said = keyMeanings.filter(({ files }) => files.some((one) => one === file));
      const own = [...keys].filter(
        (key) => !elsewhere.has(key) || said.some((one) => one.key === key),
      );
      expect(unexplained(own, 'key'), file).toEqual([]);
      expect(
        said.map(({ key }) => key).filter((key) => !keys.has(key)),
        file,
      ).toEqual([]);
      const unsaid = own.filter((key) => !said.some((one) => one.key === key));
      expect(unsaid, file).toEqual([]);
    }
  });

  test('each word that a key of a settings file may be set to, but codes of currencies and signs', () => {
    const ofFiles = fileKinds
      .filter(({ kind }) => kind !== 'plan')
      .flatMap(({ schema }) => [...valuesOf(z.toJSONSchema(schema, lenient))]);
    const words = ofFiles.filter(
      (value) => /\w/.test(value) && !currencies.has(value) && !value.startsWith('leastcut/'),
    );
    for (const word of ['uk-vat', 'half-up', 'da-forced', 'usual']) expect(words).toContain(word);
    expect(unexplained(words)).toEqual([]);
  });

  test('each stage of a job, with what must come before it', () => {
    const ids = stageFacts.map(({ id }) => id);
    expect(unexplained(ids, 'stage')).toEqual([]);
    const wax = topics.find(({ kind, id }) => kind === 'stage' && id === 'wax');
    const texts = wax?.details.map(({ label, text }) => `${label}: ${text}`) ?? [];
    expect(texts).toContain('Done where: protection is wax');
    expect(texts).toContain(
      'Comes after: remeasure: protection reads as film: never measure after it',
    );
  });

  test('each defect of a defects file, by every name it goes by', () => {
    const names = correctionModel.defects.flatMap(({ id, name, aliases }) => [
      id,
      name,
      ...aliases,
    ]);
    expect(unexplained(names, 'defect')).toEqual([]);
  });
});

describe('every number of the model is explained', () => {
  test('by its id, with its formula and its use', () => {
    const ids = listAllDefaults().map(({ id }) => id);
    expect(ids.length).toBeGreaterThan(150);
    expect(unexplained(ids, 'default')).toEqual([]);
    const mute = topics.filter(
      ({ number }) => number !== null && (number.used === '' || number.formula === ''),
    );
    expect(mute.map(({ id }) => id)).toEqual([]);
  });

  test('and no use is written down for numbers that are not there', () => {
    const ids = listAllDefaults().map(({ id }) => id);
    const idle = defaultUses.filter(({ prefix }) => !ids.some((id) => id.startsWith(prefix)));
    expect(idle.map(({ prefix }) => prefix)).toEqual([]);
  });
});

describe('what explains is in order itself', () => {
  test('no code, key or term is explained twice', () => {
    const ids = (kind: TopicKind): readonly string[] =>
      topics.filter((topic) => topic.kind === kind).map(({ id }) => id);
    for (const kind of [
      'word',
      'heading',
      'value',
      'diagnostic',
      'key',
      'default',
      'defect',
      'option',
    ] as const) {
      expect(ids(kind), kind).toEqual([...new Set(ids(kind))]);
    }
    const remarks = remarkMeanings.map(({ code, kind }) => `${kind} ${code}`);
    expect(remarks).toEqual([...new Set(remarks)]);
  });

  test('no word of the glossary leads to two terms', () => {
    const names = glossary.flatMap(({ term, also }) => [term, ...also]);
    const twice = names.filter((name, i) => names.indexOf(name) !== i);
    expect(twice).toEqual([]);
  });

  test('no code is explained that no source writes', () => {
    const all = sourceFiles('film', 'correction', 'work', 'training', 'tasks', 'report', 'intake')
      .map(textOf)
      .join('\n');
    const idle = remarkMeanings.filter(({ code }) => {
      const bare = code.replace(/^limit-/, '');
      return !all.includes(`'${code}'`) && !all.includes(`'${bare}'`);
    });
    expect(idle.map(({ code }) => code)).toEqual([]);
  });

  test('every meaning is a sentence', () => {
    const meanings = [
      ...topics.map(({ id, meaning }) => ({ id, meaning })),
      ...Object.entries({ ...conditionMeanings, ...verdictMeanings, ...basisMeanings }).map(
        ([id, meaning]) => ({ id, meaning }),
      ),
    ];
    const broken = meanings.filter(({ meaning }) => !/^[\p{Lu}\d“].*[.)]$/u.test(meaning));
    expect(broken.map(({ id }) => id)).toEqual([]);
  });
});

const lenient = { io: 'input', unrepresentable: 'any' } as const;

/** Every key that an object of the schema may have, at any depth. */
/** The words of every enumeration in a schema. */
function valuesOf(schema: unknown, values = new Set<string>()): ReadonlySet<string> {
  if (typeof schema !== 'object' || schema === null) return values;
  for (const [word, inner] of Object.entries(schema)) {
    const own = word === 'enum' ? (inner as readonly unknown[]) : word === 'const' ? [inner] : [];
    for (const value of own) if (typeof value === 'string') values.add(value);
    valuesOf(inner, values);
  }
  return values;
}

function keysOf(schema: unknown, keys = new Set<string>()): ReadonlySet<string> {
  if (typeof schema !== 'object' || schema === null) return keys;
  for (const [word, inner] of Object.entries(schema)) {
    if (word === 'properties') for (const key of Object.keys(inner as object)) keys.add(key);
    keysOf(inner, keys);
  }
  return keys;
}
