/** Panels that no machine may go over, in the words in which they are told from each other in the bay. */
import { groupBy } from '../../base/group-by.ts';
import type { LengthUnit } from '../../base/units.ts';
import { isTouched, type PanelPlan } from '../../correction/plan/plan.ts';
import { DEEPER_THAN_CLEAR, SHOP_TOO_MILD } from '../../correction/plan/plan-remarks.ts';
import { isZone, partName } from '../../film/survey.ts';
import { panelNames } from '../../film/template/side-names.ts';
import { about, joined, remarkFacts } from '../facts.ts';
import { type Block, notice, paragraph } from '../model.ts';
import { filmReason } from '../survey/leave-reason.ts';
import { wherePoints } from './zone-ticks.ts';

/** Those read from which nothing may go come first and stand out; then what nobody read, then what is left as it is. */
export function keepOffBlocks(parts: readonly PanelPlan[], unit: LengthUnit): readonly Block[] {
  const left = parts.filter((part) => !isTouched(part));
  const unread = left.filter(({ survey }) => survey.points.length === 0);
  const read = left.filter((part) => !unread.includes(part));
  const kept = read.filter(isKeptOff);
  const others = read.filter((part) => !kept.includes(part) && part.local.length === 0);
  return [
    ...(kept.length === 0 ? [] : [notice('Keep off', joined(withReasons(kept, withPlace), ' · '))]),
    ...named(
      kept.length === 0 ? 'Keep off' : 'Keep off as well',
      panelNames(unread.map(({ survey }) => survey.panel)),
      'not read',
    ),
    ...named(
      'Leave as they are',
      others.map(({ survey }) => partName(survey)),
      'nothing to polish',
    ),
    ...marksLeft(parts, unit),
  ];
}

/** Marks that stay on panels with no line of their own on a card, and those that only new paint mends. */
function marksLeft(parts: readonly PanelPlan[], unit: LengthUnit): readonly Block[] {
  const told = parts.flatMap((part) => {
    const ofPanel = part.reasons.filter(({ code }) => code === DEEPER_THAN_CLEAR);
    const ofPlaces = isTouched(part)
      ? []
      : part.local.flatMap(({ reasons }) => reasons.slice(0, 1));
    return [...ofPanel, ...ofPlaces].map((one) =>
      about(partName(part.survey), remarkFacts(one, unit)),
    );
  });
  return told.length === 0 ? [] : [paragraph('Marks that stay', joined(told, ' · ', '.'))];
}

const named = (label: string, names: readonly string[], why: string): readonly Block[] =>
  names.length === 0 ? [] : [paragraph(label, `${names.join(', ')} (${why})`)];

/** Polishing it would do harm; else it has nothing that wants it. */
const isKeptOff = (plan: PanelPlan): boolean =>
  plan.survey.budget === 0 || !plan.reasons.some(({ code }) => code === NOTHING_TO_CORRECT);

export const NOTHING_TO_CORRECT = 'nothing-to-correct';
export const NO_TECHNIQUE = 'no-technique';
export const NOTHING_FITS = 'nothing-fits';

/** `bonnet, roof (thin, cut-back)`: panels that are left for one reason stand together. */
export const withReasons = (
  plans: readonly PanelPlan[],
  alone: (plan: PanelPlan) => string | undefined = () => undefined,
): readonly string[] => {
  const groups = groupBy(plans, (plan) => alone(plan) ?? ` ${reasonOf(plan)}`);
  return [...groups.values()].flatMap((group) => {
    const [first] = group;
    return first === undefined ? [] : [alone(first) ?? `${namesOf(group)} (${reasonOf(first)})`];
  });
};

const namesOf = (plans: readonly PanelPlan[]): string =>
  plans.map(({ survey }) => partName(survey)).join(', ');

/** A zone stands for itself, with where on its panel it lies. */
const withPlace = (plan: PanelPlan): string | undefined =>
  isZone(plan.survey)
    ? `${partName(plan.survey)} (${reasonOf(plan)}), about ${wherePoints(plan.survey)}`
    : undefined;

function reasonOf(plan: PanelPlan): string {
  if (plan.verdict === 'refinish') return 'clear coat failed';
  if (plan.survey.budget === 0) return filmReason(plan.survey);
  if (plan.local.length > 0 && plan.reasons.some(({ code }) => code === NOTHING_TO_CORRECT)) {
    return 'its deep marks are left';
  }
  return plan.reasons.flatMap(({ code }) => LEFT[code] ?? [])[0] ?? 'left alone';
}

/** Why nothing is done where something may go, by the code of the reason. */
const LEFT: Readonly<Record<string, string>> = {
  [NOTHING_TO_CORRECT]: 'nothing to polish',
  [NO_TECHNIQUE]: 'no way to work it',
  [NOTHING_FITS]: 'the mildest steps take too much',
  [SHOP_TOO_MILD]: 'what the shop has clears hardly a mark',
  'not-worth-it': 'what may go clears hardly a mark',
  'stronger-than-tried': 'what may go by the steps tried there clears hardly a mark',
};
