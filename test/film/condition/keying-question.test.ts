/** A value that looks keyed wrongly: what is asked, what was meant, and what the panel would be then. */
import { describe, expect, test } from 'vitest';
import { saying } from '../../../src/base/remark.ts';
import { tell } from '../../../src/base/sentence.ts';
import { micrometres } from '../../../src/base/units.ts';
import {
  type AskedSlip,
  asMeant,
  ifMeant,
  type KeyingSlip,
  keyingQuestion,
  readAgain,
} from '../../../src/film/condition/keying-slips.ts';
import { amongSound, fiveAround, onFace, panelOf, reading } from '../car-builder.ts';

const tenfold: KeyingSlip = { point: '3', thickness: micrometres(1190), factor: 10 };
const tenth: KeyingSlip = { point: '3', thickness: micrometres(11.9), factor: 0.1 };
const asked = (slip: KeyingSlip, budget: number): AskedSlip => ({
  ...slip,
  condition: 'original',
  budget: micrometres(budget),
});

describe('a value that looks keyed wrongly', () => {
  test('is asked about by its point, with how many times its neighbours it is', () => {
    const [ten, one] = [tenfold, tenth].map(keyingQuestion);
    expect(ten).toMatchObject({ code: 'keying-slip', value: 1190 });
    expect(ten?.text).toBe('point 3 reads 1190 µm, ten times its neighbours: keyed wrongly?');
    expect(one?.text).toBe('point 3 reads 11.9 µm, a tenth of its neighbours: keyed wrongly?');
  });

  test('is told with what was meant, what the panel is then, and what may go', () => {
    expect(tell(ifMeant(asked(tenfold, 4.526)), 'um')).toBe(
      'if 119 µm was meant, it is original and 4.53 µm may go',
    );
    expect(tell(ifMeant(asked(tenth, 0)), 'um')).toBe(
      'if 119 µm was meant, it is original and nothing may go',
    );
    const again = readAgain(asked(tenfold, 0));
    expect(again.code).toBe('read-again');
    expect(tell(saying(again), 'um')).toBe(
      'read point 3 again before anything else: if 119 µm was meant, it is original and nothing may go',
    );
  });
});

describe('readings as they were meant', () => {
  const slips = new Map([
    ['roof', [tenfold]],
    ['boot', [tenth]],
  ]);
  const meant = (...readings: Parameters<typeof asMeant>[0]) =>
    asMeant(readings, slips).map(({ thickness }) => thickness);

  test('are a tenth of ten times, and ten times a tenth, at the point of the slip alone', () => {
    expect(meant(reading('roof', '3', 1190), reading('roof', '2', 1190))).toEqual([119, 1190]);
    expect(meant(reading('boot', '3', 11.9), reading('boot', '4', 11.9))).toEqual([119, 11.9]);
    expect(meant(reading('bonnet', '3', 1190))).toEqual([1190]);
  });

  test('are as they stand where they are of the clear alone, or off the face', () => {
    expect(
      meant(
        reading('roof', '3', 400, { layer: 'clear' }),
        reading('roof', '3', 1190, { place: 'edge' }),
      ),
    ).toEqual([400, 1190]);
  });
});

test('a panel with such a value is told what it would be by a survey of what was meant', () => {
  const films = [110, 114, 1120, 113, 111];
  const { panel } = amongSound(onFace('tested', ...films));
  const then = amongSound(onFace('tested', ...films.map((film) => (film > 500 ? 112 : film))));
  expect(panel.keyingSlips).toEqual([
    {
      point: '3',
      thickness: 1120,
      factor: 10,
      condition: then.panel.condition,
      budget: then.panel.budget,
    },
  ]);
  expect([panel.sureness?.sure, panel.otherSide]).toEqual(['near', null]);
  expect(panel.evidence[0]?.code).toBe('keying-slip');
  expect(panel.advice[0]?.code).toBe('read-again');
  const others = amongSound(onFace('tested', ...films)).survey;
  expect(panelOf(others, 'sound-a').keyingSlips).toEqual([]);
  expect(amongSound(fiveAround('tested', 112)).panel.keyingSlips).toEqual([]);
});
