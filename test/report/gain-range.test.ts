import { expect, test } from 'vitest';
import { tell } from '../../src/base/sentence.ts';
import { gainRange } from '../../src/report/survey/gain-groups-text.ts';

test.each<[string, readonly number[], string]>([
  ['from the least gain to the most', [0.33, 0.21, 0.25], '+0.21 to +0.33 µm'],
  ['from the least loss to the most', [-0.56, -0.07], '−0.07 to −0.56 µm'],
  [
    'as nothing and a gain where the loss is too small to be told',
    [-0.004, 0.37],
    '0.00 to +0.37 µm',
  ],
  [
    'as nothing and a loss where the gain is too small to be told',
    [0.004, -0.37],
    '0.00 to −0.37 µm',
  ],
  ['as a size either way where some gain and some lose', [-0.01, 0.008], 'within ± 0.01 µm'],
  ['as one where all are alike', [0.211, 0.209], '+0.21 µm'],
])('gains are told %s', (_, gains, text) => {
  expect(tell(gainRange(gains), 'um')).toBe(text);
});
