/** Seeded draws, so that a spoiled file can be made again from its seed. */
export type Random = {
  /** 0 ≤ x < 1. */
  readonly next: () => number;
  /** Both ends included. */
  readonly int: (low: number, high: number) => number;
  readonly pick: <T>(list: readonly T[]) => T;
  readonly chance: (share: number) => boolean;
  readonly shuffled: <T>(list: readonly T[]) => T[];
};

/** Mulberry32, a public-domain generator of 32 bits of state: enough to draw invented cars. */
export function createRandom(seed: number): Random {
  let state = seed >>> 0;
  const next = (): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
  const int = (low: number, high: number): number => low + Math.floor(next() * (high - low + 1));
  const pick = <T>(list: readonly T[]): T => {
    if (list.length === 0) throw new Error('nothing to pick from');
    return list[int(0, list.length - 1)] as T;
  };
  const shuffled = <T>(list: readonly T[]): T[] =>
    list
      .map((one) => ({ one, at: next() }))
      .sort((a, b) => a.at - b.at)
      .map(({ one }) => one);
  return { next, int, pick, chance: (share) => next() < share, shuffled };
}

/** A seed from a name and a number, so that kinds do not share their draws (FNV-1a). */
export function seedOf(name: string, turn: number): number {
  let hash = 2166136261 ^ turn;
  for (const character of name) {
    hash = Math.imul(hash ^ (character.codePointAt(0) ?? 0), 16777619);
  }
  return (hash ^ Math.imul(turn + 1, 2654435761)) >>> 0;
}
