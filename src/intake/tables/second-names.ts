/**
 * Two columns that name the same thing twice, `VIN;Reg`, `Part no;Panel`, `Position;Point`: each text of the one goes
 * with one text of the other throughout, so that nothing is lost where one of them is not read. Of two names of a
 * panel the known one is kept, of two of a point the number; else the first. Where one of them says more than the
 * other, both are left as they are and refused.
 */

import { unitNamed } from '../cells/unit.ts';
import { placeNamed } from '../cells/words.ts';
import type { GaugeRole } from '../header/gauge-vocabulary.ts';
import { withoutRole } from '../header/header.ts';
import { stemOfLabel } from '../header/label-numbers.ts';
import { cellText } from '../rows/row.ts';
import type { Table } from './table.ts';

type IsPanel = (label: string) => boolean;
type Texts = readonly string[];
const twice: ReadonlySet<GaugeRole> = new Set(['vehicle', 'panel', 'point', 'unit'] as const);

export function withoutSecondNames(
  table: Table,
  isPanel: IsPanel,
): { readonly table: Table; readonly evidence: readonly string[] } | undefined {
  const { layout } = table;
  const own = layout.repeated.flatMap((second) => {
    const role = layout.header[second]?.role;
    const first = role === undefined ? undefined : layout.columns.get(role);
    if (role === undefined || first === undefined || !twice.has(role)) return [];
    // `Position (mm)` is a length.
    if ([first, second].some((k) => layout.header[k]?.unit !== undefined)) return [];
    const kept = keptOf(table, role, [first, second], isPanel);
    return kept === undefined ? [] : [{ role, kept, left: kept === first ? second : first }];
  });
  // Three names of one thing are not looked at.
  if (own.length === 0 || new Set(own.map(({ role }) => role)).size < own.length) return undefined;
  const left = new Set(own.map((one) => one.left));
  const columns = new Map(layout.columns);
  for (const { role, kept } of own) columns.set(role, kept);
  const header = layout.header.map((cell, k) => (left.has(k) ? withoutRole(cell) : cell));
  const repeated = layout.repeated.filter(
    (k) => !own.some(({ kept, left: l }) => k === kept || k === l),
  );
  const unknown = [...layout.unknown, ...left].sort((a, b) => a - b);
  const name = (k: number): string => `"${layout.header[k]?.text ?? ''}"`;
  return {
    table: { ...table, layout: { ...layout, header, columns, repeated, unknown } },
    evidence: own.map(
      (one) =>
        `${name(one.left)} is a second name of what ${name(one.kept)} names: the two go together`,
    ),
  };
}

function keptOf(
  { layout, rows }: Table,
  role: GaugeRole,
  [first, second]: readonly [number, number],
  isPanel: IsPanel,
): number | undefined {
  const groups = role === 'point' ? (['vehicle', 'panel', 'layer'] as const) : [];
  const keys = groups.flatMap((other) => layout.columns.get(other) ?? []);
  const pairs = rows.map((row) => {
    const text = (k: number): string => cellText(row, k);
    return { group: keys.map(text).join('\0'), a: text(first), b: text(second) };
  });
  const [as, bs] = [pairs.map(({ a }) => a), pairs.map(({ b }) => b)];
  const firstIsKept = isFirstKept(role, as, bs, isPanel);
  if (firstIsKept === undefined || rows.length < 2) return undefined;
  const [own, other] = firstIsKept ? [as, bs] : [bs, as];
  if (own.some((text, k) => text === '' && other[k] !== '')) return undefined;
  if (role === 'unit')
    return own.every((text, k) => isSameUnit(text, other[k])) ? first : undefined;
  const named = pairs.filter(({ a, b }) => a !== '' && b !== '');
  const goTogether =
    isFunction(named.map(({ group, a, b }) => [`${group}\0${a}`, b])) &&
    isFunction(named.map(({ group, a, b }) => [`${group}\0${b}`, a]));
  if (!goTogether) return undefined;
  return firstIsKept ? first : second;
}

/** Undefined where neither is known to be the better name, or a point may lie at an edge. */
function isFirstKept(role: GaugeRole, as: Texts, bs: Texts, isPanel: IsPanel): boolean | undefined {
  if (role === 'panel') {
    if (areKnown(as, isPanel) && areCodes(bs)) return true;
    return areKnown(bs, isPanel) && areCodes(as) ? false : undefined;
  }
  if (role !== 'point') return true;
  const isFace = (text: string): boolean => (placeNamed(text) ?? 'face') === 'face';
  if (![...as, ...bs].every(isFace)) return undefined;
  const areNumbers = (texts: Texts): boolean => texts.every((text) => /^\d*$/u.test(text));
  if (areNumbers(as) && areNumbers(bs)) return undefined;
  return !areNumbers(bs);
}

const areKnown = (texts: Texts, isPanel: IsPanel): boolean =>
  texts.every((text) => text === '' || isPanel(stemOfLabel(text)));

/** `P01`, `51.41.7`: words may say on which side a panel is, and are not left unread. */
const areCodes = (texts: Texts): boolean => texts.every((text) => text === '' || /\d/u.test(text));

const isSameUnit = (a: string, b = ''): boolean =>
  a === b || b === '' || (unitNamed(a) !== undefined && unitNamed(a) === unitNamed(b));

function isFunction(pairs: readonly (readonly [string, string])[]): boolean {
  const known = new Map<string, string>();
  return pairs.every(([key, value]) => {
    const before = known.get(key);
    known.set(key, value);
    return before === undefined || before === value;
  });
}
