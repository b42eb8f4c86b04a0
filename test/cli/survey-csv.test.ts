import { parse } from 'csv-parse/sync';
import { describe, expect, test } from 'vitest';
import { askLeastcut } from './ask-leastcut.ts';

type Row = Readonly<Record<string, string>>;
const parsedCsv = (text: string): readonly Row[] => parse<Row>(text, { columns: true });

const vehicles = [
  ['samples/sound-saloon/readings.csv', '--job', 'samples/sound-saloon/job.json'],
  ['samples/older-coupe/readings.csv', '--job', 'samples/older-coupe/job.json'],
  ['samples/plastic-bumpers/readings.tsv', '--job', 'samples/plastic-bumpers/job.json'],
] as const;

type Part = {
  readonly panel: string;
  readonly zone?: string;
  readonly condition: string;
  readonly budget_um: number;
  readonly bound_by: string;
  readonly if_otherwise: { readonly if_word_holds_um: number } | null;
  readonly zones: readonly Part[];
};

describe('a survey as csv', () => {
  test.each(vehicles)(
    'of %s has a row for each panel, and says what its record says',
    async (...words) => {
      const csv = await askLeastcut(['survey', ...words, '--format', 'csv']);
      const json = await askLeastcut(['survey', ...words, '--format', 'json']);
      const { panels } = JSON.parse(json.out) as { panels: readonly Part[] };
      const parts = panels.flatMap((panel) => (panel.zones.length === 0 ? [panel] : panel.zones));
      const rows = parsedCsv(csv.out);
      expect(rows).toHaveLength(parts.length);
      expect(
        rows.map((row) => [
          row['panel'],
          row['condition'],
          Number(row['budget_um']),
          row['bound_by'],
        ]),
      ).toEqual(parts.map((part) => [part.panel, part.condition, part.budget_um, part.bound_by]));
      expect(rows.map((row) => row['if_word_holds_um'])).toEqual(
        parts.map(({ if_otherwise }) =>
          if_otherwise === null ? '' : String(if_otherwise.if_word_holds_um),
        ),
      );
    },
  );

  test('gives the figure to work to, which is never more than if the word of a panel holds', async () => {
    for (const words of vehicles) {
      const { out } = await askLeastcut(['survey', ...words, '--format', 'csv']);
      const doubted = parsedCsv(out).filter((row) => row['if_word_holds_um'] !== '');
      for (const row of doubted) {
        expect(Number(row['budget_um'])).toBeLessThanOrEqual(Number(row['if_word_holds_um']));
      }
    }
  });

  const measured = [
    'panel',
    'zone',
    'n_points',
    'n_readings',
    'mean_um',
    'sd_um',
    'min_um',
    'substrate',
  ];
  const more = [
    [],
    ['--gauge', 'samples/gauge-checks.csv'],
    ['--shop', 'samples/shop.json', '--panel', 'bonnet'],
  ];
  test.each(vehicles)(
    'of %s says the same of what was read where nothing else is asked for',
    async (...words) => {
      for (const options of more) {
        const command = ['survey', ...words, ...options, '--format', 'csv'];
        const all = await askLeastcut(command);
        const own = await askLeastcut([...command, '--fields', measured.join(',')]);
        expect({ code: own.code, err: own.err }).toEqual({ code: all.code, err: all.err });
        expect(parsedCsv(own.out)).toEqual(
          parsedCsv(all.out).map((row) =>
            Object.fromEntries(measured.map((name) => [name, row[name]])),
          ),
        );
      }
    },
  );
});
