import { expect, test } from 'vitest';
import { panelNames } from '../../../src/film/template/side-names.ts';
import { plainPanel } from '../car-builder.ts';

const sill = (side: 'left' | 'right', mirror: string | null) =>
  plainPanel(`sill-${side}`, { name: `${side} sill`, mirror });
const roof = plainPanel('roof');

test('panels of both sides are named together, where both are among them, in the order they come in', () => {
  const sills = [sill('left', 'sill-right'), roof, sill('right', 'sill-left')];
  expect(panelNames(sills)).toEqual(['both sills', 'roof']);
  expect(panelNames(sills.slice(0, 2))).toEqual(['left sill', 'roof']);
  expect(panelNames([sill('left', null), sill('right', null)])).toEqual([
    'left sill',
    'right sill',
  ]);
  expect(panelNames([])).toEqual([]);
});

test('a word may be said of each, and panels of which another is said stand apart', () => {
  const sills = [sill('left', 'sill-right'), sill('right', 'sill-left')];
  expect(panelNames(sills, (_, name) => `${name} (thin)`)).toEqual(['both sills (thin)']);
  expect(panelNames(sills, ({ id }, name) => `${name}, ${id}`)).toEqual([
    'both sills, sill-left',
    'both sills, sill-right',
  ]);
});
