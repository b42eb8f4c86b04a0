/**
 * Whether more came off a part than might go, and which of its limits it is beyond by now.
 *
 * - perhaps more than might go, at marked points: what was measured lies over what might go, though its interval
 *   reaches under that, even under nothing. Where nothing might go film surely came off, else more than one SD.
 * - more than might go: the whole 95 % interval of what came off lies over what the plan, else the survey before the
 *   work, allowed. A forecast may be off by far more, and bears nothing out here: what may go is what may go.
 * - a limit passed, where film surely came off: more gone than may come off over the panel's life; the smallest point
 *   under the floor of the total; less clear expected on the thinnest 5 % than must stay.
 * - with any of these, the chance that the clear is under its floor by now, where it is over the one accepted.
 */
import { type Remark, remark } from '../../base/remark.ts';
import { finePercent, LEAST_TENTH, roundTo } from '../../base/rounding.ts';
import { bare, type Sentence, says, um } from '../../base/sentence.ts';
import { expandedUncertainty, standardUncertainty } from '../../base/uncertainty.ts';
import { type Micrometres, micrometres } from '../../base/units.ts';
import type { FilmChange } from '../../film/compare/compare-change.ts';
import type { PanelComparison } from '../../film/compare/panel-comparison.ts';
import type { Allowance } from '../../film/limits/allowance.ts';
import type { AllowanceGrounds } from '../../film/limits/allowance-at.ts';
import type { Limit, LimitRoom } from '../../film/limits/limit.ts';
import type { TopcoatCase } from '../../film/limits/topcoat-cases.ts';
import { topcoatRisk } from '../../film/limits/topcoat-risk.ts';
import type { PanelSurvey } from '../../film/survey.ts';

export type OverrunCode =
  | 'more-than-allowed'
  | 'perhaps-more-than-allowed'
  | 'life-passed'
  | 'total-passed'
  | 'clear-passed'
  | 'clear-at-risk';

/** What might go before the work, and who said so. */
export type Allowed = { readonly most: Micrometres; readonly by: 'plan' | 'survey' };

export type OverrunCase = {
  readonly change: FilmChange;
  /** By marked points: means over other places say too little for a doubt. */
  readonly isPaired: boolean;
  readonly allowed: Allowed | null;
  /** As the part stands now. */
  readonly left: Allowance;
  readonly grounds: AllowanceGrounds;
  /** As the part was before the work: what was gone by then. */
  readonly before: PanelSurvey | undefined;
};

/** Nothing where the part kept to what might go and to its limits. */
export function overruns(part: OverrunCase): readonly Remark[] {
  const { change, left, grounds } = part;
  const passed = [...overAllowed(part), ...(change.resolved ? limitsPassed(part) : [])];
  return passed.length === 0 || isPerhapsOver(passed)
    ? passed
    : [...passed, ...clearAtRisk(left, grounds.terms)];
}

/** Whether too much came off: more than might go, or a limit is passed. */
export const isOver = (overruns: readonly Remark[]): boolean =>
  overruns.some(({ code }) => code !== 'perhaps-more-than-allowed');

/** Whether perhaps more came off than might go, and nothing is surely wrong. */
export const isPerhapsOver = (overruns: readonly Remark[]): boolean =>
  overruns.length > 0 && !isOver(overruns);

/** By means over other places a figure over what might go is no doubt yet, and no leave either. */
export const isOverUnknown = (
  { by, change, gained }: Pick<PanelComparison, 'by' | 'change' | 'gained'>,
  allowed: Allowed | null,
  overruns: readonly Remark[],
): boolean =>
  by === 'means' &&
  change !== null &&
  !gained &&
  allowed !== null &&
  change.removed.value > allowed.most &&
  !overruns.some(({ code }) => code === 'more-than-allowed');

function overAllowed({ change, isPaired, allowed }: OverrunCase): readonly Remark[] {
  const { removed } = change;
  if (allowed === null || removed.value <= allowed.most) return [];
  const isSure = change.low > allowed.most;
  if (!isSure && !(isPaired && isSomeGone(change, allowed))) return [];
  return [
    remark(
      isSure ? 'more-than-allowed' : 'perhaps-more-than-allowed',
      says`${bare(removed.value)} ± ${um(expandedUncertainty(removed))} came off, ${mightGo(allowed)}`,
      allowed.most,
    ),
  ];
}

/** Half of the panels that nobody touched read some film less: where nothing might go that is no doubt yet. */
const isSomeGone = ({ removed, resolved }: FilmChange, { most }: Allowed): boolean =>
  resolved || (most > 0 && removed.value > standardUncertainty(removed));

/** `4.54 µm might go by the plan` */
export function mightGo({ most, by }: Allowed): Sentence {
  const said = by === 'plan' ? 'the plan' : 'the survey before the work';
  return most === 0 ? says`nothing might go by ${said}` : says`${um(most, 2)} might go by ${said}`;
}

/** Of one point, where what came off there is more than might go; `said` says how much. */
export const perhapsOver = (
  said: Sentence,
  removed: Micrometres,
  allowed: Allowed | null,
): readonly Remark[] =>
  allowed === null || removed <= allowed.most
    ? []
    : [remark('perhaps-more-than-allowed', says`${said}, ${mightGo(allowed)}`, allowed.most)];

function limitsPassed(part: OverrunCase): readonly Remark[] {
  const { limits, topcoat } = part.left;
  const thinnest = roundTo(100 * part.grounds.model.topcoat.thinnestShare, 1);
  const [life, total] = [passedRoom(limits, 'life'), passedRoom(limits, 'total')];
  return [
    ...(life === null
      ? []
      : [
          remark(
            'life-passed',
            says`${bare(life.less)} of the ${um(life.of)} that may come off over its life are gone${wherefrom(life.less, part)}`,
            life.less,
          ),
        ]),
    ...(total === null
      ? []
      : [
          remark(
            'total-passed',
            says`the smallest point reads ${um(total.of)}, ${bare(total.less, 0)} must stay`,
            total.of,
          ),
        ]),
    ...(topcoat === null || topcoat.clear.mean >= topcoat.clearFloor
      ? []
      : [
          remark(
            'clear-passed',
            says`on the thinnest ${thinnest} % ${um(Math.max(0, topcoat.clear.mean))} of ${coatOf(topcoat)} are expected, ${bare(topcoat.clearFloor)} must stay`,
            Math.max(0, topcoat.clear.mean),
          ),
        ]),
  ];
}

/** What of it was measured here, and what is held of earlier work. */
function wherefrom(gone: Micrometres, { change, before, grounds }: OverrunCase): Sentence {
  const earlier = gone - change.removed.value;
  if (before === undefined || earlier < LEAST_TENTH) return says``;
  const { facts } = before;
  const here = says`: ${bare(change.removed.value)} measured here, ${bare(earlier)}`;
  const assumed = facts.taken === null ? grounds.model.earlier.unknownLife : 0;
  if (earlier - assumed < LEAST_TENTH) return says`${here} assumed of earlier work`;
  if (facts.taken !== null && Math.abs(earlier - facts.taken) < LEAST_TENTH) {
    return says`${here} by what is stated of earlier work`;
  }
  return assumed === 0 ? says`${here} before` : says`${here} taken to be gone before`;
}

/** The room of a limit in which less than nothing is left. */
const passedRoom = (limits: readonly Limit[], code: Limit['code']): LimitRoom | null => {
  const room = limits.find((one) => one.code === code)?.room;
  return room !== undefined && room.of < room.less ? room : null;
};

/** Single-stage paint has no clear to lose. */
const coatOf = ({ finish }: TopcoatCase): 'clear' | 'topcoat' =>
  finish === 'single-stage' ? 'topcoat' : 'clear';

function clearAtRisk(
  { topcoat }: Allowance,
  { risk, logSd }: AllowanceGrounds['terms'],
): readonly Remark[] {
  const coat = topcoat === null ? 'clear' : coatOf(topcoat);
  const now = topcoat === null ? 0 : topcoatRisk(topcoat, { median: micrometres(0), logSd });
  return now <= risk
    ? []
    : [
        remark(
          'clear-at-risk',
          `the ${coat} is under its floor by now with a chance of ${finePercent(now)}, and ${finePercent(risk)} was accepted`,
          now,
        ),
      ];
}
