/**
 * Columns of readings that are called after the place of the point on its panel, `Top left`, `Centre`, or after
 * letters, `A`, `B`, `C`, or their order, `first`, `second`, `third`. Left and right, front and rear alone may part two panels, so one of the names must say
 * more: above, below or in the middle, or that it is a side (`Left side`). A point at an edge is none of the face, and such a column none of these.
 */
import { foldedText } from '../cells/doubting-words.ts';
import type { HeaderCell } from './header.ts';
import { areOrdinals } from './ordinals.ts';

const set = (words: string): ReadonlySet<string> => new Set(words.split(/\s+/u));
const onAnyPanel = set(
  `top bottom upper lower centre center middle mid m c oben unten mitte ober unter haut bas milieu arriba abajo
  centro medio alto basso mezzo boven onder midden`,
);
const ofTwo = set(
  `left right front rear l r f links rechts vorne hinten vorn gauche droite avant arriere izquierda derecha
  delante detras sinistra destra davanti dietro voor achter av ar vo hi li re`,
);

const side = set('side half end seite haelfte halfte cote lado lato zijde kant');

/** `A` and `B`, or `first` and `second`, alone may be two gauges, two layers, or before and after. */
const fewestInOrder = 3;

/** The columns if they are all of those that mean nothing else, in their order. */
export function placeColumns(header: readonly HeaderCell<string>[]): readonly number[] {
  const unknown = [...header.keys()].filter(
    (k) => header[k]?.role === undefined && header[k]?.label !== '',
  );
  const names = unknown.map((k) => foldedText(header[k]?.label ?? ''));
  if (unknown.length < 2 || new Set(names).size < names.length) return [];
  const areInOrder = names.length >= fewestInOrder && (areLetters(names) || areOrdinals(names));
  return areInOrder || arePlaces(names) ? unknown : [];
}

/** `a`, `b`, `c`, or with one sign of East Asia behind each: `a点`. */
function areLetters(names: readonly string[]): boolean {
  const behind = /^[a-z]([点點回次]?)$/u.exec(names[0] ?? '')?.[1] ?? '';
  return names.every((name, k) => name === String.fromCharCode('a'.charCodeAt(0) + k) + behind);
}

function arePlaces(names: readonly string[]): boolean {
  const saysMore = (word: string): boolean => onAnyPanel.has(word) || side.has(word);
  return names.every(isPlaceName) && names.some((name) => wordsOf(name).some(saysMore));
}

const wordsOf = (name: string): readonly string[] =>
  name.split(/[^\p{L}]+/u).filter((word) => word !== '');
const isPlace = (word: string): boolean => onAnyPanel.has(word) || ofTwo.has(word);

/** Whether a folded name is that of a place, `top left`, on a panel or of two. */
export function isPlaceName(name: string): boolean {
  const words = wordsOf(name);
  return words.some(isPlace) && words.every((word) => isPlace(word) || side.has(word));
}
