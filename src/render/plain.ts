/**
 * Blocks → one fact a line, for screen readers, logs and `grep`: no boxes, no columns, no drawings, no
 * colour. A cell of a table is `bonnet: min 94.1 µm`: the row, what the column shows, the value and
 * its unit. A part of a row stands with it: `bonnet, thinner zone: …`.
 *
 * What stands under a label is split where a sentence or a clause ends, and each piece has the label
 * before it, so that a label from a file begins no line of its own. A clause that points back stays with
 * what it points to. A long label is said once, and its first words before each piece.
 */
import type { Block, Curve, CurveAxis, CurvePoint, Tick } from '../report/model.ts';
import { axisFigure } from './axis-figure.ts';
import { facesTable } from './faces-table.ts';
import { spaced, tableFacts } from './plain-table.ts';
import { printable } from './printable.ts';

export const renderPlain = (blocks: readonly Block[]): string =>
  blocks
    .flatMap(blockFacts)
    .map((fact) => `${tidy(printable(fact))}\n`)
    .join('');

/** No runs of blanks that set something in or under one another, and no blank to write on. */
const tidy = (fact: string): string =>
  fact
    .replaceAll('\u00a0', ' ')
    .replaceAll(/_{4,}/g, 'to fill in')
    .replaceAll(/ {2,}/g, ' ')
    .trim();

function blockFacts(block: Block): readonly string[] {
  switch (block.kind) {
    case 'title':
      return [block.text];
    case 'gap':
      return [];
    case 'paragraph': {
      const { label, text } = block;
      const parts = clauses(text);
      if (label === null) return parts.length === 1 ? parts : labelled(UNNAMED, parts);
      return labelled(label, parts);
    }
    case 'list':
      return listFacts(block.label, block.items);
    case 'table':
      return [
        ...(block.label === undefined ? [] : [block.label]),
        ...tableFacts(block.columns, block.rows),
      ];
    case 'faces': {
      const { columns, rows } = facesTable(block);
      return tableFacts(columns, rows);
    }
    case 'form':
      return block.fields.map((field) => `to fill in: ${field}`);
    case 'ticks':
      return [
        ...(block.note === undefined ? [] : [`${block.label}: ${block.note}`]),
        ...block.items.flatMap(tickFacts).map((fact) => `${block.label}: ${fact}`),
      ];
    case 'curve':
      return curveFacts(block.label, block.curve);
    case 'boxes':
      return block.panels.flatMap(({ label, places, boxes }) =>
        places.map(
          ({ name }) => `${label}: to read: point ${name}${boxes === 1 ? '' : `, ${boxes} times`}`,
        ),
      );
  }
}

/** What stands before the pieces of a text that has no label of its own. */
const UNNAMED = 'Note';

/** So long a label may be before each of its pieces. */
const LONGEST_LABEL = 32;

function labelled(label: string, parts: readonly string[]): readonly string[] {
  const [short, first] = shortened(label);
  return [...first, ...parts.map((part) => `${short}: ${part}`)];
}

/** Its first words, and the whole in a line of its own where they are not all. */
function shortened(label: string): readonly [string, readonly string[]] {
  const [short = label] = label.split(/, | \(|; |: /, 1);
  const isWhole = label.length <= LONGEST_LABEL || short === label || short === '';
  return isWhole ? [label, []] : [short, [label]];
}

/** An item that is set in belongs to the one above it: `Inputs, readings.csv: utf-8`. */
function listFacts(label: string, items: readonly string[]): readonly string[] {
  const [short, first] = shortened(label);
  const facts: string[] = [...first];
  let above = short;
  items.forEach((item, i) => {
    const isPart = SET_IN.test(item);
    const isAbove = !isPart && !item.startsWith(POINTER) && SET_IN.test(items[i + 1] ?? '');
    if (!isPart) above = isAbove ? `${short}, ${item.replace(/:$/, '')}` : short;
    if (!isAbove) facts.push(`${above}: ${item}`);
  });
  return facts;
}

const SET_IN = /^[ \u00a0]{2}/;
/** Points at the one that binds, which stands in line with the others. */
const POINTER = '→';

/** Each box by itself where the item says what each stands for. */
function tickFacts({ text, boxes, apart }: Tick): readonly string[] {
  if (boxes === 0) return [text];
  if (apart !== undefined) return apart.map((one) => `to do: ${one}`);
  return [boxes === 1 ? `to do: ${text}` : `to do ${boxes} times: ${text}`];
}

/** A clause ends at `; `, a sentence at `. ` before a capital; within brackets neither does. */
function clauses(text: string): readonly string[] {
  const found: string[] = [];
  let depth = 0;
  let start = 0;
  for (let at = 0; at < text.length; at += 1) {
    if (text[at] === '(') depth += 1;
    if (text[at] === ')') depth = Math.max(0, depth - 1);
    const ends = depth === 0 && text[at + 1] === ' ' && endsAt(text, at);
    if (!ends) continue;
    found.push(text.slice(start, text[at] === ';' ? at : at + 1));
    start = at + 2;
  }
  return [...found, text.slice(start)];
}

const endsAt = (text: string, at: number): boolean =>
  (text[at] === ';' && !POINTS_BACK.test(text.slice(at + 2))) ||
  (text[at] === '.' && /^\p{Lu}\p{Ll}/u.test(text.slice(at + 2)));

/** A figure without what it is of, or a word for what was named before; `+1 %: …` names itself. */
const POINTS_BACK =
  /^(?![^;:]{1,12}: )(?:[±+−<>~×]|[\d.,–]+[ \u00a0](?:%|µm|mil|h)(?![\p{L}])|(?:so|and|but|it|its|they|their|there|as|in|of|the same|less|outside|of them|check)\b)/u;

function curveFacts(label: string, { across, up, line, marks }: Curve): readonly string[] {
  const at = ({ x, y }: CurvePoint): string => `${axisText(across, x)}, ${axisText(up, y)}`;
  return [
    ...line.map((point) => `${label}: ${at(point)}`),
    ...marks.map((mark) => `${label}: ${mark.name}: ${at(mark)}`),
  ];
}

const axisText = (axis: CurveAxis, value: number): string =>
  spaced(axis.title, axisFigure(value, axis), axis.unit);
