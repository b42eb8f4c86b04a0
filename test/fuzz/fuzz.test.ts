import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { caseOf, startingFiles } from './cases.ts';
import { depthOf, faultOf } from './check.ts';
import { faultOfClass } from './check-classes.ts';
import { classCaseOf, classStarts } from './class-cases.ts';

const CASES = 80;

test('damaged files never throw, never yield NaN, and a refusal always shows a line', () => {
  const files = startingFiles('samples');
  const faults = Array.from({ length: CASES }, (_, number) => {
    const fault = faultOf(caseOf(files, 1, number), depthOf(number + 1));
    return fault === undefined ? [] : [`case ${number}: ${fault}`];
  });
  expect(faults.flat()).toEqual([]);
});

test('visits and classes of damaged files never throw, never yield NaN, and a refusal names its file', () => {
  const starts = classStarts('.');
  const faults = Array.from({ length: CASES }, (_, number) => {
    const fault = faultOfClass(classCaseOf(starts, 1, number));
    return fault === undefined ? [] : [`case ${number}: ${fault}`];
  });
  expect(faults.flat()).toEqual([]);
}, 240_000);

test('what the fuzzer once found stays mended', () => {
  const folder = join(import.meta.dirname, 'found');
  const found = existsSync(folder) ? readdirSync(folder) : [];
  const faults = found.flatMap((name) =>
    ([undefined, 'um'] as const).flatMap((unit) => {
      const fault = faultOf(
        { bytes: Uint8Array.from(readFileSync(join(folder, name))), unit },
        'survey',
      );
      return fault === undefined ? [] : [`${name}: ${fault}`];
    }),
  );
  expect(faults).toEqual([]);
});
