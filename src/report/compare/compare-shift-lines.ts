/** All panels lost one amount more or less than was to go: the gauge is looked at first, and nothing is free by it. */
import { tell } from '../../base/sentence.ts';
import type { LengthUnit } from '../../base/units.ts';
import { type CommonShift, shiftSaid } from '../../tasks/compare/common-shift.ts';
import type { CompareResult } from '../../tasks/compare/compare-files.ts';
import { joined } from '../facts.ts';
import { type Block, notice } from '../model.ts';

export function shiftLines({ shift, planned }: CompareResult, unit: LengthUnit): readonly Block[] {
  if (shift === null) return [];
  return [
    notice(
      'First check the gauge',
      joined(
        [
          `all ${shift.parts} panels lost about the same, ${tell(shiftSaid(shift), unit)}${leftAlone(shift)}.`,
          `A gauge that was set or zeroed otherwise at one of the visits, or another gauge, shows just that${cause(shift)}.`,
          ...(shift.by > 0 ? [] : ['As much more then came off than is told here.']),
          'Read shims, and a place that no pad touched (under tape, in a door shut), as they were read before.',
          `Until that is settled nothing more comes off${planned ? rates(shift) : ''}.`,
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

/** A rate that is too high takes less film than was thought; to leave out cars that lost much would make rates too low. */
const rates = ({ asByRate }: CommonShift): string =>
  asByRate
    ? '; a rate kept of it (--rates-out) may be too high, by which later plans take less'
    : '; no rate is learned by it, and --rates-out keeps none of this visit';

function cause({ asByRate, by }: CommonShift): string {
  if (asByRate) return ', and so do steps that all cut more than was thought';
  return by > 0
    ? ', and is the likeliest cause'
    : ', and is the likeliest cause if the earlier file is named first';
}
