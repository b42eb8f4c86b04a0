import { type DiagnosticKind, diagnosticCatalogue } from '../base/catalogue.ts';
import type { Diagnostic } from '../base/diagnostics.ts';

/** Exit codes, as the help and the README list them. */
export const exitCodes = {
  done: 0,
  answerIsNo: 1,
  usage: 2,
  someFailed: 3,
  data: 65,
  inputFile: 66,
  bug: 70,
  output: 73,
  settings: 78,
} as const;

const OF_KIND: Readonly<Record<DiagnosticKind, number>> = {
  usage: exitCodes.usage,
  data: exitCodes.data,
  'input-file': exitCodes.inputFile,
  output: exitCodes.output,
  settings: exitCodes.settings,
  remark: exitCodes.done,
};

/** The first error decides; without one the work is done. */
export function exitCodeOf(diagnostics: readonly Diagnostic[]): number {
  const first = diagnostics.find(({ severity }) => severity === 'error');
  return first === undefined ? exitCodes.done : OF_KIND[diagnosticCatalogue[first.code].kind];
}
