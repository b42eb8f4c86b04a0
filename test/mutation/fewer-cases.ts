/**
 * fast-check for a run of mutants: no property tries more than `CASES` cases, so that a mutant of a room full of
 * properties takes seconds and not minutes. Put in its place by `vitest.config.ts` of this folder.
 *
 * A mutant that survives so few cases may yet die at as many as the checks try: the share killed is at least this.
 */
import fc, { type IAsyncProperty, type IProperty, type Parameters } from 'fast-check';

const most = Number(process.env['CASES']);

/** What fast-check tries where a property does not say how many. */
const USUAL = 100;

const fewer = <Ts>(parameters: Parameters<Ts> = {}): Parameters<Ts> => ({
  ...parameters,
  numRuns: Math.min(parameters.numRuns ?? USUAL, most),
});

function assert<Ts>(
  property: IProperty<Ts> | IAsyncProperty<Ts>,
  parameters?: Parameters<Ts>,
): Promise<void> | void {
  return fc.assert(property as IProperty<Ts>, fewer(parameters));
}

export default { ...fc, assert };
