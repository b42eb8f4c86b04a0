import { describe, expect, it } from 'vitest';
import { panelsAlike } from '../../../src/tasks/spot/panels-alike.ts';

const spelled = (...names: readonly string[]): readonly string[] => names.map(panelsAlike());

describe('names of panels', () => {
  it.each([
    [['roof', 'Roof', ' ROOF ']],
    [['bonnet', 'hood', 'Motorhaube']],
    [['front left door', 'left front door', 'Door FL']],
    [['apron', 'Apron', 'APRON']],
  ])('%j are one, in the spelling that came first', (names) => {
    expect(spelled(...names)).toEqual(names.map(() => names[0]));
  });

  it.each([
    [['roof', 'bonnet']],
    [['front left door', 'front right door']],
    [['left door', 'front left door']],
    [['nearside wing', 'offside wing', 'wing']],
    [['apron', 'apron 2']],
  ])('%j are apart', (names) => {
    expect(spelled(...names)).toEqual(names);
  });
});
