/** Pages that are each wrong in one way: every check must notice its own. */
type Planted = { readonly wrong: string; readonly html: string; readonly wanted: RegExp };

const page = (body: string, style = ''): string =>
  `<!doctype html><html lang="en"><head><meta charset="utf-8"><title>planted</title><style>body { color: #000; background: #fff } ${style}</style></head><body><main><h1>Planted</h1>${body}</main></body></html>`;
const lines = (count: number, line: string): string => `${line}<br>`.repeat(count);
const rows = (count: number): string => '<tr><td>bonnet</td><td>118</td></tr>'.repeat(count);
const HEAD = '<thead><tr><th>panel</th><th>mean</th></tr></thead>';

export const plantedPages: readonly Planted[] = [
  {
    wrong: 'a row longer than a sheet',
    html: page(`<table>${HEAD}<tr><td>${lines(90, 'bonnet')}</td><td>1</td></tr></table>`),
    wanted: /on A4: a row is cut between sheets 1 and 2/,
  },
  {
    wrong: 'a heading that does not repeat',
    html: page(`<table>${HEAD}${rows(90)}</table>`, 'thead { display: table-row-group }'),
    wanted: /on Letter: sheet 2 has a table whose heading does not repeat/,
  },
  {
    wrong: 'something wider than a telephone',
    html: page('<p style="width: 40rem">bonnet</p>'),
    wanted: /at 360 px: the page is/,
  },
  {
    wrong: 'a name that lies on the number beside it',
    html: page(
      `<div class="wide"><table>${HEAD}<tr><td>microfibre/medium</td><td>118</td></tr></table></div>`,
      'td { max-width: 5rem; overflow: visible }',
    ),
    wanted: /at 360 px: a cell runs into the next one: microfibre/,
  },
  {
    wrong: 'a table wider than the paper',
    html: page(`<div class="wide"><table style="width: 60rem">${HEAD}${rows(1)}</table></div>`),
    wanted: /on A4: a table sticks out/,
  },
  {
    wrong: 'grey words on a dark page',
    html: page('<p>bonnet</p>', '@media (prefers-color-scheme: dark) { p { color: #999 } }'),
    wanted: /dark: contrast 2\.85 of "bonnet"/,
  },
  {
    wrong: 'a pale drawing',
    html: page(
      '<svg role="img" width="9" height="9"><title>a</title><circle fill="#bbb" cx="4" cy="4" r="3"/></svg>',
    ),
    wanted: /light: contrast 1\.\d+ of "circle"/,
  },
  {
    wrong: 'words of a drawing that lie on each other',
    html: page(
      '<svg role="img" width="90" height="40"><title>a</title><text x="5" y="20">118.4</text><text x="9" y="22">117.3</text></svg>',
    ),
    wanted: /"118\.4" in drawing 1 lies on "117\.3"/,
  },
  {
    wrong: 'a picture from outside',
    html: page('<img src="https://leastcut.invalid/x.png" alt="x">'),
    wanted: /asks for https:\/\/leastcut\.invalid/,
  },
  {
    wrong: 'a script',
    html: page('<script>1</script>'),
    wanted: /<script>/,
  },
  {
    wrong: 'a drawing without a name',
    html: page('<svg role="img" width="9" height="9"></svg>'),
    wanted: /axe: svg-img-alt \(serious\)/,
  },
];
