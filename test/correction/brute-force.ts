/**
 * The planner's rules written a second time, as plainly as can be, to be compared with the search:
 * all sequences are listed, the rules struck off one by one, and the rest put in order.
 */
import type { Motion } from '../../src/correction/removal/catalogue.ts';

export type Tool = {
  readonly id: string;
  readonly perSet: number;
  /** ln-SD of that rate. */
  readonly doubt: number;
  readonly motion: Motion['kind'];
  readonly pad: string;
  readonly padDiameter: number;
  readonly product: string;
  /** Where the pad and where the product may be used; a step needs both. */
  readonly padStages: readonly string[];
  readonly productStages: readonly string[];
  readonly minutesPerSquareMetre: number;
  /** Whether a test spot on this paint proved it. */
  readonly tried?: boolean;
  /** The worst haze that it was seen to leave on this paint. */
  readonly hazeSeen?: number;
};
export type Move = { readonly tool: Tool; readonly sets: number };
export type Rules = {
  readonly budget: number;
  readonly flatWidth: number;
  readonly fullSizePad: number;
  readonly hazeAllowed: number;
  readonly aim: number;
  readonly area: number;
  readonly correctionOf: (median: number) => number;
  readonly meanOf: (median: number) => number;
  /** What moves take in nine cases of ten at most; asked where tools were tried. */
  readonly mostOf?: (moves: readonly Move[]) => number;
};

export const takes = (moves: readonly Move[]): number => {
  let sum = 0;
  for (const { tool, sets } of moves) sum += tool.perSet * sets;
  return sum;
};

/** Rotary with compound 4, with polish 3, with fine 2; fibre 3; dual action with compound 2, with polish 1; soft and fine 0. */
function hazeOf(tool: Tool): number {
  const fibre = tool.pad === 'microfibre' || tool.pad === 'wool';
  if (tool.motion === 'rotary') {
    if (tool.product === 'heavy') return 4;
    if (tool.product === 'medium') return 3;
    return fibre ? 3 : 2;
  }
  if (fibre) return 3;
  if (tool.product === 'heavy') return 2;
  if (tool.product === 'medium') return 1;
  return tool.pad === 'foam-soft' ? 0 : 1;
}

/** Each rule by the name the planner gives it; true when broken. */
export const broken: Readonly<Record<string, (moves: readonly Move[], rules: Rules) => boolean>> = {
  'pad-lies-flat': (moves, { flatWidth }) =>
    moves.some(({ tool }) => tool.motion !== 'hand' && tool.padDiameter > flatWidth),
  'full-size-where-it-fits': (moves, { fullSizePad }) =>
    moves.some(({ tool }) => tool.motion !== 'hand' && tool.padDiameter < fullSizePad),
  'each-step-milder': (moves) => {
    for (let i = 1; i < moves.length; i += 1) {
      const [before, now] = [moves[i - 1]?.tool, moves[i]?.tool];
      if (before === undefined || now === undefined) return true;
      const milder =
        now.perSet < before.perSet || (now.perSet === before.perSet && now.id < before.id);
      if (!milder) return true;
    }
    return false;
  },
  'last-step-not-rotary': (moves) => moves[moves.length - 1]?.tool.motion === 'rotary',
  'haze-cleared': (moves, { hazeAllowed }) => {
    let haze = 0;
    for (const { tool, sets } of moves) {
      let left = tool.perSet * sets;
      while (haze > 0 && left > 0.25 - 1e-10) {
        haze -= 1;
        left -= 0.25;
      }
      haze = Math.max(haze, hazeOf(tool), tool.hazeSeen ?? 0);
    }
    return haze > hazeAllowed;
  },
  'within-budget': (moves, { budget }) => takes(moves) > budget,
  'sets-per-stage': (moves) => moves.some(({ sets }) => sets < 1 || sets > 3),
};

/** Every sequence of up to three stages: cut of 0–3 sets, refine of 0–2, finish of 0–2. */
function sequences(tools: readonly Tool[]): readonly (readonly Move[])[] {
  let all: (readonly Move[])[] = [[]];
  for (const [stage, most] of [
    ['cut', 3],
    ['refine', 2],
    ['finish', 2],
  ] as const) {
    const longer: (readonly Move[])[] = [];
    for (const before of all) {
      longer.push(before);
      for (const tool of tools) {
        if (!tool.padStages.includes(stage) || !tool.productStages.includes(stage)) continue;
        for (let sets = 1; sets <= most; sets += 1) longer.push([...before, { tool, sets }]);
      }
    }
    all = longer;
  }
  return all.filter((moves) => moves.length > 0);
}

export const nameOf = (moves: readonly Move[]): string =>
  moves.map(({ tool, sets }) => `${tool.id}×${sets}`).join(' + ');

/** All sequences that keep every rule of technique, by name, without doubles. */
export const allowedByTechnique = (tools: readonly Tool[], rules: Rules): ReadonlySet<string> =>
  new Set(
    sequences(tools)
      .filter((moves) => keeps(moves, { ...rules, budget: Number.POSITIVE_INFINITY }))
      .map(nameOf),
  );

const keeps = (moves: readonly Move[], rules: Rules): boolean =>
  Object.values(broken).every((isBroken) => !isBroken(moves, rules));

/** Mildest first; a rotary as if it took what one SD of its rate makes it take. */
export const inOrderOfCare = (tools: readonly Tool[]): readonly Tool[] => {
  const harsh = ({ motion, perSet, doubt }: Tool): number =>
    motion === 'rotary' ? perSet * Math.exp(doubt) : perSet;
  return [...tools].sort(
    (a, b) => harsh(a) - harsh(b) || a.perSet - b.perSet || (a.id < b.id ? -1 : 1),
  );
};

/** What a sequence may be preferred by. */
function measuresOf(tools: readonly Tool[], rules: Rules) {
  const byStrength = inOrderOfCare(tools);
  return {
    strength: (moves: readonly Move[]): number =>
      Math.max(-1, ...moves.map(({ tool }) => byStrength.indexOf(tool))),
    minutes: (moves: readonly Move[]): number => {
      let perSquareMetre = 0;
      for (const { tool, sets } of moves) perSquareMetre += sets * tool.minutesPerSquareMetre;
      return Math.round(perSquareMetre * rules.area);
    },
    shortfall: (moves: readonly Move[]): number =>
      Math.max(0, rules.aim - rules.correctionOf(takes(moves))),
    bin: (moves: readonly Move[]): number => Math.floor(rules.meanOf(takes(moves)) / 0.1),
  };
}

/** Of some sequences those with the lowest measure, one measure after the other. */
const lowest = (
  some: readonly (readonly Move[])[],
  ...measures: readonly ((moves: readonly Move[]) => number)[]
): readonly (readonly Move[])[] =>
  measures.reduce((left, measure) => {
    const least = Math.min(...left.map(measure));
    return left.filter((moves) => measure(moves) === least);
  }, some);

/**
 * All that the documented order puts first but for time and name, and the one it puts first: where that was not tried,
 * the first of those that were and take no more.
 */
export function equalsByHand(
  all: readonly (readonly Move[])[],
  tools: readonly Tool[],
  rules: Rules,
): { readonly best: readonly Move[]; readonly equals: readonly (readonly Move[])[] } | undefined {
  const { strength, minutes, shortfall, bin } = measuresOf(tools, rules);
  const kept = all.filter((moves) => takes(moves) <= rules.budget);
  const least = Math.min(...kept.map(shortfall));
  const near = kept.filter((moves) => shortfall(moves) <= least + 0.01);
  const first = (some: readonly (readonly Move[])[]) => {
    const equals = lowest(some, strength, bin);
    const [best] = [...lowest(equals, minutes)].sort((a, b) => (nameOf(a) < nameOf(b) ? -1 : 1));
    return best === undefined ? undefined : { best, equals };
  };
  const found = first(near);
  const { mostOf } = rules;
  if (found === undefined || mostOf === undefined) return found;
  const { best } = found;
  const order = inOrderOfCare(tools);
  const isTried = (moves: readonly Move[]): boolean => order[strength(moves)]?.tried === true;
  if (isTried(best)) return found;
  const tried = near.filter(
    (moves) => isTried(moves) && takes(moves) <= takes(best) && mostOf(moves) <= mostOf(best),
  );
  return first(tried) ?? found;
}

/** Every sequence that technique allows. */
export const sequencesByHand = (
  tools: readonly Tool[],
  rules: Rules,
): readonly (readonly Move[])[] => {
  const unbounded = { ...rules, budget: Number.POSITIVE_INFINITY };
  return sequences(tools).filter((moves) => keeps(moves, unbounded));
};

/** The sequence that the documented order puts first, or undefined when none is allowed. */
export const bestByHand = (tools: readonly Tool[], rules: Rules): readonly Move[] | undefined =>
  equalsByHand(sequencesByHand(tools, rules), tools, rules)?.best;
