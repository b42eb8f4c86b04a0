/** A panel's plan taken apart on a page: what it takes and clears, what limits it, what else there was. */

import { groupBy } from '../../base/group-by.ts';
import { saying, textIn } from '../../base/remark.ts';
import { shown } from '../../base/rounding.ts';
import { says, tell, thicknessText, um, unitName } from '../../base/sentence.ts';
import type { LengthUnit } from '../../base/units.ts';
import type { PanelPlan, PlannedStep } from '../../correction/plan/plan.ts';
import type { PartWhy, Rejected, RejectedKind } from '../../correction/plan/why-not.ts';
import { partName } from '../../film/survey.ts';
import type { PanelWhy } from '../../tasks/plan/plan-vehicle.ts';
import { joined, remarkFacts } from '../facts.ts';
import { type Block, gap, list, paragraph, title } from '../model.ts';
import { localWhyText } from './local-lines.ts';
import { stepsText } from './step-words.ts';

type Options = { readonly unit: LengthUnit; readonly verbose: boolean };

export const planWhyBlocks = ({ plan, parts }: PanelWhy, options: Options): readonly Block[] => [
  ...parts.flatMap((part, i) => [...(i === 0 ? [] : [gap]), ...partBlocks(part, options)]),
  ...(plan.local.length === 0
    ? []
    : [
        list(
          'Local work',
          plan.local.map((one) => localWhyText(one, options.unit)),
        ),
      ]),
];

function partBlocks(why: PartWhy, options: Options): readonly Block[] {
  const { plan, depth, lookedAt } = why;
  const { unit } = options;
  // A deep defect has its own lines below.
  const reasons = plan.reasons.filter(({ code }) => code !== 'local-defect');
  return [
    title(
      tell(
        says`Why ${partName(plan.survey)}: ${plan.verdict}, ${um(plan.survey.budget, 2)} may go`,
        unit,
      ),
    ),
    gap,
    ...(plan.steps.length === 0 ? [] : takenBlocks(plan, options)),
    ...(reasons.length === 0
      ? []
      : [
          list(
            'Reasons',
            reasons.map((one) => remarkFacts(one, unit)),
          ),
        ]),
    limitsBlock(plan, unit),
    ...(lookedAt === 0
      ? []
      : [
          paragraph(
            'Looked at',
            tell(
              says`${lookedAt} sequences of steps, against marks ${um(depth, 2)} deep in the middle`,
              unit,
            ),
          ),
        ]),
    ...rejectedBlocks(why, options),
  ];
}

function takenBlocks(plan: PanelPlan, { unit }: Options): readonly Block[] {
  const { median, mean, low, high } = plan.removal;
  const name = unitName(unit);
  const film = (value: number): string => thicknessText(value, unit, 2);
  const range = `nine cases of ten ${film(low)}–${film(high)}`;
  const percent = (share: number | null): string =>
    share === null ? 'not known' : `${shown(100 * share, 1)} %`;
  return [
    list(
      'Steps',
      plan.steps.map((step) => stepText(step, unit)),
    ),
    paragraph(
      'Takes',
      joined(
        [
          `${film(median)} ${name} in the middle`,
          { text: `${film(mean)} on average`, facts: [`${film(mean)} ${name} on average`] },
          { text: range, facts: [`${range} ${name}`] },
        ],
        ', ',
      ),
    ),
    paragraph(
      'Clears',
      joined([percent(plan.expected), `the aim is ${percent(plan.aimed)}`], ', '),
    ),
    paragraph(
      'Risk',
      joined(
        [
          percent(plan.risk),
          `${percent(plan.riskIfThin)} if the topcoat were thinner`,
          `before any polishing ${percent(plan.already)}`,
        ],
        '; ',
      ),
    ),
  ];
}

const stepText = ({ removal, machineTime, ...step }: PlannedStep, unit: LengthUnit): string =>
  `${stepsText([step])}: ${thicknessText(removal, unit, 2)} ${unitName(unit)}, ${shown(machineTime, 0)} min`;

const limitsBlock = ({ survey: { limits, boundBy } }: PanelPlan, unit: LengthUnit): Block =>
  list(
    {
      text: `What limits it: median removal that each allows (${unitName(unit)})`,
      short: 'What limits it',
    },
    limits.map((one) => {
      const isBinding = one === boundBy;
      const allows = thicknessText(one.value, unit, 2);
      const said = tell(says`${allows}: ${saying(one)}${isBinding ? ' (binds)' : ''}`, unit);
      return { text: `${isBinding ? '→' : '\u00a0'} ${said}`, facts: [said] };
    }),
  );

const KINDS: readonly RejectedKind[] = ['milder', 'stronger', 'quicker'];

/** The nearest of each reason, with -v the few that are kept of it; what is of two kinds stands once, under both. */
function rejectedBlocks({ rejected }: PartWhy, options: Options): readonly Block[] {
  const said = KINDS.flatMap((kind) => {
    const ofKind = rejected.filter((one) => one.kind === kind);
    return ofKind.filter(
      (one, i) => options.verbose || ofKind.findIndex((other) => isLike(one, other)) === i,
    );
  });
  const byText = [...groupBy(said, (one) => rejectedText(one, options.unit))].map(
    ([text, group]) => ({ text, kinds: group.map(({ kind }) => kind).join(' or ') }),
  );
  return [...groupBy(byText, ({ kinds }) => kinds)].map(([kinds, group]) =>
    list(
      `Why nothing ${kinds}`,
      group.map(({ text }) => text),
    ),
  );
}

const isLike = (one: Rejected, other: Rejected): boolean => one.reason.code === other.reason.code;

const rejectedText = ({ steps, reason }: Rejected, unit: LengthUnit): string =>
  `${stepsText(steps)}: ${textIn(reason, unit)}`;
