/** What became of the mutants that were tried, with the interval that a sample of them leaves. */
import { exactInterval } from '../../src/base/stats/proportion-interval.ts';
import { inTree, type Mutant, type Sample } from './sample.ts';

export type Tried = Mutant & { readonly status: string; readonly statusReason?: string };

export type Outcome =
  | 'killed'
  | 'endless'
  | 'out of time'
  | 'survived'
  | 'not covered'
  | 'failed to run'
  | 'static'
  | 'left out';

/**
 * A mutant that takes a hundred times the steps of the sound code is endless, however busy the machine is; one that
 * ran out of time may have been slowed by others, and so is no kill.
 */
export function outcomeOf({ status, statusReason = '' }: Tried): Outcome {
  switch (status) {
    case 'Killed':
      return 'killed';
    case 'Timeout':
      return statusReason.startsWith('Hit limit') ? 'endless' : 'out of time';
    case 'Survived':
      return 'survived';
    case 'NoCoverage':
      return 'not covered';
    case 'Ignored':
      return 'static';
    case 'CompileError':
      return 'left out';
    default:
      return 'failed to run';
  }
}

/** What no test killed, and what might have been for all that is known. */
const unkilled: readonly Outcome[] = ['out of time', 'survived', 'not covered'];

/** Where it stands and what it changes, on one line; undefined of one that says nothing against the tests. */
export function unkilledLine(mutant: Tried, source: string): string | undefined {
  const outcome = outcomeOf(mutant);
  if (!unkilled.includes(outcome)) return undefined;
  const { fileName, mutatorName, replacement, location } = mutant;
  const { line, column } = location.start;
  const where = `${inTree(fileName)}:${line}:${column}`;
  return `${where} ${outcome}, ${mutatorName}: ${onOneLine(textAt(source, location))} → ${onOneLine(replacement)}`;
}

/** Lines and columns are counted from 1. */
function textAt(source: string, { start, end }: Tried['location']): string {
  const lines = source.split('\n').slice(start.line - 1, end.line);
  const last = lines.length - 1;
  return lines
    .map((line, i) =>
      line.slice(i === 0 ? start.column - 1 : 0, i === last ? end.column - 1 : line.length),
    )
    .join('\n');
}

const LONGEST = 100;

const onOneLine = (text: string): string => {
  const line = text.replaceAll(/\s+/g, ' ');
  return line.length > LONGEST ? `${line.slice(0, LONGEST)}…` : line;
};

/** One line for a room: the share killed of all that the tests were to kill, and how many went otherwise. */
export function tally(room: string, tried: readonly Tried[], { every, seed }: Sample): string {
  const outcomes = tried.map(outcomeOf);
  const count = (one: Outcome): number => outcomes.filter((outcome) => outcome === one).length;
  const told = (...all: readonly Outcome[]): readonly string[] =>
    all.map((outcome) => `${count(outcome)} ${outcome}`);
  const killed = count('killed') + count('endless');
  const scored = unkilled.reduce((sum, outcome) => sum + count(outcome), killed);
  const chosen = every === 1 ? 'all mutants' : `1 mutant in ${every} by seed ${seed}`;
  return [
    `${room}, ${chosen}: ${killed} of ${scored} killed`,
    ...(scored === 0 ? [] : [shareOf(killed, scored, every)]),
    ...told('endless', ...unkilled, 'failed to run', 'static', 'left out'),
  ].join(', ');
}

const percent = (share: number): string => `${(100 * share).toFixed(1)} %`;

/** Of a sample with the exact interval of 95 %; of all mutants there is nothing to be unsure of. */
function shareOf(killed: number, scored: number, every: number): string {
  const share = percent(killed / scored);
  if (every === 1) return share;
  const [low, high] = exactInterval(killed, scored);
  return `${share} (95 % interval ${percent(low)} to ${percent(high)})`;
}
