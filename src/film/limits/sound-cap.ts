/**
 * The panel of a car that holds its repaint to least: on a repaint with a test spot of its own no more goes than there.
 *
 * A panel is a measure of that if it is original. Where its word is in doubt, what may go from it is told over both
 * sides of its line already, and it counts the same whichever word it has: in full while the chance p that it is
 * original is at least the risk accepted, and under that in proportion. With m what all the others hold a repaint to and
 * b what may go from the panel: b + (1 − p/risk)·(m − b). So nothing jumps where a word changes, and film that is surely
 * cut back holds nothing back. Whether its total is thin is a matter of the panel alone.
 */
import { type Micrometres, micrometres } from '../../base/units.ts';
import { isHeldWithSide, sidePaintedWith } from '../condition/painted-side.ts';
import type { PanelSurvey } from '../survey.ts';
import { type Allowance, bounded } from './allowance.ts';

/**
 * Of factory film read at two points at least, and not left alone for its finish; a fresh panel is repaint. One that may
 * have been painted again with its side is repaint itself by then, or free by its own spot; one of neither side that is
 * held with it stays a measure, by what it would allow alone: that it is in doubt lets nothing more go elsewhere.
 */
const isMeasure = (panel: PanelSurvey): boolean =>
  (sidePaintedWith(panel) === undefined || isHeldWithSide(panel)) && isFactoryPaint(panel);

const isFactoryPaint = ({ condition, points, boundBy }: PanelSurvey): boolean =>
  (condition === 'original' || condition === 'cut-back' || condition === 'thin') &&
  points.length > 1 &&
  boundBy.code !== 'finish' &&
  boundBy.code !== 'clear-coat-failure';

export const isCutBack = ({ condition, also }: Pick<PanelSurvey, 'condition' | 'also'>): boolean =>
  condition === 'cut-back' || also.includes('cut-back');

/** How far it counts as original, 0 to 1. */
function weightOf(panel: PanelSurvey, risk: number): number {
  if (!isMeasure(panel)) return 0;
  return isCutBack(panel) ? Math.min(1, (panel.sides.cutBack?.otherSide ?? 0) / risk) : 1;
}

/** Whether a repaint may go by it. */
export const isSound = (panel: PanelSurvey, risk: number): boolean => weightOf(panel, risk) === 1;

const besidesTotal = ({ limits, budget }: Allowance, { condition }: PanelSurvey): Micrometres =>
  condition === 'thin' ? bounded(limits.filter(({ code }) => code !== 'total')).budget : budget;

/** With what it holds a repaint to as its budget; null where no panel is sound. */
export function soundCap(
  panels: readonly PanelSurvey[],
  risk: number,
  allowed: (panel: PanelSurvey) => Allowance = (panel) => panel,
): PanelSurvey | null {
  const held = panels
    .map((panel) => ({ panel, weight: weightOf(panel, risk) }))
    .filter(({ weight }) => weight > 0)
    .map((one) => ({ ...one, budget: besidesTotal(allowed(one.panel), one.panel) }));
  const [first, ...sound] = held.filter(({ weight }) => weight === 1);
  if (first === undefined) return null;
  const least = sound.reduce((one, other) => (other.budget < one.budget ? other : one), first);
  const { panel, budget } = held
    .filter(({ weight }) => weight < 1)
    .map((one) => {
      const room = Math.max(0, least.budget - one.budget);
      return { ...one, budget: micrometres(one.budget + (1 - one.weight) * room) };
    })
    .reduce((one, other) => (other.budget < one.budget ? other : one), least);
  return { ...panel, budget };
}
