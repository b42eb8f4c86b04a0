import { expect, test } from 'vitest';
import type { Substrate } from '../../../src/film/template/template.ts';
import { saidSubstrates } from '../../../src/tasks/survey/said-substrates.ts';
import { plainPanel, plainTemplate, reading } from '../../film/car-builder.ts';

const template = plainTemplate(plainPanel('bonnet'), plainPanel('roof'));

/** Rows of a panel and its cell of the substrate column, one after the other. */
const said = (
  rows: readonly (readonly [panel: string, cell: string])[],
  byJob: Readonly<Record<string, Substrate>> = {},
) =>
  saidSubstrates(
    rows.map(([panel, substrate], i) =>
      reading(panel, `${i + 1}`, 118, {
        substrate,
        origin: { file: 'car.csv', line: i + 2, column: 1 },
      }),
    ),
    new Map(Object.entries(byJob)),
    template,
  );

test('a panel that was read by eddy current is of aluminium', () => {
  const { substrates, diagnostics } = said([
    ['bonnet', 'NFe'],
    ['bonnet', 'NFe'],
    ['roof', 'Fe'],
  ]);
  expect([...substrates]).toEqual([
    ['bonnet', { substrate: 'aluminium', by: 'readings', inReadings: true }],
    ['roof', { substrate: 'steel', by: 'readings', inReadings: true }],
  ]);
  expect(diagnostics).toEqual([]);
});

test('the job is believed before the readings, and a reading that says otherwise is pointed at', () => {
  const { substrates, diagnostics } = said(
    [
      ['bonnet', 'F'],
      ['bonnet', 'N'],
    ],
    { bonnet: 'aluminium' },
  );
  expect(substrates.get('bonnet')).toEqual({
    substrate: 'aluminium',
    by: 'job',
    inReadings: false,
  });
  expect(diagnostics.map(({ code, at, message }) => [code, at?.line, message])).toEqual([
    ['substrate-contradicted', 2, '"bonnet" is aluminium by the job file, and F here says steel'],
  ]);
});

test('readings that agree with the job say by what principle they were taken', () => {
  expect(said([['bonnet', 'al']], { bonnet: 'aluminium' }).substrates.get('bonnet')).toEqual({
    substrate: 'aluminium',
    by: 'job',
    inReadings: true,
  });
});

test('a column that says two things of a panel says nothing of it, and is told once', () => {
  const { substrates, diagnostics } = said([
    ['bonnet', 'Fe'],
    ['bonnet', 'NFe'],
    ['bonnet', 'NFe'],
  ]);
  expect(substrates.size).toBe(0);
  expect(diagnostics.map(({ at }) => at?.line)).toEqual([3]);
});

test.each(['', 'Fe/NFe', 'Zn', 'paint'])('the cell "%s" says nothing', (cell) => {
  expect(said([['bonnet', cell]])).toEqual({ substrates: new Map(), diagnostics: [] });
});

test.each<[string, Substrate]>([
  ['N-Fe', 'aluminium'],
  ['non-ferrous', 'aluminium'],
  ['Alu', 'aluminium'],
  ['FERROUS', 'steel'],
  ['Stahl', 'steel'],
  ['GRP', 'composite'],
])('"%s" says %s', (cell, substrate) => {
  expect(said([['roof', cell]]).substrates.get('roof')?.substrate).toBe(substrate);
});
