/** Bytes of a settings file that are no UTF-8: RFC 8259 (8.1) allows no other encoding. */
import { expect, test } from 'vitest';
import { utf8Text } from '../../../src/cli/files/utf8-text.ts';

const file = (...bytes: readonly number[]) => ({
  name: 'job.json',
  bytes: Uint8Array.from(bytes),
  sha256: '',
});
const inText = (...bytes: readonly number[]) => file(0x5b, 0x22, ...bytes, 0x22, 0x5d);

test.each([
  ['a byte that begins nothing', inText(0xff)],
  ['a letter of Latin-1', inText(0xe9)],
  ['a byte that goes on with nothing', inText(0x81)],
  ['a sequence cut short', inText(0xe0, 0xff)],
  ['two bytes where one is enough', inText(0xc0, 0xaf)],
  ['six bytes', inText(0xfc, 0x83, 0xbf, 0xbf, 0xbf, 0xbf)],
  ['a NUL of six bytes', inText(0xfc, 0x80, 0x80, 0x80, 0x80, 0x80)],
  ['half of a surrogate pair', inText(0xed, 0xa0, 0x80)],
  ['a number beyond Unicode', inText(0xf4, 0xbf, 0xbf, 0xbf)],
  ['half a byte order mark', file(0xef, 0xbb, 0x7b, 0x7d)],
  ['a byte order mark of UTF-16, little end first', file(0xff, 0xfe, 0x5b, 0, 0x5d, 0)],
  ['a byte order mark of UTF-16, big end first', file(0xfe, 0xff, 0, 0x5b, 0, 0x5d)],
])('%s is refused', (_, bytes) => {
  const { value, diagnostics } = utf8Text(bytes);
  expect(value).toBeUndefined();
  expect(diagnostics).toMatchObject([
    { code: 'json-syntax', at: { file: 'job.json' }, hint: 'save it as UTF-8' },
  ]);
});

test('a byte order mark of UTF-8 stays, for the reader of JSON to pass over', () => {
  expect(utf8Text(file(0xef, 0xbb, 0xbf, 0x7b, 0x7d)).value).toBe('\uFEFF{}');
});
