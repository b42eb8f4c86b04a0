/**
 * A whole car planned a second time, by listing everything: each part's equals, every way to combine them
 * over the car, every spot at a deep defect. Plain loops, no code shared with the planner.
 */
import {
  broken,
  equalsByHand,
  inOrderOfCare,
  type Move,
  nameOf,
  type Rules,
  sequencesByHand,
  type Tool,
  takes,
} from './brute-force.ts';

export type OraclePart = {
  readonly budget: number;
  readonly placeBudget: number;
  readonly flatWidth: number;
  readonly area: number;
};

export type OracleCar = {
  readonly tools: readonly Tool[];
  readonly aim: number;
  readonly hazeAllowed: number;
  readonly correctionOf: (median: number, depth: number) => number;
  readonly meanOf: (median: number) => number;
};

export type PartPlan = {
  readonly own: readonly Move[];
  readonly options: readonly (readonly Move[])[];
};

const fullSizePad = (tools: readonly Tool[], flatWidth: number): number => {
  let widest = 0;
  for (const { motion, padDiameter } of tools)
    if (motion !== 'hand' && motion !== 'rotary' && padDiameter <= flatWidth)
      widest = Math.max(widest, padDiameter);
  return widest;
};

const rulesFor = (part: OraclePart, depth: number, car: OracleCar): Rules => ({
  ...part,
  fullSizePad: fullSizePad(car.tools, part.flatWidth),
  hazeAllowed: car.hazeAllowed,
  aim: car.aim,
  correctionOf: (median) => car.correctionOf(median, depth),
  meanOf: car.meanOf,
});

const sets = (moves: readonly Move[]): number => {
  let sum = 0;
  for (const move of moves) sum += move.sets;
  return sum;
};

/** By machine if that clears a tenth, else by hand if that does, else not at all. */
export function partByHand(part: OraclePart, depth: number, car: OracleCar): PartPlan | undefined {
  const rules = rulesFor(part, depth, car);
  const cleared = (moves: readonly Move[]): number => rules.correctionOf(takes(moves));
  for (const byHand of [false, true]) {
    const tools = car.tools.filter(({ motion }) => (motion === 'hand') === byHand);
    const found = equalsByHand(sequencesByHand(tools, rules), car.tools, rules);
    if (found === undefined || cleared(found.best) < 0.1) continue;
    const { best, equals } = found;
    const reaches = (moves: readonly Move[]): boolean => cleared(moves) >= car.aim - 0.01;
    const options = equals.filter(
      (moves) =>
        cleared(moves) >= 0.1 &&
        (reaches(moves) || !reaches(best)) &&
        moves.length <= best.length &&
        sets(moves) <= sets(best),
    );
    return { own: best, options };
  }
  return undefined;
}

const minutes = (moves: readonly Move[], area: number): number => {
  let perSquareMetre = 0;
  for (const move of moves) perSquareMetre += move.sets * move.tool.minutesPerSquareMetre;
  return Math.round(perSquareMetre * area);
};

export type CarCount = { readonly combinations: number; readonly minutes: number };

export function countOf(chosen: readonly (readonly Move[])[], areas: readonly number[]): CarCount {
  const ids = new Set(chosen.flatMap((moves) => moves.map(({ tool }) => tool.id)));
  let time = 0;
  chosen.forEach((moves, i) => {
    time += minutes(moves, areas[i] ?? Number.NaN);
  });
  return { combinations: ids.size, minutes: time };
}

/** The fewest combinations, and the fewest minutes with as few, over all ways to combine the parts. */
export function bestCount(
  parts: readonly PartPlan[],
  areas: readonly number[],
): CarCount | undefined {
  let ways = 1;
  for (const { options } of parts) ways *= new Set(options.map(nameOf)).size;
  if (ways > 3000) return undefined;
  let all: (readonly Move[])[][] = [[]];
  for (const { options } of parts) {
    const distinct = [...new Map(options.map((moves) => [nameOf(moves), moves])).values()];
    all = all.flatMap((before) => distinct.map((moves) => [...before, moves]));
  }
  const counts = all.map((chosen) => countOf(chosen, areas));
  const fewest = Math.min(...counts.map(({ combinations }) => combinations));
  const time = Math.min(
    ...counts.filter((one) => one.combinations === fewest).map((one) => one.minutes),
  );
  return { combinations: fewest, minutes: time };
}

/** A spot of .05 m² at a defect: the extra move, or none, and what is cleared there. */
export function spotByHand(
  parts: readonly OraclePart[],
  worked: readonly (readonly Move[])[],
  depth: number,
  car: OracleCar,
): { readonly extra: readonly Move[]; readonly cleared: number } {
  const flatWidth = parts[0]?.flatWidth ?? 0;
  const powered = car.tools.filter((t) => t.motion !== 'hand' && t.padDiameter <= flatWidth);
  // A rotary cannot end a spot: beside it any machine that can keeps its pad, and the hand stays where there is none.
  const ending = powered.filter(({ motion }) => motion !== 'rotary');
  const most = Math.min(
    ...(ending.length > 0 ? ending : powered).map(({ padDiameter }) => padDiameter),
  );
  const tools = car.tools.filter((t) =>
    t.motion === 'hand' ? ending.length === 0 : powered.includes(t) && t.padDiameter <= most,
  );
  const cleared = (extra: readonly Move[]): number =>
    Math.min(...worked.map((moves) => car.correctionOf(takes([...extra, ...moves]), depth)));
  const allowed = (extra: readonly Move[]): boolean =>
    parts.every((part, i) => {
      const all = [...extra, ...(worked[i] ?? [])];
      const rules = rulesFor(part, depth, car);
      return (
        takes(all) <= part.placeBudget &&
        broken['haze-cleared']?.(all, rules) === false &&
        broken['last-step-not-rotary']?.(all, rules) === false
      );
    });
  const spots = tools.flatMap((tool) => [1, 2, 3].map((n): readonly Move[] => [{ tool, sets: n }]));
  // All the film of a place is worth a quarter of its mark, half of it an eighth.
  const worth = (extra: readonly Move[]): boolean =>
    parts.every((part, i) => {
      const spent = takes([...extra, ...(worked[i] ?? [])]) / part.placeBudget;
      return cleared(extra) >= 0.25 * spent;
    });
  const ways: (readonly Move[])[] = [
    [],
    ...spots.filter((extra) => allowed(extra) && worth(extra)),
  ];
  const short = (extra: readonly Move[]): number => Math.max(0, car.aim - cleared(extra));
  const least = Math.min(...ways.map(short));
  const byStrength = inOrderOfCare(car.tools);
  const strength = ([move]: readonly Move[]): number =>
    move === undefined ? -1 : byStrength.indexOf(move.tool);
  const film = (extra: readonly Move[]): number =>
    Math.floor(car.meanOf(Math.max(...worked.map((moves) => takes([...extra, ...moves])))) / 0.1);
  let left = ways.filter((extra) => short(extra) <= least + 0.01);
  for (const measure of [strength, film, (extra: readonly Move[]) => minutes(extra, 0.05)]) {
    const lowest = Math.min(...left.map(measure));
    left = left.filter((extra) => measure(extra) === lowest);
  }
  const [best = []] = left.sort((a, b) => (nameOf(a) < nameOf(b) ? -1 : 1));
  const extra = cleared(best) - cleared([]) < 0.1 ? [] : best;
  return { extra, cleared: cleared(extra) };
}
