/** What each thing that would help is, and what it takes. */
import { type Sentence, says, um } from '../../base/sentence.ts';
import { spotTakes } from '../../correction/spot/test-spot-forecast.ts';
import { isOnRecord } from '../../film/limits/earlier-work.ts';
import { type PanelSurvey, partName } from '../../film/survey.ts';
import type { SurveyResult } from '../../tasks/survey/survey-vehicle.ts';
import { gainRange } from './gain-groups-text.ts';
import type { ColumnCode, Gain } from './gain-table.ts';
import { minutes } from './help-lines.ts';

type Means = (own: readonly Gain[], of: HelpMeansOf) => readonly Sentence[];

export type HelpMeansOf = {
  readonly parts: readonly PanelSurvey[];
  readonly result: SurveyResult;
};

export const MEANS: Readonly<Record<ColumnCode, Means>> = {
  history: (own) => [says`if never polished${besides(own)} (taken_um)`, ...ifGone(own)],
  clear: (own) => [
    says`ultrasonic gauge for layers, ${timeOf(own)} a panel`,
    ...endsAtLife(own),
    says`a loss if it reads thin`,
  ],
  'test-spot': (own, { parts, result }) => {
    return [
      says`a patch polished, read before and after (leastcut spot), one for all, ${timeOf(own)}`,
      ...lostToPatch(parts, result),
      ...scatter(own),
    ];
  },
};

/** `test spot’s patch: −1.3 µm, best on roof`. */
export function lostToPatch(
  parts: readonly PanelSurvey[],
  { settings }: Pick<SurveyResult, 'settings'>,
): readonly Sentence[] {
  const takes = spotTakes(settings.correction);
  return takes === null ? [] : [says`test spot’s patch: −${um(takes)}${bestOn(parts, takes)}`];
}

/** What a record holds of a panel is known, and is no question of its history. */
const besides = (own: readonly Gain[]): string =>
  own.some(({ part }) => isOnRecord(part.facts)) ? ' but as on record' : '';

/** `4 µm gone: −0.95 to −1.11 µm`: what is not known may turn out to be more than is allowed for. */
export function ifGone(own: readonly Gain[]): readonly Sentence[] {
  const others = own.flatMap(({ otherwise }) => otherwise ?? []);
  const taken = others[0]?.taken;
  return taken === undefined
    ? []
    : [says`${um(taken, null)} gone: ${gainRange(others.map(({ gain }) => gain))}`];
}

/** Every gain ends at the next limit: where that is the one over a panel's life, it is told what that allows then. */
function endsAtLife(own: readonly Gain[]): readonly Sentence[] {
  const ends = own.flatMap(({ part, gain }) => {
    const end = part.budget + gain;
    return end > lifeOf(part) - SAME ? [end] : [];
  });
  return ends.length === 0 ? [] : [says`${um(Math.max(...ends), 2)} in all at most (life)`];
}

const lifeOf = ({ limits }: PanelSurvey): number =>
  limits.find(({ code }) => code === 'life')?.value ?? Number.POSITIVE_INFINITY;

/** A removal that is foretold better scatters less, so that more may be planned by every limit. */
const scatter = (own: readonly Gain[]): readonly Sentence[] =>
  own.some(({ part, gain }) => part.budget + gain > lifeOf(part) + SAME)
    ? [says`removal surer, so life allows more`]
    : [];

/** µm by which two figures of two decimals may differ. */
const SAME = 0.01;

/** Narrowest flat stretch that a full-size pad lies on, mm. */
const FULL_PAD = 150;

/**
 * A large outer panel (common practice): a sill is often coated against stones, of another gloss, and painted again
 * more often than others, so what is learnt there need not hold for doors and roof.
 */
const isLargeOuter = ({ panel: { facing, flatWidth } }: PanelSurvey): boolean =>
  facing !== 'low' && flatWidth >= FULL_PAD;

/** The original panel with most to spare bears it best: of the large ones that may give what it takes, else of all. */
function bestOn(parts: readonly PanelSurvey[], takes: number): string {
  const original = parts.filter(({ condition }) => condition === 'original');
  const large = original.filter((part) => isLargeOuter(part) && part.budget >= takes);
  const [first, ...rest] = large.length === 0 ? original : large;
  if (first === undefined) return '';
  const most = rest.reduce((best, one) => (one.budget > best.budget ? one : best), first);
  return `, best on ${partName(most)}`;
}

function timeOf(gains: readonly Gain[]): string {
  const time = gains[0]?.time ?? null;
  return time === null ? '' : minutes(time);
}
