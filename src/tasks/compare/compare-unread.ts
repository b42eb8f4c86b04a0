/**
 * Panels that were worked and not compared: nobody measured what went. As the plan had it, or the sets that were worked
 * of it, they are held to have lost the mean of what was foretold, with its whole spread: a panel that is forgotten would
 * be worked the next time as if nothing had gone.
 */
import { type Diagnostic, warning } from '../../base/diagnostics.ts';
import { shownFile } from '../../base/file-name.ts';
import { thicknessText } from '../../base/sentence.ts';
import type { ExpectedRemoval } from '../../film/limits/removal-risk.ts';
import type { Panel, VehicleTemplate } from '../../film/template/template.ts';
import type { KnownVisit } from '../../formats/film-record.ts';
import type { ForetoldPanel } from '../../formats/plan-file.ts';
import type { Planned } from './compare-plan.ts';
import type { Unrecorded } from './compare-unrecorded.ts';
import { isMeasured, kept, type VisitPanels } from './compare-visit-record.ts';

export type UnreadPanel = { readonly panel: Panel; readonly entry: VisitPanels[number] };

/** Ids of the panels that the visit on record holds as measured and that were not compared now: they stay as they were. */
export const measuredThen = (
  visit: Pick<KnownVisit, 'panels'> | undefined,
  compared: ReadonlySet<string>,
): ReadonlySet<string> =>
  new Set(
    (visit?.panels ?? [])
      .filter((one) => isMeasured(one) && !compared.has(one.panel))
      .map(({ panel }) => panel),
  );

/** Of the panels of a template, in its order. */
export const unreadPanels = (
  done: Planned,
  compared: ReadonlySet<string>,
  { panels }: Pick<VehicleTemplate, 'panels'>,
): readonly UnreadPanel[] =>
  panels
    .filter(({ id }) => !compared.has(id))
    .flatMap((panel) => {
      const plan = done.get(panel.id);
      const entry = plan === undefined ? null : entryOf(panel.id, plan);
      return entry === null ? [] : [{ panel, entry }];
    });

/** Nobody measured what went, and no plan foretold it. */
export const unreadUnplanned = (
  unplanned: readonly Panel[],
  compared: ReadonlySet<string>,
): readonly Unrecorded[] =>
  unplanned
    .filter(({ id }) => !compared.has(id))
    .map((panel) => ({
      panel,
      why: 'worked, by what is said, and not read after; the plan works nothing on it',
    }));

/** Null where nothing of it was worked. */
function entryOf(id: string, plan: ForetoldPanel): VisitPanels[number] | null {
  const parts = plan.zones.length === 0 ? [plan] : plan.zones;
  const held = parts.flatMap(({ removal }) => (removal === null ? [] : [momentsOf(removal)]));
  if (held.length === 0) return null;
  const most = held.reduce((one, other) => (other.mean > one.mean ? other : one));
  return {
    panel: id,
    taken_um: kept(Math.min(MOST_TAKEN, most.mean)),
    taken_sd_um: kept(Math.min(MOST_SD, most.sd)),
    not_read: true,
    allowed_um: plan.zones.length > 0 || plan.allowed === null ? null : kept(plan.allowed),
    over_allowed: null,
  };
}

/** Of a lognormal removal. */
function momentsOf({ median, logSd }: ExpectedRemoval): {
  readonly mean: number;
  readonly sd: number;
} {
  const mean = median * Math.exp(logSd ** 2 / 2);
  return { mean, sd: mean * Math.sqrt(Math.expm1(logSd ** 2)) };
}

/** All that a record can hold. */
const MOST_TAKEN = 100;
const MOST_SD = 20;

export const workedUnread = (
  unread: readonly UnreadPanel[],
  [before, after]: readonly [string, string],
): readonly Diagnostic[] =>
  unread.length === 0
    ? []
    : [
        warning(
          'compare-worked-unread',
          `planned and not compared, so held on the film record to have lost what the plan foretold: ${unread.map(heldText).join(', ')}`,
          {
            at: { file: after },
            hint: `read them, as rest.csv, and leastcut read ${shownFile(after)} rest.csv --format csv -o all.csv; then compare ${shownFile(before)} with all.csv once more, the record that is written now as --film-record; of a panel that was not worked say 0 sets with --worked`,
          },
        ),
      ];

const heldText = ({ panel, entry: { taken_um, taken_sd_um } }: UnreadPanel): string =>
  `${panel.name} (${thicknessText(taken_um, 'um')} ± ${thicknessText(taken_sd_um, 'um')} µm, SD)`;
