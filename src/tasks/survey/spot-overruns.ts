/** Test spots that took more than might go on their panel, and those that contradict what was held of paints: said first of all. */
import { counted } from '../../base/counted.ts';
import { type Remark, remark } from '../../base/remark.ts';
import { bare, type Sentence, says, um } from '../../base/sentence.ts';
import { type Micrometres, micrometres } from '../../base/units.ts';
import { removalPriors } from '../../correction/removal/removal-knowledge.ts';
import { contradiction, usualRemoval } from '../../correction/spot/spot-contradiction.ts';
import {
  hasRisen,
  type RemovedFilm,
  removedFilm,
  type SpotTrial,
} from '../../correction/spot/spot-trial.ts';
import { type PanelSurvey, partsOf } from '../../film/survey.ts';
import { copiedFrom } from './spots-by-age.ts';
import type { SurveyGrounds } from './survey-grounds.ts';

type Read = {
  readonly survey: PanelSurvey;
  readonly trial: SpotTrial;
  readonly removed: RemovedFilm;
};

/** `panels` as they were surveyed before any spot was counted. */
export function spotOverruns(
  panels: readonly PanelSurvey[],
  {
    trials,
    madeSpots,
    settings,
    gauge,
  }: Pick<SurveyGrounds, 'trials' | 'madeSpots' | 'settings' | 'gauge'>,
): readonly Remark[] {
  const { correction, hardness } = settings;
  const read = panels.flatMap((survey) =>
    (trials.get(survey.panel.id) ?? []).flatMap((trial): readonly Read[] => {
      const removed = removedFilm(trial.marks, gauge, correction.spot.scatterDof);
      return removed === null || hasRisen(trial, removed) ? [] : [{ survey, trial, removed }];
    }),
  );
  const priors = removalPriors(hardness, correction);
  return [
    ...read.filter((one) => !isOnRecord(one, madeSpots)).flatMap(overrun),
    ...read.flatMap(({ survey, trial, removed }) =>
      contradiction(trial, removed, priors, ` on ${survey.panel.name}`),
    ),
  ];
}

/**
 * What went at an earlier visit counts as gone, and was judged there: more might go then than may now, and the panel
 * has been worked since, so that its points cannot be read again as they were.
 */
function isOnRecord({ survey, trial }: Read, madeSpots: SurveyGrounds['madeSpots']): boolean {
  const spots = madeSpots.get(survey.panel.id) ?? [];
  return spots.some(
    (spot) => spot.trial === trial && (spot.recorded ?? copiedFrom(spot, spots)) !== null,
  );
}

/** As compare has it: surely where the whole 95 % interval lies over what might go. */
function overrun({ survey, trial, removed }: Read): readonly Remark[] {
  const allowed = mightGo(survey);
  if (allowed === null || removed.mean <= allowed) return [];
  const { spot, sets, combination } = trial;
  const { mean, low, high } = removed;
  const isSure = low > allowed;
  // Nobody knows then whether it was made before that work, when more might go.
  const since =
    survey.facts.recorded === null
      ? ''
      : '. If it was made before the work on record, compare that visit again with --spots';
  const came = says`${survey.panel.name} (test spot ${spot}): ${um(mean)} (${bare(low)} to ${bare(high)}) came off in ${counted(sets, 'set')} of ${combination.id}, ${might(allowed)}, ${um(usualRemoval(trial), 2)} is usual`;
  return [
    isSure
      ? remark(
          'spot-overrun',
          says`${came}. Do not work it further. Wipe, let cool and read the same points again; if that stands, find out what took it (sets, pad, pressure, paint) before any panel is worked${since}`,
          mean,
        )
      : remark(
          'spot-perhaps-overrun',
          says`${came}. Read the same points again before any panel is worked${since}`,
          mean,
        ),
  ];
}

export const might = (allowed: Micrometres): Sentence =>
  allowed === 0 ? says`nothing might go` : says`${um(allowed, 2)} might go`;

/** Where only a spot can free the panel nothing was said yet of what may go. */
export function mightGo(survey: PanelSurvey): Micrometres | null {
  const known = partsOf(survey).filter(({ boundBy: { code } }) => OF_THE_FILM.has(code));
  return known.length === 0 ? null : micrometres(Math.max(...known.map(({ budget }) => budget)));
}

const OF_THE_FILM: ReadonlySet<string> = new Set([
  ...['clear', 'life', 'total', 'place', 'as-compared'],
]);
