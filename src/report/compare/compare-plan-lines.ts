/** What was planned beside what was measured, in words. */

import { counted } from '../../base/counted.ts';
import { shownFile } from '../../base/file-name.ts';
import { thicknessText, unitName } from '../../base/sentence.ts';
import type { LengthUnit } from '../../base/units.ts';
import type { CompareResult } from '../../tasks/compare/compare-files.ts';
import type { PartLeft } from '../../tasks/compare/compare-panel.ts';
import type { RateSeen } from '../../tasks/compare/compare-plan.ts';
import { factorText } from '../log-factor.ts';
import { type Block, paragraph } from '../model.ts';
import { partNameOf, partsLeft } from './compare-words.ts';

export function planLine(
  { planned, panels, worked }: CompareResult,
  unit: LengthUnit,
): readonly Block[] {
  if (!planned) return [];
  const judged = partsLeft(panels).filter(({ against }) => against !== null);
  const of = (word: PartLeft['against']): readonly PartLeft[] =>
    judged.filter(({ against }) => against === word);
  const told = (word: 'more' | 'less'): readonly string[] => {
    const some = of(word);
    return some.length === 0
      ? []
      : [`${word} on ${some.map((one) => toldOf(one, unit)).join(', ')}`];
  };
  const within = of('as-foretold').length;
  const all = within === judged.length ? 'all ' : '';
  const parts = [
    ...told('more'),
    ...told('less'),
    ...(within === 0
      ? []
      : [`${all}${counted(within, 'panel')} within what plan and readings may be off by`]),
  ];
  return [
    paragraph(
      'Against the plan',
      judged.length === 0
        ? 'none of its panels was compared.'
        : `${parts.join('; ')}; ${asWorkedText(judged, worked)}.`,
    ),
  ];
}

/** What the plan is held to: all its sets, or those that were worked. */
function asWorkedText(judged: readonly PartLeft[], worked: CompareResult['worked']): string {
  if (worked === null) return 'taken as worked in full (if not, say so with --worked)';
  const unsaid = new Set(
    judged.map(({ comparison: { panel } }) => panel).filter(({ id }) => !worked.panels.has(id)),
  );
  const rest =
    unsaid.size === 0
      ? ''
      : ` (${counted(unsaid.size, 'panel')} not named there as worked in full)`;
  return `by the sets of ${shownFile(worked.file)}${rest}`;
}

/** `roof (0.6 for 2.9 µm)` */
function toldOf({ comparison, foretold }: PartLeft, unit: LengthUnit): string {
  const came = thicknessText(comparison.change?.removed.value ?? 0, unit);
  const planned = thicknessText(foretold?.removal?.median ?? 0, unit);
  return `${partNameOf(comparison)} (${came} for ${planned} ${unitName(unit)})`;
}

export const rateLines = ({ rates }: CompareResult): readonly Block[] => rates.flatMap(rateLine);

/** Only a rate that looks wrong is worth a line. */
function rateLine({ combination, panels, factor, looks }: RateSeen): readonly Block[] {
  if (looks === null) return [];
  const word =
    looks === 'too-low' ? 'cuts more than its rate says' : 'cuts less than its rate says';
  return [
    paragraph(
      'Rate',
      `${combination}, most of the work on ${counted(panels, 'panel')}, ${word}: ${factorText(factor)} what was foretold.`,
    ),
  ];
}
