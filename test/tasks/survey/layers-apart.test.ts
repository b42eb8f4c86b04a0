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

const withClear = (um: number, ...ids: readonly string[]): string => {
  const layers = ids.flatMap((id) => [1, 2, 3, 4, 5].map((point) => `${id},${point},${um},clear`));
  const [head = '', ...films] = before.trim().split('\n');
  return [`${head},layer`, ...films.map((row) => `${row},`), ...layers].join('\n');
};

const messages = (layers: object, readings: string): readonly string[] =>
  surveyed(layers, readings).told.map(({ message }) => message);

describe('layers that the job states where a clear was read', () => {
  test('of a panel are told beside what was read there', () => {
    const [one, ...more] = messages(
      { panels: { bonnet: { clear_um: 45 } } },
      withClear(23, 'bonnet'),
    );
    expect(more).toEqual([]);
    expect(one).toMatch(
      /^clear_um 45\.0 ± 3\.0 µm \([^)]*\) can hardly be true of bonnet, whose clear reads 23\.0 ± 1\.\d µm: \d\.\d SDs apart; what may go is the least that either allows$/,
    );
  });

  test('of the car are told once for the panels of which none was read', () => {
    const [one, ...more] = messages({ clear_um: 60 }, withClear(33, 'bonnet', 'roof'));
    expect(more).toEqual([]);
    expect(one).toMatch(
      /^clear_um 60\.0 ± 3\.0 µm \([^)]*\) can hardly be true of (?!.*roof).*boot lid.*, by the clear as read on 2 panels of the car, 33\.0 ± \d\.\d µm: (up to )?\d\.\d SDs apart/,
    );
  });

  test('under it are told of the panel that was read and of the others', () => {
    const [others, own, ...more] = messages({ under_um: 70 }, withClear(23, 'roof'));
    expect(more).toEqual([]);
    expect(own).toMatch(/^under_um .* can hardly be true of what was read of roof \(118\.8 µm\): /);
    expect(others).toMatch(/^under_um .* bonnet, .*as read on 1 panel of the car, 23\.0 ± /);
  });
});

test('layers of the car that contradict what one panel reads are told to count apart on all of that paint', () => {
  const films = { ...soundFilm, bonnet: [121, 125, 119, 123, 122] };
  const found = messages({ clear_um: 30, under_um: 70 }, readingsText(films));
  expect(found).toEqual([
    expect.stringMatching(
      /cannot both be true of what was read of bonnet \(122\.0 µm\): \d\.\d SDs apart; .*, on the same paint of .*roof.* too$/,
    ),
  ]);
});

test('a panel that states a layer of its own is told that the one of the car is in doubt', () => {
  const films = { ...soundFilm, bonnet: [121, 125, 119, 123, 122] };
  const job = { clear_um: 30, under_um: 70, panels: { roof: { clear_um: 44 } } };
  expect(messages(job, readingsText(films)).at(-1)).toMatch(
    /^clear_um 44\.0 .* and under_um 70\.0 .* can hardly be true of other panels of this paint: on roof too what may go is the least/,
  );
});

test('a clear that was read by itself and can hardly be true is a note of the survey', () => {
  const readings = withClear(99, 'roof');
  const { told, notes } = surveyed({}, readings);
  expect(told).toEqual([]);
  expect(notes.filter(({ code }) => code === 'clear-read-apart').map(({ text }) => text)).toEqual([
    expect.stringMatching(
      /^roof: its clear as read, 99\.0 ± \d\.\d µm of \d+\.\d µm in all, leaves too little/,
    ),
  ]);
});
