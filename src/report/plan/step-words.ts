/** Steps in words; a combination as it is called in the bay, by the names that the shop gave its own things. */
import type { Combination } from '../../correction/removal/combination.ts';
import type { Step } from '../../correction/removal/step.ts';
import { correctionModel } from '../../formats/models.ts';

const builtIn: ReadonlyMap<string, string> = new Map(
  [...correctionModel.machines, ...correctionModel.pads, ...correctionModel.products].map(
    ({ id, name }) => [id, name],
  ),
);

type Thing = { readonly id: string; readonly name: string };

/** A built-in thing goes by its id, as files name it, unless the shop calls it otherwise. */
const called = ({ id, name }: Thing): string => (builtIn.get(id) === name ? id : name);

/** `da/foam-medium/medium`; with names of the shop's own `21 mm polisher + black foam + One Step`. */
export function combinationWords({ id, machine, pad, product }: Combination): string {
  const things = [machine, pad, product];
  return things.every((one) => called(one) === one.id)
    ? id
    : things.map((one) => called(one).replaceAll(' ', '\u00a0')).join(' + ');
}

/** `3× da/foam-medium/medium + 1× da/foam-soft/fine`. */
export const stepsText = (steps: readonly Step[]): string =>
  steps.map(({ combination, sets }) => `${sets}×\u00a0${combination.id}`).join(' + ');
