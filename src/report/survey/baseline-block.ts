/** How the lines that a panel is held against come about: the baseline, what makes it, and what is drawn from it. */
import { roundTo } from '../../base/rounding.ts';
import { bare, joinSentences, nextFact, type Sentence, says, um } from '../../base/sentence.ts';
import { expandedUncertainty } from '../../base/uncertainty.ts';
import type { LengthUnit } from '../../base/units.ts';
import { repaintReach } from '../../film/condition/condition.ts';
import type { FilmModel } from '../../film/film-model.ts';
import { goneAllOver } from '../../film/put-back.ts';
import { isZone, type PanelSurvey } from '../../film/survey.ts';
import { panelNames } from '../../film/template/side-names.ts';
import type { Panel } from '../../film/template/template.ts';
import { filmDefaults } from '../../formats/data/film-defaults.ts';
import type { Default } from '../../formats/default.ts';
import type { SurveyResult } from '../../tasks/survey/survey-vehicle.ts';
import { toldFacts } from '../facts.ts';
import { type Block, list } from '../model.ts';

const { conditions: built, zones: zonesBuilt } = filmDefaults;

/** In brackets behind a line; a shop that moved it knows why. */
const grounds = ({ basis, source }: Default): string =>
  basis === 'published' ? `${basis}: ${source}` : basis;

/** Nothing of a panel that no line was held against; of a zone its panel has said it. */
export function baselineBlock(
  panel: PanelSurvey,
  { survey, settings }: SurveyResult,
  unit: LengthUnit,
): readonly Block[] {
  const { baseline, sureness } = panel;
  if (sureness === null || isZone(panel)) return [];
  const { conditions, zones } = settings.film;
  const lines = [
    ...(baseline === null
      ? [says`no baseline: no panel of this car reads like paint never repainted`]
      : [...baselineLines(baseline, survey), cutBackLine(baseline, conditions)]),
    repaintLine(baseline, conditions),
    says`filler: a point over ${um(conditions.filler, 0)} (${grounds(built.filler)})`,
    says`mixed: two groups of points, their means more than ${um(zones.meansApart, 0)} or ${zones.meansApartSds} SDs of film apart (${grounds(zonesBuilt.meansApart)})`,
    says`thin: a point, or the thinnest credible film, under the total floor of ${um(panel.totalFloor, 0)}`,
  ];
  return [
    list(
      'Where its lines are from',
      lines.map((one) => toldFacts(one, unit)),
    ),
  ];
}

function baselineLines(
  own: number,
  { baseline, baselineUncertain, baselineMakers, panels }: SurveyResult['survey'],
): readonly Sentence[] {
  if (baseline === null) return [];
  const names = panelNames(baselineMakers).join(', ');
  const size =
    baselineUncertain === null
      ? says`${um(baseline)}`
      : says`${bare(baseline)} ± ${um(expandedUncertainty(baselineUncertain))} (95 %)`;
  const zinc =
    own === baseline
      ? ''
      : says`${nextFact}${bare(own)} here, the zinc ${own < baseline ? 'taken off' : 'added'} that this panel has ${own < baseline ? 'not' : 'and most have not'}`;
  const from =
    baselineMakers.length === 0
      ? 'what factories paint, as among so few panels a repaint, or film cut back, could pass for the usual film (film.conditions.baseline_panels)'
      : says`the middle of the medians of ${names}${putBackText(baselineMakers, panels)}`;
  return [says`baseline ${size}: ${from}${zinc}`];
}

/** `, with what was taken before put back: 2.9 µm on rear left door, 2.1 µm on roof`. */
function putBackText(makers: readonly Panel[], panels: SurveyResult['survey']['panels']): Sentence {
  const gone = panels
    .filter(({ panel }) => makers.includes(panel))
    .map(({ panel, facts }) => ({ panel, film: goneAllOver(facts).mean }))
    .filter(({ film }) => film > 0)
    .map(({ panel, film }) => says`${um(film)} on ${panel.name}`);
  return gone.length === 0
    ? says``
    : says`, with what was taken before put back: ${joinSentences(gone, ', ')}`;
}

const cutBackLine = (baseline: number, { cutBack }: FilmModel['conditions']): Sentence =>
  says`cut-back: a mean more than ${um(cutBack, 0)} under it, so under ${um(baseline - cutBack)} (${grounds(built.cutBack)})`;

function repaintLine(baseline: number | null, conditions: FilmModel['conditions']): Sentence {
  const { refinished, refinishedAbove, refinishedAboveShare } = conditions;
  if (baseline === null)
    return says`refinished: a median over ${um(refinished, 0)} (${grounds(built.refinished)})`;
  const line = baseline + repaintReach(baseline as PanelSurvey['totalFloor'], conditions);
  const share = `${roundTo(100 * refinishedAboveShare, 1)} %`;
  return says`refinished: a median more than ${um(refinishedAbove, 0)} or ${share} over it, whichever is more (${grounds(built.refinishedAbove)}), or over ${um(refinished, 0)} (${grounds(built.refinished)}): so over ${um(Math.min(line, refinished))}`;
}
