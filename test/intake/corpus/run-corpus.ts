/** Every kind, several times: written, read and judged. */
import { panelRecogniser } from '../../../src/film/template/panel-names.ts';
import { builtInTemplates } from '../../../src/formats/data/templates.ts';
import { filmModel } from '../../../src/formats/models.ts';
import { readGaugeFile } from '../../../src/intake/read-gauge-file.ts';
import { type Judgement, judge, type Verdict } from './judge.ts';
import type { Instance, Kind } from './kind.ts';
import { createRandom, seedOf } from './random.ts';

export type Tried = Judgement & {
  readonly kind: Kind;
  readonly turn: number;
  readonly instance: Instance;
};

const isPanel = panelRecogniser(builtInTemplates);

/** The file of a kind on a turn; the same two give the same bytes. */
export const written = (kind: Kind, turn: number): Instance =>
  kind.write(createRandom(seedOf(kind.title, turn)));

export function tryKind(kind: Kind, turn: number): Tried {
  const instance = written(kind, turn);
  const start = process.cpuUsage();
  const judged = ((): Judgement => {
    try {
      const outcome = readGaugeFile(
        { name: 'export.csv', bytes: instance.bytes },
        { plausible: filmModel.measurement, ...instance.options, isPanel },
      );
      const { user, system } = process.cpuUsage(start);
      return judge(kind.expected, instance, outcome, (user + system) / 1000);
    } catch (problem) {
      return {
        verdict: 'threw',
        why:
          problem instanceof Error
            ? (problem.stack ?? problem.message).slice(0, 300)
            : String(problem),
      };
    }
  })();
  return { ...judged, kind, turn, instance };
}

/** Files of an extreme size differ little from draw to draw: one of each is enough. */
export const turnsOf = ({ group }: Kind, turns: number): number => (group === 'sizes' ? 1 : turns);

/** Lets others speak between the kinds, since the whole takes a while. */
export async function runCorpus(kinds: readonly Kind[], turns: number): Promise<readonly Tried[]> {
  const tried: Tried[] = [];
  for (const kind of kinds) {
    for (let turn = 0; turn < turnsOf(kind, turns); turn += 1) tried.push(tryKind(kind, turn));
    await new Promise((resolve) => setImmediate(resolve));
  }
  return tried;
}

/** A kind is fine if each of its files came to one of these. */
const fine: Readonly<Record<Kind['expected'], readonly Verdict[]>> = {
  read: ['right'],
  refused: ['refused'],
  'either-but-never-wrong': ['right', 'refused'],
};
export const isFine = ({ kind, verdict }: Tried): boolean => fine[kind.expected].includes(verdict);

/** One line per kind: how many files came to what. */
export function tableOf(tried: readonly Tried[]): string {
  const byKind = new Map<Kind, Tried[]>();
  for (const one of tried) byKind.set(one.kind, [...(byKind.get(one.kind) ?? []), one]);
  return [...byKind]
    .map(([kind, all]) => {
      const counts = new Map<Verdict, number>();
      for (const { verdict } of all) counts.set(verdict, (counts.get(verdict) ?? 0) + 1);
      const said = [...counts].map(([verdict, n]) => `${n} ${verdict}`).join(', ');
      return `${all.every(isFine) ? '  ' : '! '}${kind.group.padEnd(13)} ${kind.expected.slice(0, 7).padEnd(8)} ${said.padEnd(24)} ${kind.title}`;
    })
    .join('\n');
}

/** How many files came to each verdict, and the share of needless refusals. */
export function totalsOf(tried: readonly Tried[]): {
  readonly counts: ReadonlyMap<Verdict, number>;
  readonly needless: number;
} {
  const counts = new Map<Verdict, number>();
  for (const { verdict } of tried) counts.set(verdict, (counts.get(verdict) ?? 0) + 1);
  const settled = tried.filter(({ kind }) => kind.expected === 'read');
  const refused = settled.filter(({ verdict }) => verdict === 'refused' || verdict === 'misplaced');
  return { counts, needless: settled.length === 0 ? 0 : refused.length / settled.length };
}
