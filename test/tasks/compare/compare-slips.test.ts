import { describe, expect, test } from 'vitest';
import { renderText } from '../../../src/render/text.ts';
import { compareBlocks } from '../../../src/report/compare/compare-blocks.ts';
import { filmRecordFile } from '../../../src/report/compare/film-record-file.ts';
import { compareFiles } from '../../../src/tasks/compare/compare-files.ts';
import {
  compared,
  type Film,
  panelLeft,
  readingsText,
  requestOf,
  soundFilm,
  toldBy,
  worked,
} from '../comparing.ts';

const job = { finish: 'clear-over-base', taken_um: 0 };
const later = worked(soundFilm, (panel) => (panel === 'bonnet' ? 9 : 2));
/** The second point of the roof, its decimal mark left out. */
const slipped = (film: Film): Film => ({
  ...film,
  roof: (film['roof'] ?? []).map((value, i) => (i === 1 ? 10 * value : value)),
});
const withoutRoof = ({ roof: _, ...others }: Film): Film => others;
const visits = (before: Film, after: Film) => [readingsText(before), readingsText(after)];
const others = Object.keys(soundFilm).filter((panel) => panel !== 'roof');

describe.each([
  ['later', visits(soundFilm, slipped(later))],
  ['earlier', visits(slipped(soundFilm), later)],
])('a value of the %s readings that looks keyed wrongly', (_, files) => {
  const result = compared({ visits: files, job });

  test('leaves what is told of the other panels as it is without that panel', () => {
    const clean = compared({ visits: visits(withoutRoof(soundFilm), withoutRoof(later)), job });
    for (const panel of others) {
      const [one, other] = [panelLeft(result, panel), panelLeft(clean, panel)];
      expect(one.comparison.change).toEqual(other.comparison.change);
      expect(one.verdict).toBe(other.verdict);
    }
    expect(result.total.car).toEqual(clean.total.car);
    expect(panelLeft(result, 'bonnet').overruns.length).toBeGreaterThan(0);
  });

  test('lets nobody tell of its own panel before it is read again', () => {
    const roof = panelLeft(result, 'roof');
    expect(roof.comparison.change).toBeNull();
    expect(roof.verdict).toBe('unresolved');
    expect(roof.reasons.map(({ code }) => code)).toEqual(['keying-slip']);
  });

  test('is asked about first, by its file, panel and point', () => {
    const text = renderText([...compareBlocks(result, { unit: 'um', verbose: false })], {
      width: 200,
      paint: (one) => one,
    });
    expect(text.split('\n')[1]).toMatch(
      /^Read again first: roof, point 2 in visit-[12]\.csv \(11\d\d µm, ten times its neighbours\)/,
    );
  });

  test('keeps its panel alone off the film record, and that is said', () => {
    const { panels } = filmRecordFile(result, '2025-11-20', undefined).visits[0] ?? { panels: [] };
    expect(panels.map(({ panel }) => panel).sort()).toEqual([...others].sort());
    const told = compareFiles({ ...requestOf({ visits: files, job }), recording: true });
    expect(told.diagnostics.map(({ code, message }) => `${code}: ${message}`)).toContain(
      'compare-not-recorded: not on the film record: roof (a value looks keyed wrongly)',
    );
    expect(toldBy({ visits: files, job }).join()).not.toContain('compare-not-recorded');
  });
});

test('more film than before is no removal, and the record says which panels it leaves out so', () => {
  const gained = worked(soundFilm, (panel) => (panel === 'roof' ? -8 : 2));
  const { value } = compareFiles({
    ...requestOf({ visits: visits(soundFilm, gained), job }),
    recording: true,
  });
  expect(value?.unrecorded.map(({ panel, why }) => [panel.id, why])).toEqual([
    ['roof', 'it reads more film than before'],
  ]);
});
