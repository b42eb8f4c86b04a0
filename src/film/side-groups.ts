/** Which panels of a side are neighbours that read over their mirror panels, and the groups that they may make. */
import type { GatheredFilm, GatheredPanel } from './gathered-panel.ts';
import { putBack } from './put-back.ts';
import type { Panel } from './template/template.ts';

/** What is held of a panel before: null of one that says nothing of its paint. */
export type SideWord = 'factory' | 'repaint' | null;

export type Side = readonly Place[];

export type WordOf = (panel: GatheredPanel) => SideWord;

/** A panel that has a mirror panel, in walking order along its side. */
type Place = { readonly here: GatheredPanel; readonly there: GatheredPanel };

/** One of factory film; null of one that is known to be repaint. */
export type Member = Pair | Lone | null;

export type Pair = {
  readonly here: GatheredFilm;
  readonly there: GatheredFilm;
  readonly apart: number;
};

/** One between pairs, with a mirror panel that was not read, or at one point: it is held to the level of the pairs. */
export type Lone = {
  readonly here: GatheredFilm;
  readonly there: GatheredPanel;
  readonly apart: null;
};

export type Group = {
  /** In walking order, without those known to be repaint. */
  readonly members: readonly (Pair | Lone)[];
  readonly pairs: readonly Pair[];
  readonly isBesideRepaint: boolean;
  /** The rest of its run, to either side, nearest first. */
  readonly before: readonly Member[];
  readonly after: readonly Member[];
};

/** Of each pair the one that comes first is of one side: whoever walks round a car takes its sides one by one. */
export function sidesOf(gathered: readonly GatheredPanel[]): readonly [Side, Side] {
  const at = new Map(gathered.map(({ panel }, i) => [panel.id, i]));
  const [first, second]: [Place[], Place[]] = [[], []];
  gathered.forEach((here, i) => {
    const k = here.panel.mirror === null ? undefined : at.get(here.panel.mirror);
    const there = k === undefined ? undefined : gathered[k];
    if (k !== undefined && there !== undefined) (i < k ? first : second).push({ here, there });
  });
  return [first, second];
}

/** As painted; nothing where either was not read. */
export function apartBy({ here, there }: Place): number {
  if (here.statistics === null || there.statistics === null) return 0;
  return putBack(here.statistics.mean, here.facts) - putBack(there.statistics.mean, there.facts);
}

export const groupsOf = (side: Side, wordOf: WordOf, least: number): readonly Group[] =>
  runsOf(side, wordOf, least).flatMap(groupsIn);

/** Neighbours that may be of a group: each reads over its mirror panel by half the line at least, or is known repaint. */
function runsOf(side: Side, wordOf: WordOf, least: number): readonly (readonly Member[])[] {
  const runs: Member[][] = [];
  let last: Panel | null = null;
  let between: Place[] = [];
  for (const place of side) {
    const member = memberOf(place, wordOf, least);
    const { panel } = place.here;
    if (member === undefined) {
      between.push(place);
      continue;
    }
    const parting = last === null ? [] : partingOf(last, panel, between);
    const lone = parting.flatMap((one) => loneOf(one, wordOf, least) ?? []);
    const run = lone.length === parting.length ? runs.at(-1) : undefined;
    if (run === undefined) runs.push([member]);
    else run.push(...lone, member);
    [last, between] = [panel, []];
  }
  return runs;
}

function memberOf({ here, there }: Place, wordOf: WordOf, least: number): Member | undefined {
  const word = wordOf(here);
  if (word === 'repaint') return null;
  const apart = apartBy({ here, there });
  return word === 'factory' && apart > least && wordOf(there) === 'factory'
    ? { here: here as GatheredFilm, there: there as GatheredFilm, apart }
    : undefined;
}

function loneOf({ here, there }: Place, wordOf: WordOf, least: number): Lone | undefined {
  if (wordOf(here) !== 'factory' || there.points.length > 1) return undefined;
  // A point that reads as thick speaks against it.
  const isOpen = there.statistics === null || apartBy({ here, there }) > least;
  return isOpen ? { here: here as GatheredFilm, there, apart: null } : undefined;
}

/** A sill, a mirror or a roof rail between two panels parts them not: it is under half as large as either. */
const partingOf = (one: Panel, other: Panel, between: readonly Place[]): readonly Place[] =>
  between.filter(({ here }) => 2 * here.panel.area >= Math.min(one.area, other.area));

export const isPair = (member: Member): member is Pair => member !== null && member.apart !== null;

const isLone = (member: Member | undefined): boolean => member?.apart === null;

/** Every stretch of a run that has two panels at least, and one of them in question; lone ones only lie between. */
function groupsIn(run: readonly Member[]): readonly Group[] {
  return run.flatMap((first, from) =>
    run.slice(from + 1).flatMap((last, more) => {
      const to = from + more + 2;
      const stretch = run.slice(from, to);
      const members = stretch.filter((one) => one !== null);
      const pairs = members.filter(isPair);
      const isBesideRepaint = members.length < stretch.length;
      const rest = { before: run.slice(0, from).reverse(), after: run.slice(to) };
      return pairs.length === 0 || isLone(first) || isLone(last)
        ? []
        : [{ members, pairs, isBesideRepaint, ...rest }];
    }),
  );
}
