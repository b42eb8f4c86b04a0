/**
 * A built-in number with the grounds it stands on, so that no constant of the model is anonymous:
 * every default can be listed, explained and traced to its source.
 *
 * A tree of defaults is a readonly object (or list) whose leaves are defaults. The model takes the
 * plain numbers (`values`), people are shown the grounds (`listDefaults`).
 */
import type { Quantity } from '../base/units.ts';

export type Basis = 'published' | 'common practice' | 'from memory' | 'derived' | 'assumption';

export type Default<T extends number = number> = {
  readonly value: T;
  /** As people write it: `µm`, `min/m²`; `1` for a pure number. */
  readonly unit: string;
  readonly basis: Basis;
  /** Where it comes from; never empty for a published number. */
  readonly source: string;
  /** What the number is, in plain words; no two defaults mean the same. */
  readonly meaning: string;
  /** The least and the most that a shop may set it to. */
  readonly range: Range;
};

export type Range = readonly [least: number, most: number];

export type DefaultTree =
  | Default
  | readonly DefaultTree[]
  | { readonly [key: string]: DefaultTree };

/** The tree with every default replaced by its number: units keep their brands. */
export type Values<Tree> =
  Tree extends Default<infer T>
    ? T
    : Tree extends object
      ? { readonly [Key in keyof Tree]: Values<Tree[Key]> }
      : never;

export type ListedDefault = Default & {
  /** The keys that lead to it, joined by points: `solid.colour.sd`. */
  readonly path: string;
};

/** A quantity keeps its unit; a literal is any number. */
type Widened<T extends number> = T extends Quantity<string> ? T : number;

export const number = <T extends number>(
  value: T,
  unit: string,
  basis: Basis,
  source: string,
  meaning: string,
  range: Range = usualRange(value),
): Default<Widened<T>> => ({ value: value as Widened<T>, unit, basis, source, meaning, range });

/** A number without a unit: a share, a factor, a count. */
export const pure = (
  value: number,
  basis: Basis,
  source: string,
  meaning: string,
  range: Range,
): Default => number(value, '1', basis, source, meaning, range);

/** Where nothing narrower is stated: a hundredth to a hundred times the built-in value. */
const usualRange = (value: number): Range => [value / 100, value * 100];

const isDefault = (tree: DefaultTree): tree is Default =>
  !Array.isArray(tree) &&
  typeof (tree as { readonly value?: unknown }).value === 'number' &&
  typeof (tree as { readonly basis?: unknown }).basis === 'string';

/** What stands in place of a built-in number, by the path to it and its unit; nothing leaves it. */
export type Override = (path: string, unit: string) => number | undefined;

export function values<const Tree extends DefaultTree>(
  tree: Tree,
  override?: Override,
): Values<Tree> {
  return plain(tree, '', override) as Values<Tree>;
}

/** Paths are put together only for an override to ask about: every start reads four hundred numbers. */
function plain(tree: DefaultTree, path: string, override: Override | undefined): unknown {
  if (isDefault(tree)) return override?.(path, tree.unit) ?? tree.value;
  const below = (branch: DefaultTree, key: string): unknown =>
    plain(branch, override === undefined ? '' : joined(path, key), override);
  if (isList(tree)) return tree.map((branch, i) => below(branch, `${i}`));
  const branches: Record<string, unknown> = {};
  for (const key of Object.keys(tree)) branches[key] = below(tree[key] as DefaultTree, key);
  return branches;
}

const isList = (tree: DefaultTree): tree is readonly DefaultTree[] => Array.isArray(tree);

const joined = (path: string, key: string): string => (path === '' ? key : `${path}.${key}`);

/** Every default of a tree in the order it is written. */
export function listDefaults(tree: DefaultTree, path = ''): readonly ListedDefault[] {
  if (isDefault(tree)) return [{ path, ...tree }];
  return Object.entries(tree).flatMap(([key, branch]) => listDefaults(branch, joined(path, key)));
}
