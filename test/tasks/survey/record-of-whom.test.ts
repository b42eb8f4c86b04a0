/** A film record beside readings that name no vehicle: told of, and doubted where it read other film. */
import { expect, it } from 'vitest';
import { surveyFiles } from '../../../src/tasks/survey/survey-files.ts';
import { requestOf } from '../comparing.ts';

const readings = (bonnet: readonly number[], head = 'panel,point,reading_um', first = ''): string =>
  [
    head,
    ...bonnet.map((um, i) => `${first}bonnet,${i + 1},${um}`),
    ...[118, 119, 120].map((um, i) => `${first}roof,${i + 1},${um}`),
    '',
  ].join('\n');

const recordOf = (after: readonly number[]): string =>
  JSON.stringify({
    schema: 'leastcut/film-record/1',
    vehicle: 'OTHER-1',
    visits: [
      {
        date: '2026-01-10',
        panels: [
          {
            panel: 'bonnet',
            taken_um: 2,
            taken_sd_um: 0.5,
            points: after.map((um, i) => ({ point: `${i + 1}`, before_um: um + 2, after_um: um })),
          },
        ],
      },
    ],
  });

function told(text: string, after: readonly number[]) {
  const request = requestOf({ visits: [text], filmRecord: recordOf(after) });
  const { value = [], diagnostics } = surveyFiles(request);
  return {
    codes: diagnostics.map(({ code }) => code),
    assumed: value.flatMap(({ result }) => result.assumptions).map(({ text: one }) => one),
  };
}

it('names the vehicle of the record where nothing else names one', () => {
  const { assumed, codes } = told(readings([118, 119, 117]), [118, 119, 117]);
  expect(assumed.join()).toContain('the readings are of vehicle "OTHER-1"');
  expect(codes).not.toContain('film-record-differs');
  const named = readings([118, 119, 117], 'vehicle,panel,point,reading_um', 'OTHER-1,');
  expect(told(named, [118, 119, 117]).assumed.join()).not.toContain('OTHER-1');
});

it('doubts a record whose last readings most points differ from by more than 25 µm', () => {
  const differs = (after: readonly number[]) =>
    told(readings([118, 119, 117, 118]), after).codes.includes('film-record-differs');
  expect(differs([160, 161, 159, 160])).toBe(true);
  expect(differs([160, 161, 159, 118])).toBe(true);
  expect(differs([160, 161, 117, 118])).toBe(false);
  expect(differs([143, 144, 142, 143])).toBe(false);
  // Two points tell nothing of most.
  expect(differs([160, 161])).toBe(false);
});
