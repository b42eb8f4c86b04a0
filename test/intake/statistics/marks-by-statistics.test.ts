import { expect, test } from 'vitest';
import { read, values } from '../helpers.ts';

const table = (mean: string): string =>
  `Bauteil;1;2;3;Mittelwert\n;µm;µm;µm;µm\nDach;1.155;1.205;1.135;${mean}\n`;

test('a mean of the file settles what the mark of its readings means', () => {
  expect(values(table('1165,0'))?.map((one) => one[3])).toEqual([1155, 1205, 1135]);
  expect(read(table('1165,0')).value?.decisions.evidence.join()).toContain(
    'point between thousands: so the readings give the mean "1165,0" in line 3',
  );
});

test('one that may be read in two ways itself, or agrees in neither, settles nothing', () => {
  expect(values(table('1.165'))).toBeUndefined();
  expect(values(table('1200,0'))).toBeUndefined();
});
