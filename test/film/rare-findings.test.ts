import { describe, expect, test } from 'vitest';
import { amongSound, fiveAround, onFace, plainPanel, reading, surveyOf } from './car-builder.ts';

describe('what is found on few cars', () => {
  test('two zones that read the same all over are told without a figure of how far they lie apart in spreads', () => {
    const { panel } = amongSound(onFace('tested', 110, 170, 110, 170, 110));
    expect(panel.condition).toBe('mixed');
    expect(panel.evidence[0]?.text).toMatch(/^two zones 60\.0 µm apart: 110\.0 µm at points/u);
  });

  test('readings of the clear alone are kept apart, and all of them used for it', () => {
    const survey = surveyOf({
      panels: [plainPanel('roof')],
      readings: [
        ...fiveAround('roof', 115),
        ...[41, 43].map((um, k) => ({ ...reading('roof', `c${k}`, um), layer: 'clear' })),
      ],
    });
    expect(survey.notes.find(({ code }) => code === 'layer-readings')?.text).toMatch(
      /kept apart, used for the clear$/u,
    );
  });

  test('a side in two zones is not held against the other side as a whole', () => {
    const survey = surveyOf({
      panels: [
        plainPanel('door-left', { mirror: 'door-right' }),
        plainPanel('door-right', { mirror: 'door-left' }),
        plainPanel('roof'),
        plainPanel('boot'),
        plainPanel('bonnet'),
      ],
      readings: [
        ...onFace('door-left', 110, 190, 112, 195, 114),
        ...['door-right', 'roof', 'boot', 'bonnet'].flatMap((id) => fiveAround(id, 112)),
      ],
    });
    expect(survey.panels[0]?.zones).toHaveLength(2);
    expect(survey.notes.map(({ code }) => code)).not.toContain('mirror-difference');
  });
});
