import { describe, expect, it } from 'vitest';
import { labelWords } from '../../../src/film/template/panel-label.ts';

describe('words written without a gap', () => {
  it('are parted where each is a word of a panel', () => {
    expect(labelWords('leftdoor')).toEqual(['left', 'door']);
    expect(labelWords('frontleftdoor')).toEqual(['front', 'left', 'door']);
    expect(labelWords('doorFrontLeft')).toEqual(['door', 'front', 'left']);
  });

  it('are not parted from a word that says nothing, nor where a piece of them is none', () => {
    for (const run of ['theroof', 'roofthe', 'leftthedoor', 'roofx', 'xroof']) {
      expect(labelWords(run)).toEqual([run]);
    }
  });
});
