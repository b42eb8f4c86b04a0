/**
 * What is wrong with a word of a JSON text that is no keyword, number or string of JSON, and how to
 * write it. Pure wording: it never decides whether a text is valid.
 */
export type WordFault = { readonly message: string; readonly hint: string };

const nullWords = new Set(['none', 'nil', 'undefined', 'n/a', 'null']);
const quotes = "'`‘’‚“”„«»";

export const startsWithForeignQuote = (text: string): boolean => quotes.includes(text.charAt(0));

/** `expected` is what could stand there: a key of an object, or a value. */
export function wordFault(word: string, expected: 'key' | 'value'): WordFault {
  if (startsWithForeignQuote(word)) {
    const bare = word.slice(1, quotes.includes(word.at(-1) ?? ' ') ? -1 : undefined);
    return {
      message: `${word.charAt(0)} is not a quote of JSON`,
      hint: `use double quotes: ${JSON.stringify(bare)}`,
    };
  }
  if (expected === 'key') {
    return { message: `the key ${word} has no quotes`, hint: `write ${JSON.stringify(word)}` };
  }
  return numberFault(word) ?? literalFault(word);
}

function literalFault(word: string): WordFault {
  const lower = word.toLowerCase();
  const message = `${word} is not a value of JSON`;
  if (lower === 'true' || lower === 'false') return { message, hint: `write ${lower}` };
  if (nullWords.has(lower)) return { message, hint: 'leave the key out when nothing is known' };
  if (/^[+-]?(nan|inf|infinity)$/.test(lower)) {
    return { message, hint: 'write a number, or leave the key out' };
  }
  return { message, hint: `text stands in double quotes: ${JSON.stringify(word)}` };
}

function numberFault(word: string): WordFault | undefined {
  if (!/^[+-]?\.?\d/.test(word)) return undefined;
  const message = `${word} is not a number of JSON`;
  const decimal = /^[+-]?\d*\.?\d*(?:[eE][+-]?\d+)?$/.test(word);
  const mended = word
    .replace(/^\+/, '')
    .replace(/^(-?)0+(?=\d)/, '$1')
    .replace(/^(-?)\./, '$10.')
    .replace(/\.(?=$|[eE])/, '');
  if (decimal && mended !== word) return { message, hint: `write ${mended}` };
  return { message, hint: 'write plain decimal digits, without a unit: 12.5' };
}
