import { describe, expect, test } from 'vitest';
import { stripDrawing } from '../../src/render/strip-svg.ts';
import { drawStrip } from '../../src/render/strip-text.ts';
import type { StripCell } from '../../src/report/model.ts';

const axis = { from: 50, to: 150, line: 80 };
const strip = (more: Partial<StripCell>): StripCell => ({
  kind: 'strip',
  values: [],
  marked: null,
  ...more,
});
const drawn = (more: Partial<StripCell>): string => stripDrawing(strip(more), axis, 'roof');

describe('a strip as a drawing', () => {
  test('has a dot a value, an arrowhead at the marked one and a dashed line, each where the axis has it', () => {
    // 224 wide: 100 lies at the middle, 80 at three tenths.
    const svg = drawn({ values: [100], marked: 80 });
    expect(svg).toContain('<circle cx="112" cy="9" r="2.6">');
    expect(svg).toContain('<path class="floor" d="M67.2 0V18">');
    expect(svg).toContain('<path class="mark" d="M72.2 4l-5 5 5 5">');
  });

  test('says all of it in words', () => {
    const bar = { from: 60, to: 90, look: 'span' } as const;
    expect(drawn({ values: [100, 300.00001], marked: 90, open: [110], bar })).toContain(
      '<title>roof</title><desc>from 60 to 90; open 110; values 100, 300; marked 90; line at 80</desc>',
    );
    expect(drawn({})).toContain('<desc>no values; line at 80</desc>');
  });

  test('shows what is off the axis once at its end, and never as if it lay there', () => {
    const svg = drawn({ values: [300, 400], open: [500], marked: 20 });
    expect(svg).not.toMatch(/<circle|class="mark"/);
    expect(svg.match(/class="beyond"/g)).toHaveLength(2);
  });

  test('tells before from now by a ring and a dot, joined', () => {
    const svg = drawn({ values: [100], open: [150], bar: { from: 150, to: 100, look: 'span' } });
    expect(svg).toContain('<circle cx="224" cy="9" class="open" r="3.2">');
    expect(svg).toContain('<path class="span" d="M112 9H224">');
  });

  test('ends what may go in a stop', () => {
    const svg = drawn({ bar: { from: 50, to: 100, look: 'extent' } });
    expect(svg).toContain('<rect class="extent" x="0" y="4" width="112" height="10">');
    expect(svg).toContain('<path class="stop" d="M112 1V17">');
  });
});

describe('how far a value may be off', () => {
  const range = { from: 75, to: 125 };

  test('is a line with two ends under the value, said in words', () => {
    const svg = drawn({ values: [100], range });
    expect(svg).toContain('<path class="range" d="M56 9H168M56 5.5v7M168 5.5v7">');
    expect(svg.indexOf('class="range"')).toBeLessThan(svg.indexOf('<circle'));
    expect(svg).toContain('<desc>values 100; range 75 to 125; line at 80</desc>');
  });

  test('stands between brackets in text', () => {
    expect(drawStrip(strip({ values: [100], range }), { ...axis, line: null }, 10)).toBe(
      '  [  · ]  ',
    );
  });
});

describe('a strip as text', () => {
  test('draws a bar under its signs, and rings for what is open', () => {
    const bar = { from: 60, to: 140, look: 'span' } as const;
    const text = drawStrip(strip({ values: [140], open: [60], bar }), { ...axis, line: null }, 10);
    expect(text).toBe(' ○───────·');
  });
});
