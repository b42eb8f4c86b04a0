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
];

const cell = (text: string): Cell => ({ kind: 'text', text, tone: 'strong' });

/** A page of every kind of block, with the label wherever one may stand. */
export const pageOf = (label: string): readonly Block[] => [
  { kind: 'title', text: label },
  { kind: 'gap' },
  { kind: 'paragraph', label, text: label },
  { kind: 'paragraph', label: null, text: label },
  { kind: 'list', label, items: [label, label] },
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
  { kind: 'ticks', label, items: [{ text: label, boxes: 2 }] },
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
  { kind: 'boxes', label, places: [{ name: label, u: 0.5, v: 0.5 }] },
];
