import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { askLeastcut } from './ask-leastcut.ts';
import { temporaryFolder } from './temporary-folder.ts';

const readings = 'samples/sound-saloon/readings.csv';
const job = 'samples/sound-saloon/job.json';

describe('a file of another kind than is wanted is told in one sentence, with what takes it', () => {
  test.each([
    [['survey', job], 'this is a job file (JSON), and no table', 'as --job FILE'],
    [['read', 'samples/shop.json'], 'this is a shop file (JSON)', 'as --shop FILE'],
    [['plan', 'samples/rates.json'], 'this is a rates file (JSON)', 'as --rates FILE'],
    [['quote', 'samples/two-door.json'], 'this is a template file', 'as --template FILE'],
    [['compare', readings, 'samples/film-record.json'], 'a film record file', '--film-record FILE'],
    [['grade', job, readings], 'this is a job file', 'as --job FILE'],
    [['plan', readings, '--defects', job], 'this is a job file', 'as --job FILE'],
    [['survey', 'samples/week/jobs.csv'], 'this is a list of jobs', 'leastcut batch FILE takes it'],
    [['plan', readings, '--defects', readings], 'is a table of readings', 'leastcut survey FILE'],
    [['survey', 'samples/sound-saloon/defects.csv'], 'a table of defects', 'as --defects FILE'],
    [['survey', 'samples/older-coupe/spots.csv'], 'a table of test spots', 'as --spots FILE'],
    [['survey', 'samples/gauge-checks.csv'], 'checks of a gauge', 'leastcut gauge FILE'],
    [['survey', 'samples/sound-saloon/gloss.csv'], 'a table of gloss', 'as --gloss FILE'],
    [['survey', 'samples/hours.csv'], 'a table of hours', 'as --history FILE'],
    [['batch', job], 'this is a job file, where a list of jobs is wanted', 'as --job FILE'],
  ] as const)('%j', async (words, said, wayOut) => {
    const { code, err, out } = await askLeastcut(words);
    expect([code, out]).toEqual([65, '']);
    expect(err.match(/error\[/g)).toHaveLength(1);
    expect(err).toContain('error[file-other-kind]: ');
    expect(err).toContain(said);
    expect(err).toContain(wayOut);
  });

  test('a table of test spots that lacks a column is told that, though it has all that one of defects needs', async () => {
    const spots = join(temporaryFolder(), 'spots.csv');
    writeFileSync(
      spots,
      'panel,machine,pad,product,sets,mark,before_um,after_um,defect\nroof,da,foam-soft,fine,2,1,112,111,swirls\n',
    );
    const { code, err } = await askLeastcut(['survey', readings, '--spots', spots]);
    expect(code).toBe(65);
    expect(err).toContain('error[column-missing]: there is no column "spot"');
  });

  test.each(['survey', 'plan', 'quote'] as const)(
    'what %s wrote as JSON holds no readings',
    async (command) => {
      const record = join(temporaryFolder(), 'record.json');
      writeFileSync(record, (await askLeastcut([command, readings, '--format', 'json'])).out);
      const { code, err } = await askLeastcut(['survey', record]);
      expect(code).toBe(65);
      expect(err).toContain('(JSON), and no table\n');
      expect(err).toContain(
        {
          survey: 'template sheet takes it as --for FILE',
          plan: 'compare takes it as --plan FILE',
          quote: 'name the readings it was made of',
        }[command],
      );
    },
  );
});

test('a column that is missing from a table of another heading is told as ever', async () => {
  const file = join(temporaryFolder(), 'r.csv');
  writeFileSync(file, 'panel,point,temperature\nroof,1,20\n');
  const { err } = await askLeastcut(['survey', file]);
  expect(err).toContain('error[column-missing]: there is no column "reading"');
});
