/**
 * Neighbouring panels of one side that read over their mirror panels by more than sides painted alike differ: a shop
 * that paints a side blends over all of it, so they are asked about together and not one by one.
 *
 * Held against the mirror line is the mean difference of the group, by what its readings leave in doubt; each panel must
 * lie nearer to that mean than to nought, so that no single repaint makes its neighbours suspect. A panel known to be
 * repaint among them or beside them is no part of the mean, but counts as one of the group, and then that the mean lies
 * over the line is enough. More readings only make the difference surer: who painted the side they do not tell.
 *
 * A panel between them that reads as high, while its mirror panel was not read or at one point only, parts them not and
 * is of the group, where two pairs at least lie over the line by themselves.
 *
 * Which side is the odd one, the panels of neither tell, if they are enough: where these read as the thicker side does,
 * that is the usual film of the car, and the other may be cut back. Door shuts are masked when a side is painted: where
 * they differ as the faces do, nothing was painted over.
 *
 * If a side was painted again, the factory's film is that of the other. A panel of neither that lies nearer to the thick
 * side than to that is then likelier repaint too: panels vary alike about either film, so the nearer one is the likelier
 * one. It is held by the same alternative, and no part of the mean.
 */

import { groupBy } from '../base/group-by.ts';
import { mean, median } from '../base/stats/summary.ts';
import {
  type Component,
  effectiveDegreesOfFreedom,
  exactly,
  rectangular,
  standardUncertainty,
  type Uncertain,
  uncertain,
} from '../base/uncertainty.ts';
import { type Micrometres, micrometres } from '../base/units.ts';
import { compareWithLine, type PaintedTogether } from './condition/line-comparison.ts';
import type { FilmModel } from './film-model.ts';
import { type GatheredFilm, type GatheredPanel, thicknesses } from './gathered-panel.ts';
import { putBack } from './put-back.ts';
import {
  apartBy,
  type Group,
  groupsOf,
  isPair,
  type Lone,
  type Member,
  type Pair,
  sidesOf,
  type WordOf,
} from './side-groups.ts';
import type { Panel } from './template/template.ts';

/** By the id of each panel that may have been painted again with its side. */
export type PaintedSides = ReadonlyMap<string, PaintedTogether>;

/** How its panels are judged: by what they read like, and what their means are uncertain by. */
export type SideJudge = {
  readonly wordOf: WordOf;
  readonly meanOf: (panel: GatheredFilm) => Uncertain<'µm'>;
};

const NONE: PaintedSides = new Map();

export function paintedTogether(
  gathered: readonly GatheredPanel[],
  judge: SideJudge,
  model: FilmModel,
): PaintedSides {
  const { mirror } = model.conditions;
  const sides = sidesOf(gathered);
  // Nearly every car: a mean is over the line only where one of its panels is.
  if (!sides.flat().some((place) => apartBy(place) > mirror)) return NONE;
  const found = sides.flatMap((side) =>
    groupsOf(side, judge.wordOf, mirror / 2).flatMap((group) =>
      together(group, { gathered, judge }, model),
    ),
  );
  // Of several that a panel is of, the mean of most of them is told.
  const largestLast = found.sort((one, other) => one.count - other.count);
  return new Map(
    largestLast.flatMap(({ group }) =>
      [...group.panels, ...group.centre].map(({ id }) => [id, group] as const),
    ),
  );
}

/** None where the group does not hold. */
function together(
  { members, pairs, isBesideRepaint, before, after }: Group,
  { gathered, judge }: { readonly gathered: readonly GatheredPanel[]; readonly judge: SideJudge },
  model: FilmModel,
): readonly { readonly count: number; readonly group: PaintedTogether }[] {
  const { conditions } = model;
  const apart = mean(pairs.map((pair) => pair.apart));
  const isNearer = (difference: number): boolean => 2 * difference > apart;
  const isLoneOfIt = loneJudge(pairs, conditions.mirror);
  const isOfIt = (one: Pair | Lone): boolean =>
    isPair(one) ? isNearer(one.apart) : isLoneOfIt(one);
  if (!members.every(isOfIt)) return [];
  const held = compareWithLine({
    compared: 'over-mirror',
    condition: 'refinished',
    side: 'over',
    figure: differenceOf(pairs, judge, model),
    line: exactly(conditions.mirror),
  });
  const isEnough =
    isBesideRepaint || members.length > LEAST_OF_SIDE || held.otherSide <= conditions.nearRisk;
  if (!held.isBeyond || !isEnough) return [];
  if (isUsualOfOthers({ members, pairs }, { gathered, judge }, conditions)) return [];
  const all = [...joining(before, isOfIt).reverse(), ...members, ...joining(after, isOfIt)];
  const shuts = shutsApart(all);
  if (shuts !== null && isNearer(shuts)) return [];
  const panels = all.map(({ here }) => here.panel);
  const shutsWanted = shuts === null ? doorsOf(all) : [];
  const centre = centreOf(pairs, gathered, judge);
  return [{ count: members.length, group: { panels, centre, apart: held, shuts, shutsWanted } }];
}

/** Panels on the centre line, of factory film by themselves, that read rather as the thicker side does. */
function centreOf(
  pairs: readonly Pair[],
  gathered: readonly GatheredPanel[],
  { wordOf }: SideJudge,
): readonly Panel[] {
  const { thick, thin } = levelsOf(pairs);
  return gathered
    .filter((one) => one.panel.mirror === null && wordOf(one) === 'factory')
    .filter((one) => 2 * filmOf(one as GatheredFilm) > thick + thin)
    .map(({ panel }) => panel);
}

/** A lone panel is of a group if it reads rather as its pairs do, and enough of these are over the line to go by. */
function loneJudge(pairs: readonly Pair[], line: number): (one: Lone) => boolean {
  const { thick, thin } = levelsOf(pairs);
  const isEnough = pairs.filter(({ apart }) => apart > line).length >= LEAST_OF_SIDE;
  return ({ here }) => isEnough && 2 * filmOf(here) > thick + thin;
}

/** Of so many panels their mean has to lie over the line for sure: of more it seldom does where they were painted alike. */
const LEAST_OF_SIDE = 2;

/** Neighbours of a group that lie nearer to its mean than to nought are of it: what was painted once ends somewhere. */
function joining(
  members: readonly Member[],
  isOfIt: (one: Pair | Lone) => boolean,
): (Pair | Lone)[] {
  const end = members.findIndex((one) => one !== null && !isOfIt(one));
  const joined = members.slice(0, end < 0 ? members.length : end).filter((one) => one !== null);
  // A lone one only lies between pairs.
  return joined.slice(0, joined.findLastIndex(isPair) + 1);
}

/** By what the readings leave in doubt; what the gauge errs by, both sides share, but for its share of the difference. */
function differenceOf(
  pairs: readonly Pair[],
  { meanOf }: SideJudge,
  { measurement: { proportional, betweenOperators = micrometres(0) } }: FilmModel,
): Uncertain<'µm'> {
  const apart = mean(pairs.map((pair) => pair.apart));
  const known = (contribution: number) => ({ contribution, dof: Number.POSITIVE_INFINITY });
  const own = pairs
    .flatMap(({ here, there }) => [here, there])
    .flatMap((panel) => [...meanOf(panel).components])
    .filter(([source]) => source !== 'calibration');
  const bySource = [...groupBy(own, ([source]) => source)].map(
    ([source, all]) => [source, ofMean(all, pairs.length)] as const,
  );
  return uncertain(micrometres(apart), {
    ...Object.fromEntries(bySource),
    calibration: known(rectangular(proportional * apart)),
    // One of them may have read the one side, one the other.
    ...(betweenOperators === 0 ? {} : { operators: known(Math.SQRT2 * betweenOperators) }),
  });
}

/** Doubts that have nothing in common, in the mean of `count`. */
function ofMean(all: readonly (readonly [string, Component])[], count: number): Component {
  const each = all.map(([, component], i) => [`${i}`, component] as const);
  const together = uncertain(micrometres(0), Object.fromEntries(each));
  return {
    contribution: standardUncertainty(together) / count,
    dof: effectiveDegreesOfFreedom(together),
  };
}

/** Whether the panels of neither side, if they are as many as make a baseline, read rather as the thicker one does. */
function isUsualOfOthers(
  { members, pairs }: Pick<Group, 'members' | 'pairs'>,
  { gathered, judge }: { readonly gathered: readonly GatheredPanel[]; readonly judge: SideJudge },
  { baselinePanels }: FilmModel['conditions'],
): boolean {
  const ids = new Set(members.flatMap(({ here, there }) => [here.panel.id, there.panel.id]));
  const others = gathered
    .filter((one) => !ids.has(one.panel.id) && judge.wordOf(one) === 'factory')
    .map((one) => filmOf(one as GatheredFilm));
  if (others.length < baselinePanels) return false;
  const { thick, thin } = levelsOf(pairs);
  return 2 * median(others) > thick + thin;
}

const levelsOf = (pairs: readonly Pair[]): { readonly thick: number; readonly thin: number } => ({
  thick: mean(pairs.map(({ here }) => filmOf(here))),
  thin: mean(pairs.map(({ there }) => filmOf(there))),
});

const filmOf = ({ statistics, facts }: GatheredFilm): Micrometres =>
  putBack(statistics.mean, facts);

/** How much more the shuts read than those of the mirror panels; null where those of fewer than two pairs were read. */
function shutsApart(members: readonly (Pair | Lone)[]): Micrometres | null {
  const read = members.flatMap(({ here, there }) => {
    const [own, facing] = [shutsOf(here), shutsOf(there)];
    return own.length === 0 || facing.length === 0 ? [] : [mean(own) - mean(facing)];
  });
  return read.length < LEAST_SHUTS ? null : micrometres(mean(read));
}

/** Of one door nobody knows whether the probe lay well in its shut. */
const LEAST_SHUTS = 2;

/** The doors among them with those that face them; none where they are too few for their shuts to settle it. */
function doorsOf(members: readonly (Pair | Lone)[]): readonly Panel[] {
  const doors = members.filter(({ here }) => here.panel.id.includes('door'));
  return doors.length < LEAST_SHUTS
    ? []
    : doors.flatMap(({ here, there }) => [here.panel, there.panel]);
}

const shutsOf = ({ otherPoints }: GatheredPanel): readonly Micrometres[] =>
  thicknesses(otherPoints.filter(({ place }) => place === 'shut'));
