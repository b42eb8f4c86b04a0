import { describe, expect, it } from 'vitest';
import { labelWords } from '../../../src/film/template/panel-label.ts';

describe('words written without a gap', () => {
  // In one test: the words that may be glued are worked out at the first label.
  it('are parted where each is a word of a panel, and not from one that says nothing or is made of too little', () => {
    expect(labelWords('leftdoor')).toEqual(['left', 'door']);
    expect(labelWords('frontleftdoor')).toEqual(['front', 'left', 'door']);
    expect(labelWords('doorFrontLeft')).toEqual(['door', 'front', 'left']);
    expect(labelWords('lfdoor')).toEqual(['lf', 'door']);
    for (const run of ['theroof', 'roofthe', 'leftthedoor', 'roofx', 'xroof']) {
      expect(labelWords(run)).toEqual([run]);
    }
    // A single letter, and short words of other languages.
    for (const run of ['roofl', 'rroof', 'avdoor', 'doorle', 'roofhuv']) {
      expect(labelWords(run)).toEqual([run]);
    }
    // In a script without gaps one letter is a word.
    expect(labelWords('左门')).toEqual(['左', '门']);
  });
});
