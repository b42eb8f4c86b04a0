import { describe, expect, test } from 'vitest';
import { foldedText, wholeWords } from '../../../src/intake/cells/doubting-words.ts';

const against = wholeWords('wrong|re ?read|do not use', 'geloscht|удалено');

describe('a list of whole words', () => {
  test.each([
    ['wrong', true],
    ['wrong, read again', true],
    ['wrongly', false],
    ['wrong2', false],
    ['2wrong', false],
    ['do  not-use', true],
    ['GELÖSCHT!', true],
  ])('finds in the ASCII of "%s" no part of a word: %s', (text, found) => {
    expect(against.test(foldedText(text))).toBe(found);
  });

  test.each([
    ['удалено', true],
    ['— wrong —', true],
    ['жwrong', false],
    ['wrongж', false],
    ['wrong٣', false],
    ['неудалено', false],
  ])('takes letters and digits of any script for parts of a word: "%s" %s', (text, found) => {
    expect(against.test(foldedText(text))).toBe(found);
  });
});
