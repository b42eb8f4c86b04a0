/**
 * What a quote does not promise and why, in words for the owner of the car: it follows from what the
 * survey found and from what even the strongest of the plans leaves.
 */

import { groupBy } from '../base/group-by.ts';
import { isWorked, type PanelPlan, type Plan, workedParts } from '../correction/plan/plan.ts';
import type { Condition } from '../film/condition/condition.ts';
import { coloursAt } from '../film/limits/colour-at-spot.ts';
import { isZone, type PanelSurvey } from '../film/survey.ts';
import { panelNames } from '../film/template/side-names.ts';

export type ExclusionCode =
  | 'not-measured'
  | 'under-film'
  | 'clear-failed'
  | 'matte-paint'
  | 'colour-came'
  | 'finish-doubted'
  | 'filler-found'
  | 'painted-again'
  | 'thin-paint'
  | 'worked-before'
  | 'edges-apart'
  | 'deep-marks'
  | 'not-by-polishing'
  | 'left-alone'
  | 'history-unknown'
  | 'no-trial-yet';

export type Exclusion = {
  readonly code: ExclusionCode;
  /** For the owner of the car. */
  readonly text: string;
  /** Panels by their names, or a zone of one; none where it is about the whole car. */
  readonly panels: readonly string[];
};

const texts: Readonly<Record<ExclusionCode, string>> = {
  'not-measured': 'could not be measured: nothing is promised there',
  'under-film': 'under a film or wrap, and not worked',
  'clear-failed': 'the top layer is coming off: polishing cannot help, new paint can',
  'matte-paint': 'matte paint, which polishing would make shine in patches: not worked',
  'colour-came':
    'at a trial colour came off with the polish: the clear top layer is gone there, or the paint is not what was thought; not worked',
  'finish-doubted':
    'not polished until it is settled what the paint of this car is, as colour came off at a trial',
  'filler-found': 'filler under the paint: how far it can be corrected shows only on the car',
  'painted-again': 'painted again since it left the factory: it may behave otherwise',
  'thin-paint': 'little paint left: only as much is done as it allows',
  'worked-before':
    'less paint than elsewhere, as if it had been sanded or polished before, so less can be done there',
  'edges-apart':
    'edges and shuts were measured apart: their paint is thinner, and they are not polished',
  'deep-marks': 'marks too deep to polish out safely: they get fainter, or they stay',
  'not-by-polishing': 'faults in the paint itself, which polishing does not mend',
  'left-alone':
    'left as found: polishing would take more than the paint can give, or gain too little',
  'history-unknown':
    'how often the car was polished before is not known: less is taken, to be safe',
  'no-trial-yet': 'no trial was made on this paint yet: it may prove harder or softer than most',
};

/** `plan` is that of the strongest aim: what it leaves, every aim leaves. */
export function exclusionsOf(plan: Plan): readonly Exclusion[] {
  const found = plan.panels.flatMap((panel) =>
    codesOf(panel).map((code) => ({ code, panel: panel.survey.panel })),
  );
  const leftZones = plan.panels.flatMap(zonesLeft);
  const byCode = groupBy(found, ({ code }) => code);
  const order = Object.keys(texts) as ExclusionCode[];
  return [
    ...order.flatMap((code) => {
      const panels = [
        ...panelNames((byCode.get(code) ?? []).map(({ panel }) => panel)),
        ...(code === 'left-alone' ? leftZones : []),
      ];
      return panels.length === 0 ? [] : [{ code, text: texts[code], panels }];
    }),
    ...carCodes(plan).map((code) => ({ code, text: texts[code], panels: [] })),
  ];
}

/** What is true of the car as soon as it is of a panel that is worked. */
function carCodes(plan: Plan): readonly ExclusionCode[] {
  const worked = workedParts(plan).filter(isWorked);
  const unknown = worked.some(
    ({ survey: { facts } }) => facts.taken === null && facts.recorded === null,
  );
  return [
    ...(unknown ? (['history-unknown'] as const) : []),
    ...(worked.some(({ provisional }) => provisional) ? (['no-trial-yet'] as const) : []),
  ];
}

function codesOf({ survey, verdict, reasons, zones }: PanelPlan): readonly ExclusionCode[] {
  if (survey.points.length === 0) return ['not-measured'];
  if (survey.facts.covered) return ['under-film'];
  if (verdict === 'refinish') return ['clear-failed'];
  if (survey.facts.finish === 'matte') return ['matte-paint'];
  const conditions = conditionCodes(survey);
  const marks = reasons.flatMap(({ code }): readonly ExclusionCode[] => {
    if (code === 'local-defect') return ['deep-marks'];
    return code === 'not-polishing' ? ['not-by-polishing'] : [];
  });
  const colour = colourCodes(survey);
  const edges: readonly ExclusionCode[] = survey.otherPoints.length > 0 ? ['edges-apart'] : [];
  const left: readonly ExclusionCode[] =
    !zones.some(isWorked) && isLeft({ verdict, reasons }) ? ['left-alone'] : [];
  const all = new Set([...conditions, ...colour, ...edges, ...marks, ...left]);
  // Of a panel that is left, nothing is done as far as its paint allows, and colour says why it is left.
  if (all.has('left-alone')) all.delete('thin-paint');
  if (colour.length > 0) all.delete('left-alone');
  return [...all];
}

/** Of the panel itself, or of another by which the finish of the whole car is in doubt. */
function colourCodes({ facts, boundBy }: PanelSurvey): readonly ExclusionCode[] {
  if (coloursAt(facts).length > 0) return ['colour-came'];
  return boundBy.code === 'colour-at-spot' ? ['finish-doubted'] : [];
}

/** `roof`, or `roof (where its paint is thinner)`: nobody but the trade knows what a zone is. */
export const partForOwner = (survey: PanelSurvey): string =>
  isZone(survey) ? `${survey.panel.name} (where its paint is ${survey.zone})` : survey.panel.name;

const isLeft = ({ verdict, reasons }: Pick<PanelPlan, 'verdict' | 'reasons'>): boolean =>
  verdict === 'leave' && reasons[0]?.code !== 'nothing-to-correct';

/** Of a panel whose other zone is worked, the one that is not. */
const zonesLeft = ({ zones }: PanelPlan): readonly string[] =>
  zones.some(isWorked) ? zones.filter(isLeft).map(({ survey }) => partForOwner(survey)) : [];

const byCondition: Readonly<Partial<Record<Condition, ExclusionCode>>> = {
  filler: 'filler-found',
  refinished: 'painted-again',
  thin: 'thin-paint',
  'cut-back': 'worked-before',
};

/** Of a panel in two zones, those of either. */
const conditionCodes = (survey: PanelSurvey): readonly ExclusionCode[] =>
  [survey, ...survey.zones]
    .flatMap(({ condition, also }) => [condition, ...also])
    .flatMap((condition) => byCondition[condition] ?? []);
