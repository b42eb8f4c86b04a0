import { expect, test } from 'vitest';
import { inWords } from '../../src/base/in-words.ts';

test.each([
  [[], ''],
  [['bonnet'], 'bonnet'],
  [['bonnet', 'roof'], 'bonnet and roof'],
  [['bonnet', 'roof', 'boot lid'], 'bonnet, roof and boot lid'],
])('%j are said as "%s"', (words, said) => {
  expect(inWords(words)).toBe(said);
  expect(inWords(words, 'or')).toBe(said.replace(' and ', ' or '));
});
