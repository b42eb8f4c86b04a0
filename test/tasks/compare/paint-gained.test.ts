/** A panel that gained what only paint adds: repaint is named, nothing may go there, and the record keeps it. */
import { describe, expect, test } from 'vitest';
import { readFilmRecord } from '../../../src/formats/film-record.ts';
import { renderText } from '../../../src/render/text.ts';
import { compareBlocks } from '../../../src/report/compare/compare-blocks.ts';
import { filmRecordText } from '../../../src/report/compare/film-record-file.ts';
import { compareFiles } from '../../../src/tasks/compare/compare-files.ts';
import { surveyFiles } from '../../../src/tasks/survey/survey-files.ts';
import { compared, panelLeft, readingsText, requestOf, soundFilm, worked } from '../comparing.ts';

const job = { finish: 'clear-over-base', taken_um: 0 };
const first = readingsText(soundFilm);
const gaining = (gain: number) =>
  readingsText(worked(soundFilm, (id) => (id === 'roof' ? -gain : 1)));
const next = readingsText(worked(soundFilm, (id) => (id === 'roof' ? -29.9 : 1.1)));
const visits = [first, gaining(30)];
const result = compared({ visits, job });
const record = filmRecordText(result, '2026-03-03', undefined);

const recordOf = (text: string) => {
  const { value } = readFilmRecord('record.json', text);
  if (value === undefined) throw new Error('refused');
  return value;
};
const surveyed = (text: string) =>
  surveyFiles({ ...requestOf({ visits: [next], job }), filmRecord: recordOf(text) }).value?.[0]
    ?.result.survey.panels ?? [];

describe('a gain that wax or a gauge hardly makes', () => {
  const roof = panelLeft(result, 'roof');

  test('names repaint, and lets nothing go before a test spot', () => {
    expect(roof.reasons[0]?.text).toMatch(/^reads 30\.0 µm more than before: painted since, /u);
    expect(roof.left?.budget).toBe(0);
    expect(roof.left?.boundBy.code).toBe('test-spot');
    expect(roof.verdict).toBe('stop');
    const page = renderText(compareBlocks(result, { unit: 'um', verbose: false }), {
      width: 80,
      paint: (piece) => piece,
    });
    expect(page.replace(/\s+/gu, ' ')).toMatch(
      /Stop: roof: nothing may go: .*a test spot comes first/u,
    );
    expect(page).not.toContain('Not on the film record');
    expect(
      compareFiles(requestOf({ visits, job }))
        .diagnostics.map(({ hint }) => hint)
        .join(),
    ).toContain('painted');
  });

  test('is kept on the record, takes nothing away, and is held at the next survey', () => {
    const [visit] = JSON.parse(record).visits;
    const entry = visit.panels.find(({ panel }: { panel: string }) => panel === 'roof');
    expect(entry).toMatchObject({ taken_um: 0, taken_sd_um: 0, gained_um: 30 });
    const now = surveyed(record).find(({ panel }) => panel.id === 'roof');
    expect([now?.condition, now?.budget, now?.boundBy.code]).toEqual([
      'refinished',
      0,
      'test-spot',
    ]);
    expect(now?.evidence[0]?.text).toMatch(
      /^reads 30\.0 µm more since 2026-03-03, by the film record/u,
    );
    const without = surveyed(record.replace(/"gained_um": [0-9.]+,/u, ''));
    expect(without.find(({ panel }) => panel.id === 'roof')?.condition).toBe('original');
  });

  test('is held at the next comparison, and stands on the record once', () => {
    const later = compared({ visits: [gaining(30), next], job, filmRecord: record });
    expect(panelLeft(later, 'roof').left?.budget).toBe(0);
    const again = compared({ visits, job, filmRecord: record });
    expect(filmRecordText(again, '2026-03-03', recordOf(record).value)).toBe(record);
  });

  test('is held where it came between two of several visits', () => {
    const three = compared({
      visits: [first, readingsText(worked(soundFilm, () => 1)), next],
      job,
    });
    expect(three.visit.find(({ panel }) => panel === 'roof')?.gained_um).toBeCloseTo(30.9, 0);
    expect(panelLeft(three, 'roof').left?.budget).toBe(0);
  });
});

test('a lesser gain is no paint: it is left off the record, and its causes are others', () => {
  const small = compared({ visits: [first, gaining(8)], job });
  const roof = panelLeft(small, 'roof');
  expect(roof.reasons[0]?.text).toMatch(/more than before: the gauge moved, wax or coating/u);
  expect(small.visit.map(({ panel }) => panel)).not.toContain('roof');
  expect(roof.verdict).toBe('unresolved');
});

test('what a zone gained counts for its panel', () => {
  const film = { ...soundFilm, roof: [112, 115, 110, 160, 164, 162] };
  const off = { ...worked(film, () => 1), roof: [142, 145, 140, 190, 194, 192] };
  const { visit } = compared({ visits: [readingsText(film), readingsText(off)], job });
  expect(visit.find(({ panel }) => panel === 'roof')?.gained_um).toBeCloseTo(30, 0);
});
