import { expect, test } from 'vitest';
import { otherFile } from '../../../src/intake/bytes/other-file.ts';

const bytes = (text: string): Uint8Array => Uint8Array.from(text, (sign) => sign.charCodeAt(0));

test.each([
  ['\x89PNG\r\n\x1a\n', 'picture', 'type its readings'],
  ['\xff\xd8\xff\xe0\0\x10JFIF', 'picture', 'type its readings'],
  ['RIFF\x24\0\0\0WEBPVP8 ', 'picture', 'type its readings'],
  ['\0\0\0\x18ftypheic', 'picture', 'type its readings'],
  ['BM\x36\0\x0c\0\0\0\0\0\x36', 'picture', 'type its readings'],
  ['%PDF-1.7\n', 'PDF', 'as CSV'],
  [
    'PK\x03\x04\x14\0[Content_Types].xml_rels/.relsword/document.xml',
    'word processor',
    'copy its table',
  ],
  ['PK\x03\x04\x14\0[Content_Types].xmlxl/workbook.xml', 'workbook', 'as CSV'],
  [
    'PK\x03\x04\x14\0mimetypeapplication/vnd.oasis.opendocument.text',
    'word processor',
    'copy its table',
  ],
  ['\xd0\xcf\x11\xe0\xa1\xb1', 'old format', 'as CSV'],
  ['{\\rtf1\\ansi 112}', 'word processor', 'plain text'],
  ['\x1f\x8b\x08\0', 'packed', 'unpack it'],
  ['SQLite format 3\0', 'database', 'as CSV'],
  ['\xef\xbb\xbf<!DOCTYPE html>\n<table>', 'HTML', 'as CSV'],
  ['\n <table border=1>', 'HTML', 'as CSV'],
  ['<?xml version="1.0"?>', 'XML', 'as CSV'],
])('%j is told for what it is, with the way out', (start, message, hint) => {
  const told = otherFile('r.csv', bytes(`${start}${'\x9d'.repeat(40)}`));
  expect(told?.message).toContain(message);
  expect(told?.hint).toContain(hint);
});

test.each([
  'BMX panel;1;112',
  'ID3;Bonnet;112',
  'RIFFLE;112',
  'II;112',
  '<panel>;112',
  '7z;112',
  'PK;112',
])('%j may be a table', (start) => expect(otherFile('r.csv', bytes(start))).toBeUndefined());
