/**
 * Whether two names are of one vehicle: as people write a plate or a number of the workshop, in capitals or not, with a
 * blank more or less about it or within. Other signs tell vehicles apart, and so does a blank where the other has none.
 */
export const isSameVehicle = (one: string, other: string): boolean =>
  plainVehicle(one) === plainVehicle(other);

/** What all ways of writing it have in common. */
export const plainVehicle = (name: string): string =>
  name.normalize('NFC').trim().replace(/\s+/g, ' ').toLowerCase();
