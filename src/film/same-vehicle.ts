/**
 * Whether two names are of one vehicle: as people write a plate or a number of the workshop, in capitals or not, with a
 * blank more or less about it or within. Other signs tell vehicles apart, and so does a blank where the other has none.
 */
export const isSameVehicle = (one: string, other: string): boolean => plain(one) === plain(other);

const plain = (name: string): string =>
  name.normalize('NFC').trim().replace(/\s+/g, ' ').toLowerCase();
