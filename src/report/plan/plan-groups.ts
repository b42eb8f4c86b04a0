/** Panels of a plan by what is done to them: those with the same steps, those left alone, what to mind on each. */
import { groupBy } from '../../base/group-by.ts';
import { textIn } from '../../base/remark.ts';
import { thicknessText, unitName } from '../../base/sentence.ts';
import type { LengthUnit } from '../../base/units.ts';
import { isWorked, type PanelPlan } from '../../correction/plan/plan.ts';
import { stepsId } from '../../correction/removal/step.ts';
import { type PanelSurvey, partName } from '../../film/survey.ts';
import { column, figures, filmFigures } from '../columns.ts';
import { type Block, type Cell, cell, paragraph } from '../model.ts';
import { filmTable } from '../survey/film-table.ts';
import { percentRange } from './percent-range.ts';
import { isOfReadings } from './read-more-first.ts';
import { stepsText } from './step-words.ts';

type Group = { readonly letter: string; readonly plans: readonly PanelPlan[] };

/** Panels with the same steps, lettered in walking order, whatever those steps come to on each. */
export function lettered(worked: readonly PanelPlan[]): readonly Group[] {
  const groups = groupBy(worked, ({ steps }) => stepsId(steps));
  return [...groups.values()].map((plans, i) => ({ letter: letterOf(i), plans }));
}

const letterOf = (index: number): string =>
  index < 26
    ? String.fromCharCode(65 + index)
    : `${letterOf(Math.floor(index / 26) - 1)}${letterOf(index % 26)}`;

export function planTable(
  read: readonly PanelPlan[],
  groups: readonly Group[],
  unit: LengthUnit,
): Block {
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

/**
 * The steps of each letter: what they take, clear and risk. A letter has a row for each verdict, and for each paint on
 * which its steps take something else or whose risk nobody knows.
 */
export const stepsTable = (groups: readonly Group[], unit: LengthUnit): Block => ({
  kind: 'table',
  columns: [
    column('plan'),
    column('steps'),
    { ...filmFigures(`takes ${unitName(unit)}`, unit), said: 'takes' },
    figures('clears'),
    figures('risk'),
  ],
  rows: groups.flatMap((group) => groupRows(group, unit)),
});

function groupRows({ letter, plans }: Group, unit: LengthUnit): readonly (readonly Cell[])[] {
  const verdicts = new Set(plans.map(({ verdict }) => verdict)).size;
  const alike = groupBy(plans, (plan) =>
    [plan.verdict, takenText(plan.removal, unit), plan.risk === null].join(),
  );
  return [...alike.values()].map((same) => {
    const [first] = same;
    const risks = same.flatMap(({ risk }) => risk ?? []);
    const word = verdicts === 1 ? '' : ` ${first.verdict}`;
    const of = alike.size === verdicts ? '' : ` (${names(same)})`;
    return [
      cell(`${letter}${word}`),
      cell(`${stepsText(first.steps)}${of}`),
      cell(takenText(first.removal, unit)),
      cell(`${percentRange(same.map(({ expected }) => expected))}\u00a0%`),
      cell(risks.length === 0 ? 'not known' : `${percentRange(risks)}\u00a0%`),
    ];
  });
}

/** `2.97 (1.2–7.4)`: half of such jobs take less; nine of ten lie within the brackets. */
const takenText = ({ median, low, high }: PanelPlan['removal'], unit: LengthUnit): string =>
  `${thicknessText(median, unit, 2)} (${thicknessText(low, unit)}–${thicknessText(high, unit)})`;

export function leftAlone(read: readonly PanelPlan[], unit: LengthUnit): readonly Block[] {
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

/** Reasons that stand in a line of their own, or that only matter to who asks why. */
const SAID_ELSEWHERE: ReadonlySet<string> = new Set([
  'aim-out-of-reach',
  'as-elsewhere',
  'of-these-steps',
  'tried-first',
  'local-defect',
]);

/** What no polishing mends, whatever is done on the panel. */
const OF_DEFECTS: ReadonlySet<string> = new Set(['not-polishing', 'deeper-than-clear']);

/** What to mind, each once with its panels. */
export function remarksOf(plans: readonly PanelPlan[], unit: LengthUnit): readonly Block[] {
  const remarks = plans.flatMap((plan) => {
    // Why a panel is left stands beside its name.
    const reasons = plan.reasons.filter(({ code }) =>
      isWorked(plan) ? !SAID_ELSEWHERE.has(code) : OF_DEFECTS.has(code),
    );
    const cautions = plan.cautions.filter(({ code }) => !isWorked(plan) || !isOfReadings(code));
    return [...reasons, ...cautions].map((one) => ({ text: textIn(one, unit), plan }));
  });
  const groups = [...groupBy(remarks, ({ text }) => text)];
  return groups.map(([text, group]) => paragraph(names(group.map(({ plan }) => plan)), text));
}
