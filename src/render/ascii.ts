/** A page whose every text is ASCII, before it is laid out: a sign may take more columns than it did. */
import {
  type Block,
  type BoxPanel,
  type Cell,
  type Column,
  type Curve,
  type CurveAxis,
  type Face,
  mapSaid,
  type Tick,
} from '../report/model.ts';
import { asciiText } from './ascii-text.ts';

export const asciiBlocks = (blocks: readonly Block[]): readonly Block[] => blocks.map(asciiBlock);

function asciiBlock(block: Block): Block {
  switch (block.kind) {
    case 'title':
      return { ...block, text: asciiText(block.text) };
    case 'gap':
      return block;
    case 'paragraph':
      return asciiParagraph(block);
    case 'list':
      return asciiList(block);
    case 'table':
      return asciiTable(block);
    case 'form':
      return { ...block, fields: block.fields.map(asciiText) };
    case 'ticks':
      return asciiTicks(block);
    case 'curve':
      return { ...block, label: asciiText(block.label), curve: asciiCurve(block.curve) };
    case 'faces':
      return asciiFaces(block);
    case 'boxes':
      return { ...block, panels: block.panels.map(asciiPanel) };
  }
}

type BlockOf<Kind extends Block['kind']> = Extract<Block, { kind: Kind }>;

const asciiParagraph = (block: BlockOf<'paragraph'>): Block => ({
  ...block,
  ...asciiShort(block),
  label: asciiOrNull(block.label),
  text: mapSaid(block.text, asciiText),
});

const asciiList = (block: BlockOf<'list'>): Block => ({
  ...block,
  ...asciiShort(block),
  label: asciiText(block.label),
  items: block.items.map((item) => mapSaid(item, asciiText)),
});

const asciiTable = (block: BlockOf<'table'>): Block => ({
  ...block,
  ...(block.label === undefined ? {} : { label: asciiText(block.label) }),
  columns: block.columns.map(asciiColumn),
  rows: block.rows.map((row) => row.map(asciiCell)),
});

const asciiTicks = (block: BlockOf<'ticks'>): Block => ({
  ...block,
  label: asciiText(block.label),
  ...(block.note === undefined ? {} : { note: asciiText(block.note) }),
  items: block.items.map(asciiTick),
});

const asciiFaces = (block: BlockOf<'faces'>): Block => ({
  ...block,
  label: asciiText(block.label),
  values: asciiText(block.values),
  faces: block.faces.map(asciiFace),
});

const asciiShort = ({ short }: { readonly short?: string }): { readonly short?: string } =>
  short === undefined ? {} : { short: asciiText(short) };

const asciiOrNull = (text: string | null): string | null =>
  text === null ? null : asciiText(text);

const asciiCell = (cell: Cell): Cell =>
  cell.kind === 'text' ? { ...cell, text: asciiText(cell.text) } : cell;

const asciiTick = ({ text, apart, ...rest }: Tick): Tick => ({
  ...rest,
  text: asciiText(text),
  ...(apart === undefined ? {} : { apart: apart.map(asciiText) }),
});

const asciiPanel = ({ label, towards, places, boxes }: BoxPanel): BoxPanel => ({
  label: asciiText(label),
  towards: towards === null ? null : { ...towards, word: asciiText(towards.word) },
  places: places.map((place) => ({ ...place, name: asciiText(place.name) })),
  boxes,
});

const asciiFace = ({ name, note, points }: Face): Face => ({
  name: asciiText(name),
  note: asciiText(note),
  points: points.map((point) => ({
    ...point,
    name: asciiText(point.name),
    value: asciiText(point.value),
  })),
});

const asciiColumn = ({ title, said, unit, ...rest }: Column): Column => ({
  ...rest,
  title: asciiText(title),
  ...(said === undefined ? {} : { said: asciiText(said) }),
  ...(unit === undefined ? {} : { unit: asciiText(unit) }),
});

const asciiAxis = (axis: CurveAxis): CurveAxis => ({
  ...axis,
  title: asciiText(axis.title),
  unit: asciiText(axis.unit),
});

const asciiCurve = ({ across, up, line, marks }: Curve): Curve => ({
  across: asciiAxis(across),
  up: asciiAxis(up),
  line,
  marks: marks.map((mark) => ({
    ...mark,
    sign: asciiText(mark.sign),
    name: asciiText(mark.name),
  })),
});
