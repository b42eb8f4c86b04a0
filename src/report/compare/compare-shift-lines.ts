/** All panels lost one amount more than was to go: the gauge is looked at first, and nothing is free by it. */
import { tell } from '../../base/sentence.ts';
import type { LengthUnit } from '../../base/units.ts';
import { type CommonShift, shiftSaid } from '../../tasks/compare/common-shift.ts';
import type { CompareResult } from '../../tasks/compare/compare-files.ts';
import { joined } from '../facts.ts';
import { type Block, notice } from '../model.ts';

export function shiftLines({ shift }: CompareResult, unit: LengthUnit): readonly Block[] {
  if (shift === null) return [];
  return [
    notice(
      'First check the gauge',
      joined(
        [
          `all ${shift.parts} panels lost about the same, ${tell(shiftSaid(shift), unit)}${leftAlone(shift)}.`,
          `A gauge that was set or zeroed otherwise at one of the visits, or another gauge, shows just that${cause(shift)}.`,
          'Read shims, and a place that no pad touched (under tape, in a door shut), as they were read before.',
          'Until that is settled nothing more comes off, and no rate is to be kept of it (--rates-out).',
        ],
        ' ',
      ),
    ),
  ];
}

function leftAlone({ leftAlone: some }: CommonShift): string {
  if (some === 0) return '';
  return some === 1
    ? ', one that the plan leaves alone too'
    : `, ${some} that the plan leaves alone too`;
}

const cause = ({ asByRate }: CommonShift): string =>
  asByRate
    ? ', and so do steps that all cut more than was thought'
    : ', and is the likeliest cause';
