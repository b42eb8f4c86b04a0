/**
 * The survey with what test spots taught and took, those of a file and those on record. Which panels carry factory paint
 * the readings alone say, so they are assessed before; what the spots took then counts as earlier work on their panels,
 * and a removal is foretold as well as by an untried combination on this paint. A record teaches nothing of the paint.
 */

import type { Remark } from '../../base/remark.ts';
import { roundTo } from '../../base/rounding.ts';
import { micrometres } from '../../base/units.ts';
import { untriedLogSd } from '../../correction/removal/removal-knowledge.ts';
import { onlyGained, type SpotTrial } from '../../correction/spot/spot-trial.ts';
import { assessFilm } from '../../film/assess-film.ts';
import type { RecordedRemoval } from '../../film/film-model.ts';
import { type IdleSpots, withOwnSpots } from '../../film/limits/after-test-spot.ts';
import { TEST_SPOTS } from '../../film/limits/earlier-work.ts';
import { withOverrunsTold } from '../../film/overrun-note.ts';
import type { PanelSurvey, Survey } from '../../film/survey.ts';
import type { SurveyRequest } from '../../film/survey-request.ts';
import type { WrittenSpot } from '../../formats/film-record.ts';
import type { EffectiveFacts } from '../settings/panel-facts.ts';
import type { Settings } from '../settings/settings.ts';
import { type CarPaint, carPaint, takenAtSpot } from './car-paint.ts';
import {
  type ColourAtSpots,
  colourAtSpots,
  coloursOfCar,
  coloursOfOthers,
} from './colour-at-spots.ts';
import { withDoubtedFinish } from './doubted-finish.ts';
import { leftAfterSpots } from './left-after-spots.ts';
import { onePlaceNotes, type PlacesRead, placeRule, takenAtSpots } from './places-of-spots.ts';
import { withShownDepth } from './shown-at-spots.ts';
import { spotOverruns } from './spot-overruns.ts';
import { type PanelSpot, spotColours, writtenTrial } from './spots-on-record.ts';
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

export function afterSpots(grounds: SurveyGrounds): Told {
  const { trials, madeSpots, notSurelyNew, settings, asking, gauge } = grounds;
  const before = beforeSpots(grounds);
  const { paint } = before;
  if (madeSpots.size === 0 && notSurelyNew.size === 0) {
    const { survey, request, facts } = before;
    return { survey, request, facts, paint, settings, newSpots: [] };
  }
  const { stepLogSd } = settings.correction.removal;
  const terms =
    trials.size === 0
      ? settings.terms
      : { ...settings.terms, logSd: untriedLogSd(paint.car, stepLogSd) };
  const { facts, newSpots, ofPlaces } = spentAtSpots(grounds, before);
  const request = asking(facts, terms);
  const survey = assessFilm(request);
  const logSdOf = (part: PanelSurvey): number | null =>
    paint.hasOwnSpot(part.panel.id) ? untriedLogSd(paint.paintOf(part), stepLogSd) : null;
  return {
    survey: {
      ...survey,
      notes: [...spotOverruns(before.survey.panels, grounds), ...ofPlaces, ...survey.notes],
      panels: withShownDepth(
        withOwnSpots(survey.panels, logSdOf, { terms, model: settings.film }, ({ panel }) =>
          idleSpots(trials.get(panel.id)),
        ),
        { madeSpots, paint, gauge, scatterDof: settings.correction.spot.scatterDof },
      ).map(withOverrunsTold),
    },
    request,
    facts,
    paint,
    settings: { ...settings, terms },
    newSpots,
  };
}

/** As the readings alone have it, with the finish held in doubt that a spot contradicts, and what the spots taught. */
type BeforeSpots = Pick<Told, 'survey' | 'request' | 'facts' | 'paint'> & {
  /** By panel, the spots that left colour which its paint is not known to give. */
  readonly colourAt: ColourAtSpots;
};

function beforeSpots({
  trials,
  madeSpots,
  facts: said,
  settings,
  gauge,
  asking,
}: SurveyGrounds): BeforeSpots {
  const made = spotColours(madeSpots);
  const finishOfCar = settings.facts.finish;
  const { nearRisk } = settings.film.conditions;
  const asSaid = asking(said, settings.terms);
  const judged = assessFilm(asSaid);
  const facts = withDoubtedFinish(said, made, judged.panels, { finishOfCar, nearRisk });
  const request = facts === said ? asSaid : asking(facts, settings.terms);
  const survey = facts === said ? judged : assessFilm(request);
  const isFinishOfPanel = (id: string): boolean => said.get(id)?.finish !== finishOfCar;
  const colourAt = colourAtSpots(made, survey.panels, isFinishOfPanel);
  const paint = carPaint({ trials, colourAt }, survey.panels, settings, gauge);
  return { survey, request, facts, paint, colourAt };
}

/** What is held of each panel once the spots are made: what is gone from their places, and the colours they left. */
function spentAtSpots(
  { madeSpots, notSurelyNew, facts: said, settings, gauge }: SurveyGrounds,
  { survey: { panels }, facts, paint, colourAt }: BeforeSpots,
): Pick<Told, 'facts' | 'newSpots'> & { readonly ofPlaces: readonly Remark[] } {
  const [made, older] = [spotColours(madeSpots), spotColours(notSurelyNew)];
  const { nearRisk } = settings.film.conditions;
  const takenOn = (part: PanelSurvey) => (trial: SpotTrial) =>
    takenAtSpot(trial, paint.paintOf(part), gauge, settings.correction);
  const finish = facts === said ? settings.facts.finish.value : 'unknown';
  const ofCar = coloursOfCar({ made, older }, panels, finish, nearRisk);
  const elsewhere = coloursOfOthers(made, panels, { colourAt, ofCar });
  const all = new Map(withColours(facts, { ofCar, elsewhere }));
  const newSpots: WrittenSpot[] = [];
  const ofPlaces: Remark[] = [];
  for (const part of panels) {
    const { id } = part.panel;
    const [spots, own] = [madeSpots.get(id), all.get(id)];
    if (spots === undefined || own === undefined) continue;
    const read = { takenBy: takenOn(part), rule: placeRule(settings, gauge) };
    const taken = takenAtSpots(spots, read);
    ofPlaces.push(...onePlaceNotes(part, spots, read));
    const colour = colourAt.get(id);
    const spent = colour === undefined ? taken : { ...taken, colourAt: colour };
    all.set(id, withSpent(own, spent, { spots, ...read }));
    newSpots.push(...spots.flatMap((spot) => writtenNew(spot, id, takenOn(part))));
  }
  return { facts: all, newSpots, ofPlaces };
}

const idleSpots = (trials: readonly SpotTrial[] = []): IdleSpots => ({
  unsaid: trials.flatMap(({ colourOnPad, spot }) => (colourOnPad === null ? [spot] : [])),
  risen: trials.flatMap((trial) => (onlyGained(trial) ? [trial.spot] : [])),
});

const withColours = (
  facts: FactsByPanel,
  { ofCar, elsewhere }: Readonly<Record<'ofCar' | 'elsewhere', ColourAtSpots>>,
): FactsByPanel =>
  new Map(
    [...facts].map(([id, own]) => {
      const [here, there] = [ofCar.get(id), elsewhere.get(id)];
      if (here === undefined && there === undefined) return [id, own];
      return [
        id,
        {
          ...own,
          ...(here === undefined ? {} : { colourOfCar: bySpots(here) }),
          ...(there === undefined ? {} : { colourElsewhere: bySpots(there) }),
        },
      ];
    }),
  );

const bySpots = <Value>(value: Value) =>
  ({ value, origin: 'readings', where: 'test spots' }) as const;

type SpotsMade = PlacesRead & { readonly spots: readonly PanelSpot[] };

/** What spots took, beside what else is on record of earlier visits; it is gone from their patches alone. */
function withSpent(
  facts: EffectiveFacts,
  taken: RecordedRemoval,
  { spots, ...read }: SpotsMade,
): EffectiveFacts {
  const { recorded } = facts;
  const { left = [] } = recorded.value ?? {};
  const value = takenInAll([
    ...(recorded.value === null
      ? []
      : [{ ...recorded.value, left: leftAfterSpots(left, spots, read) }]),
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
