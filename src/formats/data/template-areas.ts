/**
 * Outer painted area of eight body classes by kind of panel, in square metres.
 *
 * A row marked `pair` holds left and right together; each side gets half. Basis: derived as sums of
 * simple shapes, ±25 %; no published table of painted areas by panel and body class was found. These
 * are defaults to be replaced by a template of one's own.
 */
export const bodyClasses = [
  'supermini',
  'hatch',
  'saloon',
  'estate',
  'coupe',
  'mid-suv',
  'double-cab-pickup',
  'medium-van',
] as const;

export type BodyClass = (typeof bodyClasses)[number];

export type AreaRow =
  | 'bonnet'
  | 'roof'
  | 'wings'
  | 'front-doors'
  | 'rear-doors'
  | 'rear-sides'
  | 'closure'
  | 'front-bumper'
  | 'rear-bumper'
  | 'sills'
  | 'mirrors'
  | 'rails'
  | 'cab-rear';

type Row = { readonly pair: boolean; readonly areas: readonly (number | null)[] };

const single = (...areas: readonly (number | null)[]): Row => ({ pair: false, areas });
const pair = (...areas: readonly (number | null)[]): Row => ({ pair: true, areas });

// biome-ignore format: one line per row keeps the columns of the table readable
const table: Readonly<Record<AreaRow, Row>> = {
  //                     supermini hatch saloon estate coupe SUV   pickup van
  'bonnet':       single(1.1,      1.4,  1.6,   1.6,   1.6,  1.8,  1.8,   1.1),
  'roof':         single(1.6,      1.8,  1.7,   2.3,   1.1,  2.4,  1.7,   5.5),
  'wings':          pair(0.9,      1.1,  1.2,   1.2,   1.2,  1.3,  1.4,   0.8),
  'front-doors':    pair(1.4,      1.6,  1.7,   1.7,   2.1,  1.9,  1.9,   2.2),
  'rear-doors':     pair(1.1,      1.4,  1.5,   1.5,   null, 1.7,  1.6,   null),
  'rear-sides':     pair(1.2,      1.6,  2.0,   2.2,   2.2,  1.9,  2.8,   9.5),
  'closure':      single(0.7,      0.8,  0.9,   0.8,   0.7,  1.0,  0.9,   2.6),
  'front-bumper': single(0.9,      1.0,  1.1,   1.1,   1.2,  1.2,  1.0,   0.7),
  'rear-bumper':  single(0.9,      1.0,  1.1,   1.1,   1.2,  1.1,  0.4,   0.5),
  'sills':          pair(0.35,     0.4,  0.4,   0.4,   0.5,  0.4,  0.4,   0.4),
  'mirrors':        pair(0.1,      0.1,  0.1,   0.1,   0.1,  0.15, 0.15,  0.2),
  'rails':          pair(0.25,     0.3,  0.3,   0.4,   0.2,  0.4,  0.3,   0.3),
  'cab-rear':     single(null,     null, null,  null,  null, null, 0.5,   null),
};

/** Area of one panel (one side of a pair), or null where the body class has no such panel. */
export function panelArea(row: AreaRow, bodyClass: BodyClass): number | null {
  const { pair: isPair, areas } = table[row];
  const area = areas[bodyClasses.indexOf(bodyClass)] ?? null;
  return area === null || !isPair ? area : area / 2;
}
