/** The items of a list, where it can say that some are set in under others, or bear their numbers. */

export type ListItem = { readonly text: string; readonly under: readonly string[] };
export type ListItems = { readonly isNumbered: boolean; readonly items: readonly ListItem[] };

/** Numbered where each begins with its number: it is taken off. */
export function listItems(texts: readonly string[]): ListItems {
  const items = nested(texts);
  const isNumbered =
    items.length > 1 && items.every(({ text }, i) => text.startsWith(`${i + 1}. `));
  return {
    isNumbered,
    items: isNumbered
      ? items.map(({ text, under }) => ({ text: text.slice(text.indexOf(' ') + 1), under }))
      : items,
  };
}

/** Two blanks that do not break set a text in, one before a blank keeps it clear of an arrow. */
const SET_IN = '\u00a0\u00a0';
const NO_ARROW = '\u00a0 ';

function nested(texts: readonly string[]): readonly ListItem[] {
  const items: { readonly text: string; readonly under: string[] }[] = [];
  for (const text of texts) {
    const above = items.at(-1);
    if (text.startsWith(SET_IN) && above !== undefined) above.under.push(text.slice(SET_IN.length));
    else {
      items.push({
        text: text.startsWith(NO_ARROW) ? text.slice(NO_ARROW.length) : text,
        under: [],
      });
    }
  }
  return items;
}
