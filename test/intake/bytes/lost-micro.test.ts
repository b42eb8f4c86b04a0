import { expect, test } from 'vitest';
import { decode } from '../../../src/intake/bytes/decode.ts';
import { tellLostMicro } from '../../../src/intake/bytes/lost-micro.ts';
import { createSource } from '../../../src/intake/rows/source.ts';
import { brief, utf8 } from '../helpers.ts';

const told = (text: string, unitKnown = false) => tellLostMicro(createSource('f', text), unitKnown);

test.each([
  ['panel,reading (\ufffdm)', '1:16+2'],
  ['panel,reading (??m)', '1:16+3'],
  ['panel,reading_?m', '1:15+2'],
  ['panel,reading [?m]', '1:16+2'],
  ['panel,reading\nroof,101 ?m', '2:10+2'],
  ['panel,reading\nroof,101.5\ufffdm', '2:11+2'],
])('a lost micro sign is told where it stood: %s', (text, place) => {
  const diagnostic = told(text);
  expect(diagnostic && brief(diagnostic)).toBe(`${place} error character-lost`);
  expect(diagnostic?.message).toContain('Windows pipe');
  expect(diagnostic?.hint).toContain('--reading-unit');
});

test('where the unit is known from elsewhere it is a note only', () => {
  expect(told('panel,reading (?m)', true)?.severity).toBe('note');
});

test.each(['how thick? mine', 'what?', 'a?more', '?mm', 'panel,reading (µm)', 'really???m8'])(
  'an ordinary question mark is none: %s',
  (text) => expect(told(text)).toBeUndefined(),
);

test('another lost letter is told: names that differed in it look the same', () => {
  const read = (text: string) => decode({ name: 'f', bytes: utf8(text) }).diagnostics.map(brief);
  expect(read('panel,reading_um\nT\ufffdr,1\n')).toEqual(['2:2+1 warning character-lost']);
  expect(read('panel,reading (\ufffdm)\nroof,1\n')).toEqual([]);
});
