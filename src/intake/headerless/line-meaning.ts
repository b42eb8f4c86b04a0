/** What the words before a number say: the panel, the point on it, or nothing. */
import { foldedText } from '../cells/doubting-words.ts';
import { countedColumn } from '../header/numbered-columns.ts';
import { isPlaceName } from '../header/place-columns.ts';
import type { Piece } from './line-words.ts';

export type Said = { readonly panel: Piece | undefined; readonly point: Piece | undefined };

type IsPanel = (label: string) => boolean;
const nothing: Said = { panel: undefined, point: undefined };

/** Undefined where a word of them is none of these. */
export function saidBy(words: Piece, isPanel: IsPanel): Said | undefined {
  const { text } = words;
  if (text === '' || isFiller(text)) return nothing;
  if (isPanel(text)) return { ...nothing, panel: words };
  if (isPoint(text)) return { ...nothing, point: words };
  for (const [before, behind] of divisions(words)) {
    if (isPanel(before.text) && (isPoint(behind.text) || isLetter(behind.text)))
      return { panel: before, point: behind };
    if (isPoint(before.text) && isPanel(behind.text)) return { panel: behind, point: before };
    if (isFiller(before.text) || isFiller(behind.text)) {
      const said = saidBy(isFiller(before.text) ? behind : before, isPanel);
      if (said !== undefined) return said;
    }
  }
  return undefined;
}

/** The two parts of words at every place where they may be parted, without the marks there. */
export function* divisions({ text, at }: Piece): Generator<readonly [Piece, Piece]> {
  for (const { 0: mark, index } of text.matchAll(/[\s:=\-–—>→.,;/|&~([\]){}#]+/gu)) {
    const from = index + mark.length;
    const [before, behind] = [text.slice(0, index), text.slice(from).replace(/[)\]]$/u, '')];
    if (before !== '' && behind !== '')
      yield [
        { text: before, at },
        { text: behind, at: at + from },
      ];
  }
}

const fillers = new Set(
  `and und et y e en with mit reads read reading readings is was at shows value ist misst liest gemessen lit donne ok
  mide marca misura legge meet`.split(/\s+/u),
);
export const isFiller = (text: string): boolean => fillers.has(text.toLowerCase());

/** `left`, `P1`, `2`, `Messung 3`; `l12` and `x98` are perhaps readings, ill written or crossed out; `m²` is an area. */
export const isPoint = (text: string): boolean =>
  (isPlaceName(foldedText(text)) && !/[²³]/u.test(text)) ||
  (/\d/u.test(text) && !/^[lIOxX]\d{2,}$/u.test(text) && countedColumn(text) !== undefined);

/**
 * `bonnet A`, `roof B`: a letter as people write it on tape. Only behind a panel, and no letter that is a digit ill
 * written, a side or an error; alone before a number an A may be an average.
 */
export const isLetter = (text: string): boolean => /^[ABCDGH]$/u.test(text);
