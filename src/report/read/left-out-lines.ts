/** The cells that were left out, where they stand and why; those alike are told together. */
import { shownFile } from '../../base/file-name.ts';
import { groupBy } from '../../base/group-by.ts';
import type { ReadVehicles } from '../../tasks/read/read-request.ts';

type LeftOut = ReadVehicles['excluded'][number];

export function leftOutLines(excluded: readonly LeftOut[]): readonly string[] {
  const alike = groupBy(excluded, ({ file, text, reason }) => JSON.stringify([file, text, reason]));
  return [...alike.values()].map((group) => {
    const [one] = group;
    const said = saidOf(one);
    return group.length === 1
      ? `${shownFile(one.file)}:${placeOf(one)} ${said}`
      : `${shownFile(one.file)} ${said}: ${group.length} cells, at ${placesOf(group)}`;
  });
}

/** Of more, --format json has every place. */
const MOST_PLACES = 8;

function placesOf(group: readonly LeftOut[]): string {
  const places = group.slice(0, MOST_PLACES).map(placeOf).join(', ');
  const more = group.length - MOST_PLACES;
  return more > 0 ? `${places} and ${more} more` : places;
}

const placeOf = ({ line, column }: LeftOut): string => `${line}:${column}`;

/** `"OL" means over-range`: a reason that begins with the text of the cell says it already. */
const saidOf = ({ text, reason }: LeftOut): string =>
  text === '' || reason.startsWith(`"${text}"`) ? reason : `"${text}" ${reason}`;
