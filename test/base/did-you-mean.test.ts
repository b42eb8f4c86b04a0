import { describe, expect, test } from 'vitest';
import { closest, suggest } from '../../src/base/did-you-mean.ts';

const panels = ['bonnet', 'boot lid', 'roof', 'left quarter', 'right quarter'];

describe('did you mean', () => {
  test('a letter missing, added, changed or swapped still finds the word', () => {
    expect(closest('bonet', panels)).toBe('bonnet');
    expect(closest('bonnnet', panels)).toBe('bonnet');
    expect(closest('bonnat', panels)).toBe('bonnet');
    expect(closest('bonnte', panels)).toBe('bonnet');
    expect(closest('ROFF', panels)).toBe('roof');
  });

  test('neighbours swapped are one slip, at either end of a word and at both', () => {
    expect(closest('obnnte', panels)).toBe('bonnet');
    expect(closest('obnnet', ['sonnet', 'bonnet'])).toBe('bonnet');
    // Three are too many, and letters swapped over a third are no neighbours.
    expect(closest('badcfe', ['abcdef'])).toBeUndefined();
    expect(closest('cbafed', ['abcdef'])).toBeUndefined();
  });

  test('a word that is like none gets no suggestion', () => {
    expect(closest('spoiler', panels)).toBeUndefined();
    expect(closest('', panels)).toBeUndefined();
    expect(suggest('xyz', panels)).toBeUndefined();
  });

  test('a short word must be nearer than half of itself', () => {
    expect(closest('um', ['am', 'mil'])).toBe('am');
    expect(closest('um', ['mm', 'xy'])).toBe('mm');
    expect(closest('um', ['xy'])).toBeUndefined();
  });

  test('of several that are near the nearest is taken, and of as near ones the first', () => {
    expect(closest('rof', ['rope', 'roof', 'hoof'])).toBe('roof');
    expect(closest('doof', ['roof', 'hoof'])).toBe('roof');
  });

  test('the suggestion is ready to be shown', () => {
    expect(suggest('bonet', panels)).toBe('did you mean "bonnet"?');
  });
});
