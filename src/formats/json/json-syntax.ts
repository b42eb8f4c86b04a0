/**
 * Where and how a text breaks the grammar of JSON (RFC 8259, ECMA-404).
 *
 * `JSON.parse` says only that a text is wrong, in words that differ between engines; this says where
 * and what to do. Comments and trailing commas are reported one and all; any other fault ends the
 * search, since what follows it is guesswork. One pass without recursion, so that depth is no danger;
 * nesting beyond `deepestNesting` is a fault of its own, as later readers do recurse.
 */
import { startsWithForeignQuote, wordFault } from './json-words.ts';
import { shorten } from './shorten.ts';

export type SyntaxFault = {
  readonly offset: number;
  readonly length: number;
  readonly message: string;
  readonly hint: string;
};

export const deepestNesting = 512;

const tokenPattern = new RegExp(
  [
    String.raw`[ \t\n\r]+`,
    String.raw`\/\/[^\n\r]*|#[^\n\r]*|\/\*[\s\S]*?(?:\*\/|$)`,
    String.raw`'[^'\n\r]*'?|[“„][^“”"\n\r]*[“”]?`,
    String.raw`[{}[\]:,]`,
    String.raw`[^\s,:;={}[\]"'/#]+`,
    String.raw`[\s\S]`,
  ].join('|'),
  'y',
);
const numberPattern = /^-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?$/;
const keywords = new Set(['true', 'false', 'null']);

type Token = { readonly offset: number; readonly text: string };
type Bracket = Token & { readonly close: '}' | ']' };
type Expected = 'value' | 'key' | 'colon' | 'comma' | 'end';

type Reader = {
  readonly open: Bracket[];
  readonly faults: SyntaxFault[];
  expected: Expected;
  /** Nothing has been read yet inside the innermost bracket. */
  fresh: boolean;
  previous: Token;
  beforePrevious: Token;
};

export function findSyntaxFaults(text: string): readonly SyntaxFault[] {
  const start = { offset: 0, text: '' };
  const reader: Reader = {
    open: [],
    faults: [],
    expected: 'value',
    fresh: false,
    previous: start,
    beforePrevious: start,
  };
  for (const token of tokens(text)) {
    if (/^[ \t\n\r]/.test(token.text)) continue;
    if (/^(?:\/\/|\/\*|#)/.test(token.text)) {
      reader.faults.push(fault(token, 'this is a comment', 'JSON has no comments: remove it'));
      continue;
    }
    const ending = take(reader, token);
    if (ending !== undefined) return [...reader.faults, ending];
    reader.beforePrevious = reader.previous;
    reader.previous = token;
  }
  const unfinished = endFault(reader, text);
  return unfinished === undefined ? reader.faults : [...reader.faults, unfinished];
}

function* tokens(text: string): Generator<Token> {
  for (let offset = 0; offset < text.length; ) {
    tokenPattern.lastIndex = offset;
    const token =
      text.charAt(offset) === '"'
        ? text.slice(offset, endOfString(text, offset))
        : (tokenPattern.exec(text)?.[0] ?? text.charAt(offset));
    yield { offset, text: token };
    offset += token.length;
  }
}

/** Past the closing quote, or the end of the line; a pattern would overflow on a very long text. */
function endOfString(text: string, start: number): number {
  for (let i = start + 1; i < text.length; i += 1) {
    const character = text.charAt(i);
    if (character === '"') return i + 1;
    if (character === '\n' || character === '\r') return i;
    const next = text.charAt(i + 1);
    if (character === '\\' && next !== '\n' && next !== '\r') i += 1;
  }
  return text.length;
}

const fault = ({ offset, text }: Token, message: string, hint: string): SyntaxFault => ({
  offset,
  length: text.length,
  message,
  hint,
});

/** Takes one token that means something; gives the fault that ends the reading. */
function take(reader: Reader, token: Token): SyntaxFault | undefined {
  switch (token.text) {
    case '{':
    case '[':
      return takeOpening(reader, token);
    case '}':
    case ']':
      return takeClosing(reader, token);
    case ',':
      return takeComma(reader, token);
    case ':':
      return takeColon(reader, token);
    default:
      return lexicalFault(reader, token) ?? takeScalar(reader, token);
  }
}

function takeOpening(reader: Reader, token: Token): SyntaxFault | undefined {
  if (reader.expected !== 'value') return misplaced(reader, token);
  if (reader.open.length >= deepestNesting) {
    const message = `objects and lists stand more than ${deepestNesting} deep in one another`;
    return fault(token, message, 'a settings file is never so deep: check how it was written');
  }
  const isObject = token.text === '{';
  reader.open.push({ ...token, close: isObject ? '}' : ']' });
  reader.expected = isObject ? 'key' : 'value';
  reader.fresh = true;
  return undefined;
}

function takeClosing(reader: Reader, token: Token): SyntaxFault | undefined {
  const bracket = reader.open.at(-1);
  if (bracket === undefined) return misplaced(reader, token);
  if (bracket.close !== token.text) {
    const message = `${bracket.text} is closed by ${token.text}`;
    return fault(token, message, `write ${bracket.close} here, or look for one missing before`);
  }
  const afterComma = reader.previous.text === ',' && reader.expected !== 'comma';
  if (afterComma) {
    const hint = `JSON has no trailing comma: remove it before ${token.text}`;
    reader.faults.push(fault(reader.previous, 'nothing follows this comma', hint));
  } else if (reader.expected !== 'comma' && !reader.fresh) {
    return misplaced(reader, token);
  }
  reader.open.pop();
  closeValue(reader);
  return undefined;
}

function takeComma(reader: Reader, token: Token): SyntaxFault | undefined {
  if (reader.expected !== 'comma') return misplaced(reader, token);
  reader.expected = reader.open.at(-1)?.close === '}' ? 'key' : 'value';
  return undefined;
}

function takeColon(reader: Reader, token: Token): SyntaxFault | undefined {
  if (reader.expected !== 'colon') return misplaced(reader, token);
  reader.expected = 'value';
  return undefined;
}

function takeScalar(reader: Reader, token: Token): SyntaxFault | undefined {
  if (reader.expected === 'key' && token.text.startsWith('"')) {
    reader.expected = 'colon';
    reader.fresh = false;
    return undefined;
  }
  if (reader.expected !== 'value') return misplaced(reader, token);
  closeValue(reader);
  return undefined;
}

function closeValue(reader: Reader): void {
  reader.expected = reader.open.length === 0 ? 'end' : 'comma';
  reader.fresh = false;
}

/** A string, number or keyword that is itself malformed. */
function lexicalFault(reader: Reader, token: Token): SyntaxFault | undefined {
  const { text } = token;
  if (text.startsWith('"')) return stringFault(token);
  if (numberPattern.test(text) || keywords.has(text)) return undefined;
  if (/^[\s/]/.test(text)) {
    const code = text.charCodeAt(0).toString(16).toUpperCase().padStart(4, '0');
    return text === '/'
      ? fault(token, '/ means nothing here', 'remove it')
      : fault(token, `the character U+${code} is no blank of JSON`, 'put a plain space there');
  }
  const isWord = reader.expected === 'value' || reader.expected === 'key';
  if (!isWord && !startsWithForeignQuote(text)) return misplaced(reader, token);
  const { message, hint } = wordFault(shorten(text), reader.expected === 'key' ? 'key' : 'value');
  return fault(token, message, hint);
}

function stringFault(token: Token): SyntaxFault | undefined {
  for (let i = 1; i < token.text.length; i += 1) {
    const at = { offset: token.offset + i, text: token.text.charAt(i) };
    if (at.text === '"') return undefined;
    if (at.text < ' ') {
      const written = JSON.stringify(at.text).slice(1, -1);
      return fault(at, 'a control character stands bare in a text', `write ${written}`);
    }
    if (at.text !== '\\') continue;
    const sound = /^\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4})/.exec(token.text.slice(i, i + 6))?.[0];
    if (sound === undefined) {
      const typed = `\\${[...token.text.slice(i + 1, i + 3)][0] ?? ''}`;
      const hint =
        typed === '\\u'
          ? String.raw`\u takes four hexadecimal digits`
          : String.raw`write \\ for a backslash`;
      return fault({ ...at, text: typed }, `${typed} is no escape of JSON`, hint);
    }
    i += sound.length - 1;
  }
  return fault(token, 'this text is not closed on its line', 'close it with "');
}

/** A sound token that cannot stand where it does. */
function misplaced(reader: Reader, token: Token): SyntaxFault {
  const text = shorten(token.text);
  switch (reader.expected) {
    case 'end':
      return fault(
        token,
        `${text} stands after the end`,
        'a file holds one value: remove the rest',
      );
    case 'comma':
      return text === ':'
        ? fault(token, 'a second colon, or one outside an object', 'remove it')
        : fault(token, `a comma is missing before ${text}`, commaHint(text));
    case 'colon':
      return fault(
        token,
        `a colon is missing after ${shorten(reader.previous.text)}`,
        'put a colon there',
      );
    case 'key':
      return keyMissing(reader, token);
    case 'value':
      return fault(token, `a value is missing before ${text}`, valueHint(reader, token));
  }
}

const commaHint = (text: string): string =>
  text === ';' ? 'put a comma in its place' : 'put a comma before it';

function valueHint(reader: Reader, { text }: Token): string {
  if (text === ',' && reader.previous.text === ',') return 'remove one of the two commas';
  return text === ',' && reader.previous.text === '[' ? 'remove the comma' : 'put a value there';
}

function keyMissing(reader: Reader, token: Token): SyntaxFault {
  const { previous, beforePrevious } = reader;
  const decimalComma =
    previous.text === ',' &&
    numberPattern.test(beforePrevious.text) &&
    /^\d+$/.test(token.text) &&
    token.offset === previous.offset + 1;
  if (decimalComma) {
    const typed = `${beforePrevious.text},${token.text}`;
    const at = { offset: beforePrevious.offset, text: typed };
    const hint = `write ${shorten(typed.replace(',', '.'))}`;
    return fault(at, `${shorten(typed)} is written with a decimal comma`, hint);
  }
  const hint =
    token.text === ',' && previous.text === ','
      ? 'remove one of the two commas'
      : 'a key is a text in double quotes';
  return fault(token, `a key is missing: ${shorten(token.text)} cannot be one`, hint);
}

function endFault(reader: Reader, text: string): SyntaxFault | undefined {
  if (reader.expected === 'end') return undefined;
  const { offset, text: last } = reader.previous;
  if (last === '') {
    const at = { offset: Math.max(0, text.search(/[^ \t\n\r]/)), text: '' };
    return fault(at, 'the file holds no value', 'a settings file is an object: { … }');
  }
  const closers = reader.open.map(({ close }) => close).reverse();
  const hint =
    closers.length > 8
      ? `${closers.length} brackets are open`
      : `close it with ${closers.join('')}`;
  const at = { offset: offset + last.length, text: '' };
  return fault(at, `the file ends before ${reader.open.at(-1)?.text ?? 'it'} is closed`, hint);
}
