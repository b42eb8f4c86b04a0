/** Panels whose marked points fit another way round, before anything that the comparison says. */
import type { CompareResult } from '../../tasks/compare/compare-files.ts';
import { swapsOf } from '../../tasks/compare/compare-swaps.ts';
import { joined } from '../facts.ts';
import { type Block, notice } from '../model.ts';

/** `bonnet and roof fit far better exchanged` */
export function swapLines({ total }: Pick<CompareResult, 'total'>): readonly Block[] {
  const swaps = swapsOf(total);
  if (swaps.length === 0) return [];
  const turned = swaps.flatMap(({ kind, panels }) => (kind === 'mirrored' ? panels : []));
  const told = [
    ...swaps.flatMap(({ kind, panels }) =>
      kind === 'panels' ? [`${panels.map(({ name }) => name).join(' and ')} exchanged`] : [],
    ),
    ...(turned.length === 0
      ? []
      : [`${turned.map(({ name }) => name).join(', ')} numbered from the other end`]),
  ];
  return [
    notice(
      'Settle first',
      joined(
        [
          `Marked points fit far better another way round: ${told.join('; ')}.`,
          'Until then nothing is told of these panels: do not work on there.',
        ],
        ' ',
      ),
    ),
  ];
}
