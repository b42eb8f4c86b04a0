/**
 * The survey with what test spots taught and took, those of a file and those on record. Which panels carry factory paint
 * the readings alone say, so they are assessed before; what the spots took then counts as earlier work on their panels,
 * and a removal is foretold as well as by an untried combination on this paint. A record teaches nothing of the paint.
 */
import { roundTo } from '../../base/rounding.ts';
import { micrometres } from '../../base/units.ts';
import { untriedLogSd } from '../../correction/removal/removal-knowledge.ts';
import { onlyGained, type SpotTrial } from '../../correction/spot/spot-trial.ts';
import { assessFilm } from '../../film/assess-film.ts';
import type { RecordedRemoval } from '../../film/film-model.ts';
import { type IdleSpots, withOwnSpots } from '../../film/limits/after-test-spot.ts';
import { TEST_SPOTS } from '../../film/limits/earlier-work.ts';
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
  notSurelyNew,
  facts: said,
  settings,
  gauge,
  asking,
}: SurveyGrounds): Told {
  const [made, older] = [spotColours(madeSpots), spotColours(notSurelyNew)];
  const finishOfCar = settings.facts.finish;
  const { nearRisk } = settings.film.conditions;
  const asSaid = asking(said, settings.terms);
  const judged = assessFilm(asSaid);
  const facts = withDoubtedFinish(said, made, judged.panels, { finishOfCar, nearRisk });
  const untaught = facts === said ? asSaid : asking(facts, settings.terms);
  const before = facts === said ? judged : assessFilm(untaught);
  const isFinishOfPanel = (id: string): boolean => said.get(id)?.finish !== finishOfCar;
  const colourAt = colourAtSpots(made, before.panels, isFinishOfPanel);
  const paint = carPaint({ trials, colourAt }, before.panels, settings, gauge);
  if (madeSpots.size === 0 && notSurelyNew.size === 0) {
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
  const finish = facts === said ? finishOfCar.value : 'unknown';
  const ofCar = coloursOfCar({ made, older }, before.panels, finish, nearRisk);
  const elsewhere = coloursOfOthers(made, before.panels, { colourAt, ofCar });
  const all = new Map(withColours(facts, { ofCar, elsewhere }));
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
        idleSpots(trials.get(panel.id)),
      ),
    },
    request,
    facts: all,
    paint,
    settings: { ...settings, terms },
    newSpots,
  };
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
