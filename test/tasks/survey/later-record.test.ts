import { describe, expect, test } from 'vitest';
import { readFilmRecord } from '../../../src/formats/film-record.ts';
import { laterRecord } from '../../../src/tasks/survey/later-record.ts';

type Keys = Readonly<Record<string, unknown>>;

const recordOf = (name: string, visits: readonly Keys[], vehicle: string | undefined = 'FH-7') => {
  const text = JSON.stringify({ schema: 'leastcut/film-record/1', vehicle, visits }, null, 1);
  const { value } = readFilmRecord(name, text);
  if (value === undefined) throw new Error('refused');
  return value;
};

const bonnet = { panel: 'bonnet', taken_um: 2, taken_sd_um: 0.4 };
const roof = { panel: 'roof', taken_um: 1, taken_sd_um: 0.3 };
const first = { date: '2025-03-02', panels: [bonnet] };
const second = { date: '2026-02-11', panels: [bonnet, roof] };

/** Which counts, and what is told: of one that is typed, and of one that the job names. */
const asked = (typed: readonly Keys[], ofJob: readonly Keys[], vehicle?: string) => {
  const [one, other] = [recordOf('typed.json', typed, vehicle), recordOf('job.json', ofJob)];
  const { value, diagnostics } = laterRecord(one, other);
  return {
    counts: value === one ? 'typed' : value === other ? 'of job' : 'none',
    told: diagnostics.map(({ severity, code, message, at }) => ({
      told: `${severity} ${code}: ${message}`,
      at: `${at?.file}:${at?.line}`,
    })),
  };
};

describe('of a film record that is typed and one that the job names', () => {
  test('the typed one counts where it holds all that the other does', () => {
    for (const visits of [[first, second], [second, first], [first]])
      expect(asked(visits, [first])).toEqual({ counts: 'typed', told: [] });
    expect(asked([first], [])).toEqual({ counts: 'typed', told: [] });
  });

  test('the one of the job counts where that holds more, and it is told', () => {
    expect(asked([first], [first, second])).toEqual({
      counts: 'of job',
      told: [
        {
          told: 'warning film-record-older: typed.json lacks what job.json, which the job names, holds of the visit of 2026-02-11: job.json counts',
          at: 'typed.json:undefined',
        },
      ],
    });
    expect(asked([], [first, second]).told[0]?.told).toContain(
      'of the visits of 2025-03-02, 2026-02-11',
    );
  });

  test('neither counts where each holds what the other lacks', () => {
    const other = { ...second, date: '2026-05-01' };
    expect(asked([first, other], [first, second])).toEqual({
      counts: 'none',
      told: [
        {
          told: 'error film-record-contradicts: typed.json holds of the visit of 2026-05-01 what job.json, which the job names, does not, and lacks what that holds of the visit of 2026-02-11',
          at: 'typed.json:16',
        },
      ],
    });
    const less = { ...first, panels: [{ ...bonnet, taken_um: 0.1 }] };
    expect(asked([less], [first]).counts).toBe('none');
  });

  test('the typed one counts where the other is of another vehicle', () => {
    expect(asked([], [first], 'FH-8')).toEqual({ counts: 'typed', told: [] });
  });
});

describe('a visit with more on record', () => {
  const spot = {
    ...{ spot: 'A', panel: 'bonnet', combination: 'da/foam-soft/fine', sets: 2 },
    ...{ taken_um: 1, taken_sd_um: 0.4 },
  };
  const place = { panel: 'roof', defect: 'deep-scratches', median_um: 3, high_um: 7 };
  const readPlace = { ...place, taken_um: 2.5, taken_sd_um: 0.5 };
  const with1 = (panel: Keys) => ({ ...first, panels: [{ ...bonnet, ...panel }] });

  test.each<readonly [string, Keys, Keys]>([
    ['a panel', second, { ...second, panels: [bonnet] }],
    ['a test spot', { ...first, spots: [spot] }, first],
    ['a place', { ...first, places: [place] }, first],
    ['a place that was read', { ...first, places: [readPlace] }, { ...first, places: [place] }],
    ['a measurement for a forecast', first, with1({ taken_um: 2.4, not_read: true })],
    ['what was left', with1({ left_um: 1 }), first],
    ['less that was left', with1({ left_um: 1 }), with1({ left_um: 2 })],
    ['more than might go', with1({ over_allowed: true }), with1({ over_allowed: 'perhaps' })],
    ['perhaps more than might go', with1({ over_allowed: 'perhaps' }), first],
  ])('counts, whichever of the two it is: %s', (_, more, less) => {
    expect(asked([more], [less])).toEqual({ counts: 'typed', told: [] });
    expect(asked([less], [more]).counts).toBe('of job');
    expect(asked([more], [more]).counts).toBe('typed');
  });
});
