/**
 * Blocks → one fact a line, for screen readers, logs and `grep`: no boxes, no columns, no drawings, no
 * colour. A cell of a table is `bonnet: min 94.1 µm`: the row, what the column shows, the value and
 * its unit. A part of a row stands with it: `bonnet, thinner zone: …`.
 *
 * What a text says in several facts has its label before each, so that a label from a file begins no line
 * of its own.
 */
import {
  type Block,
  type Curve,
  type CurveAxis,
  type CurvePoint,
  eachFact,
  type Tick,
} from '../report/model.ts';
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
    case 'paragraph':
      return labelled(block, eachFact(block.text));
    case 'list':
      return labelled(block, block.items.flatMap(eachFact));
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

/** What stands before the facts of a text that has no label of its own. */
const UNNAMED = 'Note';

/** A label that is long is said once, and its short form before each fact. */
function labelled(
  { label, short }: { readonly label: string | null; readonly short?: string },
  facts: readonly string[],
): readonly string[] {
  if (label === null && facts.length === 1) return facts;
  const before = short ?? label ?? UNNAMED;
  const whole = short === undefined ? [] : [label ?? UNNAMED];
  return [...whole, ...facts.map((fact) => `${before}: ${fact}`)];
}

/** Each box by itself where the item says what each stands for. */
function tickFacts({ text, boxes, apart }: Tick): readonly string[] {
  if (boxes === 0) return [text];
  if (apart !== undefined) return apart.map((one) => `to do: ${one}`);
  return [boxes === 1 ? `to do: ${text}` : `to do ${boxes} times: ${text}`];
}

function curveFacts(label: string, { across, up, line, marks }: Curve): readonly string[] {
  const at = ({ x, y }: CurvePoint): string => `${axisText(across, x)}, ${axisText(up, y)}`;
  return [
    ...line.map((point) => `${label}: ${at(point)}`),
    ...marks.map((mark) => `${label}: ${mark.name}: ${at(mark)}`),
  ];
}

const axisText = (axis: CurveAxis, value: number): string =>
  spaced(axis.title, axisFigure(value, axis), axis.unit);
