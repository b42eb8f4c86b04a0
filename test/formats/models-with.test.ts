import { expect, test } from 'vitest';
import { modelsWith } from '../../src/formats/models-with.ts';

test('a model is made once, and stays what it was however often it is asked for', () => {
  const models = modelsWith(new Map([['work.set_up_min', 7]]));
  expect(models.work.setUp).toBe(7);
  for (const room of ['film', 'correction', 'work', 'price', 'template', 'training'] as const)
    expect(models[room]).toBe(models[room]);
});

test('numbers of one room leave the others as they are built in', () => {
  const builtIn = modelsWith(new Map());
  const { work, ...others } = modelsWith(new Map([['work.set_up_min', 7]]));
  expect({ ...others, work: builtIn.work }).toEqual({ ...builtIn });
  expect(work).not.toEqual(builtIn.work);
});

test('the areas that are worked at a time are those of the correction in force', () => {
  const ids = ['correction.removal.section_m2', 'correction.local_section_m2'];
  const { correction, work } = modelsWith(new Map(ids.map((id, i) => [id, 0.3 + i / 10])));
  expect([work.section, work.localSection]).toEqual([0.3, 0.4]);
  expect(work.section).toBe(correction.removal.section);
  expect(work.localSection).toBe(correction.correction.localSection);
});
