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

const hintOf = (typed: readonly Keys[], ofJob: readonly Keys[]) =>
  laterRecord(recordOf('typed.json', typed), recordOf('job.json', ofJob)).diagnostics[0]?.hint;

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

describe('a visit that was mended', () => {
  const points = [{ point: '1', before_um: 118, after_um: 116 }];
  const read = { ...bonnet, points, left_um: 2, left_points: 1, left_mean_um: 116 };
  const foretold = { ...roof, not_read: true, allowed_um: 4, over_allowed: null };
  const before = { ...first, panels: [read, foretold] };
  /** As a comparison with one more panel tells the others from the same readings. */
  const told = { ...read, taken_sd_um: 0.38, left_um: 2.1 };
  const nowRead = { ...first, panels: [told, { ...roof, taken_um: 1.4, points }] };
  const notWorked = { ...first, panels: [read] };

  test('is the fuller once what was foretold is measured, whatever follows from the same readings', () => {
    expect(asked([nowRead], [before])).toEqual({ counts: 'typed', told: [] });
    expect(asked([before], [nowRead]).counts).toBe('of job');
  });

  test('is not, where a panel measured before reads otherwise, or where nothing was mended', () => {
    const other = { ...told, taken_um: 1, points: [{ ...points[0], after_um: 117 }] };
    expect(asked([{ ...nowRead, panels: [other, roof] }], [before]).counts).toBe('none');
    const overrun = { ...before, panels: [{ ...read, over_allowed: true }, foretold] };
    expect(asked([nowRead], [overrun]).counts).toBe('none');
    const unsaid = { ...before, panels: [bonnet, foretold] };
    expect(
      asked([{ ...nowRead, panels: [{ ...bonnet, taken_sd_um: 0.3 }, roof] }], [unsaid]).counts,
    ).toBe('none');
    expect(asked([{ ...first, panels: [told, foretold] }], [before]).counts).toBe('none');
  });

  test('is the fuller by its zones too, where their points are the same', () => {
    const zones = [{ zone: 'thinner', taken_um: 2, taken_sd_um: 0.5, points, left_um: 2 }];
    const zoned = { ...before, panels: [{ ...read, zones }, foretold] };
    const again = (zone: Keys) => {
      const panel = { ...told, zones: [{ ...zones[0], taken_sd_um: 0.4, ...zone }] };
      return asked([{ ...first, panels: [panel, roof] }], [zoned]).counts;
    };
    expect(again({})).toBe('typed');
    const less = { taken_um: 1, points: [{ ...points[0], after_um: 117 }] };
    expect(again(less)).toBe('none');
  });

  test('is refused with the way out where a forecast is gone, and nothing tells which is the later word', () => {
    expect(asked([notWorked], [before])).toEqual({
      counts: 'none',
      told: [
        {
          told: 'error film-record-contradicts: typed.json holds nothing of roof, of which job.json, which the job names, holds a forecast of the visit of 2025-03-02: nothing tells which of the two is the later word',
          at: 'typed.json:undefined',
        },
      ],
    });
    const half = { ...before, panels: [read, { ...foretold, taken_um: 0.5 }] };
    expect(asked([half], [before]).told[0]?.told).toContain(
      'typed.json holds otherwise roof, of which',
    );
    expect(hintOf([notWorked], [before])).toBe(
      'if nothing went there, name typed.json in the job as film_record; else leave out --film-record',
    );
    expect(hintOf([notWorked, second], [before])).toBe(
      'if nothing went there, name typed.json in the job as film_record; else first add it there',
    );
  });

  test('is the older all the same where it lacks a visit besides', () => {
    expect(asked([notWorked], [before, second]).counts).toBe('of job');
  });

  test('counts with the forecast where that is what is typed', () => {
    expect(asked([before], [notWorked])).toEqual({ counts: 'typed', told: [] });
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
