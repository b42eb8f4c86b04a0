import type { Assumption } from './assumption.ts';
import type { Settings } from './settings.ts';

const CONCERNED: readonly string[] = ['machines', 'settings-file'];

/** What a list of methods rests on that nobody stated: what the shop owns, and files found unasked. */
export const methodAssumptions = ({
  assumptions,
  planAssumptions,
}: Pick<Settings, 'assumptions' | 'planAssumptions'>): readonly Assumption[] =>
  [...assumptions, ...planAssumptions].filter(({ code }) => CONCERNED.includes(code));
