/** Marks of a test spot that read more after than before: their film tells nothing of what went. */
import { type Diagnostic, warning } from '../../base/diagnostics.ts';
import { shown } from '../../base/rounding.ts';
import { normalQuantile } from '../../base/stats/normal.ts';
import type { SpotRow } from '../../intake/read-spots-file.ts';

/** Chance that noise alone makes any mark of a spot read so much more. */
const GAIN_RISK = 0.01;
/** Of so many marks that all read more, seven in eight do so for another reason than noise even where nothing went. */
const ALL_OF = 3;

export type SpotGains = {
  readonly diagnostics: readonly Diagnostic[];
  /** Rows whose film does not count. */
  readonly out: ReadonlySet<SpotRow>;
};

/** Counted, they would make the paint harder than it is, and a plan take more than it says. */
export function spotGains(rows: readonly SpotRow[], repeatability: number): SpotGains {
  const marked = rows.filter(({ before, after }) => before !== null && after !== null);
  const [first] = marked;
  if (first !== undefined && marked.length >= ALL_OF && marked.every((row) => gainOf(row) > 0)) {
    return { diagnostics: [allGained(first, marked.length)], out: new Set(marked) };
  }
  const noise =
    normalQuantile(1 - GAIN_RISK / Math.max(1, marked.length)) * repeatability * Math.SQRT2;
  const gained = marked.filter((row) => gainOf(row) > noise);
  return { diagnostics: gained.map(markGained), out: new Set(gained) };
}

const gainOf = ({ before, after }: SpotRow): number => (after ?? 0) - (before ?? 0);

const CHECK = 'check the gauge, wipe off polish and wax, let the panel cool, read again';

const allGained = (first: SpotRow, count: number): Diagnostic =>
  warning(
    'spot-film-gained',
    `all ${count} marks of spot "${first.spot}" read more after than before: its film does not count`,
    { at: first.placeOf('after'), hint: `before and after swapped? correct them; else ${CHECK}` },
  );

const markGained = (row: SpotRow): Diagnostic =>
  warning(
    'spot-film-gained',
    `mark "${row.mark}" of spot "${row.spot}" reads ${shown(gainOf(row), 1)} µm more after than before: it does not count`,
    { at: row.placeOf('after'), hint: CHECK },
  );
