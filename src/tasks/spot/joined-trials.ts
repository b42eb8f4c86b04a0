/**
 * Files of test spots, one a panel or a day → the trials of all of them. A spot's name is one trial, in however many files
 * it stands, and a trial counts once.
 */
import {
  type Diagnostic,
  error,
  found,
  hasErrors,
  type Outcome,
  refused,
} from '../../base/diagnostics.ts';
import { shownFile } from '../../base/file-name.ts';
import type { LoadedFile } from '../read/read-request.ts';
import type { Settings } from '../settings/settings.ts';
import { panelsAlike } from './panels-alike.ts';
import type { PlacedTrial } from './placed-trial.ts';
import { copiedSpots, goesOn } from './spot-doubts.ts';
import { readTrials } from './spot-trials.ts';

/** In the order of the files; every mistake of all of them at once. */
export function joinedTrials(
  files: readonly LoadedFile[],
  settings: Pick<Settings, 'film' | 'correction'>,
): Outcome<readonly PlacedTrial[]> {
  const read = files.map((file) => readTrials(file, settings));
  const alike = panelsAlike();
  const trials = read
    .flatMap(({ value }) => value ?? [])
    .map(({ trial, at }) => ({ trial: { ...trial, panel: alike(trial.panel) }, at }));
  const diagnostics = [
    ...read.flatMap((one) => one.diagnostics),
    ...inTwoFiles(trials),
    ...goesOn(trials),
    ...copiedSpots(trials),
  ];
  return hasErrors(diagnostics) ? refused(...diagnostics) : found(trials, diagnostics);
}

/** Whether two trials share a name, or one was written down twice, no file says: neither is counted. */
function inTwoFiles(trials: readonly PlacedTrial[]): readonly Diagnostic[] {
  const firsts = new Map<string, PlacedTrial>();
  return trials.flatMap((one) => {
    const { trial, at } = one;
    const first = firsts.get(trial.spot);
    firsts.set(trial.spot, first ?? one);
    return first === undefined ? [] : [twice(trial.spot, first.at, at)];
  });
}

const twice = (spot: string, first: PlacedTrial['at'], at: PlacedTrial['at']): Diagnostic =>
  error(
    'spot-in-two-files',
    `spot "${spot}" stands in ${shownFile(first.file)} as well, line ${first.line}`,
    {
      at,
      hint: 'one trial: keep it in one of the files; two trials: give each a name of its own',
    },
  );
