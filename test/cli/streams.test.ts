import { createHash } from 'node:crypto';
import { copyFileSync, existsSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { carsCsv } from './cars.ts';
import { program, runLeastcut, runShell } from './run-leastcut.ts';
import { temporaryFolder } from './temporary-folder.ts';

/** 400 cars make some 2 MB of records: more than any pipe holds. */
function manyCars(): string {
  const file = join(temporaryFolder(), 'cars.csv');
  writeFileSync(file, carsCsv(400));
  return file;
}
const leastcut = '"$NODE" "$PROGRAM"';

describe.concurrent('pipes', () => {
  test('a reader that takes one line of a megabyte and goes is no fault', async () => {
    const line = `${leastcut} read ${manyCars()} --format ndjson | head -n 1`;
    const { code, out, err } = await runShell(line);
    expect({ code, err }).toEqual({ code: 0, err: '' });
    expect(JSON.parse(out)).toMatchObject({ schema: 'leastcut/read/1', vehicle: 'FH 1' });
    expect(out.endsWith('\n')).toBe(true);
  });

  test('-o - is standard output, and no file of that name', async () => {
    const [plain, dashed] = await Promise.all([
      runLeastcut(['read', 'samples/older-coupe/readings.csv', '-q']),
      runLeastcut(['read', 'samples/older-coupe/readings.csv', '-q', '-o', '-']),
    ]);
    expect(dashed).toEqual(plain);
    expect(existsSync('-')).toBe(false);
  });

  test('a reader of standard error that goes is no fault either', async () => {
    const stdin = `panel,point,reading_um\n${'bonnet,1,thick\n'.repeat(5000)}`;
    const { code, out } = await runShell(`${leastcut} survey - 2>&1 >/dev/null | head -n 1`, {
      stdin,
    });
    expect(out).toContain('error[reading-not-a-number]');
    expect(code).toBe(65);
  });

  test('a slow reader gets every byte', async () => {
    const words = `read ${manyCars()} --format ndjson`;
    const [direct, slow] = await Promise.all([
      runShell(`${leastcut} ${words}`),
      runShell(`${leastcut} ${words} | (sleep 1; cat)`),
    ]);
    const sha256 = (text: string): string => createHash('sha256').update(text).digest('hex');
    expect(direct.out.length).toBeGreaterThan(1_000_000);
    expect(direct.out.trimEnd().split('\n')).toHaveLength(400);
    expect(sha256(slow.out)).toBe(sha256(direct.out));
    expect(slow.code).toBe(0);
  });

  test.runIf(existsSync('/dev/full'))(
    'a full disk behind standard output is exit 73 and one sentence',
    async () => {
      const words = 'survey samples/sound-saloon/readings.csv';
      const { code, err } = await runShell(`${leastcut} ${words} > /dev/full`);
      expect(code).toBe(73);
      expect(err).toBe(
        'leastcut: error[output-unwritable]: standard output cannot be written: the disk is full\n',
      );
    },
  );

  test('a disk that fills half way through is exit 73 as well, not a page that ends early', async () => {
    const out = join(temporaryFolder(), 'survey.html');
    const words = 'survey samples/sound-saloon/readings.csv --format html';
    const { code, err } = await runShell(`ulimit -f 4; ${leastcut} ${words} > ${out}`);
    expect(statSync(out).size).toBe(4096);
    expect(code).toBe(73);
    expect(err).toBe(
      'leastcut: error[output-unwritable]: standard output cannot be written: the disk takes no file of that size\n',
    );
  });

  test('an input is not added to by its own result', async () => {
    const file = join(temporaryFolder(), 'readings.csv');
    copyFileSync('samples/sound-saloon/readings.csv', file);
    const { code, err } = await runShell(`${leastcut} survey ${file} >> ${file}`);
    expect(code).toBe(73);
    expect(err).toContain('standard output goes into one of the inputs');
    expect(readFileSync(file, 'utf8')).toBe(
      readFileSync('samples/sound-saloon/readings.csv', 'utf8'),
    );
  });

  test('a batch begins no more jobs once its reader has gone, and says how many it did', async () => {
    const line = `${leastcut} batch ${manyCars()} --command survey --workers 1 | head -n 1`;
    const { code, out, err } = await runShell(line);
    expect(code).toBe(0);
    expect(JSON.parse(out)).toMatchObject({ schema: 'leastcut/batch/1', seq: 1 });
    expect(err).toMatch(/^leastcut: 400 jobs: \d{1,2} done, 3\d\d not begun\n$/);
  });

  test('a pipe may stand where a file is named, also one that is looked at before it is read', async () => {
    const file = 'samples/sound-saloon/readings.csv';
    const [survey, batch] = await Promise.all(
      ['survey', 'batch --command survey'].map((words) =>
        runShell(`${leastcut} ${words} --format ndjson <(cat ${file})`),
      ),
    );
    expect(survey).toMatchObject({ code: 0, err: '' });
    expect(batch).toMatchObject({ code: 0, err: 'leastcut: 1 job: 1 done\n' });
  });

  test('standard input is read where it is named and where no file is', async () => {
    const file = 'samples/sound-saloon/readings.csv';
    const stdin = readFileSync(file);
    const [named, unnamed, onDisk] = await Promise.all([
      runLeastcut(['survey', '-'], { stdin }),
      runLeastcut(['survey'], { stdin }),
      runLeastcut(['survey', file]),
    ]);
    expect(named.out).toBe(onDisk.out);
    expect(unnamed.out).toBe(onDisk.out);
  });

  test('standard input named twice is refused, for it can be read once', async () => {
    const { code, err } = await runLeastcut(['plan', '-', '--defects', '-'], { stdin: 'x' });
    expect(code).toBe(2);
    expect(err).toContain('is named twice');
  });

  test('text has nothing on standard output where the data is refused', async () => {
    const stdin = 'panel,point,reading_um\nbonnet,1,thick\n';
    const { code, out } = await runLeastcut(['survey', '-'], { stdin });
    expect({ code, out }).toEqual({ code: 65, out: '' });
  });

  test.each([
    {
      why: 'the data',
      stdin: 'panel,point,reading_um\nbonnet,1,thick\n',
      code: 65,
      said: 'reading-not-a-number',
      words: ['survey', '-'],
    },
    {
      why: 'a missing file',
      stdin: '',
      code: 66,
      said: 'file-missing',
      words: ['plan', 'nowhere.csv'],
    },
    {
      why: 'the settings',
      stdin: '',
      code: 78,
      said: 'settings-schema',
      words: ['plan', 'samples/sound-saloon/readings.csv', '--job', 'samples/shop.json'],
    },
    {
      why: 'several vehicles',
      stdin: carsCsv(2),
      code: 2,
      said: 'usage-several-vehicles',
      words: ['read', '-'],
    },
  ])(
    'JSON refused for $why is the envelope with the diagnostics and no result',
    async ({ words, stdin, code, said }) => {
      const run = await runLeastcut([...words, '--format', 'json'], { stdin });
      const record = JSON.parse(run.out);
      expect(run.code).toBe(code);
      expect(record).toMatchObject({
        schema: `leastcut/${words[0]}/1`,
        diagnostics: [{ code: said, severity: 'error' }],
      });
      expect(Object.keys(record).sort()).toEqual(
        ['assumptions', 'command', 'diagnostics', 'inputs', 'schema', 'vehicle', 'version'].sort(),
      );
    },
  );

  test('several vehicles are a page each, a record a line, or one by its name', async () => {
    const stdin = carsCsv(3);
    const [text, ndjson, one, none] = await Promise.all([
      runLeastcut(['survey', '-'], { stdin }),
      runLeastcut(['survey', '-', '--format', 'ndjson'], { stdin }),
      runLeastcut(['survey', '-', '--format', 'json', '--vehicle', 'FH 2'], { stdin }),
      runLeastcut(['survey', '-', '--vehicle', 'FH 9'], { stdin }),
    ]);
    expect(text.out.match(/^Survey of FH \d/gm)).toEqual([
      'Survey of FH 1',
      'Survey of FH 2',
      'Survey of FH 3',
    ]);
    const lines = ndjson.out.trimEnd().split('\n');
    expect(lines.map((line) => JSON.parse(line).vehicle)).toEqual(['FH 1', 'FH 2', 'FH 3']);
    expect(JSON.parse(one.out).vehicle).toBe('FH 2');
    expect(none.code).toBe(2);
    expect(none.err).toContain('usage-unknown-vehicle');
  });

  test('-q leaves the errors and drops every remark', async () => {
    const remarks = 'panel,point,reading_um,weather\nbonnet,1,120,rain\nroof,1,118,\n';
    const [told, quiet, wrong] = await Promise.all([
      runLeastcut(['survey', '-'], { stdin: remarks }),
      runLeastcut(['survey', '-', '-q'], { stdin: remarks }),
      runLeastcut(['survey', '-', '-q'], { stdin: `${remarks}roof,2,thick,\n` }),
    ]);
    expect(told.err).toContain('warning[column-unknown]');
    expect(quiet.err).toBe('');
    expect(quiet.out).toBe(told.out);
    expect(wrong.err).toContain('error[reading-not-a-number]');
    expect(wrong.err).not.toContain('column-unknown');
  });
});

test('the built program is the one under test, not the sources', () => {
  expect(program()).toMatch(/bin[/\\]leastcut\.js$/);
});
