import { expect, test } from 'vitest';
import { labelWords } from '../../../src/film/template/panel-label.ts';

test('capitals begin words, and stand together as long as they go on', () => {
  expect(labelWords('LFDoor')).toEqual(['lf', 'door']);
  expect(labelWords('doorLF')).toEqual(['door', 'lf']);
  expect(labelWords('frontDoor')).toEqual(['front', 'door']);
});

test('a run in capitals that is made of no words stays one, in small letters', () => {
  expect(labelWords('ROOFX')).toEqual(['roofx']);
  expect(labelWords('QXZ')).toEqual(['qxz']);
  expect(labelWords('ROOF QXZ')).toEqual(['roof', 'qxz']);
});
