import { describe, expect, test } from 'vitest';
import { parseJson } from '../../../src/formats/json/json-text.ts';

const told = (text: string): readonly string[] =>
  parseJson('job.json', text).diagnostics.map(
    ({ code, message, hint, at }) => `${at?.line}:${at?.column} ${code} ${message} (${hint})`,
  );
const exchanged =
  'readings are named by themselves, and the file in JSON after its option: are the two exchanged?';

describe('a table in the place of a file in JSON', () => {
  test('is told as readings by its columns, in one line', () => {
    expect(told('panel,point,reading_um\nbonnet,1,112\nbonnet,2,113\n')).toEqual([
      `1:1 json-syntax this is a table of readings, where a file in JSON is wanted (${exchanged})`,
    ]);
  });

  test('is told as defects with the option that takes it', () => {
    expect(told('\npanel;defect;grade\nroof;swirls;2\n')).toEqual([
      '2:1 json-syntax this is a table of defects, where a file in JSON is wanted (plan, quote take it as --defects FILE)',
    ]);
  });

  test('is told as a table where its columns are not ours', () => {
    expect(told('Teil;Nr;Messwert (µm)\nMotorhaube;1;96,9\n')).toEqual([
      `1:1 json-syntax this is a table, where a file in JSON is wanted (${exchanged})`,
    ]);
  });
});

test.each([
  '{"aim": 80,\n "finish": matte}',
  '"aim": 80,\n"finish": "matte",\n',
  "aim: 80,\nfinish: 'matte',\n",
  '[1,2,\n3,x]',
  'no table\nand no JSON',
  'one, two',
])('what may be meant as JSON, or is no table, is told as bad JSON: %j', (text) => {
  const all = told(text);
  expect(all.length).toBeGreaterThan(0);
  expect(all.join()).not.toContain('this is a table');
});
