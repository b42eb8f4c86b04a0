/**
 * Blocks → one self-contained page: no script, nothing fetched from anywhere (a content security
 * policy says so to the browser), styles inside, for a screen and for A4 or Letter paper.
 */
import {
  type Block,
  type BoxPanel,
  type Face,
  type Tick,
  textOf,
  towardsText,
} from '../report/model.ts';
import { curveDrawing } from './curve-svg.ts';
import { facesTable } from './faces-table.ts';
import { listHtml } from './html-list.ts';
import { pageStyle } from './html-style.ts';
import { curveTable, tableHtml } from './html-table.ts';
import { element, escaped, inline, sentence, shortLines } from './html-text.ts';
import { boxesDrawing, faceDrawing } from './panel-svg.ts';

const POLICY = "default-src 'none'; style-src 'unsafe-inline'; base-uri 'none'; form-action 'none'";

export function renderHtml(blocks: readonly Block[]): string {
  const heading = blocks.find((block) => block.kind === 'title');
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
${sheets(blocks).map(sheetHtml).join('\n')}
</main>
</body>
</html>
`;
}

/** From title to title: each begins a sheet of paper. */
function sheets(blocks: readonly Block[]): readonly (readonly Block[])[] {
  const all: Block[][] = [];
  for (const block of blocks) {
    const sheet = all.at(-1);
    const isFirst = sheet === undefined || (block.kind === 'title' && sheet.some(isDrawn));
    if (isFirst) all.push([block]);
    else sheet.push(block);
  }
  return all;
}

const isDrawn = ({ kind }: Block): boolean => kind !== 'gap';

/** Of a page there is one first heading; those of its other sheets stand under it. */
type Level = 1 | 2;

function sheetHtml(blocks: readonly Block[], at: number): string {
  const level = at === 0 ? 1 : 2;
  const html = blocks.filter(isDrawn).map((block) => blockHtml(block, level));
  const look = blocks.every(isHead) ? 'sheet head' : 'sheet';
  return element('section', { class: look }, '\n', html.join('\n'), '\n');
}

/** A few words and no more: what comes after them may stand on the same paper. */
const isHead = ({ kind }: Block): boolean =>
  kind === 'title' || kind === 'paragraph' || kind === 'gap';

function blockHtml(block: Block, level: Level): string {
  switch (block.kind) {
    case 'title':
      return element(`h${level}`, { class: 'title' }, titleHtml(block.text));
    case 'gap':
      return '';
    case 'paragraph':
      return paragraphHtml(block);
    case 'list':
      return labelHtml(block.label, level) + listHtml(block.items.map(textOf));
    case 'table': {
      const label = block.label === undefined ? '' : labelHtml(block.label, level);
      return label + tableHtml(block.columns, block.rows);
    }
    case 'faces':
      return facesHtml(block, level);
    case 'curve':
      return curveHtml(block, level);
    case 'form':
      return formHtml(block);
    case 'ticks':
      return ticksHtml(block, level);
    case 'boxes':
      return element('div', { class: 'walk' }, ...block.panels.map(boxesHtml));
  }
}

type BlockOf<Kind extends Block['kind']> = Extract<Block, { kind: Kind }>;

const labelHtml = (text: string, level: Level): string =>
  element(`h${level + 1}`, {}, inline(text));

function facesHtml(block: BlockOf<'faces'>, level: Level): string {
  const { columns, rows } = facesTable(block);
  const figures = element('div', { class: 'figures' }, ...block.faces.map(faceHtml));
  return labelHtml(block.label, level) + figures + tableHtml(columns, rows);
}

function curveHtml({ label, curve }: BlockOf<'curve'>, level: Level): string {
  const figure = element('figure', { class: 'whole' }, curveDrawing(label, curve));
  return labelHtml(label, level) + figure + curveTable(curve);
}

function formHtml({ fields }: BlockOf<'form'>): string {
  const lines = fields.map((field) =>
    element('div', {}, element('span', {}, inline(field)), element('i', {})),
  );
  return element('div', { class: 'form' }, ...lines);
}

function ticksHtml({ label, note, items }: BlockOf<'ticks'>, level: Level): string {
  const under = note === undefined ? '' : element('p', {}, sentence(note));
  return element(
    'section',
    { class: 'ticks' },
    element('header', {}, labelHtml(label, level), under),
    element('ul', {}, ...items.map(tickHtml)),
  );
}

/** `Survey of AB 12: saloon, 13 panels`: what follows the last colon stands in a line of its own. */
function titleHtml(text: string): string {
  const at = text.lastIndexOf(': ');
  if (at === -1) return inline(text);
  const colon = element('span', { class: 'unseen' }, ': ');
  const rest = element('span', { class: 'under' }, inline(text.slice(at + 2)));
  return inline(text.slice(0, at)) + colon + rest;
}

function paragraphHtml({ label, text, tone = 'plain' }: BlockOf<'paragraph'>): string {
  if (label === null) return element('p', {}, sentence(textOf(text)));
  return element(
    'p',
    { class: tone === 'binding' ? 'fact notice' : 'fact' },
    element('strong', {}, inline(label), ':'),
    ' ',
    element('span', {}, sentence(textOf(text))),
  );
}

function tickHtml({ text, boxes, tone = 'plain' }: Tick): string {
  const look = tone === 'plain' ? {} : { class: tone };
  return element('li', look, element('b', {}).repeat(boxes), element('span', {}, shortLines(text)));
}

const faceHtml = (face: Face, at: number): string =>
  element(
    'figure',
    {},
    element(
      'figcaption',
      {},
      `${at + 1} ${inline(face.name)}`,
      ' ',
      element('small', {}, inline(face.note)),
    ),
    faceDrawing(face),
  );

const boxesHtml = (panel: BoxPanel, at: number): string =>
  element(
    'figure',
    {},
    element('figcaption', {}, `${at + 1} ${inline(panel.label)}`, ' ', arrowHtml(panel)),
    boxesDrawing(panel),
  );

/** Over the side of the drawing that it points to. */
const arrowHtml = ({ towards }: BoxPanel): string =>
  towards === null
    ? ''
    : element('span', { class: `towards ${towards.at}` }, inline(towardsText(towards)));
