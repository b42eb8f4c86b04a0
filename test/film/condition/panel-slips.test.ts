import { describe, expect, it } from 'vitest';
import type { Survey } from '../../../src/film/survey.ts';
import { onFace, panelOf, plainPanel, surveyOf } from '../car-builder.ts';

const SOUND = [108, 110, 115, 107, 113] as const;
/** Five sound panels, and a roof whose five points read 114 µm by a factor. */
const car = (factor: number, sound: readonly number[] = SOUND): Survey =>
  surveyOf({
    panels: [...sound.map((_, i) => plainPanel(`p${i}`)), plainPanel('roof')],
    readings: [
      ...sound.flatMap((film, i) => onFace(`p${i}`, film, film + 2, film - 1, film + 1, film - 2)),
      ...onFace('roof', ...[114, 117, 113, 112, 115].map((film) => film * factor)),
    ],
  });
const roof = (survey: Survey) => panelOf(survey, 'roof');

describe.each([
  ['in mil among micrometres', 1 / 25.4, 'a 25.4th of the other panels: in another unit?'],
  ['in micrometres among mil', 25.4, '25.4 times the other panels: in another unit?'],
  ['a tenth of the others', 0.1, 'a tenth of the other panels: keyed wrongly?'],
  ['ten times the others', 10, 'ten times the other panels: keyed wrongly?'],
] as const)('a whole panel %s', (_, factor, asked) => {
  const survey = car(factor);
  const meant = roof(car(1));
  it('is asked about before anything it leads to, with what it would be', () => {
    const [slip, ...others] = roof(survey).keyingSlips;
    expect(others).toEqual([]);
    expect(slip).toMatchObject({ ofPanel: 5, condition: 'original' });
    expect(slip?.budget).toBeCloseTo(meant.budget, 9);
    expect(roof(survey).evidence[0]?.text).toContain(asked);
    expect(roof(survey).advice[0]?.text).toContain('read all of it again before anything else');
    expect(roof(survey).advice[0]?.text).toContain('if 114 µm was meant, it is original');
  });
  it('gives nothing, is not sure, and makes neither the baseline nor the spread', () => {
    expect(roof(survey).budget).toBe(0);
    expect(roof(survey).sureness?.sure).toBe('near');
    expect(survey.baseline).toBe(110);
    expect(survey.baselineMakers.map(({ id }) => id)).not.toContain('roof');
    // The step of the display is read off all readings, and with it what a point is uncertain by.
    expect(panelOf(survey, 'p0').budget).toBeCloseTo(
      surveyOf({
        panels: SOUND.map((_, i) => plainPanel(`p${i}`)),
        readings: SOUND.flatMap((film, i) =>
          onFace(`p${i}`, film, film + 2, film - 1, film + 1, film - 2),
        ),
      }).panels[0]?.budget ?? Number.NaN,
      5,
    );
  });
});

describe('no slip of a panel', () => {
  it.each([
    ['is film a third or three times as thick', [1 / 3, 3]],
    ['is film about fifteen times as thick', [15]],
  ] as const)('%s', (_, factors) => {
    for (const factor of factors) expect(roof(car(factor)).keyingSlips).toEqual([]);
  });
  it('is told beside fewer than three others', () => {
    expect(roof(car(0.1, [110, 112])).keyingSlips).toEqual([]);
    expect(roof(car(0.1, [110, 112, 111])).keyingSlips).toHaveLength(1);
  });
  it('is told where half of the panels are so: nobody knows which it is', () => {
    const survey = car(0.1, [110, 112, 111, 11, 11.2]);
    expect(survey.panels.flatMap(({ keyingSlips }) => keyingSlips)).toEqual([]);
  });
  it('is filler that varies from point to point', () => {
    const survey = surveyOf({
      panels: [...SOUND.map((_, i) => plainPanel(`p${i}`)), plainPanel('roof')],
      readings: [
        ...SOUND.flatMap((film, i) => onFace(`p${i}`, film, film, film)),
        ...onFace('roof', 920, 1300, 1100),
      ],
    });
    expect(roof(survey).keyingSlips).toEqual([]);
    expect(roof(survey).condition).toBe('filler');
  });
});
