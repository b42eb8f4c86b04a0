import { expect, test } from 'vitest';
import { decode } from '../../../src/intake/bytes/decode.ts';
import { brief } from '../helpers.ts';

const decoded = (...bytes: number[]) => decode({ name: 'f', bytes: Uint8Array.from(bytes) });

test('UTF-8 is read with and without a byte order mark', () => {
  expect(decoded(0x61, 0xc2, 0xb5).value).toMatchObject({
    encoding: 'utf-8',
    source: { text: 'aµ' },
  });
  expect(decoded(0xef, 0xbb, 0xbf, 0x61).value).toMatchObject({
    encoding: 'utf-8-bom',
    source: { text: 'a' },
  });
});

test('UTF-16 is read in the byte order its mark names', () => {
  expect(decoded(0xff, 0xfe, 0xb5, 0x00).value?.source.text).toBe('µ');
  expect(decoded(0xfe, 0xff, 0x00, 0xb5).value?.source.text).toBe('µ');
});

test('CRLF and CR become one line end', () => {
  expect(decoded(0x61, 13, 10, 0x62, 13, 0x63).value?.source.text).toBe('a\nb\nc');
});

test('a byte that is not UTF-8 is shown with its value, line and column', () => {
  const { value, diagnostics } = decoded(0x61, 13, 10, 0xc2, 0xb5, 0x62, 0xb5, 0x63);
  expect(value).toBeUndefined();
  expect(diagnostics.map(brief)).toEqual(['2:3+1 error encoding-unknown']);
  expect(diagnostics[0]?.message).toContain('0xB5');
  expect(diagnostics[0]?.at?.lineText).toBe('µb\ufffdc');
});

// The Unicode standard, table 3-7: overlong forms, surrogates and code points past U+10FFFF.
test.each([
  [[0xc0, 0x80]],
  [[0xe0, 0x80, 0x80]],
  [[0xed, 0xa0, 0x80]],
  [[0xf4, 0x90, 0x80, 0x80]],
  [[0xf5, 0x80, 0x80, 0x80]],
  [[0xe2, 0x82]],
])('ill-formed UTF-8 %j is refused at its first byte', (bytes) => {
  expect(decoded(0x61, ...bytes).diagnostics.map(brief)).toEqual(['1:2+1 error encoding-unknown']);
});

test('UTF-16 cut in the middle of a character, or with half a surrogate pair, is refused', () => {
  expect(decoded(0xff, 0xfe, 0x61).diagnostics[0]?.code).toBe('encoding-unknown');
  expect(decoded(0xff, 0xfe, 0x00, 0xd8).diagnostics[0]?.code).toBe('encoding-unknown');
});

test('UTF-16 cut off in its last letter is refused in that line, with what is left of it', () => {
  const { diagnostics } = decoded(0xff, 0xfe, 0x61, 0, 10, 0, 0x62, 0, 0x63);
  expect(diagnostics.map(brief)).toEqual(['2:1+1 error encoding-unknown']);
  expect(diagnostics[0]?.at?.lineText).toBe('b');
});

test('zero bytes at the end are dropped, and it is said', () => {
  const { value } = decoded(0x61, 10, 0, 0, 0);
  expect(value?.source.text).toBe('a\n');
  expect(value?.evidence).toEqual(['3 zero bytes at the end dropped']);
});

test('an end-of-file mark at the end is dropped with what fills the block behind it', () => {
  const { value } = decoded(0x61, 13, 10, 0x1a, 0x1a, 0, 13, 10);
  expect(value?.source.text).toBe('a\n');
  expect(value?.evidence).toEqual([
    '1 zero byte at the end dropped',
    'end-of-file mark (Ctrl-Z) at the end dropped',
  ]);
});

test('a zero byte within the text is refused where it stands', () => {
  const bytes = [0x61, 10, 0x62, 0, 0x63, 10, 0x64, 0x65];
  expect(decoded(...bytes).diagnostics.map(brief)).toEqual(['2:2+1 error encoding-unknown']);
});

test('text behind an end-of-file mark is refused: it may be another file', () => {
  const { diagnostics } = decoded(0x61, 10, 0x1a, 0x62);
  expect(diagnostics.map(brief)).toEqual(['2:1+1 error cell-invalid']);
  expect(diagnostics[0]?.hint).toContain('two files joined');
});

test('line ends of several kinds are read as one, and it is said', () => {
  const { value } = decoded(0x61, 13, 10, 0x62, 10, 0x63, 13, 0x64);
  expect(value?.source.text).toBe('a\nb\nc\nd');
  expect(value?.evidence).toEqual(['line ends are mixed: 1 CRLF, 1 CR, 1 LF']);
});

test('a line longer than the limit on rows is refused with its number; the limit can be raised', () => {
  const bytes = new TextEncoder().encode(`a\nb\n${'c'.repeat(100_001)}\nd\n`);
  const refusedHere = decode({ name: 'f', bytes });
  expect(refusedHere.diagnostics.map(brief)).toEqual(['3:1+1 error row-too-long']);
  expect(refusedHere.diagnostics[0]?.hint).toContain('--longest-row');
  const limits = { longestRow: 200_000, mostColumns: 10 };
  expect(decode({ name: 'f', bytes }, { limits }).value?.source.text).toHaveLength(100_008);
});

test('a file of blanks is empty', () => {
  expect(decoded().diagnostics[0]?.code).toBe('file-empty');
  expect(decoded(32, 10, 9).diagnostics[0]?.code).toBe('file-empty');
});
