import { expect, test } from 'vitest';
import { filmRecordOf } from '../../src/formats/film-record.ts';
import { filmRecordFile } from '../../src/report/compare/film-record-file.ts';

const visitOf = (date: string, taken: number) => ({
  date,
  panels: [{ panel: 'roof', taken_um: taken, taken_sd_um: 0.2 }],
});
const record = filmRecordOf({
  schema: 'leastcut/film-record/1',
  visits: [visitOf('2025-01-10', 1), visitOf('2026-01-10', 2)],
});

test.each([
  ['2024-05-05', ['2024-05-05', '2025-01-10', '2026-01-10']],
  ['2025-01-10', ['2025-01-10', '2025-01-10', '2026-01-10']],
  ['2026-05-05', ['2025-01-10', '2026-01-10', '2026-05-05']],
])('a visit of %s is put on the record by its day', (date, days) => {
  const { panels } = visitOf(date, 3);
  const { visits } = filmRecordFile(
    {
      ...{ vehicle: null, visit: panels, places: [], deeper: new Set<string>() },
      ...{ newSpots: [], unread: [], planned: false, again: null, before: { facts: new Map() } },
    },
    date,
    record,
  );
  expect(visits.map((visit) => visit.date)).toEqual(days);
  expect(visits.findLast((visit) => visit.date === date)?.panels).toEqual(panels);
});
