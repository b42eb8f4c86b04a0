/** A file of vehicles read twice: the second time only as far as jobs are asked for. */
import { appendFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { openVehicleJobs } from '../../../src/cli/batch/vehicle-jobs.ts';
import { loadFile } from '../../../src/cli/files/files.ts';
import { panelRecogniser } from '../../../src/film/template/panel-names.ts';
import { builtInTemplates } from '../../../src/formats/data/templates.ts';
import { filmModel } from '../../../src/formats/models.ts';
import { carsCsv } from '../../bench/cars-csv.ts';
import { temporaryFolder } from '../temporary-folder.ts';

const CARS = 500;
const intake = { isPanel: panelRecogniser(builtInTemplates), plausible: filmModel.measurement };

/** Longer than what is read at one go. */
async function openCars() {
  const path = join(temporaryFolder(), 'cars.csv');
  writeFileSync(path, [...carsCsv({ cars: CARS, panels: 20, points: 5 })].join(''));
  const opened = await openVehicleJobs(path, intake, loadFile);
  if (opened === undefined) throw new Error('it is laid out by vehicles');
  return { path, opened };
}

test('a file of which only the first vehicle was asked for is not told to have changed', async () => {
  const { opened } = await openCars();
  for await (const { vehicle } of opened.jobs) {
    expect(vehicle).toBe('car-0');
    break;
  }
  expect(opened.afterwards()).toEqual([]);
});

test.each([
  ['is the one it was', '', []],
  ['has grown in between', `car-${CARS},bonnet,1,101.2\n`, ['file-unreadable']],
])('a file that %s is told so once all of its vehicles were asked for', async (_, more, codes) => {
  const { path, opened } = await openCars();
  appendFileSync(path, more);
  let count = 0;
  for await (const _job of opened.jobs) count += 1;
  expect(count).toBeGreaterThanOrEqual(opened.count);
  expect(opened.afterwards().map(({ code }) => code)).toEqual(codes);
});
