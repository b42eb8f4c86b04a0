import { expect, test } from 'vitest';
import { partForOwner } from '../../src/work/left-as-found.ts';
import { amongSound, onFace } from '../film/car-builder.ts';

test('an owner reads of a panel by its name, and of a zone by how thick its paint is', () => {
  const { panel } = amongSound(onFace('tested', 110, 158, 112, 161, 114));
  expect(partForOwner(panel)).toBe('tested');
  expect(panel.zones.map(partForOwner)).toEqual([
    'tested (where its paint is thinner)',
    'tested (where its paint is thicker)',
  ]);
});
