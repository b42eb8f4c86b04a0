import { beforeAll, expect, test } from 'vitest';
import { allKinds } from './all-kinds.ts';
import { disasters } from './judge.ts';
import { isFine, runCorpus, type Tried, tableOf, totalsOf, written } from './run-corpus.ts';

/**
 * Files of each kind; `CORPUS_N=50` looks further, and at files of extreme sizes as well;
 * `CORPUS_TABLE=1` prints what became of each kind.
 */
const asked = process.env['CORPUS_N'];
const turns = Number(asked ?? 1);
const kinds = allKinds.filter(({ group }) => asked !== undefined || group !== 'sizes');

let tried: readonly Tried[] = [];
beforeAll(async () => {
  tried = await runCorpus(kinds, turns);
  if (process.env['CORPUS_TABLE'] !== undefined) console.log(tableOf(tried));
}, 600_000);

const told = (some: readonly Tried[]): readonly string[] =>
  some.map(({ kind, turn, verdict, why }) => `${kind.title} (${turn}): ${verdict}: ${why}`);

test('each kind of spoiled file has a name of its own and is written the same from its seed', () => {
  expect(new Set(allKinds.map(({ title }) => title)).size).toBe(allKinds.length);
  for (const kind of allKinds.filter(({ group }) => group !== 'sizes'))
    expect(written(kind, 1).bytes).toEqual(written(kind, 1).bytes);
});

test('no spoiled file is read wrong in silence, guessed at, or brings the reader down', () => {
  expect(told(tried.filter(({ verdict }) => disasters.includes(verdict)))).toEqual([]);
});

test('what a person could settle from the file alone is seldom refused', () => {
  expect(totalsOf(tried).needless).toBeLessThanOrEqual(0.05);
});

test('every spoiled file comes to what its kind expects, and a refusal shows place, text and remedy', () => {
  expect(told(tried.filter((one) => !isFine(one)))).toEqual([]);
});
