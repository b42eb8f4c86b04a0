/**
 * Blocks → one self-contained page: no script, nothing fetched from anywhere (a content security
 * policy says so to the browser), styles inside, for a screen and for A4 or Letter paper.
 */
import type { Block, Cell, Column } from '../report/model.ts';
import { pageStyle } from './html-style.ts';
import { element, escaped } from './html-text.ts';
import { boxesDrawing, stripDrawing } from './svg.ts';

const POLICY = "default-src 'none'; style-src 'unsafe-inline'; base-uri 'none'; form-action 'none'";

export function renderHtml(blocks: readonly Block[]): string {
  const heading = blocks.find((block) => block.kind === 'title');
  const body = blocks.map(blockHtml);
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${escaped(POLICY)}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="generator" content="leastcut">
<title>${escaped(heading?.text ?? 'leastcut')}</title>
<style>${pageStyle}</style>
</head>
<body>
<main>
${body.filter((html) => html !== '').join('\n')}
</main>
</body>
</html>
`;
}

function blockHtml(block: Block): string {
  switch (block.kind) {
    case 'title':
      return element('h1', {}, escaped(block.text));
    case 'gap':
      return '';
    case 'paragraph': {
      const label =
        block.label === null ? '' : `${element('strong', {}, `${escaped(block.label)}:`)} `;
      return element('p', {}, label, escaped(block.text));
    }
    case 'list': {
      const items = block.items.map((item) => element('li', {}, escaped(item)));
      return element('h2', {}, escaped(block.label)) + element('ul', {}, ...items);
    }
    case 'table':
      return tableHtml(block.columns, block.rows);
    case 'form': {
      const fields = block.fields.map((field) =>
        element('div', {}, element('span', {}, escaped(field)), element('i', {})),
      );
      return element('div', { class: 'form' }, ...fields);
    }
    case 'boxes':
      return element(
        'figure',
        {},
        element('figcaption', {}, escaped(block.label)),
        boxesDrawing(block.label, block.places),
      );
  }
}

function tableHtml(columns: readonly Column[], rows: readonly (readonly Cell[])[]): string {
  const head = columns.map(({ title, align, axis }) =>
    element(
      'th',
      { scope: 'col', class: align },
      escaped(axis === undefined ? title : `${title} ${axis.from} to ${axis.to}`.trim()),
    ),
  );
  const body = rows.map((row) =>
    element('tr', {}, ...columns.map((column, i) => cellHtml(row[i], column))),
  );
  const table = element(
    'table',
    {},
    element('thead', {}, element('tr', {}, ...head)),
    element('tbody', {}, ...body),
  );
  return element('div', { class: 'wide' }, table);
}

function cellHtml(cell: Cell | undefined, { align, axis }: Column): string {
  if (cell === undefined) return element('td', {});
  if (cell.kind === 'text') {
    return element('td', { class: `${align} ${cell.tone}` }, escaped(cell.text));
  }
  return element('td', {}, axis === undefined ? '' : stripDrawing(cell, axis));
}
