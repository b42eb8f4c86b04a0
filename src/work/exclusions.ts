/**
 * What a quote does not promise and why, in words for the owner of the car: it follows from what the
 * survey found, and from what the plan of each aim leaves.
 */

import { at } from '../base/at.ts';
import { groupBy } from '../base/group-by.ts';
import { hasUnknownRisk, isWorked, type PanelPlan, workedParts } from '../correction/plan/plan.ts';
import type { Condition } from '../film/condition/condition.ts';
import { coloursAt } from '../film/limits/colour-at-spot.ts';
import type { PanelSurvey } from '../film/survey.ts';
import { panelNames } from '../film/template/side-names.ts';
import { type AimedPlan, isLeftWhole, leftAsFound } from './left-as-found.ts';

type FoundCode =
  | 'not-measured'
  | 'under-film'
  | 'clear-failed'
  | 'matte-paint'
  | 'risk-unknown'
  | 'colour-came'
  | 'finish-doubted'
  | 'clear-shown'
  | 'filler-found'
  | 'painted-again'
  | 'thin-paint'
  | 'worked-before'
  | 'edges-apart'
  | 'deep-marks'
  | 'not-by-polishing'
  | 'history-unknown'
  | 'no-trial-yet';

export type ExclusionCode = FoundCode | 'left-alone' | 'left-at-aim';

export type Exclusion = {
  readonly code: ExclusionCode;
  /** For the owner of the car. */
  readonly text: string;
  /** Panels by their names, or a zone of one; none where it is about the whole car. */
  readonly panels: readonly string[];
  /** By name, where it is not of every aim that is quoted. */
  readonly aims?: readonly string[];
};

const texts: Readonly<Record<FoundCode, string>> = {
  'not-measured': 'not measured: nothing is promised there',
  'under-film': 'under a film or wrap, and not worked',
  'clear-failed': 'the top layer is coming off: polishing cannot help, new paint can',
  'matte-paint': 'matte paint, which polishing would make shine in patches: not worked',
  'risk-unknown':
    'no gauge tells there how much of the paint is the top layer: the chance that it gets too thin is not known',
  'colour-came':
    'at a trial colour came off with the polish: the clear top layer is gone there, or the paint is not what was thought; not worked',
  'finish-doubted':
    'not polished until it is settled what the paint of this car is, as colour came off at a trial',
  'clear-shown':
    'no colour came off at a trial, though paint without a clear top layer was stated: until it is settled, no more is done than either allows',
  'filler-found':
    'by the readings there is filler under the paint: how far it can be corrected shows only on the car',
  'painted-again':
    'by the readings painted again since it left the factory: it may behave otherwise',
  'thin-paint': 'little paint left: only as much is done as it allows',
  'worked-before':
    'less paint than elsewhere, as if it had been sanded or polished before, so less can be done there',
  'edges-apart':
    'edges and shuts were measured apart: their paint is thinner, and they are not polished',
  'deep-marks': 'marks too deep to polish out safely: they get fainter, or they stay',
  'not-by-polishing': 'faults in the paint itself, which polishing does not mend',
  'history-unknown':
    'how often the car was polished before is not known: less is taken, to be safe',
  'no-trial-yet': 'no trial was made on this paint yet: it may prove harder or softer than most',
};

/** What is found goes by the plan of the strongest aim; what is left, by that of each. */
export function exclusionsOf(options: readonly AimedPlan[]): readonly Exclusion[] {
  const left = leftAsFound(options, isToldOf);
  const strongest = at(options, options.length - 1).plan.panels;
  const unknown = unknownRisks(options);
  const found = strongest.flatMap((panel) =>
    [
      ...codesOf(panel, isLeftByAll(options, panel)),
      ...(unknown.has(panel.survey.panel.id) ? (['risk-unknown'] as const) : []),
    ].map((code) => ({ code, panel })),
  );
  const byCode = groupBy(found, ({ code }) => code);
  const order = Object.keys(texts) as FoundCode[];
  return [
    ...order.flatMap((code) => {
      const panels = panelNames((byCode.get(code) ?? []).map(({ panel }) => panel.survey.panel));
      return panels.length === 0 ? [] : [{ code, text: texts[code], panels }];
    }),
    ...left.map(
      (one): Exclusion => ({ ...one, code: one.aims.length === 0 ? 'left-alone' : 'left-at-aim' }),
    ),
    ...carCodes(options).map((code) => ({ code, text: texts[code], panels: [] })),
  ];
}

const isLeftByAll = (options: readonly AimedPlan[], { survey }: PanelPlan): boolean =>
  options.every(({ plan }) =>
    plan.panels.some((one) => one.survey.panel.id === survey.panel.id && isLeftWhole(one)),
  );

/** Panels that any aim works at a risk that is not known. */
const unknownRisks = (options: readonly AimedPlan[]): ReadonlySet<string> =>
  new Set(
    options.flatMap(({ plan }) =>
      workedParts(plan)
        .filter(hasUnknownRisk)
        .map(({ survey }) => survey.panel.id),
    ),
  );

/** What is true of the car as soon as it is of a panel that any aim works. */
function carCodes(options: readonly AimedPlan[]): readonly FoundCode[] {
  const worked = options.flatMap(({ plan }) => workedParts(plan).filter(isWorked));
  const unknown = worked.some(
    ({ survey: { facts } }) => facts.taken === null && facts.recorded === null,
  );
  return [
    ...(unknown ? (['history-unknown'] as const) : []),
    ...(worked.some(({ provisional }) => provisional) ? (['no-trial-yet'] as const) : []),
  ];
}

function codesOf(panel: PanelPlan, isLeft: boolean): readonly FoundCode[] {
  const { survey, reasons } = panel;
  const outright = outrightCodes(panel);
  if (outright.length > 0) return outright;
  const marks = reasons.flatMap(({ code }): readonly FoundCode[] => {
    if (code === 'local-defect') return ['deep-marks'];
    return code === 'not-polishing' ? ['not-by-polishing'] : [];
  });
  const clear: readonly FoundCode[] = isClearShown(survey) ? ['clear-shown'] : [];
  const edges: readonly FoundCode[] = survey.otherPoints.length > 0 ? ['edges-apart'] : [];
  const all = new Set([
    ...conditionCodes(survey),
    ...colourCodes(survey),
    ...clear,
    ...edges,
    ...marks,
  ]);
  // Of a panel that is left, nothing is done as far as its paint allows.
  if (isLeft) all.delete('thin-paint');
  return [...all];
}

/** What leaves nothing else to say of a panel. */
function outrightCodes({ survey, verdict }: PanelPlan): readonly FoundCode[] {
  if (survey.points.length === 0) return ['not-measured'];
  if (survey.facts.covered) return ['under-film'];
  if (verdict === 'refinish') return ['clear-failed'];
  return survey.facts.finish === 'matte' ? ['matte-paint'] : [];
}

/** What already says why the panel is left. */
const isToldOf = (panel: PanelPlan): boolean =>
  outrightCodes(panel).length > 0 || colourCodes(panel.survey).length > 0;

/** No colour came where a finish without a clear was stated: the finish of the whole car is in doubt. */
export const isClearShown = ({ facts }: Pick<PanelSurvey, 'facts'>): boolean =>
  (facts.clearShownAt ?? []).length > 0;

/** Of the panel itself, or of another by which the finish of the whole car is in doubt. */
function colourCodes({ facts, boundBy }: PanelSurvey): readonly FoundCode[] {
  if (coloursAt(facts).length > 0) return ['colour-came'];
  return boundBy.code === 'colour-at-spot' ? ['finish-doubted'] : [];
}

const byCondition: Readonly<Partial<Record<Condition, FoundCode>>> = {
  filler: 'filler-found',
  refinished: 'painted-again',
  thin: 'thin-paint',
  'cut-back': 'worked-before',
};

/** Of a panel in two zones, those of either; readings that may be mistyped show no earlier work. */
const conditionCodes = (survey: PanelSurvey): readonly FoundCode[] =>
  [survey, ...survey.zones]
    .flatMap(({ condition, also }) => [condition, ...also])
    .flatMap((condition) => byCondition[condition] ?? [])
    .filter((code) => code !== 'worked-before' || survey.keyingSlips.length === 0);
