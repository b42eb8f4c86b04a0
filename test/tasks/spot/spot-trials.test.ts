import { describe, expect, it } from 'vitest';
import { resolveSettings } from '../../../src/tasks/settings/settings.ts';
import { spotFiles } from '../../../src/tasks/spot/spot-files.ts';
import { spotObservations } from '../../../src/tasks/spot/spot-observations.ts';
import { readTrials } from '../../../src/tasks/spot/spot-trials.ts';
import { layersOf } from '../layers.ts';

const header =
  'spot,panel,machine,pad,product,sets,mark,before_um,after_um,defect,cleared_pct,haze_grade,colour_on_pad,panel_c,note';
const file = (...rows: readonly string[]) => ({
  name: 'spots.csv',
  bytes: new TextEncoder().encode(`${[header, ...rows].join('\n')}\n`),
  sha256: '',
});
const settings = (job: object = {}, shop: object = {}) => resolveSettings(layersOf({ job, shop }));
const codes = (...rows: readonly string[]): readonly string[] =>
  readTrials(file(...rows), settings()).diagnostics.map(({ code }) => code);

describe('rows of test spots', () => {
  it('of one name are one trial, with the warmest panel and any colour on the pad', () => {
    const [one] =
      readTrials(
        file(
          'A,roof,da,foam-medium,medium,1,1,112,111,,50,,no,30,',
          'A,roof,da,foam-medium,medium,1,2,113,112,swirls,,1,yes,35,dusty',
        ),
        settings(),
      ).value ?? [];
    expect(one?.trial).toMatchObject({
      cleared: 0.5,
      haze: 1,
      colourOnPad: true,
      temperature: 35,
      notes: ['dusty'],
    });
    expect(one?.trial.marks).toHaveLength(2);
    expect(one?.trial.defect.kind.id).toBe('swirl-marks');
  });

  it('are of one panel however its name is spelled, in one file or several', () => {
    const row = (spot: string, panel: string): string =>
      `${spot},${panel},da,foam-medium,medium,1,1,112,111,,50,,,,`;
    expect(codes(row('A', 'Roof'), row('A', 'roof').replace(',1,112', ',2,112'))).toEqual([]);
    const both = spotFiles({
      files: [file(row('A', 'bonnet')), { ...file(row('B', 'Hood')), name: 'more.csv' }],
      settings: settings(),
      job: undefined,
    });
    expect(both.value?.trials.map(({ trial }) => trial.panel)).toEqual(['bonnet', 'bonnet']);
  });

  it('have the sets that any of them says, and are refused where none does, whatever was read', () => {
    const row = (sets: string, rest: string): string =>
      `A,roof,da,foam-medium,medium,${sets},${rest}`;
    const said = readTrials(
      file(row('3', '1,112.1,109.4,,86,,,,'), row('', '2,113.0,110.4,,,,,,')),
      settings(),
    );
    expect(said.value?.map(({ trial }) => trial.sets)).toEqual([3]);
    const untold = ['1,112.1,109.4,,,,,,', '1,,,,86,,,,', '1,,,,,,yes,,'].map((rest) =>
      readTrials(file(row('', rest), row('–', rest.replace('1', '2'))), settings()),
    );
    for (const { value, diagnostics } of untold) {
      expect(value).toBeUndefined();
      expect(diagnostics.map(({ code, message, at }) => [code, message, at?.line])).toEqual([
        ['cell-invalid', 'no row of spot "A" says how many sets were worked', 2],
      ]);
    }
  });

  it.each([
    ['panel', 'A,bonnet,da,foam-medium,medium,1,2,,,,50,,,,'],
    ['pad', 'A,roof,da,foam-soft,medium,1,2,,,,50,,,,'],
    ['sets', 'A,roof,da,foam-medium,medium,2,2,,,,50,,,,'],
    ['cleared', 'A,roof,da,foam-medium,medium,1,2,,,,60,,,,'],
  ])('are refused where they disagree about the %s', (_, second) => {
    expect(codes('A,roof,da,foam-medium,medium,1,1,,,,50,,,,', second)).toEqual(['spot-disagrees']);
  });

  it.each([
    [
      'after',
      '119.6,11.89',
      '"11.89" after is a tenth of the other readings of spot "A": 11.89 or 118.9?',
    ],
    [
      'before',
      '1196,118.9',
      '"1196" before is ten times the other readings of spot "A": 1196 or 119.6?',
    ],
  ])(
    'with a reading %s that is keyed wrongly are refused, and what was meant is asked',
    (_, films, message) => {
      const row = (mark: number, both: string): string =>
        `A,roof,da,foam-medium,medium,1,${mark},${both},,50,,,,`;
      const read = readTrials(
        file(row(1, '119.4,118.7'), row(2, films), row(3, '120.0,119.2')),
        settings(),
      );
      expect(read.value).toBeUndefined();
      expect(read.diagnostics.map((one) => one.message)).toEqual([message]);
      expect(read.diagnostics[0]?.at).toMatchObject({ file: 'spots.csv', line: 3 });
    },
  );

  it('of one mark alone are refused where its two readings are ten times apart, and not for thick film', () => {
    const row = (both: string): string => `A,roof,da,foam-medium,medium,1,1,${both},,50,,,,`;
    expect(codes(row('119.6,11.89'))).toContain('spot-keying-slip');
    expect(codes(row('410,402'))).toEqual([]);
    const thick = row('340,338').replace(',1,340', ',2,340');
    expect(codes(row('110,109'), thick)).toEqual([]);
  });

  it('of one mark twice are refused, and so is what the shop does not have', () => {
    const row = 'A,roof,da,foam-medium,medium,1,1,112,111,,50,,,,';
    expect(codes(row, row)).toEqual(['spot-mark-twice']);
    expect(codes('A,roof,daa,foam-medium,medum,1,1,,,,50,,,,')).toEqual([
      'spot-method-unknown',
      'spot-method-unknown',
    ]);
    expect(codes('A,roof,da,foam-medium,medium,1,1,,,boredom,50,,,,')).toEqual(['defect-unknown']);
  });

  it('may read a little more after than before, for that is noise; much more is told', () => {
    expect(codes('A,roof,da,foam-medium,medium,1,1,112,114,,50,,,,')).toEqual([]);
    expect(codes('A,roof,da,foam-medium,medium,1,1,112,118,,50,,,,')).toEqual(['spot-film-gained']);
  });

  it('are wanted: a file without any is refused', () => {
    expect(codes()).toEqual(['no-readings']);
  });
});

describe('what a colleague would say of test spots', () => {
  const adviceOf = (rows: readonly string[], job: object = {}): readonly string[] => {
    const result = spotFiles({ files: [file(...rows)], settings: settings(job), job: undefined });
    return (result.value?.advice ?? []).map(({ code }) => code);
  };
  const nextOf = (rows: readonly string[], job: object = {}, shop: object = {}) => {
    const result = spotFiles({
      files: [file(...rows)],
      settings: settings(job, shop),
      job: undefined,
    });
    const next = result.value?.next;
    return `${next?.code} ${next?.combination?.id ?? ''}`.trim();
  };

  it('is to start with the mildest that may do, where nothing was judged yet', () => {
    // Two sets must take some 1.1·e^(.6·1.036) = 2.05 µm for 85 % of swirls of grade 3: a set of .63 has 21 %.
    expect(nextOf(['A,roof,hand,foam-soft,fine,1,1,,,,,,,,'])).toBe('start da/foam-soft/medium');
  });

  it('is the next rung where the trial did not clear, and one more set where it still may', () => {
    expect(nextOf(['A,roof,da,foam-medium,medium,2,1,,,,30,1,,,'])).toMatch(/^step-up /);
    expect(nextOf(['A,roof,da,foam-medium,medium,1,1,,,,60,1,,,'])).toBe(
      'again da/foam-medium/medium',
    );
  });

  it('is medium on medium by dual action after a rotary with compound that cleared and left haze', () => {
    expect(nextOf(['A,roof,rotary,foam-soft,heavy,1,1,,,,90,4,,,'])).toBe(
      'refine da/foam-medium/medium',
    );
  });

  it('is that it is done where it cleared without haze', () => {
    expect(nextOf(['A,roof,da,foam-medium,medium,1,1,,,,90,1,,,'])).toBe(
      'done da/foam-medium/medium',
    );
  });

  it('is to stop where colour came off under declared clear over base, and not on single-stage paint', () => {
    const row = ['A,roof,da,foam-medium,medium,2,1,,,,30,1,yes,,'];
    expect(nextOf(row, { finish: 'clear-over-base' })).toBe('stop-colour');
    expect(nextOf(row, { finish: 'single-stage-solid' })).toMatch(/^step-up/);
  });

  it('is to stop where one set of the next rung takes more than may go', () => {
    const thin = [1, 2, 3, 4].map(
      (mark) => `A,roof,da,foam-medium,medium,2,${mark},83.${mark},82.1,,30,1,,,`,
    );
    expect(nextOf(thin)).toMatch(/^stop-risk /);
  });

  it('is to stop where a trial surely took more than might go at its place, though it cleared', () => {
    const took = (lost: number) =>
      [1, 2, 3, 4].map(
        (mark) =>
          `A,roof,da,foam-medium,medium,3,${mark},120.${mark},${120 + mark / 10 - lost},,95,1,no,,`,
      );
    expect(nextOf(took(3))).toBe('done da/foam-medium/medium');
    expect(nextOf(took(6.5))).toBe('stop-overrun');
    expect(adviceOf(took(6.5))[0]).toBe('spot-stop-overrun');
    expect(nextOf(took(4.5))).toBe('done da/foam-medium/medium');
  });

  it('is to stop where no rung of the shop is likely to do', () => {
    const row = ['A,roof,da,foam-soft,fine,2,1,,,,3,0,,,'];
    expect(nextOf(row, {}, { machines: ['da'], pads: ['foam-soft'], products: ['fine'] })).toBe(
      'stop-ladder',
    );
  });

  it('is about heat, dust, film that was not read and trials that nobody judged, where they occur', () => {
    expect(adviceOf(['A,roof,da,foam-medium,medium,1,1,,,,60,1,,50,it dusted'])).toEqual(
      expect.arrayContaining(['spot-heat', 'spot-dusting', 'spot-no-film', 'spot-more-evidence']),
    );
    expect(adviceOf(['A,roof,da,foam-medium,medium,1,1,112,111.5,,,,,,'])).toEqual(
      expect.arrayContaining(['spot-not-judged', 'spot-unresolved']),
    );
    expect(adviceOf(['A,roof,da,foam-medium,medium,1,1,112,117.5,,60,,,,'])).toContain(
      'spot-film-gained',
    );
  });

  it('is nothing of paint or rates by a trial whose film rose, in its advice, ladder and observations', () => {
    const rows = (after: number, marks = 4) =>
      Array.from(
        { length: marks },
        (_, i) => `A,roof,da,foam-medium,medium,1,${i + 1},112,${after},,85,,,,`,
      );
    const of = (own: readonly string[]) => {
      const result = spotFiles({ files: [file(...own)], settings: settings(), job: undefined });
      if (result.value === undefined) throw new Error('refused');
      return result.value;
    };
    const about = { date: '2026-03-31', vehicle: 'FH-1', finishOf: () => 'unknown' as const };
    const [sound, risen, two] = [of(rows(110)), of(rows(113.5)), of(rows(114.4, 2))];
    const kept = ({ trials }: typeof sound) => spotObservations(trials, about);
    expect([kept(sound).length, kept(risen).length, kept(two).length]).toEqual([1, 0, 1]);
    const untried = of(['A,roof,da,foam-medium,medium,1,1,,,,,,,,']);
    expect(risen.paint.removal.hardness).toEqual(untried.paint.removal.hardness);
    expect(sound.paint.removal.hardness).not.toEqual(untried.paint.removal.hardness);
    expect([risen.paint.provisional, sound.paint.provisional]).toEqual([true, false]);
    const range = ({ ladder }: typeof sound) => ladder.map(({ low, high }) => [low, high]);
    expect(range(risen)).toEqual(range(untried));
    expect(risen.advice.map(({ text }) => text).join('\n')).toContain(
      'so nothing is learnt from it of paint or rates',
    );
  });

  it('is that a trial without colour contradicts a finish without a clear, and the lesser budget counts', () => {
    const rows = (colour: string) =>
      [1, 2, 3].map((mark) => `A,roof,da,foam-medium,medium,1,${mark},90,89,,20,,${colour},,`);
    const single = { finish: 'single-stage-solid' };
    expect(adviceOf(rows('no'), single)).toContain('spot-clear-shown');
    for (const sound of [adviceOf(rows('yes'), single), adviceOf(rows(''), single)])
      expect(sound).not.toContain('spot-clear-shown');
    expect(adviceOf(rows('no'))).not.toContain('spot-clear-shown');
    const over = (colour: string): number => {
      const result = spotFiles({
        files: [file(...rows(colour))],
        settings: settings(single),
        job: undefined,
      });
      return (result.value?.ladder ?? []).filter(({ state }) => state === 'over-budget').length;
    };
    expect(over('no')).toBeGreaterThan(over('yes'));
  });
});
