/** The plan as a page: film, steps by group of panels, risk, time, materials, cautions. */

import { counted } from '../../base/counted.ts';
import { shown } from '../../base/rounding.ts';
import { nextFact, says } from '../../base/sentence.ts';
import type { LengthUnit } from '../../base/units.ts';
import { isTouched, isWorked, type PanelPlan, workedParts } from '../../correction/plan/plan.ts';
import { hardnessWord } from '../../correction/removal/removal-knowledge.ts';
import { type PanelSurvey, partName } from '../../film/survey.ts';
import type { Panel } from '../../film/template/template.ts';
import type { PlanResult } from '../../tasks/plan/plan-vehicle.ts';
import { assumptionBlocks } from '../assumption-blocks.ts';
import { joined, remarkFacts, toldFacts } from '../facts.ts';
import { isLarge, largeAssumptions } from '../large-assumptions.ts';
import { factorText } from '../log-factor.ts';
import { type Block, gap, paragraph, type Said, title } from '../model.ts';
import type { PageOptions } from '../page-options.ts';
import { factsList } from '../panel-facts.ts';
import { colourFirst } from '../survey/colour-lines.ts';
import { gainRange } from '../survey/gain-groups-text.ts';
import { FILES_DOUBTED, noteBlocks, warningsFirst } from '../survey/note-blocks.ts';
import { heading, legend, takesMore } from '../survey/page-head.ts';
import { strictNote } from '../survey/strict-note.ts';
import { cleanOnSpot } from './clean-on-spot.ts';
import { dayBlocks } from './day-lines.ts';
import { localText } from './local-lines.ts';
import { answerBlocks } from './plan-answer.ts';
import { takenBars } from './plan-drawing.ts';
import { leftAlone, lettered, planTable, remarksOf, stepsTable } from './plan-groups.ts';
import { whyProvisional } from './plan-provisional.ts';
import { riskAtLength, riskLine } from './plan-risk.ts';
import { planWhyBlocks } from './plan-why-blocks.ts';
import { stageList, workBlocks, workDetailBlocks } from './work-blocks.ts';

export function planBlocks(
  result: PlanResult,
  panels: readonly Panel[],
  options: PageOptions,
): readonly Block[] {
  if (result.why.length > 0) return whyPage(result, options);
  const { unit } = options;
  const ids = new Set(panels.map(({ id }) => id));
  const plans = result.plan.panels.filter(({ survey }) => ids.has(survey.panel.id));
  const read = plans.filter(({ survey }) => survey.points.length > 0);
  const parts = workedParts({ panels: plans });
  const planned: Planned = { plans, read, parts, groups: lettered(parts.filter(isWorked)) };
  const work = workOn(planned, result, options);
  return [
    ...headBlocks(planned, result, unit),
    gap,
    ...(read.length === 0 ? [] : [planTable(read, planned.groups, unit), gap]),
    ...(work.length === 0 ? [] : [...work, gap]),
    ...readingBlocks(planned, result, unit),
    ...workBlocks(result.work, options),
    ...(options.verbose ? detailBlocks(result, read.map(surveyOf), unit) : []),
    ...(parts.some(isTouched) ? [paragraph('Care', careWords(result))] : []),
    ...assumptionBlocks(
      { ...result, assumptions: result.assumptions.filter((one) => !isLarge(one)) },
      options,
      SAID_ABOVE,
    ),
    ...(options.drawn === true ? takenBars(parts, unit) : []),
  ];
}

/** What of the plan was asked for: its panels, those that were read, what is worked by itself, and by which steps. */
type Planned = {
  readonly plans: readonly PanelPlan[];
  readonly read: readonly PanelPlan[];
  readonly parts: readonly PanelPlan[];
  readonly groups: ReturnType<typeof lettered>;
};

const surveyOf = ({ survey }: PanelPlan): PanelSurvey => survey;

const headBlocks = (
  { plans, read }: Planned,
  result: PlanResult,
  unit: LengthUnit,
): readonly Block[] => [
  title(heading('Plan', result, read.map(surveyOf))),
  ...strictNote(result),
  gap,
  ...warningsFirst(result, unit),
  ...colourFirst(plans.map(surveyOf)),
  ...answerBlocks(result, plans, unit),
  ...largeAssumptions(result.assumptions, unit),
  paragraph('Aim', aimWords(result)),
];

/** The steps of each letter, deep defects, and what to mind on which panels. */
const workOn = (
  { plans, read, parts, groups }: Planned,
  result: PlanResult,
  { unit, verbose }: PageOptions,
): readonly Block[] => [
  ...(groups.length === 0 ? [] : [stepsTable(groups, unit)]),
  ...(verbose ? leftAlone(workedParts({ panels: read }), unit) : []),
  ...spotsLines(result),
  ...ofTheseSteps(parts, unit),
  ...localLines(plans, unit),
  ...remarksOf(parts, unit),
  ...noteBlocks(result.survey, unit),
];

/** How the tables are read, and of what risk they tell. */
function readingBlocks(
  { read, groups }: Planned,
  result: PlanResult,
  unit: LengthUnit,
): readonly Block[] {
  const byChance = groups.length === 0 ? takesMore(result.settings) : IN_BRACKETS;
  const words = legend(result.settings, read.map(surveyOf), unit, byChance);
  return [
    ...(read.length === 0 ? [] : [paragraph('How to read it', words)]),
    ...(groups.length === 0 ? [] : [paragraph('Risk', riskLine(result, unit))]),
  ];
}

/** What a job takes by chance stands beside its steps. */
const IN_BRACKETS = {
  text: 'brackets: 9 jobs of 10, counted in risk.',
  facts: ['in brackets: 9 jobs of 10 take that, counted in the risk'],
};

const SAID_ABOVE = ['risk', FILES_DOUBTED];

/** With -v: hours stage by stage and day by day, and what is known of each panel. */
const detailBlocks = (
  result: PlanResult,
  surveys: readonly PanelSurvey[],
  unit: LengthUnit,
): readonly Block[] => [
  ...riskAtLength(result),
  stageList(result.work, result.paint.tried.length > 0),
  ...(result.work.machineMinutes === 0 ? [] : dayBlocks(result)),
  ...workDetailBlocks(result.work, result.settings.hours),
  ...factsList(surveys, result, unit),
];

export const careWords = ({ cautions }: PlanResult): Said =>
  joined(
    cautions.map((one) => remarkFacts(one, 'um')),
    '; ',
    '.',
  );

const whyPage = (result: PlanResult, options: PageOptions): readonly Block[] => [
  title(
    heading(
      'Plan',
      result,
      result.why.map(({ plan }) => plan.survey),
    ),
  ),
  ...strictNote(result),
  ...warningsFirst(result, options.unit),
  paragraph('Aim', aimWords(result)),
  ...result.why.flatMap((why) => [gap, ...planWhyBlocks(why, options)]),
  ...assumptionBlocks(result, options, [FILES_DOUBTED]),
];

function aimWords(result: PlanResult): Said {
  const { aim } = result.settings;
  const share = `${aim.name}, ${shown(100 * aim.share, 0)}\u00a0% of general defects`;
  return joined([share, triedWords(result)], '; ', '.');
}

const triedWords = (result: PlanResult): string =>
  result.paint.car.provisional ? `provisional, ${whyProvisional(result).page}` : 'by test spots';

/** How the paints give way on which test spots were made. */
function spotsLines(result: PlanResult): readonly Block[] {
  const { paint, survey, settings } = result;
  return paint.tried.flatMap(({ panel, trials, paint: one }) => {
    const { hardness, depthScale } = one.removal;
    const on = survey.template.panels.find(({ id }) => id === panel);
    const where = on === undefined ? '' : ` on the ${on.name}, a paint of its own`;
    const film = one.provisional ? ', no film of which counts' : '';
    const word = hardnessWord(one, settings.correction.removal);
    const told = joined(
      [
        joined(
          [
            `${counted(trials, 'trial')}${where}${film}: paint ${word}, gives way ${factorText(hardness)} as fast as usual`,
            `defects ${factorText(depthScale)} as deep as taken`,
          ],
          '; ',
          '.',
        ),
        'What was taken counts as spent there.',
      ],
      ' ',
    );
    return [
      paragraph('Test spots', told),
      ...cleanOnSpot(one, result).map((text) => paragraph('Haze', text)),
    ];
  });
}

/** What may go is a matter of the steps planned: of one not tried on this paint the survey speaks. */
function ofTheseSteps(parts: readonly PanelPlan[], unit: LengthUnit): readonly Block[] {
  const gains = parts.flatMap(({ reasons }) =>
    reasons.flatMap(({ code, value }) => (code === 'of-these-steps' ? (value ?? []) : [])),
  );
  return gains.length === 0
    ? []
    : [
        paragraph(
          'May go',
          toldFacts(
            says`here of the steps planned: work to it${nextFact}in the survey of a step not tried on this paint: ${gainRange(gains)} here (--why PANEL)`,
            unit,
          ),
        ),
      ];
}

/** A line for each deep defect of a panel. */
const localLines = (plans: readonly PanelPlan[], unit: LengthUnit): readonly Block[] =>
  plans.flatMap(({ survey, local }) =>
    local.map((one) => paragraph(partName(survey), localText(one, unit))),
  );
