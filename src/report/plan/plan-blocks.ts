import { groupBy } from '../../base/group-by.ts';
import { textIn } from '../../base/remark.ts';
import { roundTo, shown } from '../../base/rounding.ts';
import { says, tell, um, unitName } from '../../base/sentence.ts';
import { isWorked, type PanelPlan, workedParts } from '../../correction/plan/plan.ts';
import { hardnessWord } from '../../correction/removal/removal-knowledge.ts';
import { stepsId } from '../../correction/removal/step.ts';
import type { PanelSurvey } from '../../film/survey.ts';
import type { Panel } from '../../film/template/template.ts';
import type { PlanResult } from '../../tasks/plan/plan-vehicle.ts';
import { isLarge, largeAssumptions } from '../large-assumptions.ts';
import { type Block, type Cell, cell, gap, paragraph, title } from '../model.ts';
import { factsList } from '../panel-facts.ts';
import { factorText } from '../spot/spot-blocks.ts';
import { assumptionBlocks } from '../survey/assumption-blocks.ts';
import { filmTable, partName, type ShowUnit, thickness } from '../survey/film-table.ts';
import { heading, legend, strictNote } from '../survey/page-head.ts';
import type { PageOptions } from '../survey/page-options.ts';
import { counted } from '../words.ts';
import { dayBlocks } from './day-lines.ts';
import { localText } from './local-lines.ts';
import { answerBlocks } from './plan-answer.ts';
import { takenBars } from './plan-drawing.ts';
import { planWhyBlocks } from './plan-why-blocks.ts';
import { stageList, workBlocks, workDetailBlocks } from './work-blocks.ts';

/** The plan as a page: film, steps by group of panels, risk, time, materials, cautions. */
export function planBlocks(
  result: PlanResult,
  panels: readonly Panel[],
  options: PageOptions,
): readonly Block[] {
  if (result.why.length > 0) return whyPage(result, options);
  const ids = new Set(panels.map(({ id }) => id));
  const plans = result.plan.panels.filter(({ survey }) => ids.has(survey.panel.id));
  const read = plans.filter(({ survey }) => survey.points.length > 0);
  const parts = partsOf(plans);
  const groups = lettered(parts.filter(isWorked));
  return [
    title(
      heading(
        'Plan',
        result,
        read.map(({ survey }) => survey),
      ),
    ),
    ...strictNote(result.settings),
    gap,
    ...answerBlocks(result, plans, options.unit),
    gap,
    ...largeAssumptions(result.assumptions, options.unit),
    paragraph('Aim', aimWords(result)),
    gap,
    ...(read.length === 0 ? [] : [planTable(read, groups, options.unit), gap]),
    ...groups.flatMap((group) => groupBlocks(group, options)),
    ...leftAlone(partsOf(read), options.unit),
    ...spotsLines(result),
    ...localLines(plans, options.unit),
    ...remarksOf(parts, options.unit),
    gap,
    ...(read.length === 0
      ? []
      : [
          paragraph(
            'How to read it',
            legend(
              result.settings,
              read.map(({ survey }) => survey),
              options.unit,
            ),
          ),
        ]),
    ...(groups.length === 0 ? [] : [paragraph('Risk', riskLine(result, options.unit))]),
    gap,
    ...workBlocks(result.work),
    ...(options.verbose
      ? [
          stageList(result.work),
          ...(result.work.machineMinutes === 0 ? [] : dayBlocks(result)),
          ...workDetailBlocks(result.work, result.settings.hours),
          ...factsList(
            read.map(({ survey }) => survey),
            result,
            options.unit,
          ),
        ]
      : []),
    gap,
    ...(groups.length === 0
      ? []
      : [paragraph('Care', `${result.cautions.map(({ text }) => text).join('; ')}.`)]),
    ...assumptionBlocks(
      { ...result, assumptions: result.assumptions.filter((one) => !isLarge(one)) },
      options,
    ),
    ...(options.drawn === true ? takenBars(parts, options.unit) : []),
  ];
}

const whyPage = (result: PlanResult, options: PageOptions): readonly Block[] => [
  title(
    heading(
      'Plan',
      result,
      result.why.map(({ plan }) => plan.survey),
    ),
  ),
  ...strictNote(result.settings),
  paragraph('Aim', aimWords(result)),
  ...result.why.flatMap((why) => [gap, ...planWhyBlocks(why, options)]),
  ...assumptionBlocks(result, options),
];

/** Panels, and in place of a mixed one its zones. */
const partsOf = (plans: readonly PanelPlan[]): readonly PanelPlan[] =>
  workedParts({ panels: plans });

function aimWords({ settings, paint }: PlanResult): string {
  const { aim, terms } = settings;
  const tried = triedWords(paint);
  return `${aim.name}, ${shown(100 * aim.share, 0)}\u00a0% of general defects, risk at most ${shown(100 * terms.risk, 1)}\u00a0% a panel; ${tried}.`;
}

const triedWords = ({ car, tried }: PlanResult['paint']): string => {
  if (!car.provisional) return 'by test spots';
  if (tried.length === 0) return 'provisional, no test spot yet';
  return tried.some(({ panel }) => panel === null)
    ? 'provisional, no film read on a test spot'
    : 'provisional, no test spot on the factory paint';
};

/** How the paints give way on which test spots were made. */
const spotsLines = ({ paint, survey, settings }: PlanResult): readonly Block[] =>
  paint.tried.map(({ panel, trials, paint: one }) => {
    const { hardness, depthScale } = one.removal;
    const on = survey.template.panels.find(({ id }) => id === panel);
    const where = on === undefined ? '' : ` on the ${on.name}, a paint of its own`;
    const film = one.provisional ? ', by eye alone' : '';
    const word = hardnessWord(one, settings.correction.removal);
    return paragraph(
      'Test spots',
      `${counted(trials, 'trial')}${where}${film}: paint ${word}, gives way ${factorText(hardness)} as fast as usual; defects ${factorText(depthScale)} as deep as taken. What was taken counts as spent there.`,
    );
  });

type Group = { readonly letter: string; readonly plans: readonly PanelPlan[] };

/** Panels with the same steps, lettered in walking order. */
function lettered(worked: readonly PanelPlan[]): readonly Group[] {
  const groups = groupBy(worked, ({ verdict, steps }) => `${verdict} ${stepsId(steps)}`);
  return [...groups.values()].map((plans, i) => ({ letter: letterOf(i), plans }));
}

const letterOf = (index: number): string =>
  index < 26
    ? String.fromCharCode(65 + index)
    : `${letterOf(Math.floor(index / 26) - 1)}${letterOf(index % 26)}`;

function planTable(read: readonly PanelPlan[], groups: readonly Group[], unit: ShowUnit): Block {
  const words: ReadonlyMap<PanelSurvey, Cell> = new Map(
    read
      .flatMap((panel) => [panel, ...panel.zones])
      .map((plan) => {
        const letter = groups.find(({ plans }) => plans.includes(plan))?.letter;
        return [
          plan.survey,
          plan.zones.length > 0
            ? cell('by zone')
            : cell(
                letter === undefined ? plan.verdict : `${plan.verdict} ${letter}`,
                plan.verdict === 'polish' ? 'plain' : 'strong',
              ),
        ];
      }),
  );
  return filmTable(
    read.map(({ survey }) => survey),
    { title: 'plan', cellOf: (survey) => words.get(survey) ?? cell('') },
    unit,
  );
}

function groupBlocks({ letter, plans }: Group, { unit }: PageOptions): readonly Block[] {
  const [first] = plans;
  if (first === undefined) return [];
  const steps = first.steps.map(({ combination, sets }) => `${sets}×\u00a0${combination.id}`);
  const { median, low, high } = first.removal;
  const takes = `takes ${thickness(median, unit, 2)}\u00a0${unitName(unit)} (${thickness(low, unit)}–${thickness(high, unit)}${letter === 'A' ? ', counted in the risk' : ''})`;
  const clears = `clears ${range(plans.map(({ expected }) => expected))}\u00a0%`;
  const risks = plans.flatMap((plan) => plan.risk ?? []);
  const risk = risks.length === 0 ? 'risk not known' : `risk ${range(risks)}\u00a0%`;
  return [
    paragraph(`${letter} ${first.verdict}`, `${steps.join(' + ')}: ${takes}, ${clears}, ${risk}`),
  ];
}

/** `3` or `2–4`, in per cent. */
function range(shares: readonly number[]): string {
  if (shares.length === 0) return '–';
  const low = shown(100 * Math.min(...shares), 0);
  const high = shown(100 * Math.max(...shares), 0);
  return low === high ? low : `${low}–${high}`;
}

function leftAlone(read: readonly PanelPlan[], unit: ShowUnit): readonly Block[] {
  const left = read.filter((plan) => !isWorked(plan));
  const groups = groupBy(left, (plan) =>
    JSON.stringify([plan.verdict, conditionOf(plan), plan.reasons[0]?.text]),
  );
  return [...groups.values()].flatMap((plans) => {
    const [first] = plans;
    return first === undefined
      ? []
      : [
          paragraph(
            first.verdict,
            [
              `${names(plans)}${conditionOf(first)}`,
              ...first.reasons.slice(0, 1).map((one) => textIn(one, unit)),
            ].join(' – '),
          ),
        ];
  });
}

/** ` (thin, cut-back)`; nothing for sound film. */
function conditionOf({ survey: { condition, also } }: PanelPlan): string {
  return condition === 'original' ? '' : ` (${[condition, ...also].join(', ')})`;
}

const names = (plans: readonly PanelPlan[]): string =>
  plans.map(({ survey }) => partName(survey)).join(', ');

/** A line for each deep defect of a panel. */
const localLines = (plans: readonly PanelPlan[], unit: ShowUnit): readonly Block[] =>
  plans.flatMap(({ survey, local }) =>
    local.map((one) => paragraph(partName(survey), localText(one, unit))),
  );

/** Reasons that stand in a line of their own, or that only matter to who asks why. */
const SAID_ELSEWHERE: ReadonlySet<string> = new Set([
  'aim-out-of-reach',
  'as-elsewhere',
  'local-defect',
]);

/** What to mind, each once with its panels. */
function remarksOf(plans: readonly PanelPlan[], unit: ShowUnit): readonly Block[] {
  const remarks = plans.filter(isWorked).flatMap((plan) => {
    const reasons = plan.reasons.filter(({ code }) => !SAID_ELSEWHERE.has(code));
    return [...reasons, ...plan.cautions].map((one) => ({ text: textIn(one, unit), plan }));
  });
  const groups = [...groupBy(remarks, ({ text }) => text)];
  return groups.map(([text, group]) => paragraph(names(group.map(({ plan }) => plan)), text));
}

function riskLine({ plan, settings: { film } }: PlanResult, unit: ShowUnit): string {
  const worked = partsOf(plan.panels).filter(isWorked);
  const share = roundTo(100 * film.topcoat.thinnestShare, 1);
  const known = worked.filter(({ risk }) => risk !== null);
  const already = range(known.flatMap((panel) => panel.already ?? []));
  const hasSpots = plan.panels.some(({ local }) => local.some(({ steps }) => steps.length > 0));
  const spots = hasSpots ? ' Spots are extra: the risk of each is of its own place.' : '';
  const added = plan.expectedPanelsBelowFloor - plan.panelsBelowFloorAlready;
  const thin = range(known.flatMap((panel) => panel.riskIfThin ?? []));
  const thinner = tell(says`${um(film.thinnerClear, null)}`, unit);
  const before =
    known.length === 0
      ? ''
      : `Before polishing it is ${already}\u00a0% on the panels worked; with clear ${thinner} thinner ${thin}\u00a0%. `;
  return (
    `chance, over cars like those assumed, of clear (topcoat) under its floor on over ${share}\u00a0% of a panel’s face (outer ${film.edgeWidth}\u00a0mm, body lines excluded). ` +
    `${before}Such panels: the plan adds ${shown(added, 2)} on average${alreadyThin(plan.panels)}.${spots}`
  );
}

/** `; bonnet (99 %) is one already`: what no plan changes, lest the plan be blamed for it. */
function alreadyThin(panels: readonly PanelPlan[]): string {
  const thin = partsOf(panels).filter(({ already }) => already !== null && already > 0.5);
  if (thin.length === 0) return '';
  const told = thin.map(
    ({ survey, already }) => `${partName(survey)} (${shown(100 * (already ?? 0), 0)}\u00a0%)`,
  );
  return `; ${told.join(', ')} ${thin.length === 1 ? 'is one' : 'are such'} already`;
}
