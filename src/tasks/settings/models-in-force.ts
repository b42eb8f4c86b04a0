/** The models of all rooms, with the numbers that a shop sets. */
import { type Models, modelsWith } from '../../formats/models-with.ts';
import type { Effective } from './setting-origin.ts';

export const modelsInForce = (numbers: ReadonlyMap<string, Effective<number>>): Models =>
  modelsWith(new Map([...numbers].map(([id, { value }]) => [id, value])));
