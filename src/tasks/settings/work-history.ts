/** The hours that a shop's jobs took → the settings that its next jobs are estimated by. */
import type { Outcome } from '../../base/diagnostics.ts';
import { roundTo } from '../../base/rounding.ts';
import { readHistoryFile } from '../../intake/read-history-file.ts';
import { learnPace } from '../../work/history.ts';
import type { LoadedFile } from '../read/read-request.ts';
import type { SettingOrigin } from './setting-origin.ts';
import type { Settings } from './settings.ts';

export type NamedHistory = {
  readonly file: Pick<LoadedFile, 'name' | 'bytes'>;
  readonly origin: SettingOrigin;
};

/** Settings with the pace that the hours of a file teach. */
export function withHistory(settings: Settings, { file, origin }: NamedHistory): Outcome<Settings> {
  const { work } = settings.models;
  const stages = work.stages.map(({ id }) => id);
  const { value: rows, diagnostics } = readHistoryFile(file, stages);
  if (rows === undefined) return { diagnostics };
  const hours = learnPace(rows, work);
  const text = `hours of ${file.name}: ${hours.jobs} ${hours.jobs === 1 ? 'job' : 'jobs'} took ${roundTo(hours.factor.middle, 2)} times their estimates`;
  const value: Settings = {
    ...settings,
    hours,
    planAssumptions: [...settings.planAssumptions, { code: 'hours', text, origin }],
  };
  return { value, diagnostics };
}
