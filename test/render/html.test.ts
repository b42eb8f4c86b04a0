import { describe, expect, test } from 'vitest';
import { renderHtml } from '../../src/render/html.ts';
import { pageStyle } from '../../src/render/html-style.ts';
import { type Block, cell, gap, list, notice, paragraph, title } from '../../src/report/model.ts';
import { pageOf } from './naughty.ts';

/** What stands in the only sheet. */
const body = (...blocks: readonly Block[]): string => {
  const [, main = ''] =
    renderHtml(blocks).match(
      /<section class="sheet(?: head)?">\n([\s\S]*)\n<\/section>\n<\/main>/,
    ) ?? [];
  return main;
};

const HOSTILE = `<script>alert("1" + '2')</script>&`;
const HARMLESS = '&lt;script&gt;alert(&quot;1&quot; + &#39;2&#39;)&lt;/script&gt;&amp;';

describe('a page', () => {
  const page = renderHtml([title('Reading sheet'), ...pageOf('roof')]);

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

  test('closes every element in the order it was opened', () => {
    const open: string[] = [];
    const VOID = new Set(['meta']);
    for (const [, end, tag = ''] of page.matchAll(/<(\/?)([a-z][a-z0-9]*)\b/g)) {
      if (VOID.has(tag)) continue;
      if (end === '') open.push(tag);
      else expect(open.pop()).toBe(tag);
    }
    expect(open).toEqual([]);
  });

  test('is made for paper of either size and for the dark', () => {
    expect(page).toMatch(/@page \{ margin: [^}]*/);
    expect(page).not.toMatch(/size: *(A4|letter)/i);
    expect(page).toContain('@media print');
    expect(page).toContain('thead { display: table-header-group; }');
    expect(page).toMatch(/p, li, tr, figure \{ break-inside: avoid; \}/);
    expect(page).toContain('prefers-color-scheme: dark');
  });

  test('has one first heading; each further title begins a sheet of paper under it', () => {
    const several = renderHtml([title('One'), list('a', []), gap, title('Two'), list('b', [])]);
    expect(several.match(/<h1\b/g)).toHaveLength(1);
    expect(several).toContain('<h2 class="title">Two</h2>');
    expect(several).toContain('<h2>a</h2>');
    expect(several).toContain('<h3>b</h3>');
    expect(several.match(/<section class="sheet">/g)).toHaveLength(2);
    expect(several).toContain('.sheet:not(.head) + .sheet { margin: 0; break-before: page; }');
  });

  test('wastes no sheet of paper on a few words before the next title', () => {
    const several = renderHtml([title('Survey'), paragraph(null, 'Aim.'), title('Why roof')]);
    expect(several.match(/<section class="sheet head">/g)).toHaveLength(2);
    expect(renderHtml([title('One'), list('a', ['b'])])).toContain('<section class="sheet">');
  });

  test('never leaves out a level between its headings', () => {
    const levels = [...page.matchAll(/<h([1-6])\b/g)].map(([, level]) => Number(level));
    levels.slice(1).forEach((level, i) => {
      expect(level).toBeLessThanOrEqual((levels[i] ?? 0) + 1);
    });
  });

  test('names every drawing and says its numbers', () => {
    const drawings = page.match(/<svg\b[\s\S]*?<\/svg>/g) ?? [];
    expect(drawings).toHaveLength(4);
    for (const svg of drawings) {
      expect(svg).toMatch(
        /^<svg class="\w+" viewBox="[-\d. ]+" role="img"><title>[^<]+<\/title><desc>[^<]+<\/desc>/,
      );
    }
  });
});

describe('words that are typed as they stand', () => {
  test.each([
    ['--why', 'must stay; --why takes it apart'],
    ['da-small/foam-medium/heavy', '3 sets of da-small/foam-medium/heavy, there'],
    ['×/÷', 'known ×/÷\u00a02.2'],
  ])('%s is not broken within', (word, text) => {
    expect(body(paragraph(null, text))).toBe(
      `<p>${text.replace(word, `<span class="whole-word">${word}</span>`)}</p>`,
    );
    expect(pageStyle).toContain('.whole-word { white-space: nowrap; }');
  });

  test('a step to tick, which stands in a narrow column, may break after its slashes alone', () => {
    const text = '3×\u00a0da-small/foam-medium/heavy, 3 min';
    const html = body({ kind: 'ticks', label: 'roof', items: [{ text, boxes: 1 }] });
    const parts = ['da-small/', 'foam-medium/', 'heavy'];
    const broken = parts.map((part) => `<span class="whole-word">${part}</span>`).join('<wbr>');
    expect(html).toContain(`<span>3×\u00a0${broken}, 3 min</span>`);
  });

  test.each(['a--b', '---', 'a/b', 'a/b/c/d', `--${'x'.repeat(40)}`, 'x/y/z/'])(
    '%s is no such word',
    (text) => {
      expect(body(paragraph(null, text))).toBe(`<p>${text}</p>`);
    },
  );
});

test('a value is never parted from its ± by the end of a line', () => {
  expect(body(paragraph(null, 'clear 33.2 ± 4.7 µm, ± 1 µm ± 2 %'))).toContain(
    'clear 33.2\u00a0±\u00a04.7\u00a0µm, ±\u00a01\u00a0µm ±\u00a02',
  );
});

describe('a name that runs from right to left', () => {
  const ROOF = '\u0627\u0644\u0633\u0642\u0641';
  const DOOR = '\u0627\u0644\u0628\u0627\u0628 \u0627\u0644\u0623\u0645\u0627\u0645\u064a';

  test('keeps to itself, so that the numbers behind it stay on their side', () => {
    expect(body(paragraph(null, `${ROOF} (4.0 ± 5.7), 87 on ${DOOR}, roof`))).toBe(
      `<p><bdi>${ROOF}</bdi> (4.0\u00a0±\u00a05.7), 87 on <bdi>${DOOR}</bdi>, roof</p>`,
    );
  });

  test('of several each by itself, as of headings and cells', () => {
    expect(body(list(`${ROOF}, ${DOOR}`, ['a']))).toContain(
      `<h2><bdi>${ROOF}</bdi>, <bdi>${DOOR}</bdi></h2>`,
    );
    const columns = [
      { title: 'panel', align: 'left' },
      { title: 'n', align: 'left' },
    ] as const;
    expect(
      body({ kind: 'table', columns, rows: [[cell(`${ROOF}, 5`), cell(`${DOOR} 3`)]] }),
    ).toMatch(/<th [^>]*><bdi>[^<]+<\/bdi>, 5<\/th><td [^>]*><bdi>[^<]+<\/bdi> 3<\/td>/);
  });

  test('with a non-joiner within a word in one piece, and nothing of it is spoilt', () => {
    expect(body(paragraph(null, 'نمی\u200cخواهم 2'))).toBe('<p><bdi>نمی\u200cخواهم</bdi> 2</p>');
  });

  test('with its numbers inside in one piece, and nothing in it runs', () => {
    expect(body(paragraph(null, `${ROOF} 2 ${ROOF}<b>`))).toBe(
      `<p><bdi>${ROOF} 2 ${ROOF}</bdi>&lt;b&gt;</p>`,
    );
  });
});

describe('a list', () => {
  test('has what is set in under an item in it', () => {
    const items = ['roof', '\u00a0\u00a05.12: life', '\u00a0\u00a07.4: clear', 'bonnet'];
    expect(body(list('Limits', items))).toBe(
      '<h2>Limits</h2><ul><li>roof<ul><li>5.12: life</li><li>7.4: clear</li></ul></li><li>bonnet</li></ul>',
    );
  });

  test('keeps an arrow, and no blanks where others have one', () => {
    expect(body(list('Limits', ['\u00a0 0.1: clear', '→ 0.0: total']))).toContain(
      '<ul><li>0.1: clear</li><li>→ 0.0: total</li></ul>',
    );
  });

  test('that begins with what is set in loses nothing', () => {
    expect(body(list('a', ['\u00a0\u00a0one']))).toContain('<ul><li>\u00a0\u00a0one</li></ul>');
  });

  test('whose items bear their numbers has them once', () => {
    expect(body(list('Order', ['1. wash', '2. dry']))).toContain(
      '<ol><li>wash</li><li>dry</li></ol>',
    );
    for (const items of [['1. wash'], ['2. dry', '1. wash'], ['1. wash', 'dry']]) {
      expect(body(list('Order', items))).toContain(`<ul><li>${items[0]}</li>`);
    }
  });
});

describe('a heading', () => {
  const onPaper = pageStyle.slice(pageStyle.indexOf('@media print'));
  const points = (of: string): number =>
    Number(new RegExp(`^  ${of} \\{ font-size: ([\\d.]+)pt;`, 'm').exec(onPaper)?.[1]);

  test('is larger on paper than what names a drawing under it', () => {
    expect(points(':is\\(h2, h3\\):not\\(\\.title\\)')).toBeGreaterThan(points('figcaption'));
    expect(points('figcaption')).toBeGreaterThan(points('figcaption small'));
  });

  test('of one long word is broken before it leaves its paper', () => {
    expect(pageStyle).toMatch(/^h2, h3, figcaption \{ overflow-wrap: anywhere; \}$/m);
  });
});

describe('a column of names', () => {
  test('breaks a step after its slashes, so that on a telephone it lies on no number', () => {
    const columns = [{ title: 'mean ± sd', align: 'left' }] as const;
    const table = body({ kind: 'table', columns, rows: [[cell('hand/microfibre/medium')]] });
    expect(table).toContain(
      ['hand/', 'microfibre/', 'medium']
        .map((part) => `<span class="whole-word">${part}</span>`)
        .join('<wbr>'),
    );
    expect(table).toContain('>mean ±\u00a0sd</th>');
    expect(pageStyle).toMatch(/th:first-child \{ white-space: normal; overflow-wrap: break-word;/);
  });
});

describe('a table of many columns', () => {
  const columns = (count: number): Block => ({
    kind: 'table',
    columns: Array.from({ length: count }, (_, i) => ({ title: `c${i}`, align: 'right' })),
    rows: [Array.from({ length: count }, () => cell('1'))],
  });

  test('stands in smaller type on paper, so that no printer makes the whole page smaller', () => {
    expect(body(columns(9))).toContain('<div class="wide short many"');
    expect(body(columns(8))).toContain('<div class="wide short"');
    expect(pageStyle).toMatch(/@media print \{[\s\S]*\.many \{ font-size: 8\.5pt; \}/);
  });
});

describe('what work stops at', () => {
  test('stands in a frame', () => {
    expect(body(notice('Stop', 'at once'))).toBe(
      '<p class="fact notice"><strong>Stop:</strong> <span>at once</span></p>',
    );
  });
});

describe('things to do on a page', () => {
  test('stand behind a box for each time, large enough to read in a bay', () => {
    const block: Block = {
      kind: 'ticks',
      label: 'roof',
      note: '5 sections',
      items: [
        { text: 'cut', boxes: 2, tone: 'strong' },
        { text: 'wipe', boxes: 1 },
      ],
    };
    expect(body(block)).toBe(
      '<section class="ticks"><header><h2>roof</h2><p>5 sections</p></header><ul><li class="strong"><b></b><b></b><span>cut</span></li><li><b></b><span>wipe</span></li></ul></section>',
    );
  });

  test('are printed to be read at arm’s length: names and what is done at 14 pt or more, in two columns', () => {
    const html = renderHtml([{ kind: 'ticks', label: 'roof', items: [] }]);
    const paper = html.slice(html.indexOf('@media print'));
    const sizeOf = (rule: RegExp): number => Number(paper.match(rule)?.[1]);
    expect(sizeOf(/\.ticks :is\(h2, h3\)[^}]*font-size: ([\d.]+)pt/)).toBeGreaterThanOrEqual(14);
    expect(sizeOf(/\.ticks \.strong[^}]*font-size: ([\d.]+)pt/)).toBeGreaterThanOrEqual(14);
    expect(paper).toMatch(/\.sheet:has\(> \.ticks\) \{ columns: 2;/);
  });
});

describe('the blocks of a page', () => {
  test('are a heading, a labelled paragraph, a list', () => {
    expect(body(title('One'), gap, paragraph('Time', '2 h'), list('Notes', ['a', 'b']))).toBe(
      [
        '<h1 class="title">One</h1>',
        '<p class="fact"><strong>Time:</strong> <span>2\u00a0h</span></p>',
        '<h2>Notes</h2><ul><li>a</li><li>b</li></ul>',
      ].join('\n'),
    );
  });

  test('part a title at its last colon, which is still read aloud', () => {
    expect(body(title('Survey: A: 3 panels'))).toBe(
      '<h1 class="title">Survey: A<span class="unseen">: </span><span class="under">3 panels</span></h1>',
    );
  });

  test('are a table whose words carry their tone as a class and whose rows have names', () => {
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
    expect(html).toContain('<tr><th scope="row" class="left">lid</th><td></td></tr>');
  });

  test('wrap prose in a table and nothing else', () => {
    const table = (text: string): string =>
      body({ kind: 'table', columns: [{ title: 'a', align: 'left' }], rows: [[cell(text)]] });
    expect(table('front right wing')).not.toContain('prose');
    expect(table('a sentence that is longer than any name')).toContain('class="left prose"');
  });

  test('leave room behind a table’s last column: a prime after its figure (z′) was cut by the edge', () => {
    const html = renderHtml([title('One')]);
    expect(Number(html.match(/:last-child \{ padding-right: ([.\d]+)rem/)?.[1])).toBeGreaterThan(
      0.2,
    );
  });

  test('keep a short table on one page, and cut a long one between rows', () => {
    const table = (rows: number): string =>
      body({
        kind: 'table',
        columns: [{ title: 'a', align: 'left' }],
        rows: Array.from({ length: rows }, () => [cell('x')]),
      });
    expect(table(10)).toContain('class="wide short"');
    expect(table(11)).toContain('class="wide"');
  });

  test('say the axis over a column of strips, with its line', () => {
    const html = body({
      kind: 'table',
      columns: [
        { title: 'panel', align: 'left' },
        {
          title: '',
          said: 'readings',
          unit: 'µm',
          align: 'left',
          axis: { from: -2, to: 150, line: 80 },
        },
      ],
      rows: [[cell('roof'), { kind: 'strip', values: [100], marked: 90 }]],
    });
    expect(html).toContain(
      'readings (µm), ┊\u00a080 <span class="ends"><span>−2</span> <span>150</span>',
    );
    expect(html).toContain('<title>roof: readings</title>');
  });

  test('draw points on panels beside a table of the same numbers', () => {
    const html = body({
      kind: 'faces',
      label: 'Points',
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
    });
    expect(html).toContain('<figcaption>1 roof <small>mean 100.0</small></figcaption>');
    expect(html).toContain('<desc>1: 101.5, 2: 98.5 low</desc>');
    // 300 wide: a fifth of it is 60.
    expect(html).toMatch(/<text x="60" [^>]*class="value">101\.5</);
    expect(html).toMatch(/class="value stands-out">98\.5</);
    expect(html.match(/class="sign"/g)).toHaveLength(1);
    expect(html).toContain('<td class="left">1: 101.5, 2: 98.5 low</td>');
  });

  test('draw a curve over a table of its points and of those that are spoken of', () => {
    const html = body({
      kind: 'curve',
      label: 'Marks',
      curve: {
        across: { title: 'taken', unit: 'µm', from: 0, to: 4 },
        up: { title: 'go', unit: '%', from: 0, to: 100 },
        line: [
          { x: 1, y: 40 },
          { x: 2, y: 60 },
        ],
        marks: [{ x: 2, y: 60, sign: 'A', name: 'enhance' }],
      },
    });
    const rows = [...html.matchAll(/<tr>(.*?)<\/tr>/g)].map(([, row = '']) =>
      row
        .replaceAll(/<[^>]+>/g, ' ')
        .trim()
        .split(/ {2,}/),
    );
    expect(rows).toEqual([
      ['on the curve', 'A'],
      ['taken (µm)', '1.00', '2.00'],
      ['go (%)', '40', '60'],
    ]);
  });

  test('draw a box at the place of each point, named, inside the rectangle', () => {
    const html = body({
      kind: 'boxes',
      panels: [
        {
          label: 'bonnet',
          towards: { word: 'front', at: 'top' },
          places: [
            { name: '1', u: 0.5, v: 0.5 },
            { name: 'edge', u: 1, v: 0 },
          ],
          boxes: 1,
        },
      ],
    });
    expect(html).toContain(
      '<figcaption>1 bonnet <span class="towards top">↑ front</span></figcaption>',
    );
    // 300 × 76 with boxes of 78 × 32: the middle one begins at 111, 22.
    expect(html).toContain('<rect class="box" x="111" y="22" width="78" height="32"');
    expect(html).toContain('<rect class="box" x="218" y="4" width="78" height="32"');
    expect(html).toMatch(/<text[^>]*>edge<\/text>/);
  });

  test('have blanks to fill in', () => {
    expect(body({ kind: 'form', fields: ['Date'] })).toBe(
      '<div class="form"><div><span>Date</span><i></i></div></div>',
    );
  });

  test.each(pageOf(HOSTILE).filter(({ kind }) => kind !== 'gap'))(
    'show foreign markup in a $kind as text',
    (block) => {
      const page = renderHtml([block]);
      expect(page).toContain(HARMLESS);
      expect(page).not.toContain('<script');
      expect(page).not.toContain('alert("');
    },
  );
});
