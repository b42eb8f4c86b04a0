/** What is held of the paint of each panel and where that is from: panel over car, job over built-in. */
import type { Outcome } from '../../base/diagnostics.ts';
import { keptWith } from '../../base/kept.ts';
import { spoken } from '../../base/remark.ts';
import { says, um } from '../../base/sentence.ts';
import { micrometres } from '../../base/units.ts';
import type { FilmModel, PanelFacts, RecordedRemoval, StatedLayer } from '../../film/film-model.ts';
import type { Substrate, VehicleTemplate } from '../../film/template/template.ts';
import type { FilmRecord } from '../../formats/film-record.ts';
import type { Job, JobLayer, JobPaint, JobPanel } from '../../formats/job/job.ts';
import type { JsonPath } from '../../formats/json/json-text.ts';
import type { Placed } from '../../formats/json/placed.ts';
import { takenInAll } from '../survey/taken-in-all.ts';
import type { Assumption } from './assumption.ts';
import { builtIn, type Effective } from './setting-origin.ts';
import { placeText, settingsPanelGroups, settingsPanels } from './settings-panels.ts';

export type EffectiveFacts = { readonly [Key in keyof PanelFacts]: Effective<PanelFacts[Key]> };

/** What a job says of the car or of a panel, and where its keys stand. */
type Said<P extends JobPaint> = { readonly paint: P; readonly whereOf: (key: string) => string };

/** What the film room computes with. Kept: of most panels no more is said than of the car. */
export const plainFacts = keptWith(
  (facts: EffectiveFacts): PanelFacts => ({
    finish: facts.finish.value,
    taken: facts.taken.value,
    takenSd: facts.takenSd.value,
    recorded: facts.recorded.value,
    clear: facts.clear.value,
    under: facts.under.value,
    galvanised: facts.galvanised.value,
    covered: facts.covered.value,
    clearCoatFailure: facts.clearCoatFailure.value,
    paintedDaysAgo: facts.paintedDaysAgo.value,
    ...(facts.isOwnFinish === undefined ? {} : { isOwnFinish: facts.isOwnFinish.value }),
    ...(facts.colourElsewhere === undefined
      ? {}
      : { colourElsewhere: facts.colourElsewhere.value }),
    ...(facts.colourOfCar === undefined ? {} : { colourOfCar: facts.colourOfCar.value }),
    ...(facts.clearShownAt === undefined ? {} : { clearShownAt: facts.clearShownAt.value }),
  }),
);

/** Facts of the whole car; what other layers than the job may say of it comes resolved. */
export function carFacts(
  { finish, galvanised }: Pick<EffectiveFacts, 'finish' | 'galvanised'>,
  job: Placed<Job> | undefined,
  stated: FilmModel['stated'],
): EffectiveFacts {
  const nothing: EffectiveFacts = {
    finish,
    galvanised,
    taken: builtIn(null),
    takenSd: builtIn(EXACT),
    recorded: builtIn(null),
    clear: builtIn(null),
    under: builtIn(null),
    covered: builtIn(false),
    clearCoatFailure: builtIn(false),
    paintedDaysAgo: builtIn(null),
  };
  if (job === undefined) return nothing;
  const said = factsSaid({ paint: job.value, whereOf: wherer(job, []) }, 'car', stated);
  return { ...nothing, ...said, finish, galvanised };
}

const EXACT = micrometres(0);

const wherer =
  ({ placeOf }: Placed<unknown>, path: JsonPath) =>
  (key: string): string =>
    placeText(placeOf([...path, key]));

/** The facts that are said, each with its line; the others are absent. */
function factsSaid(
  { paint, whereOf }: Said<JobPanel>,
  of: StatedLayer['of'],
  stated: FilmModel['stated'],
): Partial<EffectiveFacts> {
  const said = <T, Key extends keyof PanelFacts>(
    fact: Key,
    key: string,
    value: T | undefined,
    toFact: (value: T) => PanelFacts[Key],
  ): Partial<EffectiveFacts> =>
    value === undefined
      ? {}
      : { [fact]: { value: toFact(value), origin: 'job', where: whereOf(key) } };
  const same = <T>(value: T): T => value;
  const layer =
    (usual: JobLayer['mean']) =>
    ({ mean, sd = usual }: JobLayer): StatedLayer => ({ mean, sd, of });
  return {
    ...said('finish', 'finish', paint.finish, same),
    ...said('taken', 'taken_um', paint.taken, (taken) => (taken === 'unknown' ? null : taken)),
    // With what it may be off by, or without: the car's SD is none of what is stated of a panel.
    ...said(
      'takenSd',
      'taken_um',
      paint.taken === undefined ? undefined : (paint.takenSd ?? EXACT),
      same,
    ),
    ...said('clear', 'clear_um', paint.clear, layer(stated.clearSd)),
    ...said('under', 'under_um', paint.under, layer(stated.underSd)),
    ...said('galvanised', 'galvanised', paint.galvanised, same),
    ...said('covered', 'covered', paint.covered, same),
    ...said('clearCoatFailure', 'clear_coat_failure', paint.clearCoatFailure, same),
    ...said('paintedDaysAgo', 'painted_days_ago', paint.paintedDaysAgo, same),
  };
}

/** What the job and the film record say of single panels, by the template's ids. */
export type PanelKnowledge = {
  readonly job: ReadonlyMap<string, Said<JobPanel>>;
  readonly recorded: ReadonlyMap<string, Effective<RecordedRemoval>>;
};

export function panelKnowledge(
  job: Placed<Job> | undefined,
  filmRecord: Placed<FilmRecord> | undefined,
  template: VehicleTemplate,
): Outcome<PanelKnowledge> {
  const ofJob = settingsPanels(jobPanels(job), template);
  const ofRecord = recordedRemovals(filmRecord, template);
  const diagnostics = [...ofJob.diagnostics, ...ofRecord.diagnostics];
  return ofJob.value === undefined || ofRecord.value === undefined
    ? { diagnostics }
    : { value: { job: ofJob.value, recorded: ofRecord.value }, diagnostics };
}

const jobPanels = (job: Placed<Job> | undefined) =>
  job === undefined
    ? []
    : [...job.value.panels].map(([name, paint]) => ({
        name,
        value: { paint, whereOf: wherer(job, ['panels', name]) },
        at: job.placeOf(['panels', name], 'key'),
      }));

/** A panel seen at several visits has lost what they took together; its line is that of the last. */
function recordedRemovals(
  record: Placed<FilmRecord> | undefined,
  template: VehicleTemplate,
): Outcome<PanelKnowledge['recorded']> {
  if (record === undefined) return { value: new Map(), diagnostics: [] };
  const named = record.value.panels.map(({ panel, taken, path }) => ({
    name: panel,
    value: { taken, path },
    at: record.placeOf([...path, 'panel']),
  }));
  const { value, diagnostics } = settingsPanelGroups(named, template);
  if (value === undefined) return { diagnostics };
  const taken = [...value].map(([id, visits]) => {
    const last = visits.at(-1) ?? visits[0];
    return [
      id,
      {
        value: takenInAll(visits.map((visit) => visit.value.taken)),
        origin: 'job' as const,
        where: placeText(record.placeOf([...last.value.path, 'taken_um'])),
      },
    ] as const;
  });
  return { value: new Map(taken), diagnostics };
}

/** Facts of one panel: the car's, with what is said of the panel itself. */
export function panelFacts(
  car: EffectiveFacts,
  id: string,
  known: PanelKnowledge,
  stated: FilmModel['stated'],
): EffectiveFacts {
  const own = known.job.get(id);
  const recorded = known.recorded.get(id);
  if (own === undefined && recorded === undefined) return car;
  return {
    ...car,
    ...(own === undefined ? {} : { ...factsSaid(own, 'panel', stated), ...ownFinish(own) }),
    ...(recorded === undefined ? {} : { recorded }),
  };
}

const ownFinish = ({ paint, whereOf }: Said<JobPanel>): Partial<EffectiveFacts> =>
  paint.finish === undefined
    ? {}
    : { isOwnFinish: { value: true, origin: 'job', where: whereOf('finish') } };

/** A layer stated without what it may be off by is taken to be off by the built-in SD: that is said. */
export function layerAssumptions(
  job: Placed<Job> | undefined,
  stated: FilmModel['stated'],
): readonly Assumption[] {
  if (job === undefined) return [];
  const said: readonly JobPaint[] = [job.value, ...job.value.panels.values()];
  const assumed = (key: 'clear' | 'under', name: string, sd: number): readonly Assumption[] =>
    said.some((paint) => paint[key] !== undefined && paint[key].sd === undefined)
      ? [
          {
            code: 'stated-sd',
            ...spoken(says`${name} stated without an sd: ± ${um(sd)}`),
            origin: 'built-in',
          },
        ]
      : [];
  return [
    ...assumed('clear', 'clear', stated.clearSd),
    ...assumed('under', 'layers under it', stated.underSd),
  ];
}

/** The template with the vehicle's own substrates. */
export const withSubstrates = (
  template: VehicleTemplate,
  substrateOf: (panelId: string) => Substrate | undefined,
): VehicleTemplate => ({
  ...template,
  panels: template.panels.map((panel) => ({
    ...panel,
    substrate: substrateOf(panel.id) ?? panel.substrate,
  })),
});
