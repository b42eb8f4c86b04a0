/** Blocks → text for a terminal or a pipe. Nothing is cut: what does not fit makes the line longer. */
import { type Block, type Tick, type Tone, textOf } from '../report/model.ts';
import { curveLines } from './curve-text.ts';
import { facesTable } from './faces-table.ts';
import { boxLines, formLines, tickBoxes } from './fill-in-text.ts';
import { printable } from './printable.ts';
import { tableLines } from './text-table.ts';
import { wrap } from './wrap.ts';

export type TextStyle = {
  readonly width: number;
  /** Colours a piece of text; the identity when there are none. */
  readonly paint: (text: string, tone: Tone) => string;
};

export function renderText(blocks: readonly Block[], style: TextStyle): string {
  const lines = blocks.flatMap((block) => blockLines(block, style));
  return `${lines.map((line) => line.replaceAll('\u00a0', ' ').trimEnd()).join('\n')}\n`;
}

/** Columns: of longer lines the eye does not find the next one. */
const WIDEST_PROSE = 100;

/** Tables and drawings have all the width there is. */
function blockLines(block: Block, whole: TextStyle): readonly string[] {
  const style = { ...whole, width: Math.min(whole.width, WIDEST_PROSE) };
  switch (block.kind) {
    case 'title':
      return wrap(printable(block.text), style.width, '').map((line) =>
        style.paint(line, 'strong'),
      );
    case 'gap':
      return [''];
    case 'paragraph':
      return labelled(block.label, textOf(block.text), style);
    case 'list':
      return [
        ...labelLines(block.label, style),
        ...block.items
          .map(textOf)
          .flatMap((item) =>
            wrap(printable(item), style.width - 2, hangingIndent(item)).map((line) => `  ${line}`),
          ),
      ];
    case 'table': {
      const { label } = block;
      const lines = tableLines(block, whole);
      return label === undefined ? lines : [...labelLines(label, style), ...lines];
    }
    case 'faces':
      return [...labelLines(block.label, style), ...tableLines(facesTable(block), whole)];
    case 'curve':
      return curveLines(block.curve, whole);
    case 'form':
      return formLines(block.fields, whole.width);
    case 'ticks':
      return [
        ...labelled(block.label, block.note ?? null, style),
        ...block.items.flatMap((item) => tickLines(item, style)),
      ];
    case 'boxes':
      return boxLines(block.panels, whole);
  }
}

/** What is set in, or pointed at, goes on two columns further in: else its second line looks like a new item. */
const hangingIndent = (item: string): string =>
  ' '.repeat(2 + (item.match(/^(?:→ |\u00a0+ ?)/)?.[0].length ?? 0));

const labelLines = (label: string, { width, paint }: TextStyle): readonly string[] =>
  wrap(printable(label), width, '  ').map((line) => paint(line, 'strong'));

/** `[ ][ ] two sets of …`: the boxes in a column of their own. */
function tickLines(
  { text, boxes, tone = 'plain' }: Tick,
  { width, paint }: TextStyle,
): readonly string[] {
  const drawn = boxes === 0 ? ' '.repeat(tickBoxes(1).length) : tickBoxes(boxes);
  const indent = ' '.repeat(drawn.length + 3);
  return wrap(`${printable(text)}`, width - indent.length, '').map(
    (line, i) => `${i === 0 ? `  ${drawn} ` : indent}${paint(line, tone)}`,
  );
}

function labelled(unsafe: string | null, text: string | null, style: TextStyle): readonly string[] {
  if (unsafe === null) return wrap(printable(text ?? ''), style.width, '');
  if (text === null) return labelLines(unsafe, style);
  const label = printable(unsafe);
  let left = label.length;
  return wrap(`${label}: ${printable(text)}`, style.width, '  ').map((line, i) => {
    const from = i === 0 ? 0 : 2;
    const end = Math.min(line.length, from + Math.max(0, left));
    // Where a line ends, a blank of the label went.
    left -= line.length - from + 1;
    return line.slice(0, from) + painted(line.slice(from, end), style) + line.slice(end);
  });
}

const painted = (text: string, { paint }: TextStyle): string =>
  text === '' ? '' : paint(text, 'strong');
