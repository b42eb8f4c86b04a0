/**
 * Files that are no text at all, known by the bytes they start with: a workbook, a printed page. None is read; each
 * is told for what it is, with the way out.
 */
import { type Diagnostic, error } from '../../base/diagnostics.ts';

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

/** What the file is instead of text, undefined where it may be text. */
export function otherFile(name: string, bytes: Uint8Array): Diagnostic | undefined {
  const own = known.find((one) => one.bytes.every((byte, k) => bytes[k] === byte));
  if (own === undefined) return undefined;
  const at = { file: name, line: 1, column: 1, length: 1, lineText: '' };
  return error('encoding-unknown', own.message, { at, hint: own.hint });
}
