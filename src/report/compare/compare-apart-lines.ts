/** Points whose change stands out from their panel's, before anything that the comparison says. */
import { type Sentence, says, tell, um } from '../../base/sentence.ts';
import type { LengthUnit } from '../../base/units.ts';
import type { PointApart } from '../../film/compare/compare-points.ts';
import type { CompareResult } from '../../tasks/compare/compare-files.ts';
import { pointsApart } from '../../tasks/compare/odd-readings.ts';
import { joined } from '../facts.ts';
import { type Block, notice } from '../model.ts';
import { shortName } from './compare-words.ts';

export function apartLines(
  { panels, steps }: Pick<CompareResult, 'panels' | 'steps'>,
  unit: LengthUnit,
): readonly Block[] {
  const some = panels.filter(({ comparison }) => comparison.apart !== null);
  if (some.length === 0) return [];
  const files = { before: steps.at(0)?.from ?? '', after: steps.at(-1)?.to ?? '' };
  const points = some.flatMap(({ comparison }) => pointsApart(comparison));
  const told = some.flatMap(({ comparison }) =>
    pointsApart(comparison).map((one) =>
      tell(says`${comparison.panel.name}, ${apartText(one, files)}`, unit),
    ),
  );
  const lost = points.some((one) => one.lost === 'more')
    ? ['Too much came off there, or it is a slip: until then it is held to be gone.']
    : [];
  const [panel, is] = some.length === 1 ? ['That panel', 'is'] : ['These panels', 'are'];
  return [
    notice(
      'Read again first',
      joined(
        [
          `${told.join('; ')}.`,
          ...lost,
          `${panel} ${is} judged with and without, by the safer of the two, the other panels without: do not work on there.`,
        ],
        ' ',
      ),
    ),
  ];
}

type Files = { readonly before: string; readonly after: string };

/** `point 2 (119.7 µm in before.csv, 171.9 µm in after.csv, where 2.3 µm came off beside it; 117.9 µm with two digits exchanged?)` */
function apartText(one: PointApart, files: Files): Sentence {
  const digits =
    one.swapped === null
      ? says``
      : says`; in ${shortName(files[one.odd])} ${um(one.swapped, null)} with two digits exchanged?`;
  return says`point ${one.point} (${um(one.before, null)} in ${shortName(files.before)}, ${um(one.after, null)} in ${shortName(files.after)}, where ${um(one.others)} came off beside it${digits})`;
}
