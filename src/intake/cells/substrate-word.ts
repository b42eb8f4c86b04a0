/**
 * What a cell of a substrate column says that the paint lies on. A gauge writes the principle that it read by
 * (ISO 2178 magnetic: Fe, F; ISO 2360 eddy current: NFe, N); of non-ferrous metals a body is made of aluminium.
 */
import { once } from '../../base/kept.ts';
import type { Substrate } from '../../film/template/template.ts';
import { wordKey } from './word-key.ts';
import { meaningOfWords } from './word-list.ts';

const words = {
  steel: 'fe|f|ferrous|ferro|magnetic|iron|steel|stahl|acier|acero|acciaio|staal|stal',
  aluminium:
    'nfe|nf|n|nonfe|nonferrous|nonmagnetic|eddycurrent|al|alu|aluminium|aluminum|alluminio|aluminio',
  plastic: 'plastic|kunststoff|plastique|plastico|plastica|kunststof|plastik',
  composite: 'composite|grp|gfrp|cfrp|fibreglass|fiberglass|carbon|gfk|cfk',
} as const satisfies Record<Substrate, string>;

const meanings = once(() => meaningOfWords(words) as ReadonlyMap<string, Substrate>);

/** Nothing where the cell says something else: a zinc sign, both principles, a word nobody knows. */
export const substrateWord = (cell: string): Substrate | undefined => meanings().get(wordKey(cell));
