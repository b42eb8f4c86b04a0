import { describe, expect, it } from 'vitest';
import { isSameVehicle } from '../../src/film/same-vehicle.ts';

describe('a vehicle', () => {
  it('is the same in capitals or not, with blanks about it, and with one blank or two within', () => {
    for (const other of ['FH-1042', 'fh-1042', ' FH-1042 ', 'Fh-1042\t']) {
      expect(isSameVehicle('FH-1042', other)).toBe(true);
    }
    expect(isSameVehicle('AB 12', 'ab  12')).toBe(true);
    expect(isSameVehicle('Käfer', 'KÄFER'.normalize('NFD'))).toBe(true);
  });
  it('is another where a sign, a digit or a blank differs', () => {
    for (const other of ['FH-1043', 'FH1042', 'FH 1042', 'FH-1042b', '']) {
      expect(isSameVehicle('FH-1042', other)).toBe(false);
    }
  });
});
