/** Lists of a page: what is set in under an item is a list in it, and what bears its own numbers is numbered. */
import { element, sentence } from './html-text.ts';
import { listItems } from './list-items.ts';

export function listHtml(texts: readonly string[]): string {
  const { isNumbered, items } = listItems(texts);
  const lines = items.map(({ text, under }) =>
    element('li', {}, sentence(text), under.length === 0 ? '' : listHtml(under)),
  );
  return element(isNumbered ? 'ol' : 'ul', {}, ...lines);
}
