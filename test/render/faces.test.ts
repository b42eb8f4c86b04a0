import { describe, expect, test } from 'vitest';
import { renderHtml } from '../../src/render/html.ts';
import { renderMarkdown } from '../../src/render/markdown.ts';
import { renderPlain } from '../../src/render/plain.ts';
import { renderText } from '../../src/render/text.ts';
import type { Block } from '../../src/report/model.ts';

const block: Block = {
  kind: 'faces',
  label: 'Every point',
  values: 'readings (µm)',
  faces: [
    {
      name: 'roof',
      note: 'mean 100.0',
      points: [
        { name: '1', u: 0.2, v: 0.5, value: '101.5', sign: 'none' },
        { name: '2', u: 0.8, v: 0.5, value: '98.5', sign: 'low' },
      ],
    },
  ],
};

describe('the points of panels, where nothing is drawn', () => {
  test('are a table in text', () => {
    expect(renderText([block], { width: 80, paint: (text) => text })).toBe(
      'Every point\npanel readings (µm)\nroof  1: 101.5, 2: 98.5 low\n',
    );
  });

  test('are a table in Markdown', () => {
    expect(renderMarkdown([block])).toContain('| roof | 1: 101.5, 2: 98.5 low |');
  });

  test('are a fact a panel in plain text', () => {
    expect(renderPlain([block])).toBe('roof: points 1: 101.5, 2: 98.5 low\n');
  });
});

describe('what a table is headed by', () => {
  const table: Block = { kind: 'table', label: 'What may go', columns: [], rows: [] };

  test('stands over it in text, plain text and Markdown', () => {
    expect(renderText([table], { width: 80, paint: (text) => text })).toMatch(/^What may go\n/);
    expect(renderPlain([table])).toBe('What may go\n');
    expect(renderMarkdown([table])).toMatch(/^## What may go\n/);
  });
});

describe('a point that stands out', () => {
  const drawn = (value: string, u: number): { readonly text: number; readonly arrow: number } => {
    const points = [{ name: '1', u, v: 0.5, value, sign: 'high' }] as const;
    const html = renderHtml([{ ...block, faces: [{ name: 'roof', note: '', points }] }]);
    const text = Number(/x="([\d.]+)"[^>]*class="value stands-out"/.exec(html)?.[1]);
    return { text, arrow: Number(/d="M([\d.]+) /.exec(html)?.[1]) };
  };
  const HALF_BOLD_DIGIT = 4.8;

  test.each(['98.5', '2100.0', '-1234.5'])('has its arrow clear of %s', (value) => {
    const { text, arrow } = drawn(value, 0.5);
    expect(arrow - text).toBeGreaterThan(HALF_BOLD_DIGIT * value.length);
  });

  test('has it inside the panel at an edge of it', () => {
    expect(drawn('2100.0', 1).arrow).toBeLessThanOrEqual(300 - 12);
    expect(drawn('2100.0', 0).text).toBeGreaterThanOrEqual(HALF_BOLD_DIGIT * '2100.0'.length);
  });
});
