/** What is decided about words behind numbers, as one sentence for all of a file. */
import { remarkIn, splitTail } from './markers.ts';
import { numberShape } from './numbers.ts';

/** `"patched" behind a number is kept as a note`; undefined where no number has such words. */
export function remarksSentence(texts: Iterable<string>): string | undefined {
  const remarks = new Set<string>();
  for (const text of texts) {
    if (/[\d\s]$/u.test(text)) continue;
    const remark = remarkIn(splitTail(numberShape(text)?.suffix ?? '').marker);
    if (remark !== undefined) remarks.add(remark);
  }
  return remarks.size === 0 ? undefined : keptAsNotes([...remarks], 'a number');
}

/** How many are named in a sentence. */
const mostNamed = 3;

export function keptAsNotes(remarks: readonly string[], behind: string): string {
  const named = remarks.slice(0, mostNamed).map((text) => `"${text}"`);
  const all = remarks.length > mostNamed ? [...named, '…'] : named;
  return `${all.join(', ')} behind ${behind} ${remarks.length === 1 ? 'is kept as a note' : 'are kept as notes'}`;
}
