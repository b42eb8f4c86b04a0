/** Why an output may not be written where it was asked for, or nothing. */
import { fstatSync, type Stats } from 'node:fs';
import { dirname } from 'node:path';
import { type Diagnostic, error } from '../../base/diagnostics.ts';
import { STANDARD_INPUT } from '../../base/file-name.ts';
import { isNotThere, linkOrNothing, statOrNothing } from './file-status.ts';

export function outputProblem(
  out: string,
  force: boolean,
  inputs: readonly string[],
): Diagnostic | undefined {
  const at = { file: out };
  const target = statOrNothing(out);
  if (target === undefined) {
    return linkOrNothing(out) === undefined
      ? folderProblem(out)
      : error('output-unwritable', `"${out}" is a link that leads to no file`, {
          at,
          hint: 'name the file itself, or remove the link',
        });
  }
  if (isAmong(target, inputs)) {
    const hint = 'an input is never changed: name another file';
    return error('output-is-input', `"${out}" is one of the inputs`, { at, hint });
  }
  if (target.isDirectory()) {
    const hint = 'name a file in it';
    return error('output-unwritable', `"${out}" is a folder`, { at, hint });
  }
  return target.isFile() && !force
    ? error('output-exists', `"${out}" exists`, { at, hint: '--force replaces it' })
    : undefined;
}

/** A new file goes into a folder that is there: nothing is worked out that could then not be written. */
function folderProblem(out: string): Diagnostic | undefined {
  const at = { file: out };
  if (/[/\\]$/.test(out)) {
    return error('output-unwritable', `"${out}" names a folder, and there is none`, {
      at,
      hint: 'name a file in a folder that is there',
    });
  }
  const folder = dirname(out);
  if (isNotThere(folder)) {
    return error(
      'output-unwritable',
      `"${out}" cannot be written: there is no folder "${folder}"`,
      {
        at,
        hint: 'make the folder first, or name another',
      },
    );
  }
  return statOrNothing(folder)?.isDirectory() === false
    ? error('output-unwritable', `"${out}" cannot be written: "${folder}" is no folder`, {
        at,
        hint: 'name a file in a folder that is there',
      })
    : undefined;
}

/** A shell may have put a file behind standard output, and that file may be an input. */
export function standardOutputProblem(inputs: readonly string[]): Diagnostic | undefined {
  const target = statOfStream(1);
  return target?.isFile() === true && isAmong(target, inputs)
    ? error('output-is-input', 'standard output goes into one of the inputs', {
        hint: 'an input is never changed: send it into another file',
      })
    : undefined;
}

/** By the file itself, whatever names lead to it. */
function isAmong(target: Stats, inputs: readonly string[]): boolean {
  for (const input of inputs) {
    const source = input === STANDARD_INPUT ? statOfStream(0) : statOrNothing(input);
    if (source !== undefined && source.ino === target.ino && source.dev === target.dev) return true;
  }
  return false;
}

/** Nothing stands behind a stream that is closed. */
function statOfStream(stream: 0 | 1): Stats | undefined {
  try {
    return fstatSync(stream);
  } catch {
    return undefined;
  }
}
