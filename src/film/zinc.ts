import type { FilmModel } from './film-model.ts';

/** What galvanised steel reads more than bare steel does, and the variance that this adds. */
export const zincOf = ({ galvanisedUnder, clearOverBase: { under } }: FilmModel['layers']) => ({
  mean: galvanisedUnder.mean - under.mean,
  variance: galvanisedUnder.sd ** 2 - under.sd ** 2,
});
