import { describe, expect, test } from 'vitest';
import { remark } from '../../src/base/remark.ts';
import { nextFact, says, um } from '../../src/base/sentence.ts';
import { about, headingOf, joined, remarkFacts, setIn, toldFacts } from '../../src/report/facts.ts';

describe('a text of several facts', () => {
  test('has the joiner between them and its end, which are no part of any', () => {
    expect(joined(['one', 'two'], '; ', '.')).toEqual({
      text: 'one; two.',
      facts: ['one', 'two'],
    });
    expect(joined([joined(['one', 'two'], ', '), 'three'], '; ')).toEqual({
      text: 'one, two; three',
      facts: ['one', 'two', 'three'],
    });
  });

  test('names what they are about once, and each of them by itself', () => {
    const said = joined(['thin', 'cut-back'], ' and ');
    expect(about('roof', said)).toEqual({
      text: 'roof: thin and cut-back',
      facts: ['roof: thin', 'roof: cut-back'],
    });
    expect(setIn('a.csv', 'utf-8')).toEqual({
      text: '\u00a0\u00a0utf-8',
      facts: ['a.csv: utf-8'],
    });
    expect(headingOf('a.csv:')).toEqual({ text: 'a.csv:', facts: [] });
  });

  test('comes of a sentence that says where a fact ends, and not of a sign that a label may hold', () => {
    const name = 'left; right. Door';
    const sentence = says`${name} reads ${um(12.7)}${nextFact}it is thin`;
    const facts = { text: `${name} reads 0.50 mil; it is thin` };
    expect(toldFacts(sentence, 'mil')).toEqual({
      ...facts,
      facts: [`${name} reads 0.50 mil`, 'it is thin'],
    });
    expect(remarkFacts(remark('thin', sentence), 'mil')).toEqual(toldFacts(sentence, 'mil'));
    expect(remarkFacts(remark('thin', 'a; b'), 'um')).toEqual({ text: 'a; b', facts: ['a; b'] });
  });
});
