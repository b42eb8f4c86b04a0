import { expect, test } from 'vitest';
import { wrap } from '../../src/render/wrap.ts';

test('a line ends at no number that its degrees follow, wherever the page ends', () => {
  for (let width = 8; width < 40; width += 1) {
    const lines = wrap('panel and room at 20 °C; the next', width, '  ');
    expect(
      lines.some((line) => line.includes('20 °C;')),
      `${width} columns`,
    ).toBe(true);
  }
});

test('a line ends at no value that its ± follows, wherever the page ends', () => {
  for (let width = 8; width < 40; width += 1) {
    const lines = wrap('clear of 33.2 ± 4.7 µm; the next', width, '  ');
    expect(
      lines.some((line) => line.includes('33.2 ± 4.7')),
      `${width} columns`,
    ).toBe(true);
  }
});
