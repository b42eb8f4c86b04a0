import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { read } from '../helpers.ts';

const panels = ['bonnet', 'roof', 'boot', 'door front left'];
const films = (text: string) =>
  read(text).value?.readings.map(({ panel, thickness }) => [panel, Number(thickness)]);
const tenths = fc.integer({ min: 950, max: 1300 }).map((tenth) => tenth / 10);
/** Three readings and more on each panel, none like the other. */
const survey = fc.array(fc.uniqueArray(tenths, { minLength: 3, maxLength: 5 }), {
  minLength: 4,
  maxLength: 4,
});
type Survey = readonly (readonly number[])[];
const rowsOf = (own: Survey) =>
  own.flatMap((values, k) => values.map((value, at) => ({ panel: panels[k] ?? '', value, at })));

/** The number of a row: over the file, or anew on each panel; upwards or downwards. */
const counter = fc.record({
  start: fc.integer({ min: 40, max: 900 }),
  anew: fc.boolean(),
  step: fc.constantFrom(1, -1),
});
type Counter = { readonly start: number; readonly anew: boolean; readonly step: number };
const numberAt = ({ start, anew, step }: Counter, row: number, at: number): number =>
  start + step * (anew ? at : row);

describe('a column without a name that counts the rows', () => {
  test('is no reading, from wherever and wherever in a list it counts', () => {
    fc.assert(
      fc.property(survey, counter, fc.nat(2), (own, counts, place) => {
        const text = rowsOf(own)
          .map(({ panel, value, at }, row) =>
            [panel, String(value)].toSpliced(place, 0, String(numberAt(counts, row, at))).join(';'),
          )
          .join('\n');
        expect(films(`Unit: µm\n${text}\n`)).toEqual(
          rowsOf(own).map(({ panel, value }) => [panel, value]),
        );
      }),
      { numRuns: 60 },
    );
  });

  test('is none in blocks below the names of panels', () => {
    fc.assert(
      fc.property(survey, counter, fc.nat(1), (own, counts, place) => {
        let row = -1;
        const blocks = own.map((values, k) => [
          panels[k],
          ...values.map((value, at) => {
            row += 1;
            return [String(value)].toSpliced(place, 0, String(numberAt(counts, row, at))).join(';');
          }),
        ]);
        expect(films(`Unit: µm\n${blocks.flat().join('\n')}\n`)).toEqual(
          rowsOf(own).map(({ panel, value }) => [panel, value]),
        );
      }),
      { numRuns: 60 },
    );
  });

  test('names the points, unless each panel has one line with several readings', () => {
    const points = (text: string) => read(text).value?.readings.map(({ point }) => point);
    const list = (from: number) =>
      `Unit: µm\nbonnet;${from};112.1\nbonnet;${from + 1};109.4\nroof;${from + 2};115.3\nroof;${from + 3};104.8\n`;
    expect(points(list(101))).toEqual(['101', '102', '103', '104']);
    const sheet =
      'Unit: µm\n101;bonnet;112.1;118.2\n102;roof;109.4;103.3\n103;boot;115.3;110.7\n104;door front left;104.8;99.9\n';
    expect(points(sheet)).toEqual(['1', '2', '1', '2', '1', '2', '1', '2']);
    expect(points(sheet.replace(/^10/gmu, ''))).toEqual(['1', '2', '1', '2', '1', '2', '1', '2']);
  });

  test('may miss a number here and there', () => {
    const numbers = [87, 88, 89, 91, 92, 93, 94, 95, 96];
    const text = numbers.map(
      (number, k) => `${panels[k % 3]};${number};${100 + ((k * 37) % 23)}.4`,
    );
    expect(films(`Unit: µm\n${text.join('\n')}\n`)).toHaveLength(9);
  });

  test('that too few rows prove is refused, and one that readings may well be is read', () => {
    const text = (second: number) => `Unit: µm\nbonnet;101;112\nroof;${second};131\nboot;103;101\n`;
    expect(read(text(102)).diagnostics.map(({ code }) => code)).toEqual(['column-unnamed']);
    expect(films(text(109))).toHaveLength(6);
  });

  test('is told in the decisions, and the numbers left over as what they are taken for', () => {
    const text = 'Unit: µm\nbonnet;101;112.1\nbonnet;102;109.4\nroof;103;115.3\nroof;104;104.8\n';
    expect(read(text).value?.decisions.evidence).toContain(
      'no line names the columns: column 1 holds known panels, column 2 counts up, and the numbers of column 3 are as large as films and taken for readings',
    );
  });
});
