/** Where each role stands in a header. */
import type { GaugeRole } from './gauge-vocabulary.ts';
import type { HeaderCell } from './header.ts';

/** Roles that texts are kept of: two of them (date, time) are read as one. */
export const joinedRoles: ReadonlySet<GaugeRole> = new Set([
  'operator',
  'time',
  'substrate',
  'note',
]);

export function columnsByRole(header: readonly HeaderCell<GaugeRole>[]): {
  readonly columns: ReadonlyMap<GaugeRole, number>;
  readonly repeated: readonly number[];
} {
  const columns = new Map<GaugeRole, number>();
  const repeated: number[] = [];
  for (const [column, { role }] of header.entries()) {
    if (role === undefined) continue;
    if (!columns.has(role)) columns.set(role, column);
    else if (!joinedRoles.has(role)) repeated.push(column);
  }
  return { columns, repeated };
}
