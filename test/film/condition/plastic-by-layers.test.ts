/** A plastic panel of which an ultrasonic gauge read the layers was read, whatever may go from it. */
import { describe, expect, test } from 'vitest';
import { fiveAround, onFace, panelOf, plainPanel, surveyOf } from '../car-builder.ts';

const survey = (substrate: 'plastic' | 'composite' | 'steel', hasClear: boolean) =>
  panelOf(
    surveyOf({
      panels: [plainPanel('a'), plainPanel('b'), plainPanel('bumper', { substrate })],
      readings: [
        ...fiveAround('a', 112),
        ...fiveAround('b', 113),
        ...(substrate === 'steel' ? [] : fiveAround('bumper', 110)),
        ...(hasClear
          ? onFace('bumper', 44, 45, 43).map((one) => ({ ...one, layer: 'clear' }))
          : []),
      ],
    }),
    'bumper',
  );
const said = ({ evidence, boundBy }: ReturnType<typeof survey>): readonly string[] => [
  evidence[0]?.text ?? '',
  boundBy.text,
];

describe('a panel of no metal', () => {
  test('is not said to have been read by a gauge for metal where its layers were read', () => {
    for (const substrate of ['plastic', 'composite'] as const) {
      const panel = survey(substrate, true);
      const text = `its layers were read, as by an ultrasonic gauge, but what factories paint on ${substrate} is not known here: whether that is their paint no reading tells`;
      expect(said(panel)).toEqual([text, text]);
      expect([panel.condition, panel.budget]).toEqual(['unread', 0]);
    }
  });

  test('is so where nothing but its total was read', () => {
    expect(said(survey('plastic', false))).toEqual([
      'on plastic a magnetic or eddy-current gauge reads no film',
      'a gauge for metal reads no film on plastic',
    ]);
  });

  test('is metal after all where it is: a clear without a total is no reading of its film', () => {
    expect(said(survey('steel', true))).toEqual([
      'no reading: what paint it carries is not known',
      'nothing is known of it until it is read',
    ]);
  });
});
