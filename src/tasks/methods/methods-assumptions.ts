import type { Assumption } from '../settings/assumption.ts';
import type { Settings } from '../settings/settings.ts';

const CONCERNED: readonly string[] = ['machines', 'settings-file', 'rates'];

/** What a list of methods rests on that nobody stated: what the shop owns, and files found unasked. */
export const methodAssumptions = ({
  assumptions,
  planAssumptions,
}: Pick<Settings, 'assumptions' | 'planAssumptions'>): readonly Assumption[] =>
  [...assumptions, ...planAssumptions].filter(({ code }) => CONCERNED.includes(code));
