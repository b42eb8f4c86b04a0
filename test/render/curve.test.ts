import { describe, expect, test } from 'vitest';
import { curveDrawing } from '../../src/render/curve-svg.ts';
import { curveLines } from '../../src/render/curve-text.ts';
import type { Curve } from '../../src/report/model.ts';

const curve: Curve = {
  across: { title: 'film spent', unit: 'µm', from: 0, to: 4 },
  up: { title: 'clears', unit: '%', from: 40, to: 100 },
  line: [
    { x: 1, y: 40 },
    { x: 3, y: 80 },
  ],
  marks: [
    { x: 2, y: 60, sign: 'A', name: 'enhance' },
    { x: 4, y: 100, sign: 'B', name: 'full' },
  ],
};

describe('a curve as text', () => {
  const lines = curveLines(curve, { width: 26 });

  test('stands on two axes with their ends', () => {
    expect(lines).toEqual([
      'clears (%)',
      '100 │                    B',
      '    │                     ',
      '    │              ··     ',
      '    │           ···       ',
      '    │          A          ',
      '    │       ···           ',
      ' 40 │     ··              ',
      `    └${'─'.repeat(21)}`,
      '     0  film spent (µm)  4',
    ]);
  });

  test('never leaves its width, however wide the terminal', () => {
    for (const width of [20, 40, 80, 200]) {
      const longest = Math.max(...curveLines(curve, { width }).map((line) => line.length));
      expect(longest).toBeLessThanOrEqual(Math.min(Math.max(width, 25), 72));
    }
  });

  test('shows points of one place side by side', () => {
    const marks = [0, 1, 2].map((i) => ({ x: 2, y: 60, sign: 'ABC'.charAt(i), name: '' }));
    expect(curveLines({ ...curve, marks }, { width: 26 }).join('\n')).toContain('ABC');
    const last = marks.map((mark) => ({ ...mark, x: 4 }));
    expect(curveLines({ ...curve, marks: last }, { width: 26 }).join('\n')).toContain('C');
  });

  test('of a single point is that point', () => {
    const [only] = curve.line;
    const text = curveLines(
      { ...curve, line: only === undefined ? [] : [only], marks: [] },
      { width: 26 },
    );
    expect(text.join('').match(/·/g)).toHaveLength(1);
  });
});

describe('a curve as a drawing', () => {
  const svg = curveDrawing('Correction against film', curve);

  test('says in words what it shows', () => {
    expect(svg).toContain(
      '<title>Correction against film</title><desc>A enhance: 60 % for 2 µm; B full: 100 % for 4 µm</desc>',
    );
  });

  test('puts each point where both axes have it', () => {
    // Left edge 44, right edge 596: 2 of 4 is 320. Bottom 210, top 30: 60 of 40–100 is 150.
    expect(svg).toContain('<ellipse class="ring" cx="320" cy="150"');
    expect(svg).toContain('d="M182 210L458 90"');
  });

  test('numbers its axes in round steps from end to end', () => {
    const numbers = [...svg.matchAll(/<text [^>]*>([\d.]+)<\/text>/g)].map(([, one]) => one);
    expect(numbers).toEqual(['40', '50', '60', '70', '80', '90', '100', '0', '1', '2', '3', '4']);
  });

  test('draws points of one place as one', () => {
    const marks = ['A', 'B'].map((sign) => ({ x: 2, y: 60, sign, name: sign }));
    const drawn = curveDrawing('', { ...curve, marks });
    expect(drawn.match(/<ellipse/g)).toHaveLength(1);
    expect(drawn).toContain('>AB</text>');
  });

  test('lets no text of others through as it is', () => {
    const marks = [{ x: 2, y: 60, sign: '<', name: '"><script>' }];
    expect(curveDrawing('<b>', { ...curve, marks })).not.toMatch(/<b>|<script/);
  });
});
