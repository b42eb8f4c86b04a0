/** How a column tells a word of statistics: by the text, and where that may be a name, by its row. */
import type { Row } from '../rows/tokens.ts';

export type WordTest = {
  readonly mayBe: (text: string) => boolean;
  readonly isOne: (text: string, row: Row) => boolean;
};

/** Each text is judged once. */
export function known(test: (text: string) => boolean): WordTest['mayBe'] {
  const told = new Map<string, boolean>();
  return (text) => {
    const before = told.get(text);
    if (before !== undefined) return before;
    const answer = test(text);
    told.set(text, answer);
    return answer;
  };
}
