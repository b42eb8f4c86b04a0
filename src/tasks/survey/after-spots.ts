/**
 * The survey with what test spots taught and took, those of a file and those on record. Which panels carry factory paint
 * the readings alone say, so they are assessed before; what the spots took then counts as earlier work on their panels,
 * and a removal is foretold as well as by an untried combination on this paint. A record teaches nothing of the paint.
 */
import { roundTo } from '../../base/rounding.ts';
import { micrometres } from '../../base/units.ts';
import { untriedLogSd } from '../../correction/removal/removal-knowledge.ts';
import type { SpotTrial } from '../../correction/spot/spot-trial.ts';
import { assessFilm } from '../../film/assess-film.ts';
import type { RecordedRemoval } from '../../film/film-model.ts';
import { withOwnSpots } from '../../film/limits/after-test-spot.ts';
import { TEST_SPOTS } from '../../film/limits/earlier-work.ts';
import type { PanelSurvey, Survey } from '../../film/survey.ts';
import type { SurveyRequest } from '../../film/survey-request.ts';
import type { WrittenSpot } from '../../formats/film-record.ts';
import type { EffectiveFacts } from '../settings/panel-facts.ts';
import type { Settings } from '../settings/settings.ts';
import { type CarPaint, carPaint, takenAtSpot } from './car-paint.ts';
import { colourAtSpots, coloursOfOthers } from './colour-at-spots.ts';
import { type PanelSpot, spotColours, takenAtSpots, writtenTrial } from './spots-on-record.ts';
import type { FactsByPanel, SurveyGrounds } from './survey-grounds.ts';
import { takenInAll } from './taken-in-all.ts';

type Told = {
  readonly survey: Survey;
  readonly request: SurveyRequest;
  readonly facts: FactsByPanel;
  readonly paint: CarPaint;
  readonly settings: Settings;
  readonly newSpots: readonly WrittenSpot[];
};

export function afterSpots({
  trials,
  madeSpots,
  facts,
  settings,
  gauge,
  asking,
}: SurveyGrounds): Told {
  const untaught = asking(facts, settings.terms);
  const before = assessFilm(untaught);
  const isFinishOfPanel = (id: string): boolean => facts.get(id)?.finish !== settings.facts.finish;
  const colourAt = colourAtSpots(spotColours(madeSpots), before.panels, isFinishOfPanel);
  const paint = carPaint({ trials, colourAt }, before.panels, settings, gauge);
  if (madeSpots.size === 0) {
    return { survey: before, request: untaught, facts, paint, settings, newSpots: [] };
  }
  const { correction } = settings;
  const { stepLogSd } = correction.removal;
  const terms =
    trials.size === 0
      ? settings.terms
      : { ...settings.terms, logSd: untriedLogSd(paint.car, stepLogSd) };
  const takenOn = (part: PanelSurvey) => (trial: SpotTrial) =>
    takenAtSpot(trial, paint.paintOf(part), gauge, correction);
  const all = new Map(facts);
  const elsewhere = coloursOfOthers(spotColours(madeSpots), before.panels, colourAt);
  for (const [id, value] of elsewhere) {
    const own = facts.get(id);
    if (own === undefined) continue;
    all.set(id, { ...own, colourElsewhere: { value, origin: 'readings', where: 'test spots' } });
  }
  const newSpots: WrittenSpot[] = [];
  for (const part of before.panels) {
    const { id } = part.panel;
    const [spots, own] = [madeSpots.get(id), all.get(id)];
    if (spots === undefined || own === undefined) continue;
    const taken = takenAtSpots(spots, takenOn(part));
    const colour = colourAt.get(id);
    const spent = colour === undefined ? taken : { ...taken, colourAt: colour };
    all.set(id, withSpent(own, spent, spots));
    newSpots.push(...spots.flatMap((spot) => writtenNew(spot, id, takenOn(part))));
  }
  const request = asking(all, terms);
  const survey = assessFilm(request);
  const logSdOf = (part: PanelSurvey): number | null =>
    paint.hasOwnSpot(part.panel.id) ? untriedLogSd(paint.paintOf(part), stepLogSd) : null;
  return {
    survey: {
      ...survey,
      panels: withOwnSpots(survey.panels, logSdOf, { terms, model: settings.film }, ({ panel }) =>
        unsaidSpots(trials.get(panel.id)),
      ),
    },
    request,
    facts: all,
    paint,
    settings: { ...settings, terms },
    newSpots,
  };
}

const unsaidSpots = (trials: readonly SpotTrial[] = []): readonly string[] =>
  trials.flatMap(({ colourOnPad, spot }) => (colourOnPad === null ? [spot] : []));

/** What spots took, beside what else is on record of earlier visits; it is gone from their patches alone. */
function withSpent(
  facts: EffectiveFacts,
  taken: RecordedRemoval,
  spots: readonly PanelSpot[],
): EffectiveFacts {
  const { recorded } = facts;
  const value = takenInAll([
    ...(recorded.value === null ? [] : [recorded.value]),
    { ...taken, allOver: NOTHING },
  ]);
  const [first] = spots.flatMap((spot) => spot.recorded ?? []);
  const isNew = spots.some((spot) => spot.recorded === null);
  if (!isNew && first !== undefined) {
    return {
      ...facts,
      recorded:
        recorded.value === null
          ? { value, origin: 'job', where: first.where }
          : { ...recorded, value },
    };
  }
  const isAllNew = recorded.value === null && first === undefined;
  const by = isAllNew ? TEST_SPOTS : 'film record and test spots';
  return {
    ...facts,
    recorded: { value: { ...value, by }, origin: 'readings', where: 'test spots' },
  };
}

const NOTHING = { mean: micrometres(0), sd: micrometres(0) };

/** All that a record can hold of a spot. */
const MOST_TAKEN = 100;
const MOST_SD = 20;
const DIGITS = 6;

function writtenNew(
  { trial, recorded }: PanelSpot,
  panel: string,
  takenBy: (trial: SpotTrial) => RecordedRemoval,
): readonly WrittenSpot[] {
  if (recorded !== null) return [];
  const { mean, sd } = takenBy(trial);
  return [
    {
      ...writtenTrial(trial, panel),
      taken_um: roundTo(Math.min(MOST_TAKEN, mean), DIGITS),
      taken_sd_um: roundTo(Math.min(MOST_SD, sd), DIGITS),
    },
  ];
}
