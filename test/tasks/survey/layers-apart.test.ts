/** Layers that are stated and cannot be of one paint are told with both figures, their lines and the panels. */
import { describe, expect, test } from 'vitest';
import { surveyFiles } from '../../../src/tasks/survey/survey-files.ts';
import { readingsText, requestOf, soundFilm } from '../comparing.ts';

const before = readingsText(soundFilm);
const surveyed = (layers: object, readings = before) => {
  const job = { finish: 'clear-over-base', taken_um: 0, ...layers };
  const { value, diagnostics } = surveyFiles(requestOf({ visits: [readings], job }));
  const { panels = [], notes = [] } = value?.[0]?.result.survey ?? {};
  return {
    notes,
    told: diagnostics.filter(({ code }) => code === 'stated-layers-apart'),
    budget: (id: string) => panels.find(({ panel }) => panel.id === id)?.budget ?? Number.NaN,
  };
};

describe('layers that the job states', () => {
  test('that contradict what is read are told once for the car, and the least of both counts', () => {
    const both = surveyed({ clear_um: 60, under_um: 100 });
    expect(both.told).toHaveLength(1);
    expect(both.told[0]?.message).toMatch(
      /^clear_um 60\.0 ± 3\.0 µm \(.*\d\) and under_um 100\.0 ± \d\.\d µm \(.*\d\) cannot both be true of what was read of .*roof \(\d+\.\d µm\).*: up to \d+\.\d SDs apart/,
    );
    expect(both.told[0]?.at?.line).toBeGreaterThan(0);
    const alone = [surveyed({ clear_um: 60 }), surveyed({ under_um: 100 })];
    for (const id of ['roof', 'bonnet', 'boot']) {
      const least = Math.min(...alone.map(({ budget }) => budget(id)));
      expect(both.budget(id)).toBeCloseTo(least, 6);
    }
  });

  test('of which the clear alone leaves too little for the rest are told by that one', () => {
    const { told } = surveyed({ panels: { roof: { clear_um: 98 } } });
    expect(told.map(({ message }) => message)).toEqual([
      expect.stringMatching(
        /^clear_um 98\.0 ± 3\.0 µm \([^)]*\) can hardly be true of what was read of roof /,
      ),
    ]);
  });

  test('that agree with what is read are taken as they are', () => {
    expect(surveyed({ clear_um: 42, under_um: 70 }).told).toEqual([]);
    expect(surveyed({}).told).toEqual([]);
  });
});

test('a clear that was read by itself and can hardly be true is a note of the survey', () => {
  const layers = [1, 2, 3, 4, 5].map((point) => `roof,${point},99,clear`);
  const [head = '', ...films] = before.trim().split('\n');
  const readings = [`${head},layer`, ...films.map((row) => `${row},`), ...layers].join('\n');
  const { told, notes } = surveyed({}, readings);
  expect(told).toEqual([]);
  expect(notes.filter(({ code }) => code === 'clear-read-apart').map(({ text }) => text)).toEqual([
    expect.stringMatching(
      /^roof: its clear as read, 99\.0 ± \d\.\d µm of \d+\.\d µm in all, leaves too little/,
    ),
  ]);
});
