/**
 * Whether properties are tried on as many cases as they ask for. A run of mutants tries few (`CASES`,
 * `test/mutation/fewer-cases.ts`): what counts what was seen in all of them, and simulations that take seconds,
 * are then left out.
 */
export const inFull = process.env['CASES'] === undefined;
