/** What would help a panel that its own test spot frees, held against the survey once it was done. */
import { describe, expect, test } from 'vitest';
import { partsOf } from '../../../src/film/survey.ts';
import { surveyFiles } from '../../../src/tasks/survey/survey-files.ts';
import { surveyHelp } from '../../../src/tasks/survey/survey-help.ts';
import { type Film, readingsText, requestOf } from '../comparing.ts';

/** One side reads as painted again together. */
const film: Film = {
  bonnet: [114, 115.3, 112.2, 110.6, 113.1],
  roof: [117, 119.3, 115.3, 117.2, 117.1],
  boot: [112.6, 110, 113, 111.4, 113.4],
  'door-front-right': [119.2, 117, 116.7, 122.5, 116.6],
  'door-rear-right': [111.4, 113.9, 114, 113, 113.6],
  'door-front-left': [148.9, 151.3, 149.9, 151.8, 148.7],
  'door-rear-left': [147.5, 147, 144.7, 147.9, 145.1],
};
const spots = [
  'spot,panel,machine,pad,product,sets,mark,before_um,after_um,cleared_pct,haze_grade,colour_on_pad,place',
  ...[150.3, 151.1, 149.5].map(
    (before, i) =>
      `A,door-front-left,da,foam-soft,medium,1,${i + 1},${before},${(before - 0.6).toFixed(1)},60,0,no,under the handle`,
  ),
].join('\n');
const job = { vehicle: { id: 'FH-9' }, finish: 'clear-over-base', taken_um: 0 };

function surveyed(readings: Film, more = '', ofJob: object = {}) {
  const visits = [`${readingsText(readings)}${more}`];
  const outcome = surveyFiles(requestOf({ visits, job: { ...job, ...ofJob }, spots }));
  const [vehicle] = outcome.value ?? [];
  if (vehicle === undefined) throw new Error(outcome.diagnostics[0]?.message);
  const parts = vehicle.result.survey.panels.flatMap(partsOf);
  const door = parts.find(({ panel }) => panel.id === 'door-front-left');
  if (door === undefined) throw new Error('the door is surveyed');
  return { door, helped: surveyHelp(vehicle.result) };
}

describe('a panel held with its side that its own spot frees', () => {
  const { door, helped } = surveyed(film);

  test('is promised nothing by points, clear or zinc, which give it nothing', () => {
    expect(door.boundBy.code).toBe('spot-depth');
    expect(door.budget).toBeGreaterThan(0.5);
    expect(helped.get(door) ?? []).toEqual([]);
    const nine = [148.9, 151.3, 149.9, 151.8, 148.7, 150, 149.2, 151, 150.3];
    const done = [
      surveyed({ ...film, 'door-front-left': nine }),
      surveyed(film, '', { panels: { 'door-front-left': { clear_um: 43 } } }),
      surveyed(film, '', { galvanised: true }),
    ];
    for (const then of done) expect(then.door.budget).toBeCloseTo(door.budget, 6);
  });

  test('is not said to lose by a point of another panel that is read again', () => {
    const again = [...helped.values()].flat().flatMap(({ elsewhere = [] }) => elsewhere);
    expect(again.map(({ part }) => part.panel.id)).not.toContain('door-front-left');
    const asOthers = [119.2, 117, 116.7, 117, 116.6];
    const then = surveyed({ ...film, 'door-front-right': asOthers }).door;
    expect(then.budget).toBeCloseTo(door.budget, 6);
  });
});
