import { describe, expect, it } from 'vitest';
import { prefixed, remark, textIn } from '../../src/base/remark.ts';
import {
  bare,
  bareRange,
  joinSentences,
  nextFact,
  nextSentence,
  says,
  tell,
  tellApart,
  um,
} from '../../src/base/sentence.ts';

const sentence = says`mean ${bare(101.6)} ± ${um(2.54)} at ${5} points, ${um(80, 0)} must stay`;

describe('a sentence with thicknesses in it', () => {
  it('is told in micrometres as it is written', () => {
    expect(tell(sentence, 'um')).toBe('mean 101.6 ± 2.5 µm at 5 points, 80 µm must stay');
  });
  it('is told in mil with every thickness turned, 25.4 µm to the mil, and nothing else', () => {
    expect(tell(sentence, 'mil')).toBe('mean 4.00 ± 0.10 mil at 5 points, 3.15 mil must stay');
  });
  it('has one digit more in mil than in micrometres, and two at least', () => {
    const digits = [0, 1, 2, 3].map((asked) => tell(says`${um(25.4 * 1.23456, asked)}`, 'mil'));
    expect(digits).toEqual(['1.23 mil', '1.23 mil', '1.235 mil', '1.2346 mil']);
  });
  it('keeps its thicknesses inside another', () => {
    expect(tell(says`roof: ${says`reads ${um(25.4)}`}`, 'mil')).toBe('roof: reads 1.00 mil');
  });
  it('shows a thickness with the digits it has where no number of them is asked for', () => {
    expect(tell(says`${um(1120, null)} and ${um(2, null)}`, 'um')).toBe('1120 µm and 2 µm');
  });
});

describe('a thickness as it was written', () => {
  it('keeps all of its digits in µm, and two after the point in mil', () => {
    const said = says`reads ${um(76.25, null)}`;
    expect([tell(said, 'um'), tell(said, 'mil')]).toEqual(['reads 76.25 µm', 'reads 3.00 mil']);
  });
});

describe('a remark', () => {
  const said = remark('thin', says`a point reads ${um(76.2)}`, 76.2);
  it('carries its text in micrometres for machines, whatever people are shown', () => {
    expect([said.text, textIn(said, 'mil')]).toEqual([
      'a point reads 76.2 µm',
      'a point reads 3.00 mil',
    ]);
  });
  it('has a figure where it is given one, and else no place for any', () => {
    expect(remark('thin', 'a point reads 76.2 µm', 76.2).value).toBe(76.2);
    expect(remark('read', 'read 5 points')).toStrictEqual({ code: 'read', text: 'read 5 points' });
  });
  it('can be told with words before it in either unit', () => {
    const zoned = prefixed('thinner zone: ', said);
    expect(zoned.text).toBe('thinner zone: a point reads 76.2 µm');
    expect(textIn(zoned, 'mil')).toBe('thinner zone: a point reads 3.00 mil');
  });
  it('without a thickness is the same in either unit', () => {
    expect(textIn(remark('read', 'read 5 points'), 'mil')).toBe('read 5 points');
  });
});

it('what is below nothing has a minus, and nothing has none', () => {
  expect(tell(says`${um(-2.34)} and ${um(-0.04)}`, 'um')).toBe('−2.3 µm and 0.0 µm');
  expect(tell(says`${um(-25.4, 2)}`, 'mil')).toBe('−1.000 mil');
});

describe('several facts in a sentence', () => {
  const facts = [says`reads ${um(25.4)}`, says`is ${'thin; cut'}`, says`leave it`];

  it('are joined by words, or so that each can be told by itself', () => {
    expect(tell(joinSentences(facts, ', '), 'mil')).toBe('reads 1.00 mil, is thin; cut, leave it');
    expect(tell(joinSentences(facts, nextFact), 'mil')).toBe(
      'reads 1.00 mil; is thin; cut; leave it',
    );
    expect(tellApart(joinSentences(facts, nextFact), 'mil')).toEqual([
      'reads 1.00 mil',
      'is thin; cut',
      'leave it',
    ]);
    expect(joinSentences([], nextFact)).toEqual([]);
  });

  it('go on after a full stop', () => {
    const said = says`one.${nextSentence}${says`Two ${bare(2)}${nextFact}three`}`;
    expect(tell(said, 'um')).toBe('one. Two 2.0; three');
    expect(tellApart(said, 'um')).toEqual(['one.', 'Two 2.0', 'three']);
  });
});

describe('a range of thicknesses', () => {
  it('is told from the least to the most', () => {
    expect(tell(says`points read ${bareRange(2.34, 3.11)}`, 'um')).toBe('points read 2.3 to 3.1');
  });
  it('is one figure where both ends are written alike in the unit that is read', () => {
    const said = says`${bareRange(2.3, 2.5)}, ${{ least: 0.02, most: 0.03, digits: 2, named: true, plus: true }}`;
    expect(tell(said, 'um')).toBe('2.3 to 2.5, +0.02 to +0.03 µm');
    expect(tell(said, 'mil')).toBe('0.09 to 0.10, +0.001 mil');
  });
  it('has a plus before a gain, and none before what is written as nought', () => {
    const said = says`${{ least: 0, most: 0.3, digits: 2, named: true, plus: true }}`;
    expect(tell(said, 'um')).toBe('0.00 to +0.30 µm');
  });
});
