/**
 * Bytes of an export → text, or a refusal that shows the byte in the way.
 *
 * Read are UTF-8 with or without a byte order mark, and UTF-16 of either byte order with one. No
 * single-byte code page is guessed: 0xB5 is µ in one and another letter in the next. Line ends
 * CRLF and CR become LF. NUL is in no text file and is refused with the rest.
 */
import { error, found, type Outcome, refused } from '../base/diagnostics.ts';
import { createSource, type Source } from './source.ts';

export type GaugeFileText = { readonly name: string; readonly bytes: Uint8Array };
type Encoding = 'utf-8' | 'utf-8-bom' | 'utf-16le' | 'utf-16be';
export type Decoded = { readonly source: Source; readonly encoding: Encoding };

const saveAsUtf8 = 'save the file as UTF-8, or as UTF-16 with a byte order mark';

export function decode({ name, bytes }: GaugeFileText): Outcome<Decoded> {
  const encoding = encodingOf(bytes);
  const body = bytes.subarray(markLength[encoding]);
  const wide = encoding === 'utf-16le' || encoding === 'utf-16be';
  const text = wide ? decodeUtf16(body, encoding) : decodeStrictly('utf-8', body);
  if (text === undefined) return wide ? brokenUtf16(name, encoding) : brokenUtf8(name, body);
  const clean = text.includes('\r') ? text.replace(/\r\n?/g, '\n') : text;
  const source = createSource(name, clean);
  const nul = clean.indexOf('\0');
  if (nul !== -1) {
    return refused(
      error('encoding-unknown', 'byte 0x00 is in no text file', {
        at: source.placeAt(nul, 1),
        hint: saveAsUtf8,
      }),
    );
  }
  if (clean.trim() === '') {
    return refused(error('file-empty', `${name} holds no text`, { at: { file: name } }));
  }
  return found({ source, encoding });
}

const markLength = { 'utf-8': 0, 'utf-8-bom': 3, 'utf-16le': 2, 'utf-16be': 2 } as const;

function encodingOf(bytes: Uint8Array): Encoding {
  const [a, b, c] = bytes;
  if (a === 0xef && b === 0xbb && c === 0xbf) return 'utf-8-bom';
  if (a === 0xff && b === 0xfe) return 'utf-16le';
  if (a === 0xfe && b === 0xff) return 'utf-16be';
  return 'utf-8';
}

function decodeUtf16(body: Uint8Array, encoding: 'utf-16le' | 'utf-16be'): string | undefined {
  if (body.length % 2 === 1) return undefined;
  return decodeStrictly('utf-16le', encoding === 'utf-16be' ? swapPairs(body) : body);
}

function swapPairs(body: Uint8Array): Uint8Array {
  const swapped = new Uint8Array(body.length);
  for (let i = 0; i + 1 < body.length; i += 2) {
    swapped[i] = body[i + 1] ?? 0;
    swapped[i + 1] = body[i] ?? 0;
  }
  return swapped;
}

function decodeStrictly(label: string, body: Uint8Array): string | undefined {
  try {
    return new TextDecoder(label, { fatal: true, ignoreBOM: true }).decode(body);
  } catch {
    return undefined;
  }
}

const brokenUtf16 = (name: string, encoding: Encoding): Outcome<never> =>
  refused(
    error('encoding-unknown', `the file starts as ${encoding} and does not go on as such`, {
      at: { file: name, line: 1, column: 1, length: 1 },
      hint: `it may be cut short; ${saveAsUtf8}`,
    }),
  );

function brokenUtf8(name: string, body: Uint8Array): Outcome<never> {
  const offset = firstForeignByte(body);
  const lenient = new TextDecoder('utf-8', { ignoreBOM: true });
  const before = lenient.decode(body.subarray(0, offset)).replace(/\r\n?/g, '\n');
  const rest = lenient.decode(body.subarray(offset, offset + 400));
  const place = createSource(name, before + rest.replace(/\r\n?/g, '\n')).placeAt(before.length, 1);
  const byte = (body[offset] ?? 0).toString(16).toUpperCase().padStart(2, '0');
  return refused(
    error('encoding-unknown', `byte 0x${byte} is not UTF-8`, { at: place, hint: saveAsUtf8 }),
  );
}

/** Offset of the first byte that is not part of well-formed UTF-8 (Unicode standard, table 3-7). */
function firstForeignByte(body: Uint8Array): number {
  let at = 0;
  while (at < body.length) {
    const step = sequenceLength(body, at);
    if (step === 0) return at;
    at += step;
  }
  return at;
}

function sequenceLength(body: Uint8Array, at: number): number {
  const lead = body[at] ?? 0;
  if (lead < 0x80) return 1;
  const length = lead < 0xc2 ? 0 : lead < 0xe0 ? 2 : lead < 0xf0 ? 3 : lead < 0xf5 ? 4 : 0;
  if (length === 0) return 0;
  const low = lead === 0xe0 ? 0xa0 : lead === 0xf0 ? 0x90 : 0x80;
  const high = lead === 0xed ? 0x9f : lead === 0xf4 ? 0x8f : 0xbf;
  const second = body[at + 1] ?? 0;
  if (second < low || second > high) return 0;
  for (let k = 2; k < length; k += 1) {
    if (((body[at + k] ?? 0) & 0xc0) !== 0x80) return 0;
  }
  return length;
}
