/**
 * Files that are no table at all, known by the bytes they start with: a workbook, a picture, a page, settings and
 * records of our own. None is read; each is told for what it is, with the way out.
 */
import { type Diagnostic, error } from '../../base/diagnostics.ts';
import { once } from '../../base/kept.ts';
import { ownJson } from '../../base/own-files.ts';
import { ownPage } from '../../base/own-pages.ts';

type Known = {
  /** The first bytes, each as the sign of its number, a point for any. */
  readonly starts: readonly string[];
  /** What stands near the start as well. */
  readonly near?: readonly string[];
  readonly message: string;
  readonly hint: string;
};

const asCsv = 'open it in a spreadsheet and save the sheet with the readings as CSV (UTF-8)';
const unpack = 'unpack it, and name the file with the readings';
const zipped = 'PK\x03\x04';

/** The first that fits holds. */
const known: readonly Known[] = [
  {
    starts: [zipped],
    near: ['word/', 'opendocument.text'],
    message: 'the file is a document of a word processor, and no table',
    hint: 'copy its table into a spreadsheet and save that as CSV (UTF-8)',
  },
  {
    starts: [zipped],
    message: 'the file is a workbook or another zipped file, and no text',
    hint: `${asCsv}; if it is no workbook, ${unpack}`,
  },
  {
    starts: ['\xd0\xcf\x11\xe0'],
    message: 'the file is a workbook in an old format, and no text',
    hint: asCsv,
  },
  {
    starts: ['%PDF'],
    message: 'the file is a printed page (PDF), and no table',
    hint: 'export the readings from the gauge or its program as CSV',
  },
  {
    starts: [
      ...['\x89PNG', '\xff\xd8\xff', 'GIF87a', 'GIF89a', 'II*\0', 'MM\0*', 'BM....\0\0\0\0'],
      ...['RIFF....WEBP', 'RIFF....WAVE', 'RIFF....AVI', '....ftyp', 'ID3\x03', 'ID3\x04'],
    ],
    message: 'the file is a picture or a recording, and no text',
    hint: 'type its readings into a table, or export them from the gauge or its program as CSV',
  },
  {
    starts: ['\x1f\x8b', '7z\xbc\xaf', 'Rar!\x1a', 'BZh91AY', '\xfd7zXZ', '(\xb5/\xfd'],
    message: 'the file is packed, and no text',
    hint: unpack,
  },
  {
    starts: ['SQLite format 3\0'],
    message: 'the file is a database, and no text',
    hint: 'export its table with the readings as CSV',
  },
  {
    starts: ['{\\rtf'],
    message: 'the file is a document of a word processor, and no table',
    hint: 'save it as plain text (UTF-8)',
  },
];
/** Where a zipped file says what it holds. */
const nearStart = 4096;

const ofPage: Omit<Known, 'starts'> = {
  message: 'the file is a page of the web (HTML) or other XML, and no table of plain text',
  hint: asCsv,
};
const isPage = (start: string): boolean =>
  /^(?:\xef\xbb\xbf)?\s*<(?:\?xml|!doctype html|html|head|body|table)[\s>]/iu.test(start);

function knownBy(bytes: Uint8Array): Omit<Known, 'starts'> | undefined {
  const start = once(() => String.fromCharCode(...bytes.subarray(0, nearStart)));
  const own = known.find(
    ({ starts, near }) =>
      starts.some((sign) => startsWith(bytes, sign)) &&
      (near?.some((text) => start().includes(text)) ?? true),
  );
  if (own !== undefined) return own;
  return bytes.subarray(0, nearStart).includes(LESS) && isPage(start()) ? ofPage : undefined;
}
const LESS = '<'.charCodeAt(0);

function startsWith(bytes: Uint8Array, sign: string): boolean {
  for (let k = 0; k < sign.length; k += 1) {
    if (sign[k] !== '.' && sign.charCodeAt(k) !== bytes[k]) return false;
  }
  return true;
}

/** What the file is instead of a table, undefined where it may be one. */
export function otherFile(name: string, bytes: Uint8Array): Diagnostic | undefined {
  const at = { file: name, line: 1, column: 1, length: 1, lineText: '' };
  const own = knownBy(bytes);
  const page = own === ofPage ? ownPage(startOf(bytes)) : undefined;
  if (page !== undefined) {
    return error('file-other-kind', `this is ${page} that leastcut wrote, and no readings`, {
      at,
      hint: 'name the readings it was made of',
    });
  }
  if (own !== undefined) return error('encoding-unknown', own.message, { at, hint: own.hint });
  const json = opensAsJson(bytes) ? ownJson(startOf(bytes)) : undefined;
  if (json === undefined) return undefined;
  return error('file-other-kind', `this is ${json.called} (JSON), and no table`, {
    at,
    hint: json.wayOut,
  });
}

/** Whether the first byte that is no blank and no byte order mark is a brace or a bracket. */
function opensAsJson(bytes: Uint8Array): boolean {
  const first = bytes.find((byte) => !passedOver.has(byte));
  return first === 0x7b || first === 0x5b;
}
const passedOver: ReadonlySet<number> = new Set([0xef, 0xbb, 0xbf, 0x09, 0x0a, 0x0d, 0x20]);

/** Enough to find the `schema` that a file says it has. */
const startLength = 64 * 1024;
const startOf = (bytes: Uint8Array): string =>
  new TextDecoder().decode(bytes.subarray(0, startLength));
