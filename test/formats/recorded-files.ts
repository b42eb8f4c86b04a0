/** JSON that stands in the samples, the cases and the errors: records as written, files as given. */
import { readdirSync, readFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { projectRoot } from '../cli/run-leastcut.ts';

export type RecordedJson = { readonly name: string; readonly text: string };

const below = (...folders: readonly string[]): readonly RecordedJson[] =>
  folders.flatMap((folder) =>
    readdirSync(join(projectRoot, folder), { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile())
      .map((entry) => join(entry.parentPath, entry.name))
      .sort()
      .map((path) => ({ name: relative(projectRoot, path), text: readFileSync(path, 'utf8') })),
  );

/** Each record of what the program was recorded to write: one, or one a line. */
export const recordedOutputs = (): readonly RecordedJson[] =>
  below('test/cases', 'test/errors')
    .filter(({ name, text }) => name.endsWith('expected.out') && text.startsWith('{'))
    .flatMap(({ name, text }) => {
      const one = text.startsWith('{\n');
      return (one ? [text] : text.trim().split('\n')).map((line) => ({ name, text: line }));
    });

/** Outputs that hold a record somewhere: all of them are looked at only if they begin with one. */
export const outputsWithRecords = (): readonly RecordedJson[] =>
  below('test/cases', 'test/errors').filter(
    ({ name, text }) =>
      name.endsWith('expected.out') && /^\s*"?\{?"schema": ?"leastcut\//m.test(text),
  );

/** Not a plain list of names, and not a survey that another command goes on from. */
const isSettings = (text: string): boolean => {
  const schema = /"schema": ?"([^"]+)"/.exec(text)?.[1];
  return schema !== undefined && schema !== 'leastcut/survey/1';
};

/** Settings files that a run is given; those of errors, and of cases that end in 78, are spoiled. */
export const soundFiles = (): readonly RecordedJson[] => {
  const all = below('samples', 'test/cases');
  const spoiled = all
    .filter(({ name, text }) => name.endsWith('expected.code') && text === '78\n')
    .map(({ name }) => name.replace(/expected\.code$/, ''));
  return all.filter(
    ({ name, text }) =>
      name.endsWith('.json') &&
      !spoiled.some((folder) => name.startsWith(folder)) &&
      isSettings(text),
  );
};
