/** How sure a survey is: of the whole in a few lines, and of each panel where it is asked for. */
import { roundTo } from '../../base/rounding.ts';
import { bare, type Sentence, says, tell, um, unitName } from '../../base/sentence.ts';
import { expandedUncertainty } from '../../base/uncertainty.ts';
import { type PanelSurvey, partsOf } from '../../film/survey.ts';
import type { Settings } from '../../tasks/settings/settings.ts';
import { type Block, list, paragraph } from '../model.ts';
import { partName, type ShowUnit, thickness } from './film-table.ts';
import { comparisonText, surenessText } from './sureness-lines.ts';

/** How well the means are known, and the clear that the limit of that name rests on. */
export function sureness(
  read: readonly PanelSurvey[],
  { film }: Settings,
  unit: ShowUnit,
): readonly Block[] {
  const parts = read.flatMap(partsOf).filter(({ topcoat }) => topcoat !== null);
  const means = parts.flatMap(({ uncertainty }) =>
    uncertainty === null ? [] : [expandedUncertainty(uncertainty)],
  );
  if (means.length === 0) return [];
  const known = parts.flatMap(({ topcoat }) => topcoat ?? []);
  const clears = known.map(({ clear }) => Math.max(0, clear.mean));
  const doubts = known.map(({ clear }) => clear.sd);
  const floors = [...new Set(known.map(({ clearFloor }) => clearFloor))];
  const range = (values: readonly number[]): string => {
    const [low, high] = [Math.min(...values), Math.max(...values)].map((one) =>
      thickness(one, unit),
    );
    return low === high ? `${low}` : `${low}–${high}`;
  };
  const near = partsJudged(read).some((survey) => survey.sureness?.sure === 'near');
  const cut = `clear-cut (under ${roundTo(100 * film.conditions.nearRisk, 1)}\u00a0% chance of another)`;
  const words = near ? `conditions ${cut} but for those below` : `every condition ${cut}`;
  const clear = `clear on the thinnest part ${range(clears)}\u00a0± ${range(doubts)} expected, ${range(floors)} must stay`;
  return [
    paragraph(
      'How sure',
      `${words}; on sound panels each mean to ± ${range(means)} ${unitName(unit)} (95\u00a0%); ${clear}; --why takes a panel apart`,
    ),
  ];
}

/** Panels whose condition is near its line, each with the comparison it hangs on. */
export function nearTheLine(read: readonly PanelSurvey[], unit: ShowUnit): readonly Block[] {
  const near = partsJudged(read).flatMap((survey) =>
    survey.sureness?.sure === 'near' && survey.keyingSlips.length === 0
      ? [
          says`${partName(survey)}, ${survey.condition}: ${comparisonText(survey.sureness.deciding)}`,
        ]
      : [],
  );
  const told = near.map((one) => tell(one, unit)).join('; ');
  return near.length === 0 ? [] : [paragraph('Near the line', told)];
}

/** Of each panel its mean, and what its condition hangs on. */
export function surenessList(read: readonly PanelSurvey[], unit: ShowUnit): readonly Block[] {
  const lines = partsJudged(read).flatMap((survey) => {
    const said = surenessText(survey);
    return said === null
      ? []
      : [says`${partName(survey)}: ${meanText(survey)}${survey.condition}, ${said}`];
  });
  return lines.length === 0
    ? []
    : [
        list(
          'How sure each mean (95 %) and each condition is',
          lines.map((one) => tell(one, unit)),
        ),
      ];
}

/** Nothing of a panel in two zones, whose points have no one mean. */
const meanText = ({ uncertainty }: PanelSurvey): Sentence =>
  uncertainty === null
    ? says``
    : says`mean ${bare(uncertainty.value)} ± ${um(expandedUncertainty(uncertainty))}; `;

/** A panel in two zones is judged as one and each of them by itself. */
const partsJudged = (read: readonly PanelSurvey[]): readonly PanelSurvey[] =>
  read.flatMap((survey) => [survey, ...survey.zones]);
