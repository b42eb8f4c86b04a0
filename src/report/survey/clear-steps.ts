/** How the estimate of a topcoat comes about, as a chain of figures that can be followed by hand. */
import { LEAST_TOLD, roundTo, shown } from '../../base/rounding.ts';
import { bare, type Sentence, says, um } from '../../base/sentence.ts';
import { normalQuantile } from '../../base/stats/normal.ts';
import type { FilmModel, StatedLayer } from '../../film/film-model.ts';
import type { ClearChain } from '../../film/limits/thin-clear.ts';
import type { TopcoatCase } from '../../film/limits/topcoat-cases.ts';
import type { PanelFilm } from '../../film/panel-film.ts';
import type { PanelSurvey } from '../../film/survey.ts';

/** Two digits, so that a line adds up as it is printed. */
const b = (thickness: number) => bare(thickness, 2);
const u = (thickness: number) => um(thickness, 2);
const plusMinus = ({ mean, variance }: { readonly mean: number; readonly variance: number }) =>
  says`${b(mean)} ± ${u(Math.sqrt(variance))}`;

export function clearSteps(
  survey: PanelSurvey,
  chain: ClearChain,
  model: FilmModel,
): readonly Sentence[] {
  const { film, topcoat } = survey;
  if (film === null || topcoat === null) return [];
  const { under, byTotal, within, overPanel, atPlace } = chain;
  const { thinnestShare } = model.topcoat;
  const z = shown(normalQuantile(1 - thinnestShare), 3);
  const withinSd = Math.sqrt(within.variance);
  const { mean, sd } = topcoat.clear;
  return [
    ...heldStep(survey, chain, model.earlier),
    says`by the total alone: ${b(film.mean)}${lowerReader(film)} − ${b(under.mean)} under it = ${plusMinus(byTotal)}`,
    ...toldStep(chain),
    says`over the panel: ${plusMinus(overPanel)}`,
    says`on the thinnest ${roundTo(100 * thinnestShare, 1)} %: ${b(overPanel.mean)} − ${z} × ${b(withinSd)}, its part of the spread,${goneAtOnePlace(atPlace)} = ${b(mean)} ± ${u(sd)}, the doubt of the spread (${shown(within.dof, 0)} degrees of freedom) in it`,
  ];
}

const goneAtOnePlace = (gone: ClearChain['atPlace']): Sentence =>
  gone.mean === 0 && gone.variance === 0
    ? says``
    : says` − ${plusMinus(gone)} gone at one place alone`;

/** Of two operators who differ the lower may be right. */
const lowerReader = ({ operators }: PanelFilm): Sentence =>
  operators === undefined ? says`` : says` − ${b(operators)} between operators`;

/** What is held of the topcoat before the total is looked at. */
function heldStep(
  { topcoat, facts }: PanelSurvey,
  chain: ClearChain,
  earlier: FilmModel['earlier'],
): readonly Sentence[] {
  const { held } = chain;
  if (held === null || topcoat === null) return [];
  const { statedClear, top } = topcoat.told.knowledge;
  if (statedClear?.of === 'panel') {
    return [says`as read or stated of this panel: ${plusMinus(held)}`];
  }
  const painted = statedClear?.mean ?? top.mean;
  const from = paintedBy(statedClear);
  const taken = goneAllOver(topcoat).mean;
  const gone = facts.taken ?? earlier.unknownClear;
  const recorded = (facts.recorded?.allOver ?? facts.recorded)?.mean ?? 0;
  const missing = taken - gone - recorded;
  const parts = [
    says`${b(gone)} polished off, ${facts.taken === null ? 'assumed' : 'stated'}`,
    ...(recorded === 0 ? [] : [says`, ${b(recorded)} on record`]),
    ...(missing < LEAST_TOLD ? [] : [says`, ${b(missing)} that it lacks against the baseline`]),
  ];
  return [
    says`before the total is looked at: ${b(painted)} ${from} − ${b(taken)} not there any more (${parts.flat()}) = ${plusMinus(held)}${heldDoubt(topcoat, chain)}`,
  ];
}

const goneAllOver = ({ told: { film } }: Pick<TopcoatCase, 'told'>) =>
  film.taken.allOver ?? film.taken;

function paintedBy(clear: StatedLayer | null): string {
  if (clear === null) return 'as factories paint';
  const { readOn, withStated } = clear;
  if (withStated) return 'as stated of the car and as read on other panels of it';
  return readOn === undefined
    ? 'as stated of the car'
    : `as factories paint and as read on ${readOn} other panel${readOn === 1 ? '' : 's'}`;
}

/** How the doubt of what factories paint comes about: its part within the panel is told apart. */
function heldDoubt({ told }: TopcoatCase, { within }: ClearChain): Sentence {
  const { statedClear, top } = told.knowledge;
  if (statedClear !== null) return [];
  const { sd } = goneAllOver({ told });
  const record = sd === 0 ? '' : says` + ${b(sd)}² of what was taken`;
  return says`, ± √(${b(top.sd)}² − ${b(Math.sqrt(within.variance))}² within the panel${record})`;
}

/** What the total adds to what was held. */
function toldStep({ held, byTotal, share, gapCounted }: ClearChain): readonly Sentence[] {
  if (held === null) return [];
  const gap = byTotal.mean - held.mean;
  return gapCounted === 0
    ? [
        says`that is ${u(gap)} more: thick film adds no topcoat, as it may be thick under it, but makes a thin one less likely: only the doubt narrows (share g ${shown(share, 3)})`,
      ]
    : [
        says`what the total adds: share g ${shown(share, 3)} × ${signed(gapCounted)} = ${signed(share * gapCounted)}`,
      ];
}

const signed = (value: number): Sentence => (value < 0 ? says`−${u(-value)}` : says`${u(value)}`);
