/**
 * What nobody stated and what would change the answer by more than a fifth were it otherwise: it stands at
 * the top of a page, with how to say so. The rest stands at its end.
 */
import { textIn } from '../base/remark.ts';
import type { LengthUnit } from '../base/units.ts';
import type { Assumption } from '../tasks/settings/assumption.ts';
import { joined } from './facts.ts';
import { type Block, paragraph } from './model.ts';

/** By code, how it is said otherwise; nothing where its own words tell. */
const LARGE: Readonly<Record<string, string>> = {
  'eddy-current': '',
  defects: '--defects',
  template: '',
  finish: '--finish',
  history: '"taken_um" in the job file',
  'record-and-stated': '',
  aim: '--aim',
};

export const isLarge = ({ code }: Pick<Assumption, 'code'>): boolean => code in LARGE;

/** In the order of how much hangs on them. */
export function largeAssumptions(
  assumptions: readonly Assumption[],
  unit: LengthUnit,
): readonly Block[] {
  const stated = Object.entries(LARGE).flatMap(([code, how]) =>
    assumptions
      .filter((one) => one.code === code)
      .map((one) => `${textIn(one, unit)}${how === '' ? '' : ` (${how})`}`),
  );
  return stated.length === 0
    ? []
    : [paragraph('Assumed, say otherwise', joined(stated, '; ', '.'))];
}
