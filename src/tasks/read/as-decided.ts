/**
 * The next export of an instrument, read as an earlier one was decided: `--as-decided`.
 *
 * A decision is applied, never bent: where the file says otherwise it is refused. What was typed on
 * the command line wins over the decisions, and they win over the environment and the settings files.
 */
import { found, type Outcome, refused } from '../../base/diagnostics.ts';
import type { ReadingDecisions } from '../../formats/decisions.ts';
import {
  type GaugeFileText,
  type GaugeReadings,
  type IntakeOptions,
  readGaugeFile,
} from '../../intake/read-gauge-file.ts';
import { type DecidedKey, decidedNames } from './decided-names.ts';
import { asMisfit, misfitsOf } from './decisions-mismatch.ts';
import type { AsDecided, ReadingRules, TypedReading } from './reading-rules.ts';

export function readWithRules(file: GaugeFileText, rules: ReadingRules): Outcome<GaugeReadings> {
  const { usual, typed, decided } = rules;
  if (decided === undefined) return readGaugeFile(file, { ...usual, ...typed });
  const options = mergedOptions(usual, decided.decisions, typed);
  const read = readGaugeFile(file, options);
  const misfits = misfitsOf(file, read, options, { ...rules, decided });
  if (misfits.length > 0) return refused(...misfits);
  if (read.value !== undefined) {
    const evidence = [...spoken(decided, typed), ...read.value.decisions.evidence];
    const decisions = { ...read.value.decisions, evidence };
    return found({ ...read.value, decisions }, read.diagnostics);
  }
  return refused(...read.diagnostics.map((one) => asMisfit(one, decided)));
}

/** Flags over decisions over the rest; of columns and panel names, each name by itself. */
export function mergedOptions(
  usual: IntakeOptions,
  { columns, panelNames, ...decided }: ReadingDecisions,
  typed: TypedReading,
): IntakeOptions {
  const named = new Map<string, string | readonly string[]>([...columns, ...(typed.columns ?? [])]);
  const panels = new Map([...panelNames, ...(typed.panelNames ?? [])]);
  return {
    ...usual,
    ...decided,
    ...typed,
    ...(named.size === 0 ? {} : { columns: named }),
    ...(panels.size === 0 ? {} : { panelNames: panels }),
  };
}

/** That a decisions file was followed, and where a flag won over it. */
const spoken = ({ file, decisions }: AsDecided, typed: TypedReading): readonly string[] => [
  `read as ${file} says`,
  ...(Object.keys(decidedNames) as DecidedKey[]).flatMap((key) => {
    const { option, named, show } = decidedNames[key];
    const [said, wins] = [decisions[key], typed[key]];
    if (said === undefined || wins === undefined || said === wins) return [];
    return [`${option(wins)} wins over ${file}, which says ${named} is ${show(said)}`];
  }),
];
