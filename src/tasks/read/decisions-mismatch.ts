/**
 * Where a file says otherwise than the decisions it is read by, and how to go on. What the file says
 * is found by reading it again with one decision left out, else with all of them left out.
 */
import { type Diagnostic, error, type Outcome, type Place } from '../../base/diagnostics.ts';
import { pageNamed } from '../../intake/bytes/code-pages.ts';
import { decode } from '../../intake/bytes/decode.ts';
import {
  type GaugeFileText,
  type GaugeReadings,
  type IntakeDecisions,
  type IntakeOptions,
  readGaugeFile,
} from '../../intake/read-gauge-file.ts';
import { type DecidedKey, decidedNames, decidedValue } from './decided-names.ts';
import type { AsDecided, ReadingRules } from './reading-rules.ts';

type Decided = ReadingRules & { readonly decided: AsDecided };

/** The decisions that the file contradicts: one that alone stands in the way, else all that do. */
export function misfitsOf(
  file: GaugeFileText,
  read: Outcome<GaugeReadings>,
  options: IntakeOptions,
  rules: Decided,
): readonly Diagnostic[] {
  const keys = openKeys(file, read, rules);
  for (const key of keys) {
    const { [key]: _, ...rest } = options;
    const { value } = readGaugeFile(file, rest as IntakeOptions);
    if (value !== undefined && isMisfit(key, value, read.value, options)) {
      return [misfit(key, value.decisions, file, rules.decided)];
    }
  }
  return read.value === undefined ? misfitsTogether(file, keys, options, rules) : [];
}

/** The decisions that a flag does not settle and this file may contradict. */
function openKeys(
  { bytes }: GaugeFileText,
  read: Outcome<GaugeReadings>,
  { typed, decided: { decisions } }: Decided,
): readonly DecidedKey[] {
  const encodingMatters = bytes.some((byte) => byte >= 0x80 || byte === 0);
  return (Object.keys(decidedNames) as DecidedKey[])
    .filter((key) => decisions[key] !== undefined && typed[key] === undefined)
    .filter((key) =>
      key === 'encoding' ? encodingMatters : key === 'decimal' || read.value === undefined,
    );
}

/** What the file says where no decision is taken over; a mark that no number needs is none. */
function misfitsTogether(
  file: GaugeFileText,
  keys: readonly DecidedKey[],
  options: IntakeOptions,
  { usual, typed, decided }: Decided,
): readonly Diagnostic[] {
  const alone = { ...usual, ...typed };
  const { value } = readGaugeFile(file, alone);
  if (value === undefined) return [];
  const { decimal } = decided.decisions;
  const marked = decimal === undefined ? undefined : readGaugeFile(file, { ...alone, decimal });
  const anyMark = marked?.value !== undefined && sameValues(value, marked.value);
  return keys
    .filter((key) => !(key === 'decimal' && anyMark))
    .filter((key) => isMisfit(key, value, undefined, options))
    .map((key) => misfit(key, value.decisions, file, decided));
}

/**
 * Whether the file says otherwise. Of a file that can be read as decided only two decisions can be
 * wrong unseen: the encoding, where letters come out as others, and the decimal mark, a factor.
 */
function isMisfit(
  key: DecidedKey,
  alone: GaugeReadings,
  asDecided: GaugeReadings | undefined,
  options: IntakeOptions,
): boolean {
  const { encoding } = alone.decisions;
  if (key === 'encoding') {
    if (pageNamed(encoding) === pageNamed(options.encoding ?? '')) return false;
    return asDecided === undefined || encoding.startsWith('utf-');
  }
  if (decidedValue(key, alone.decisions) === options[key]) return false;
  if (asDecided === undefined) return true;
  return key === 'decimal' && !sameValues(alone, asDecided);
}

const sameValues = ({ readings: a }: GaugeReadings, { readings: b }: GaugeReadings): boolean =>
  a.length === b.length && a.every(({ thickness }, k) => thickness === b[k]?.thickness);

function misfit(
  key: DecidedKey,
  says: IntakeDecisions,
  file: GaugeFileText,
  { file: decidedIn, decisions }: AsDecided,
): Diagnostic {
  const { named, show, option, inFile } = decidedNames[key];
  const wanted = show(decisions[key]);
  const own = show(decidedValue(key, says));
  return error(
    'decisions-mismatch',
    `${decidedIn} says ${named} is ${wanted}, and in this file it is ${own}`,
    {
      at: headerPlace(file, says),
      hint: `${option(decidedValue(key, says))} reads this file; for the exports to come, mend "${inFile}" in ${decidedIn}`,
    },
  );
}

/** The line that names the columns, as it is written. */
function headerPlace(file: GaugeFileText, { encoding, headerLine }: IntakeDecisions): Place {
  if (headerLine === 0) return { file: file.name, line: 1 };
  const lineText = decode(file, { encoding }).value?.source.text.split('\n')[headerLine - 1];
  return { file: file.name, line: headerLine, ...(lineText === undefined ? {} : { lineText }) };
}

/** What goes wrong because something was asked of the file that it does not have. */
const asked: ReadonlySet<string> = new Set([
  'header-missing',
  'column-missing',
  'encoding-unknown',
  'unit-conflict',
  'quote-unclosed',
]);

export function asMisfit(diagnostic: Diagnostic, { file }: AsDecided): Diagnostic {
  if (!asked.has(diagnostic.code)) return diagnostic;
  const { message, hint, at } = diagnostic;
  const remedy = `mend ${file}, or read this file without --as-decided`;
  return error('decisions-mismatch', `${file} does not fit this file: ${message}`, {
    at,
    hint: hint === undefined ? remedy : `${hint}; else ${remedy}`,
  });
}
