/**
 * Which parts of a page stand on which sheets of its PDF. A browser writes the tree of elements into the
 * file, and beside each piece of ink the element it belongs to and the sheet it stands on (ISO 32000-1,
 * 14.7, "Logical structure"): an element with ink on two sheets was cut.
 */

export type Part = {
  /** `Table`, `TR`, `TH`, `TD`, `Figure`, `L`, `LI`, `P`, … */
  readonly role: string;
  /** Numbers of the sheets with ink of it, from 1, in order. */
  readonly sheets: readonly number[];
  readonly parts: readonly Part[];
};

export type PrintedPage = { readonly sheets: number; readonly root: Part };

/** An object of the file, by its number, as it is written there. */
type Objects = ReadonlyMap<number, string>;

export function readTaggedPdf(bytes: Uint8Array): PrintedPage {
  const objects = objectsOf(Buffer.from(bytes).toString('latin1'));
  const sheets = sheetsOf(objects);
  const [rootNumber] = [...objects].find(([, text]) => /\/S \/Document\b/.test(text)) ?? [];
  if (rootNumber === undefined) throw new Error('the PDF has no tree of elements');
  return { sheets: sheets.size, root: partOf(rootNumber, objects, sheets) };
}

/** Objects stand at the beginning of a line; what is compressed inside is passed over. */
const objectsOf = (text: string): Objects =>
  new Map(
    [...text.matchAll(/(?:^|\n)(\d+) 0 obj\r?\n(.*?)(?:\nstream|>> stream|\nendobj)/gs)].map(
      ([, number = '', body = '']) => [Number(number), body],
    ),
  );

/** Each sheet by the number of its object, in the order in which they are bound. */
function sheetsOf(objects: Objects): ReadonlyMap<number, number> {
  const root = [...objects.values()].find((text) => /\/Type \/Catalog\b/.test(text)) ?? '';
  const first = Number(/\/Pages (\d+) 0 R/.exec(root)?.[1]);
  const bound = (number: number): readonly number[] => {
    const text = objects.get(number) ?? '';
    if (!/\/Type \/Pages\b/.test(text)) return [number];
    return referencesIn(/\/Kids \[(.*?)\]/s.exec(text)?.[1] ?? '').flatMap(bound);
  };
  return new Map(bound(first).map((number, at) => [number, at + 1]));
}

const referencesIn = (text: string): readonly number[] =>
  [...text.matchAll(/(\d+) 0 R/g)].map(([, number]) => Number(number));

function partOf(number: number, objects: Objects, sheets: ReadonlyMap<number, number>): Part {
  const text = objects.get(number) ?? '';
  const kids = /\/K (?:\[(.*?)\](?=\s*(?:\/|>>))|(\d+ 0 R|\d+|<<.*?>>))/s.exec(text);
  const inside = kids?.[1] ?? kids?.[2] ?? '';
  // Ink by its number stands on the element's own sheet; elsewhere the sheet is named beside it.
  const elsewhere = [...inside.matchAll(/<<.*?>>/gs)].flatMap(([one]) =>
    referencesIn(/\/Pg (\d+ 0 R)/.exec(one)?.[1] ?? ''),
  );
  const plain = inside.replaceAll(/<<.*?>>/gs, '');
  const hasInk = /(?:^|\s)\d+(?=\s|$)/.test(plain.replaceAll(/\d+ 0 R/g, ''));
  const own = hasInk ? referencesIn(/\/Pg (\d+ 0 R)/.exec(withoutKids(text))?.[1] ?? '') : [];
  const parts = referencesIn(plain).map((one) => partOf(one, objects, sheets));
  const all = [...own, ...elsewhere].flatMap((page) => sheets.get(page) ?? []);
  return {
    role: /\/S \/(\w+)/.exec(text)?.[1] ?? '',
    sheets: [...new Set([...all, ...parts.flatMap((part) => part.sheets)])].sort((a, b) => a - b),
    parts,
  };
}

const withoutKids = (text: string): string => text.replace(/\/K \[.*?\](?=\s*(?:\/|>>))/s, '');

export const partsOf = (part: Part, role: string): readonly Part[] => [
  ...(part.role === role ? [part] : []),
  ...part.parts.flatMap((one) => partsOf(one, role)),
];
