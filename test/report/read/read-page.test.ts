import { spawnSync } from 'node:child_process';
import { describe, expect, test } from 'vitest';
import { micrometres } from '../../../src/base/units.ts';
import type { Reading } from '../../../src/film/reading.ts';
import { ofNoPanel } from '../../../src/intake/tables/table.ts';
import { leftOutLines } from '../../../src/report/read/left-out-lines.ts';
import { valuesByPoint } from '../../../src/report/read/values-by-point.ts';
import { askLeastcut } from '../../cli/ask-leastcut.ts';
import { program, projectRoot } from '../../cli/run-leastcut.ts';

const reading = (point: string, value: number): Reading => ({
  ...{ vehicle: null, panel: 'roof', point, repeat: 1, thickness: micrometres(value) },
  ...{ layer: '', place: 'face', marked: false, curved: false },
  origin: { file: 'a.csv', line: 1, column: 1 },
});
const cellAt = (line: number, text: string, reason: string) => ({
  file: 'a.csv',
  line,
  column: 3,
  text,
  reason,
  class: 'missing' as const,
  ...ofNoPanel,
});

const printout = 'samples/spoiled/printout.csv';

describe('the page of read', () => {
  test('shows repeats by their point, and a single reading a point as it is', () => {
    const repeated = [reading('1', 101), reading('1', 102), reading('2', 103)];
    expect(valuesByPoint(repeated, 'um').replaceAll('\u00a0', ' ')).toBe(
      '1: 101.0 102.0; 2: 103.0',
    );
    expect(valuesByPoint([reading('1', 101), reading('2', 103)], 'um')).toBe('101.0 103.0');
  });

  test('tells cells that are alike together, with how many and where', () => {
    const empty = Array.from({ length: 10 }, (_, i) => cellAt(i + 2, '', 'empty cell'));
    const lines = leftOutLines([...empty, cellAt(20, 'OL', '"OL" means over-range')]);
    expect(lines).toEqual([
      'a.csv empty cell: 10 cells, at 2:3, 3:3, 4:3, 5:3, 6:3, 7:3, 8:3, 9:3 and 2 more',
      'a.csv:20:3 "OL" means over-range',
    ]);
  });

  test.each(['md', 'html'])('has no row without a panel, as %s', async (format) => {
    const { out } = await askLeastcut([
      'read',
      'samples/older-coupe/readings.csv',
      '--format',
      format,
    ]);
    const rows =
      format === 'md'
        ? [...out.matchAll(/^\| ([^|]*) \| \d* \|/gm)].map(([, name]) => name)
        : [...out.matchAll(/<tr>(?:<th scope="row"[^>]*>([^<]*)<\/th>|<td[^>]*>)/g)].map(
            ([, name]) => name,
          );
    expect(rows).toHaveLength(9);
    expect(rows.filter((name) => name === undefined || name.trim() === '')).toEqual([]);
  });

  test.skipIf(spawnSync('script', ['--version']).error !== undefined)(
    'tells at a terminal once what it leaves out, and what is more beside it',
    () => {
      const line = `"${process.execPath}" "${program()}" read ${printout}`;
      const { stdout } = spawnSync('script', ['-qec', line, '/dev/null'], {
        cwd: projectRoot,
        encoding: 'utf8',
        env: { PATH: process.env['PATH'], LC_ALL: 'C.UTF-8', NO_COLOR: '1' },
      });
      expect(stdout.match(/statistics row/g)).toHaveLength(1);
      expect(stdout).toContain('on metal the film is beyond the range of the gauge');
    },
  );

  test('says elsewhere on standard error, in the order of the file, all that is left out', async () => {
    const { err } = await askLeastcut(['read', printout, '-v']);
    const lines = [...err.matchAll(/^\S+?:(\d+):\d+: .*(?:left out|is no reading)/gm)].map(
      ([, line]) => Number(line),
    );
    expect(lines).toEqual([6, 8, 10]);
  });

  test('names the file where no vehicle is named', async () => {
    const { out } = await askLeastcut(['read', 'samples/spoiled/printout.csv']);
    expect(out).toMatch(/^Readings of samples\/spoiled\/printout\.csv: 3 on 2 panels/);
  });
});
