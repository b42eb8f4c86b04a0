/**
 * Files that are no table at all, known by the bytes they start with: a workbook, a printed page, settings and
 * records of our own. None is read; each is told for what it is, with the way out.
 */
import { type Diagnostic, error } from '../../base/diagnostics.ts';
import { ownJson } from '../../base/own-files.ts';

type Known = {
  readonly bytes: readonly number[];
  readonly message: string;
  readonly hint: string;
};

const asCsv = 'open it in a spreadsheet and save the sheet with the readings as CSV (UTF-8)';

const known: readonly Known[] = [
  {
    bytes: [0x50, 0x4b, 0x03, 0x04],
    message: 'the file is a workbook or another zipped file, and no text',
    hint: asCsv,
  },
  {
    bytes: [0xd0, 0xcf, 0x11, 0xe0],
    message: 'the file is a workbook in an old format, and no text',
    hint: asCsv,
  },
  {
    bytes: [0x25, 0x50, 0x44, 0x46],
    message: 'the file is a printed page (PDF), and no table',
    hint: 'export the readings from the gauge or its program as CSV',
  },
];

/** What the file is instead of a table, undefined where it may be one. */
export function otherFile(name: string, bytes: Uint8Array): Diagnostic | undefined {
  const at = { file: name, line: 1, column: 1, length: 1, lineText: '' };
  const own = known.find((one) => one.bytes.every((byte, k) => bytes[k] === byte));
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
