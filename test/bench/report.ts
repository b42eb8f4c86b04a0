/** The bench in a table: what was measured, against what, on which machine. */
import { cpus, totalmem } from 'node:os';

export type Side = {
  readonly name: string;
  /** Processor time. */
  readonly seconds: number;
  /** The most memory in use; null where it was not measured. */
  readonly megabytes: number | null;
  readonly readings: number;
};
export type Line = {
  readonly title: string;
  readonly ours: Side;
  readonly plain: Side;
  /** The ratio that is wanted; the bench fails beyond it where it is held. */
  readonly limit: { readonly ratio: number; readonly isHeld: boolean } | undefined;
};

export const ratioOf = ({ ours, plain }: Line): number => ours.seconds / plain.seconds;

/** Too slow where that is held, or less work done than by the other side. */
export const isBad = (line: Line): boolean =>
  (line.limit?.isHeld === true && ratioOf(line) > line.limit.ratio) ||
  line.ours.readings !== line.plain.readings;

const secondsText = (seconds: number): string => seconds.toFixed(seconds < 1 ? 3 : 2);

export const sideText = ({ name, seconds, megabytes, readings }: Side): string =>
  `  ${name.padEnd(26)} ${secondsText(seconds)} s${megabytes === null ? '' : `  ${megabytes.toFixed(0)} MB at most`}  ${readings} readings`;

export const ratioText = (line: Line): string => {
  const { limit } = line;
  const wanted = limit === undefined ? '' : ` (${limit.isHeld ? 'at most' : 'aim'} ${limit.ratio})`;
  return `${ratioOf(line).toFixed(2)}${wanted}`;
};

export function machineText(): string {
  const all = cpus();
  const [first] = all;
  return `${all.length} × ${first?.model.trim() ?? 'processor unknown'}, ${Math.round(totalmem() / 2 ** 30)} GB, ${process.platform}, Node ${process.versions.node}`;
}

/** As a table in Markdown, to be kept. */
export function markdown(
  lines: readonly Line[],
  {
    day,
    runs,
    missing,
  }: { readonly day: string; readonly runs: number; readonly missing: readonly string[] },
): string {
  const side = ({ name, seconds, megabytes }: Side): string =>
    `${name}: ${secondsText(seconds)} s${megabytes === null ? '' : `, ${megabytes.toFixed(0)} MB`}`;
  return [
    `# Bench of ${day}`,
    '',
    `${machineText()}. Processor time (of starts the clock), medians of ${runs} runs in turn; a ratio below 1 is faster than the other side.`,
    ...(missing.length === 0 ? [] : ['', `Not installed, so not run: ${missing.join(', ')}.`]),
    '',
    '| what | ours | against | ratio |',
    '|---|---|---|---|',
    ...lines.map(
      (line) => `| ${line.title} | ${side(line.ours)} | ${side(line.plain)} | ${ratioText(line)} |`,
    ),
    '',
  ].join('\n');
}
