/** The built-in models of the trade rooms. */
import { modelsWith } from './models-with.ts';

export const {
  film: filmModel,
  correction: correctionModel,
  work: workModel,
} = modelsWith(new Map());
