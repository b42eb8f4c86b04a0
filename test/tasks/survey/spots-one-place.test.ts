/** One place worked on under several names of spots lost there what all of them took, with its file and by its record. */
import { describe, expect, test } from 'vitest';
import { filmRecordText } from '../../../src/report/compare/film-record-file.ts';
import { resolveSettings } from '../../../src/tasks/settings/settings.ts';
import { spotFiles } from '../../../src/tasks/spot/spot-files.ts';
import { surveyFiles } from '../../../src/tasks/survey/survey-files.ts';
import { type Comparing, compared, readingsText, requestOf, soundFilm } from '../comparing.ts';
import { layersOf } from '../layers.ts';

const head =
  'spot,panel,machine,pad,product,sets,mark,before_um,after_um,cleared_pct,haze_grade,colour_on_pad,place';
const scatter = [-0.2, 0.1, 0.3, -0.1, 0];
/** Marks of a place that had lost so much, read anew, less what the trial took. */
const tried = (spot: string, lost: number, took: number, place = '', panel = 'boot'): string =>
  scatter
    .map((off, i) => {
      const before = 118 + i / 2 - lost + off;
      const after = 118 + i / 2 - lost - took - (scatter[4 - i] ?? 0);
      return `${spot},${panel},da,foam-medium,medium,2,${i + 1},${before.toFixed(1)},${after.toFixed(1)},45,1,no,${place}`;
    })
    .join('\n');
const table = (...spots: readonly string[]): string => [head, ...spots].join('\n');

const job = { vehicle: { id: 'FH-7' }, finish: 'clear-over-base', taken_um: 0 };
const before = readingsText(soundFilm);

function surveyed(known: Partial<Comparing>) {
  const outcome = surveyFiles(requestOf({ visits: [before], job, ...known }));
  const [vehicle] = outcome.value ?? [];
  if (vehicle === undefined) throw new Error(outcome.diagnostics[0]?.message);
  const { survey } = vehicle.result;
  const boot = survey.panels.find(({ panel }) => panel.id === 'boot');
  return {
    gone: boot?.facts.recorded?.mean,
    told: survey.notes.filter(({ code }) => code.startsWith('spot')),
  };
}

const chain = (...places: readonly string[]): string =>
  table(...['A', 'B', 'C'].map((spot, i) => tried(spot, 2 * i, 2, places[i])));

describe('spots under several names', () => {
  test('that go on where the last ended, read anew, count together, and the page says so', () => {
    const { gone, told } = surveyed({ spots: chain() });
    expect(gone).toBeCloseTo(6, 0);
    const [over, held] = told;
    expect(over?.code).toBe('spot-perhaps-overrun');
    expect(over?.text).toMatch(
      /boot lid \(test spots A, B and C\): 6\.\d ± .* came off in 6 sets if they are one place, \d\.\d\d µm might go/,
    );
    expect(held?.code).toBe('spots-one-place');
    expect(held?.text).toMatch(/^boot lid: test spots A, B and C are held to be one place/);
  });

  test('one of which begins exactly where another step ended lost there what both took', () => {
    const rows = (spot: string, pad: string, by: number): string =>
      [120.3, 121, 119.4]
        .map(
          (film, i) =>
            `${spot},boot,da,${pad},medium,1,${i + 1},${(film - by).toFixed(1)},${(film - by - 0.6 - by).toFixed(1)},40,0,no,`,
        )
        .join('\n');
    const { gone, told } = surveyed({
      spots: table(rows('A', 'foam-soft', 0), rows('B', 'foam-medium', 0.6)),
    });
    // 0.6 of the first, 1.2 of the second.
    expect(gone).toBeCloseTo(1.8, 6);
    expect(told.map(({ text }) => text)).toEqual([
      expect.stringMatching(
        /^boot lid: test spots A and B are held to be one place, .*1\.8 µm gone/,
      ),
    ]);
  });

  test('whose file says where each was made are where it says', () => {
    const apart = surveyed({ spots: chain('left', 'middle', 'right') });
    expect(apart.gone).toBeCloseTo(2, 0);
    expect(apart.told).toEqual([]);
    const left = ['A', 'B', 'C'].map((spot, i) => tried(spot, 2.8 * i, 2.8, 'left'));
    const one = surveyed({ spots: table(...left) });
    expect(one.gone).toBeCloseTo(8.4, 0);
    expect(one.told.map(({ code }) => code)).toEqual(['spot-overrun']);
    expect(one.told[0]?.text).toMatch(/came off in 6 sets at one place/);
    const usual = surveyed({ spots: table(tried('A', 0, 1, 'left'), tried('B', 1, 1, 'left')) });
    expect(usual.gone).toBeCloseTo(2, 0);
    expect(usual.told).toEqual([]);
  });

  test('that begin far higher than the others ended are places of their own', () => {
    const { gone, told } = surveyed({ spots: table(tried('A', 0, 2), tried('B', -6, 2)) });
    expect(gone).toBeCloseTo(2, 0);
    expect(told).toEqual([]);
  });

  test('one of which alone took too much are told of by that one', () => {
    const { told } = surveyed({ spots: table(tried('A', 0, 6.5), tried('B', 6.5, 1)) });
    expect(told.filter(({ code }) => code.endsWith('overrun'))).toHaveLength(1);
    expect(told.at(-1)?.code).toBe('spots-one-place');
  });

  test('count the same by the record of their visit, where each is said to be as well', () => {
    const recordOf = (spots: string): string => {
      const request = { visits: [before, before], job, spots };
      return filmRecordText(compared(request), '2026-01-10', requestOf(request).filmRecord?.value);
    };
    const held = surveyed({ filmRecord: recordOf(chain()) });
    expect(held.gone).toBeCloseTo(6, 0);
    expect(held.told.map(({ code }) => code)).toEqual(['spots-one-place']);
    expect(held.told[0]?.text).toMatch(/A of 2026-01-10, B of 2026-01-10 and C of 2026-01-10/);
    const apart = surveyed({ filmRecord: recordOf(chain('left', 'middle', 'right')) });
    expect(apart.gone).toBeCloseTo(2, 0);
  });

  test('are told of without the readings of the car as well', () => {
    const settings = resolveSettings(layersOf({ job, shop: {} }));
    const adviceOn = (spots: string) => {
      const bytes = new TextEncoder().encode(spots);
      const { value } = spotFiles({
        files: [{ name: 'spots.csv', bytes, sha256: '' }],
        settings,
        job: undefined,
      });
      return value?.advice.filter(({ code }) => code === 'spots-one-place').map(({ text }) => text);
    };
    expect(adviceOn(chain())).toEqual([
      expect.stringMatching(/^boot: test spots A, B and C are held to be one place/),
    ]);
    expect(adviceOn(chain('left', 'middle', 'right'))).toEqual([]);
    const byEye =
      'A,boot,da,foam-medium,medium,2,,,,45,1,no,\nB,boot,da,foam-soft,medium,2,,,,45,1,no,';
    expect(adviceOn(table(byEye))).toHaveLength(1);
  });
});
