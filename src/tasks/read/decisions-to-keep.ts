/**
 * What is to be kept of how files were read, so that the next export is read alike: `--decisions`.
 *
 * Kept is what the file itself has shown or the user has typed, and nothing that it leaves open: a
 * file of whole numbers says nothing of a decimal mark. The whole is tried on the file before it is
 * given out; where it does not read alike, what stands in the way is left out.
 */
import { error, found, hasErrors, type Outcome, refused } from '../../base/diagnostics.ts';
import { saidFile } from '../../base/file-name.ts';
import type { ReadingDecisions } from '../../formats/decisions.ts';
import {
  type GaugeFileText,
  type GaugeReadings,
  type IntakeDecisions,
  type IntakeOptions,
  readGaugeFile,
} from '../../intake/read-gauge-file.ts';
import { mergedOptions, readWithRules } from './as-decided.ts';
import { type DecidedKey, decidedNames } from './decided-names.ts';
import type { ReadingRules } from './reading-rules.ts';

export function decisionsToKeep(
  files: readonly GaugeFileText[],
  rules: ReadingRules,
): Outcome<ReadingDecisions> {
  const kept = files.map((file) => ({ file, outcome: decisionsOf(file, rules) }));
  const diagnostics = kept.flatMap(({ outcome }) => outcome.diagnostics);
  const [first, ...more] = kept;
  if (first?.outcome.value === undefined || hasErrors(diagnostics)) return { diagnostics };
  const own = comparable(first.outcome.value);
  for (const { file, outcome } of more) {
    const other = outcome.value === undefined ? own : comparable(outcome.value);
    const key = Object.keys({ ...own, ...other }).find((one) => own[one] !== other[one]);
    if (key === undefined) continue;
    const message = `${saidFile(first.file.name)} and ${saidFile(file.name)} were not read alike: ${key} differs`;
    const hint = 'decisions are of one instrument: name files of one for --decisions';
    return refused(error('usage-option-value', message, { hint }));
  }
  return found(first.outcome.value);
}

const comparable = ({
  columns,
  panelNames,
  ...rest
}: ReadingDecisions): Readonly<Record<string, string>> =>
  Object.fromEntries(
    Object.entries({ ...rest, columns: [...columns], panelNames: [...panelNames] }).map(
      ([key, value]) => [key, JSON.stringify(value)],
    ),
  );

function decisionsOf(file: GaugeFileText, rules: ReadingRules): Outcome<ReadingDecisions> {
  const read = readWithRules(file, rules);
  if (read.value === undefined) return { diagnostics: read.diagnostics };
  const { value } = read;
  const { typed, decided, usual } = rules;
  const known = mergedOptions(usual, decided?.decisions ?? none, typed);
  const all = {
    ...plainDecisions(value.decisions),
    panelNames: known.panelNames ?? none.panelNames,
  };
  const alike = (decisions: ReadingDecisions): boolean =>
    readsAlike(file, mergedOptions(usual, decisions, {}), value);
  const open = known.decimal === undefined && decimalIsOpen(file, known, value);
  const { decimal, ...rest } = all;
  const wanted: ReadingDecisions = open || decimal === undefined ? rest : { ...rest, decimal };
  return found(alike(wanted) ? wanted : whatReadsAlike(wanted, alike));
}

const none: Pick<ReadingDecisions, 'columns' | 'panelNames'> = {
  columns: new Map(),
  panelNames: new Map(),
};

const signs = [',', ';', '\t', '|'] as const;

function plainDecisions({
  encoding,
  delimiter,
  decimal,
  layout,
  unit,
  headerLine,
  columns,
}: IntakeDecisions): Omit<ReadingDecisions, 'panelNames'> {
  const sign = signs.find((one) => one === delimiter);
  return {
    encoding: encoding.replace(/-bom$/u, ''),
    ...(sign === undefined ? {} : { delimiter: sign }),
    decimal: decimal === ',' ? ',' : '.',
    layout,
    unit,
    ...(headerLine === 0 ? {} : { headerLine }),
    columns,
  };
}

/** Whether the readings are the same under the other mark. */
const decimalIsOpen = (file: GaugeFileText, options: IntakeOptions, read: GaugeReadings): boolean =>
  readsAlike(file, { ...options, decimal: read.decisions.decimal === ',' ? '.' : ',' }, read);

function readsAlike(
  file: GaugeFileText,
  options: IntakeOptions,
  { readings }: GaugeReadings,
): boolean {
  const again = readGaugeFile(file, options).value?.readings;
  return (
    again?.length === readings.length &&
    again.every(({ panel, point, repeat, thickness }, k) => {
      const one = readings[k];
      return (
        one?.panel === panel &&
        one.point === point &&
        one.repeat === repeat &&
        one.thickness === thickness
      );
    })
  );
}

/** As many of the decisions as go together, taken up one by one. */
function whatReadsAlike(
  wanted: ReadingDecisions,
  alike: (decisions: ReadingDecisions) => boolean,
): ReadingDecisions {
  let kept: ReadingDecisions = { ...none, panelNames: wanted.panelNames };
  for (const key of [...(Object.keys(decidedNames) as DecidedKey[]), 'columns'] as const) {
    const more: ReadingDecisions = { ...kept, [key]: wanted[key] };
    if (wanted[key] !== undefined && alike(more)) kept = more;
  }
  return kept;
}
