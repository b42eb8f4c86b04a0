/**
 * What test spots teach of a car's paints: the factory paint is one, and every panel of another film has
 * one of its own, of which only its own spots say anything.
 */
import { hasErrors, type Outcome } from '../../base/diagnostics.ts';
import { micrometres } from '../../base/units.ts';
import {
  foretell,
  type PaintKnowledge,
  paintKnowledge,
} from '../../correction/removal/removal-knowledge.ts';
import {
  type Gauge,
  observationsOf,
  onlyGained,
  removedFilm,
  type SpotTrial,
} from '../../correction/spot/spot-trial.ts';
import { sidePaintedWith } from '../../film/condition/painted-side.ts';
import type { RecordedRemoval } from '../../film/film-model.ts';
import type { Reading } from '../../film/reading.ts';
import type { PanelSurvey } from '../../film/survey.ts';
import type { VehicleTemplate } from '../../film/template/template.ts';
import { recordedDefects } from '../plan/recorded-defects.ts';
import { byPanelId } from '../read/match-panels.ts';
import type { LoadedFile } from '../read/read-request.ts';
import type { Settings } from '../settings/settings.ts';
import { joinedTrials } from '../spot/joined-trials.ts';
import { marksDoubted } from '../spot/spot-doubts.ts';
import { withRecordedGrade } from '../spot/spot-trials.ts';
import { type ColourAtSpots, isFactory, leftColour } from './colour-at-spots.ts';

export type TrialsByPanel = ReadonlyMap<string, readonly SpotTrial[]>;

/** Trials by panel of the template; a panel's recorded grade of the defect stands above the assumed one. */
export function trialsOnPanels(
  files: readonly LoadedFile[],
  {
    defects,
    readings,
  }: { readonly defects: LoadedFile | undefined; readonly readings: readonly Reading[] },
  template: VehicleTemplate,
  settings: Settings,
): Outcome<TrialsByPanel> {
  const read = joinedTrials(files, settings);
  if (read.value === undefined) return { diagnostics: read.diagnostics };
  const named = read.value.map(({ trial, at }) => ({
    name: trial.panel,
    value: { trial, at },
    at,
  }));
  const matched = byPanelId(named, template);
  // A defects file that cannot be read is told of where the plan reads it.
  const recorded = recordedDefects(template, settings, defects).value ?? new Map();
  const doubted = [...(matched.value ?? [])].flatMap(([id, trials]) => {
    const ofPanel = readings.filter(({ panel }) => panel === id);
    return trials.flatMap((one) => marksDoubted(one, ofPanel, settings.correction.spot));
  });
  const diagnostics = [...read.diagnostics, ...matched.diagnostics, ...doubted];
  if (matched.value === undefined || hasErrors(diagnostics)) return { diagnostics };
  const value = new Map(
    [...matched.value].map(([id, trials]) => [
      id,
      trials.map(({ trial }) => withRecordedGrade(trial, recorded.get(id) ?? [])),
    ]),
  );
  return { value, diagnostics };
}

export type CarPaint = {
  /** The factory paint. */
  readonly car: PaintKnowledge;
  /** The paint of a panel or of a zone of it. */
  readonly paintOf: (part: PanelSurvey) => PaintKnowledge;
  readonly hasOwnSpot: (panelId: string) => boolean;
  /** The paints that were tried: the factory one, then repaints by their panels. */
  readonly tried: readonly TriedPaint[];
};

export type TriedPaint = {
  /** Null for the factory paint. */
  readonly panel: string | null;
  readonly trials: number;
  readonly paint: PaintKnowledge;
};

/** A trial that left colour which the paint is not known to give teaches nothing of how it gives way. */
export function carPaint(
  { trials: made, colourAt }: { readonly trials: TrialsByPanel; readonly colourAt: ColourAtSpots },
  panels: readonly PanelSurvey[],
  { hardness, correction }: Pick<Settings, 'hardness' | 'correction'>,
  gauge: Gauge,
): CarPaint {
  const learn = (some: readonly SpotTrial[]): PaintKnowledge =>
    paintKnowledge(observationsOf(some, gauge, correction), hardness, correction);
  const trials = new Map(
    [...made].map(([id, ofPanel]) => [
      id,
      ofPanel.filter((trial) => !colourAt.has(id) || !leftColour(trial)),
    ]),
  );
  const factory = panels.filter(isFactory).map(({ panel }) => panel.id);
  const unknown = learn([]);
  const onFactory = factory.flatMap((id) => trials.get(id) ?? []);
  const car = onFactory.length === 0 ? unknown : learn(onFactory);
  const own = new Map(
    [...trials]
      .filter(([id]) => !factory.includes(id))
      .map(
        ([id, ofPanel]) =>
          [id, { ...learn(ofPanel), triedHere: triedOn(ofPanel.filter(isProof)) }] as const,
      ),
  );
  const factoryOrRepaint = new Map(
    [...trials].flatMap(([id, ofPanel]) => {
      const proofs = ofPanel.filter(isProof);
      return proofs.length === 0 ? [] : [[id, { ...car, triedHere: triedOn(proofs) }] as const];
    }),
  );
  const ofFactory = (part: PanelSurvey): PaintKnowledge =>
    (isRepaintByDoubt(part) ? factoryOrRepaint.get(part.panel.id) : undefined) ?? car;
  const triedOwn = [...own]
    .map(([panel, paint]): TriedPaint => ({ panel, trials: trials.get(panel)?.length ?? 0, paint }))
    .filter((one) => one.trials > 0);
  return {
    car,
    tried:
      onFactory.length === 0
        ? triedOwn
        : [{ panel: null, trials: onFactory.length, paint: car }, ...triedOwn],
    paintOf: (part) => (isFactory(part) ? ofFactory(part) : (own.get(part.panel.id) ?? unknown)),
    // Colour on the pad is no leave to go on, nor silence about it, nor film that rose.
    hasOwnSpot: (id) => !colourAt.has(id) && (trials.get(id) ?? []).some(isProof),
  };
}

/** Of film that reads as the factory's: it may be repaint as well, and what its own spot showed is all that frees it. */
const isRepaintByDoubt = (part: PanelSurvey): boolean =>
  sidePaintedWith(part) !== undefined ||
  part.limits.some(({ ofRepaint }) => ofRepaint !== undefined);

/** Colour on the pad is no leave to go on, nor silence about it, nor film that rose. */
export const isProof = (trial: SpotTrial): boolean =>
  trial.colourOnPad !== null && !onlyGained(trial);

const triedOn = (trials: readonly SpotTrial[]): ReadonlySet<string> =>
  new Set(trials.map(({ combination }) => combination.id));

/** What a spot took, by the gauge, else as foretold. */
export function takenAtSpot(
  trial: SpotTrial,
  paint: PaintKnowledge,
  gauge: Gauge,
  { spot, removal }: Settings['correction'],
): RecordedRemoval {
  const removed = removedFilm(trial.marks, gauge, spot.scatterDof);
  if (removed !== null) {
    return { mean: micrometres(Math.max(0, removed.mean)), sd: removed.standardError };
  }
  const factor = Math.exp(paint.removal.of(trial.combination.id).mean);
  const combination = {
    ...trial.combination,
    perSet: micrometres(trial.combination.perSet * factor),
  };
  const { median, logSd } = foretell([{ combination, sets: trial.sets }], paint, removal.stepLogSd);
  return { mean: median, sd: micrometres(median * logSd) };
}
