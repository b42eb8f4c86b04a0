/** Labels that do harm where they are not escaped: to a terminal, a page, a spreadsheet, a shell, a manual. */
import type { Block, Cell } from '../../src/report/model.ts';

export const naughty: readonly string[] = [
  '\u001b[2J\u001b]0;owned\u0007',
  '\u001b]8;;https://example.org\u0007click\u001b]8;;\u0007',
  'a\u009b31mb',
  'line\r\nbonnet: may go 99 µm',
  '\u202eevil\u202c',
  '\u200bx\u2066y\u061c',
  'x\u2028y\u2029z\ufeff',
  `<script>alert("1" + '2')</script>`,
  '<img src=x onerror=alert(1)>',
  '&lt;b&gt; &copy;',
  '[click](javascript:alert(1))',
  '![picture](https://example.org/x.png)',
  'https://example.org www.example.org someone@example.org @someone',
  '# heading',
  '> quotation',
  '- item',
  '1. item',
  '---',
  '***bold*** __bold__ ~~gone~~ `code` $x^2$',
  '```',
  '| a | b |',
  '    code',
  '__proto__',
  'constructor',
  'toString',
  '=1+1',
  '@SUM(A1)',
  "-2+3+cmd|' /C calc'!A0",
  '.so /etc/passwd',
  "'br",
  '\\fBbold\\fR \\n[.F]',
  '$(touch owned) `touch owned` "; touch owned; #',
  '車体 coupe\u0301 👩‍🔧 Vordertür',
  // More ways of the same.
  '\u001b[31;5mred\u001b[0m',
  '\u001bP1;2|dcs\u001b\\',
  '\u001b]52;c;b3duZWQ=\u0007',
  '\u009d0;title\u009c',
  '\u0008\u0008\u007fback',
  '\u0000nul',
  '\u2067\u2066right\u2069 to \u200fleft\u200e',
  'soft\u00adhyphen zero\u200dwidth word\u2060joiner',
  'tags \u{e0041}\u{e0042}\u{e007f}',
  'half \ud800 pair \udc00',
  '\ufeffbom',
  '\ufff9note\ufffa\ufffb',
  `e${'\u0301'.repeat(40)}`,
  '" onmouseover="alert(1)" x="',
  "' autofocus onfocus=alert(1) '",
  '</title></style></svg><svg onload=alert(1)>',
  '<!-- --><![CDATA[x]]><?php ?>',
  '`"><b>x</b>',
  '&#60;script&#62; &#x1b;',
  '<javascript:alert(1)> [a]: https://example.org "t"',
  '![x][y] [y]: data:text/html,x',
  '| --- | :-: | \\| |',
  '\\',
  '+ item\n+ item',
  'x\n===\ny\n---',
  '[ ] task [x] done',
  ':smile: #1 @team owner/repo#2',
  '$$x$$ \\(x\\)',
  '\t=1+1',
  '\r=1+1',
  '\n=1+1',
  '+1+1',
  '=HYPERLINK("https://example.org","x")',
  "'=1+1",
  ' =1+1',
  '＝1+1',
  '"=1+1"',
  'a,b;c\td"e',
  '%s %n %1$s #{x} {{x}}',
  '../../etc/passwd',
  'NaN undefined null [object Object]',
  'نمی\u200cخواهم क्\u200dष 👩🏽\u200d🔧',
  '\u200d',
  'ب\u200c\u200cپ \u200cب\u200d 1\u200c٢ 👩\u200d \u200d🔧',
  'ب\u200c\u202eپ\u2069 क\u200eष',
  'x'.repeat(5000),
  'word '.repeat(400).trim(),
];

/**
 * What no label may bring to a terminal: control characters, lone halves of pairs, marks of direction, what has
 * no width; a joiner or non-joiner only within words of the scripts that have them, or an emoji.
 */
export const UNSAFE =
  /(?<!\ufe0f|[\u0600-\u0dff\u2600-\u27bf\u{1f000}-\u{1faff}])[\u200c\u200d]|[\u200c\u200d](?![\u0600-\u0dff\u2600-\u27bf\u{1f000}-\u{1faff}])|[\p{Cc}\p{Cs}\u00ad\u061c\u180e\u200b\u200e\u200f\u2028-\u202e\u2060-\u206f\ufeff\ufff9-\ufffb\u{e0000}-\u{e007f}]/u;

/** Markdown with what is escaped, and the comments that keep addresses apart, out of the way. */
export const bare = (markdown: string): string =>
  markdown.replaceAll(/\\[!-/:-@[-`{-~]|<!-- -->/g, 'x');

/** Signs of Markdown that still do something, in their order. */
export const actingIn = (markdown: string): readonly string[] =>
  bare(markdown).match(/<|&|`|~|\$|\]\(|!\[|_|[^*]\*[^*]|\bwww\.|:\/\//g) ?? [];

const cell = (text: string): Cell => ({ kind: 'text', text, tone: 'strong' });

/** A page of every kind of block, with the label wherever one may stand. */
export const pageOf = (label: string): readonly Block[] => [
  { kind: 'title', text: label },
  { kind: 'gap' },
  { kind: 'paragraph', label, text: label },
  { kind: 'paragraph', label, short: label, text: { text: label, facts: [label, label] } },
  { kind: 'paragraph', label: null, text: label },
  { kind: 'list', label, items: [label, { text: label, facts: [label] }] },
  {
    kind: 'table',
    label,
    columns: [
      { title: label, align: 'left' },
      { title: label, align: 'right', said: label, unit: label },
      { title: '', align: 'left', said: label, axis: { from: 0, to: 100, line: 50 } },
    ],
    rows: [
      [
        cell(label),
        cell(label),
        {
          kind: 'strip',
          values: [1, 60],
          marked: 20,
          open: [30, 200],
          bar: { from: 5, to: 50, look: 'extent' },
          range: { from: 10, to: 90 },
        },
      ],
    ],
  },
  { kind: 'form', fields: [label] },
  {
    kind: 'faces',
    label,
    values: label,
    faces: [
      {
        name: label,
        note: label,
        points: [{ name: label, u: 0, v: 1, value: label, sign: 'low' }],
      },
    ],
  },
  {
    kind: 'ticks',
    label,
    note: label,
    items: [{ text: label, boxes: 2, apart: [label, label] }],
  },
  {
    kind: 'curve',
    label,
    curve: {
      across: { title: label, unit: label, from: 0, to: 4 },
      up: { title: label, unit: label, from: 0, to: 100 },
      line: [
        { x: 0, y: 0 },
        { x: 4, y: 80 },
      ],
      marks: [{ x: 2, y: 50, sign: 'A', name: label }],
    },
  },
  {
    kind: 'boxes',
    panels: [
      {
        label,
        towards: { word: label, at: 'left' },
        places: [{ name: label, u: 0.5, v: 0.5 }],
        boxes: 2,
      },
    ],
  },
];
