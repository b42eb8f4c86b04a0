/**
 * Sentences whose thicknesses stay numbers until they are read: the same sentence is told in micrometres
 * or in mil, with the figures rounded for people in one place.
 */
import { figure, shown } from './rounding.ts';
import { inLengthUnit, type LengthUnit } from './units.ts';

/** A thickness in a sentence, in µm; `digits` after the point in µm, null for as many as it has. */
export type Thickness = {
  readonly thickness: number;
  readonly digits: number | null;
  /** Whether its unit follows it. */
  readonly named: boolean;
};

/** Two thicknesses and what lies between: `2.3 to 3.1 µm`; the one where both are written alike in the unit that is read. */
export type ThicknessRange = {
  readonly least: number;
  readonly most: number;
  readonly digits: number;
  readonly named: boolean;
  /** Whether a gain has a plus before it. */
  readonly plus: boolean;
};

/** Where a fact ends and another begins: `; ` in one text. */
export type Break = { readonly joiner: string };

export const nextFact: Break = { joiner: '; ' };
/** The same where what goes before ends in a full stop. */
export const nextSentence: Break = { joiner: ' ' };

export type Sentence = readonly (string | Thickness | ThicknessRange | Break)[];

/** A thickness with its unit: `12.3 µm`, `0.48 mil`. */
export const um = (thickness: number, digits: number | null = 1): Thickness => ({
  thickness,
  digits,
  named: true,
});

/** The same where the unit is named elsewhere: the first of `35.8 ± 4.4 µm`. */
export const bare = (thickness: number, digits: number | null = 1): Thickness => ({
  ...um(thickness, digits),
  named: false,
});

/** `2.3 to 3.1`, its unit named elsewhere. */
export const bareRange = (least: number, most: number, digits = 1): ThicknessRange => ({
  least,
  most,
  digits,
  named: false,
  plus: false,
});

/** says`median ${um(212)} is over ${um(200)}`; a sentence inside another becomes part of it. */
export const says = (
  texts: readonly string[],
  ...pieces: readonly (string | number | Sentence | Sentence[number])[]
): Sentence => {
  const said: Sentence[number][] = [];
  texts.forEach((text, i) => {
    const piece = pieces[i];
    if (typeof piece === 'string' || typeof piece === 'number') said.push(`${text}${piece}`);
    else if (piece === undefined) said.push(text);
    else if ('length' in piece) said.push(text, ...piece);
    else said.push(text, piece);
  });
  return said;
};

/** Several as one, with the joiner between them. */
export const joinSentences = (sentences: readonly Sentence[], joiner: string | Break): Sentence =>
  sentences.flatMap((one, i) => (i === 0 ? one : [joiner, ...one]));

/** The sentence as people read it in a unit. */
export const tell = (sentence: Sentence, unit: LengthUnit): string =>
  sentence.map((piece) => pieceIn(piece, unit)).join('');

/** The same, each fact by itself. */
export function tellApart(sentence: Sentence, unit: LengthUnit): readonly string[] {
  const facts = [''];
  for (const piece of sentence) {
    if (typeof piece === 'object' && 'joiner' in piece) facts.push('');
    else facts.push(`${facts.pop()}${pieceIn(piece, unit)}`);
  }
  return facts;
}

function pieceIn(piece: Sentence[number], unit: LengthUnit): string {
  if (typeof piece === 'string') return piece;
  if ('joiner' in piece) return piece.joiner;
  return 'least' in piece ? rangeIn(piece, unit) : thicknessIn(piece, unit);
}

function rangeIn({ least, most, digits, named, plus }: ThicknessRange, unit: LengthUnit): string {
  const [low, high] = [least, most].map((value) => {
    const text = thicknessText(value, unit, digits);
    return plus && value > 0 && Number(text) > 0 ? `+${text}` : text;
  });
  return `${low === high ? low : `${low} to ${high}`}${named ? ` ${unitName(unit)}` : ''}`;
}

const thicknessIn = ({ thickness, digits, named }: Thickness, unit: LengthUnit): string =>
  `${thicknessText(thickness, unit, digits)}${named ? ` ${unitName(unit)}` : ''}`;

/** A thickness in figures, for people: below nothing with U+2212. A mil is coarse: one digit more, and two at least. */
export const thicknessText = (value: number, unit: LengthUnit, digits: number | null = 1): string =>
  digitsOf(value, unit, digits).replace('-', '−');

function digitsOf(value: number, unit: LengthUnit, digits: number | null): string {
  if (unit === 'um') return digits === null ? figure(value) : shown(value, digits);
  return shown(inLengthUnit(value, unit), Math.max(2, (digits ?? 1) + 1));
}

export const unitName = (unit: LengthUnit): string => (unit === 'um' ? 'µm' : 'mil');
