import { describe, expect, test } from 'vitest';
import { renderHtml } from '../../src/render/html.ts';
import { type Block, cell, gap, list, paragraph, title } from '../../src/report/model.ts';

const body = (...blocks: readonly Block[]): string => {
  const [, main = ''] = renderHtml(blocks).match(/<main>\n([\s\S]*)\n<\/main>/) ?? [];
  return main;
};

const HOSTILE = `<script>alert("1" + '2')</script>&`;
const HARMLESS = '&lt;script&gt;alert(&quot;1&quot; + &#39;2&#39;)&lt;/script&gt;&amp;';

describe('a page', () => {
  const page = renderHtml([title('Reading sheet'), paragraph(null, 'text')]);

  test('says what it is, in which language, and that nothing may be fetched or run', () => {
    expect(page).toMatch(/^<!doctype html>\n<html lang="en">/);
    expect(page).toContain('<title>Reading sheet</title>');
    expect(page).toContain(
      `content="default-src &#39;none&#39;; style-src &#39;unsafe-inline&#39;; base-uri &#39;none&#39;; form-action &#39;none&#39;"`,
    );
  });

  test('asks for nothing outside itself and runs nothing', () => {
    expect(page).not.toMatch(/<(script|link|img|iframe|object)\b|url\(|https?:|@import|\son\w+=/);
  });

  test('is made for paper and for the dark', () => {
    expect(page).toContain('@page');
    expect(page).toContain('@media print');
    expect(page).toContain('prefers-color-scheme: dark');
  });
});

describe('the blocks of a page', () => {
  test('are a heading, a labelled paragraph, a list', () => {
    expect(body(title('One'), gap, paragraph('Time', '2 h'), list('Notes', ['a', 'b']))).toBe(
      [
        '<h1>One</h1>',
        '<p><strong>Time:</strong> 2\u00a0h</p>',
        '<h2>Notes</h2><ul><li>a</li><li>b</li></ul>',
      ].join('\n'),
    );
  });

  test('are a table whose words carry their tone as a class', () => {
    const html = body({
      kind: 'table',
      columns: [
        { title: 'panel', align: 'left' },
        { title: 'µm', align: 'right' },
      ],
      rows: [[cell('roof'), cell('80', 'binding')], [cell('lid')]],
    });
    expect(html).toContain('<th scope="col" class="right">µm</th>');
    expect(html).toContain('<td class="right binding">80</td>');
    expect(html).toContain('<tr><td class="left plain">lid</td><td></td></tr>');
  });

  test('draw a strip with a dot a value on the axis, the marked one and the line, and say it in words', () => {
    const html = body({
      kind: 'table',
      columns: [{ title: '', align: 'left', axis: { from: 50, to: 150, line: 80 } }],
      rows: [[{ kind: 'strip', values: [100, 300], marked: 90 }]],
    });
    // 224 wide: 100 lies at the middle, 300 is off the axis and drawn hollow at its end.
    expect(html).toContain('cx="112"');
    expect(html).toMatch(/cx="224"[^>]*fill="none"/);
    expect(html).toContain('d="M67.2 0V16"');
    expect(html).toContain('aria-label="values 100, 300; marked 90; line at 80"');
    expect(html).toContain('50 to 150');
  });

  test('say so where a strip has no values, and leave out what it has not', () => {
    const html = body({
      kind: 'table',
      columns: [{ title: '', align: 'left', axis: { from: 50, to: 150, line: null } }],
      rows: [[{ kind: 'strip', values: [], marked: null }]],
    });
    expect(html).toContain('aria-label="no values"></svg>');
  });

  test('draw a box at the place of each point, named, inside the rectangle', () => {
    const html = body({
      kind: 'boxes',
      label: 'bonnet',
      places: [
        { name: '1', u: 0.5, v: 0.5 },
        { name: 'edge', u: 1, v: 0 },
      ],
    });
    expect(html).toContain('<figcaption>bonnet</figcaption>');
    // 300 × 170 with boxes of 70 × 36: the middle one begins at 115, 67.
    expect(html).toContain('<rect x="115" y="67" width="70" height="36"');
    expect(html).toContain('<rect x="228" y="2" width="70" height="36"');
    expect(html).toMatch(/<text[^>]*>edge<\/text>/);
  });

  test('have blanks to fill in', () => {
    expect(body({ kind: 'form', fields: ['Date'] })).toBe(
      '<div class="form"><div><span>Date</span><i></i></div></div>',
    );
  });

  test.each<[string, Block]>([
    ['a title', title(HOSTILE)],
    ['a paragraph', paragraph(HOSTILE, HOSTILE)],
    ['a list', list(HOSTILE, [HOSTILE])],
    [
      'a table',
      { kind: 'table', columns: [{ title: HOSTILE, align: 'left' }], rows: [[cell(HOSTILE)]] },
    ],
    ['a form', { kind: 'form', fields: [HOSTILE] }],
    ['boxes', { kind: 'boxes', label: HOSTILE, places: [{ name: HOSTILE, u: 0, v: 0 }] }],
  ])('show foreign markup in %s as text', (_, block) => {
    const page = renderHtml([block]);
    expect(page).toContain(HARMLESS);
    expect(page).not.toContain('<script');
    expect(page).not.toContain('alert("');
  });
});
