/** What a survey comes to, in a few lines that stand before anything else on its page; each panel stands in one. */
import { groupBy } from '../../base/group-by.ts';
import { unitName } from '../../base/sentence.ts';
import { type PanelSurvey, partsOf } from '../../film/survey.ts';
import { type Block, paragraph } from '../model.ts';
import { partNames } from '../panel-list.ts';
import { partName, type ShowUnit, thickness } from './film-table.ts';
import { leaveReason } from './leave-reason.ts';
import { unreadLine } from './unread-lines.ts';

/** `surveyed` are the panels asked for, read or not. */
export function answerBlocks(surveyed: readonly PanelSurvey[], unit: ShowUnit): readonly Block[] {
  const parts = surveyed.filter(({ points }) => points.length > 0).flatMap(partsOf);
  const open = parts.filter(isOpen);
  const rest = parts.filter((part) => !isOpen(part));
  const worked = rest.filter(({ budget }) => budget > 0);
  return [
    paragraph('May go', worked.length === 0 ? nothingMore(open) : mayGo(worked, unit)),
    ...line('Leave', leftAlone(rest.filter(({ budget }) => budget === 0))),
    ...line(
      'Settle first',
      open.map((part) => settle(part, unit)),
    ),
    ...unreadLine(surveyed),
  ];
}

const line = (label: string, told: readonly string[]): readonly Block[] =>
  told.length === 0 ? [] : [paragraph(label, told.join(' · '))];

const nothingMore = (open: readonly PanelSurvey[]): string =>
  open.length === 0 ? 'nothing' : 'nothing till panels are settled';

/** Those of one reason together. */
const leftAlone = (parts: readonly PanelSurvey[]): readonly string[] =>
  [...groupBy(parts, leaveReason)].map(([reason, group]) => `${partNames(group)} (${reason})`);

/** Near its line, and what may go hangs on the side it lies on. */
function isOpen({ otherSide }: PanelSurvey): boolean {
  if (otherSide === null) return false;
  const { budget: there, ifWordHolds: here } = otherSide;
  return there === null || Math.abs(there - here) >= LEAST_TOLD;
}

/** µm by which two figures of two decimals differ at the least. */
const LEAST_TOLD = 0.005;

/** From the least to the most, and from which panels. */
function mayGo(parts: readonly PanelSurvey[], unit: ShowUnit): string {
  const budgets = parts.map(({ budget }) => budget);
  const [least, most] = [Math.min(...budgets), Math.max(...budgets)].map((one) =>
    thickness(one, unit, 2),
  );
  const range = least === most ? least : `${least} to ${most}`;
  const each = parts.length === 1 ? '' : ' each';
  return `${range} ${unitName(unit)}${each}: ${partNames(parts)}`;
}

/** `front left door (original, perhaps cut-back): work to 3.05 µm`. */
function settle(part: PanelSurvey, unit: ShowUnit): string {
  const { condition, otherSide, budget } = part;
  const words = [condition, ...(otherSide === null ? [] : [`perhaps ${otherSide.condition}`])];
  const figure =
    budget < LEAST_TOLD
      ? 'nothing may go till then'
      : `work to ${thickness(budget, unit, 2)} ${unitName(unit)}`;
  return `${partName(part)} (${words.join(', ')}): ${figure}`;
}
