/** A point beyond the range of the gauge in the later readings of a panel: filler, unless the probe was lifted. */
import { expect, test } from 'vitest';
import { compared, panelLeft, readingsText, soundFilm, worked } from '../comparing.ts';

const before = readingsText(soundFilm);
const after = readingsText(worked(soundFilm, () => 1));

const bonnetAfter = (text: string) =>
  panelLeft(
    compared({ visits: [before, after.replace(/^bonnet,3,.*$/mu, `bonnet,3,${text}`)] }),
    'bonnet',
  );

test('stops the panel, whatever its other points read', () => {
  expect(bonnetAfter('114.2').verdict).not.toBe('stop');
  expect(bonnetAfter('OL').verdict).toBe('stop');
});

test('enters no difference: the other points are compared as they were', () => {
  const [over, empty] = [bonnetAfter('OL'), bonnetAfter('')];
  expect(over.comparison.change).toEqual(empty.comparison.change);
});
