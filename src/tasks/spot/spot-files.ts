/** Test-spot files → what each trial showed, how hard the paint is, and what to try next. */
import { found, type Outcome, refused } from '../../base/diagnostics.ts';
import { groupBy } from '../../base/group-by.ts';
import type { Remark } from '../../base/remark.ts';
import { medianDepth } from '../../correction/defects.ts';
import {
  type HardnessWord,
  hardnessWord,
  type PaintKnowledge,
  paintKnowledge,
  removalPriors,
} from '../../correction/removal/removal-knowledge.ts';
import { moreEvidence } from '../../correction/spot/more-evidence.ts';
import { conflictWithPrior } from '../../correction/spot/prior-conflict.ts';
import { samePlace, type WorkedPlace } from '../../correction/spot/same-place.ts';
import {
  evidenceRemark,
  nextRemark,
  type ReadTrial,
  trialAdvice,
} from '../../correction/spot/spot-advice.ts';
import { contradiction } from '../../correction/spot/spot-contradiction.ts';
import { type Rung, spotLadder } from '../../correction/spot/spot-ladder.ts';
import {
  type FinishOf,
  isThroughClear,
  type NextStep,
  nextStep,
} from '../../correction/spot/spot-next.ts';
import { spotOverrun } from '../../correction/spot/spot-overrun.ts';
import {
  hasRisen,
  observationOf,
  observationsOf,
  removedFilm,
  type SpotTrial,
} from '../../correction/spot/spot-trial.ts';
import type { Finish } from '../../film/film-model.ts';
import { placeAllowance } from '../../film/limits/place-allowance.ts';
import type { Job } from '../../formats/job/job.ts';
import type { Placed } from '../../formats/json/placed.ts';
import { usualDefect } from '../plan/recorded-defects.ts';
import { inputsOf, type LoadedFile, type ReadInput } from '../read/read-request.ts';
import type { Assumption } from '../settings/assumption.ts';
import { asMeasured } from '../settings/gauge-in-use.ts';
import { plainFacts } from '../settings/panel-facts.ts';
import { withoutOwnObservations } from '../settings/rates-in-use.ts';
import type { Settings } from '../settings/settings.ts';
import { colourRemarks, isColourUnsettled } from './colour-of-repaint.ts';
import { joinedTrials } from './joined-trials.ts';
import { panelNamer } from './panel-name.ts';
import { panelsAlike } from './panels-alike.ts';
import { clearRemarks, heldFacts, showingClear } from './shown-clear.ts';
import { goneWith, onePlaceRemarks, type PanelPlace, spotPlaces } from './spot-places.ts';

export type SpotResult = {
  readonly vehicle: string | null;
  readonly settings: Settings;
  readonly inputs: readonly ReadInput[];
  readonly assumptions: readonly Assumption[];
  readonly trials: readonly ReadTrial[];
  readonly paint: PaintKnowledge;
  readonly word: HardnessWord;
  /** As the job says of the panel, else of the car. */
  readonly finishOf: FinishOf;
  /** As the template calls a panel. */
  readonly nameOf: (panel: string) => string;
  /** Empty where nothing more is to be tried. */
  readonly ladder: readonly Rung[];
  readonly next: NextStep;
  readonly advice: readonly Remark[];
  /** What went to a rates file, where that was asked for. */
  readonly kept?: { readonly added: number; readonly already: number } | null;
};

export type SpotFilesRequest = {
  readonly files: readonly LoadedFile[];
  readonly settings: Settings;
  readonly job: Placed<Job> | undefined;
};

export function spotFiles({ files, job, ...request }: SpotFilesRequest): Outcome<SpotResult> {
  const vehicle = job?.value.vehicle?.id ?? null;
  const settings = withoutOwnObservations(request.settings, vehicle, files);
  const read = joinedTrials(files, settings);
  if (read.value === undefined) return refused(...read.diagnostics);
  const said = finishesSaid(job);
  const finishOf: FinishOf = (panel) => said(panel) ?? settings.facts.finish.value;
  const nameOf = panelNamer(job?.value.template, settings.nearside.value);
  const trials = read.value.map(({ trial }) => trial);
  const { places, ...value } = judged(trials, settings, finishOf);
  const colours = trials.filter(
    (trial) => isColourUnsettled(trial, finishOf) && said(trial.panel) === undefined,
  );
  return found(
    {
      ...value,
      advice: [
        ...value.advice,
        ...onePlaceRemarks(places, nameOf),
        ...colourRemarks(colours, nameOf),
      ],
      finishOf,
      nameOf,
      vehicle,
      settings,
      inputs: inputsOf(...files),
      assumptions: [
        ...settings.assumptions,
        ...settings.planAssumptions,
        ...defectAssumption(value.trials, settings),
      ],
    },
    read.diagnostics,
  );
}

type Judged = Pick<SpotResult, 'trials' | 'paint' | 'word' | 'ladder' | 'next' | 'advice'> & {
  readonly places: readonly PanelPlace[];
};

function judged(all: readonly SpotTrial[], settings: Settings, finishOf: FinishOf): Judged {
  const { correction: model, hardness, hazeAllowed, aim } = settings;
  const gauge = asMeasured([], settings).model.measurement;
  const trials = all.map((trial) => ({
    trial,
    removed: removedFilm(trial.marks, gauge, model.spot.scatterDof),
  }));
  const shown = showingClear(all, finishOf);
  const sound = trials.filter(({ trial }) => !isThroughClear(trial, finishOf));
  const telling = sound.filter(({ trial, removed }) => !hasRisen(trial, removed));
  const observations = observationsOf(
    sound.map(({ trial }) => trial),
    gauge,
    model,
  );
  const priors = removalPriors(hardness, model);
  const counted = all.filter((trial) => !countsForNothing(trial, telling, priors));
  const paint = paintKnowledge(observations, hardness, model);
  const ladder = spotLadder({
    trials: counted,
    paint,
    defect: deepest(all, settings),
    aim: aim.share,
    budgetAt: budgetOn(all, { ...settings, facts: heldFacts(settings.facts, shown) }),
    model,
  });
  const places = spotPlaces(trials, gauge);
  const worked = placesOf(
    { telling, places },
    { ...settings, facts: heldFacts(settings.facts, shown) },
  );
  const nextCase = {
    ...{ trials: counted, ladder, paint, finishOf, aim: aim.share, hazeAllowed, model },
    overruns: worked.flatMap(({ trial, removed, allowed }) =>
      removed === null ? [] : (spotOverrun(trial, removed, allowed) ?? []),
    ),
  };
  const next = nextStep(nextCase);
  const onPlace = samePlace(next, nextCase, worked);
  const isOver = next.code === 'stop-colour' || next.code === 'stop-overrun';
  const asked = next.combination ?? all[0]?.combination;
  const rung = ladder.find(({ combination }) => combination.id === asked?.id);
  return {
    trials,
    places,
    paint,
    word: hardnessWord(paint, model.removal),
    ladder: isOver ? [] : ladder,
    next,
    advice: [
      ...onPlace,
      nextRemark(next, { ...nextCase, isPlaceShort: onPlace.length > 0 }),
      ...telling.flatMap(({ trial, removed }) =>
        removed === null ? [] : contradiction(trial, removed, priors),
      ),
      ...clearRemarks(shown),
      ...trialAdvice(trials, model),
      ...(isOver || rung === undefined
        ? []
        : [evidenceOn(rung, paint, { observations, hardness, model, gauge })]),
    ],
  };
}

/** Took far less than any paint is held to give: by its eye, too, no stronger rung is asked for. */
const countsForNothing = (
  trial: SpotTrial,
  telling: readonly ReadTrial[],
  priors: ReturnType<typeof removalPriors>,
): boolean =>
  telling.some(
    (one) =>
      one.trial === trial &&
      one.removed !== null &&
      conflictWithPrior(observationOf(trial, one.removed), priors) === 'less',
  );

const evidenceOn = (
  { combination, before }: Rung,
  { removal }: PaintKnowledge,
  known: Parameters<typeof moreEvidence>[2],
): Remark =>
  evidenceRemark(
    combination.id,
    removal.of(combination.id).sd,
    moreEvidence(combination, before, known),
  );

/** Of a panel itself, as the job says. */
function finishesSaid(job: Placed<Job> | undefined): (panel: string) => Finish | undefined {
  const alike = panelsAlike();
  const said = new Map(
    [...(job?.value.panels ?? [])].map(([name, { finish }]) => [alike(name), finish]),
  );
  return (panel) => said.get(alike(panel));
}

/** What clears the deepest of the defects tried clears the others. */
const deepest = (trials: readonly SpotTrial[], { correction: model }: Settings) =>
  trials.reduce(
    (most, { defect }) => (medianDepth(defect) > medianDepth(most) ? defect : most),
    trials[0]?.defect ?? {
      kind: usualDefect(model),
      grade: model.correction.assumedGrade,
      depth: null,
    },
  );

/** Of trials that tell anything, what might go at their own place before it was worked. */
const placesOf = (
  {
    telling,
    places,
  }: { readonly telling: readonly ReadTrial[]; readonly places: readonly PanelPlace[] },
  settings: Settings,
): readonly WorkedPlace[] => {
  const { model } = asMeasured([], settings);
  const facts = plainFacts(settings.facts);
  return telling.map(({ trial, removed }) => {
    const before = trial.marks.map((mark) => mark.before);
    const allowed = placeAllowance(before, facts, settings.terms, model)?.budget ?? null;
    return { trial, removed, allowed, gone: goneWith(trial.spot, places) };
  });
};

/** What may go on a fresh place of the tried panel that allows least, by the marks read before. */
function budgetOn(
  trials: readonly SpotTrial[],
  settings: Settings,
): ((logSd: number) => number) | null {
  const { facts, terms } = settings;
  const { model } = asMeasured([], settings);
  const films = [...groupBy(trials, ({ panel }) => panel).values()]
    .map((ofPanel) => ofPanel.flatMap(({ marks }) => marks.map(({ before }) => before)))
    .filter((before) => placeAllowance(before, plainFacts(facts), terms, model) !== null);
  return films.length === 0
    ? null
    : (logSd) =>
        Math.min(
          ...films.map(
            (before) =>
              placeAllowance(before, plainFacts(facts), { ...terms, logSd }, model)?.budget ?? 0,
          ),
        );
}

function defectAssumption(
  trials: readonly ReadTrial[],
  { correction }: Settings,
): readonly Assumption[] {
  const kinds = [...new Set(trials.map(({ trial }) => trial.defect.kind.name))];
  const text = `${kinds.join(', ')} of grade ${correction.correction.assumedGrade} on the spots`;
  return [{ code: 'defects', text, origin: 'built-in' }];
}
