import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { createLongPieces } from '../../src/intake/long-pieces.ts';
import { readGaugeFile } from '../../src/intake/read-gauge-file.ts';
import { singleVehicles } from '../../src/intake/single-vehicles.ts';
import { options } from './helpers.ts';

const nothing = new Uint8Array();

/** The readings of a table cut vehicle by vehicle, or a part that did not read. */
function cutAndRead(text: string) {
  const pieces = createLongPieces('cars.csv', options).push(new TextEncoder().encode(text), true);
  const { column = -1 } = pieces.value ?? {};
  return (pieces.value?.pieces ?? []).flatMap(({ source, ...told }) =>
    singleVehicles(source, column).map(({ vehicle, source: own }) => ({
      vehicle,
      read: readGaugeFile(
        { name: 'cars.csv', bytes: nothing, piece: { source: own, ...told, decided: undefined } },
        options,
      ),
    })),
  );
}

const whole = (text: string) =>
  readGaugeFile({ name: 'cars.csv', bytes: new TextEncoder().encode(text) }, options);

const table = fc
  .array(fc.record({ rows: fc.integer({ min: 1, max: 5 }), blank: fc.boolean() }), {
    minLength: 1,
    maxLength: 8,
  })
  .map((cars) => {
    const rows = cars.flatMap(({ rows: count, blank }, car) => [
      ...(blank ? [''] : []),
      ...Array.from({ length: count }, (_, k) => `car ${car},bonnet,${k + 1},${100 + car + k}`),
    ]);
    return `vehicle,panel,point,reading_um\n${rows.join('\n')}\n`;
  });

describe('a long table cut into single vehicles', () => {
  test('holds the readings of the whole, each with its line', () => {
    fc.assert(
      fc.property(table, (text) => {
        const parts = cutAndRead(text).flatMap(({ read }) => read.value?.readings ?? []);
        expect(parts).toEqual(whole(text).value?.readings);
      }),
    );
  });

  test('has one part for each vehicle, named as it is', () => {
    const text = 'vehicle,panel,reading_um\nA,bonnet,100\nA,roof,101\nB,bonnet,102\n';
    expect(cutAndRead(text).map(({ vehicle }) => vehicle)).toEqual(['A', 'B']);
  });

  test('has a part without a name where rows have none: they are given to no vehicle', () => {
    const text = 'vehicle,panel,reading_um\nA,bonnet,100\n,roof,101\nB,bonnet,102\n';
    expect(cutAndRead(text).map(({ vehicle }) => vehicle)).toEqual(['A', '', 'B']);
  });

  test('tells what is wrong with a vehicle at its line, and reads the others', () => {
    const text = 'vehicle,panel,reading_um\nA,bonnet,100\nB,bonnet,1o1\nC,bonnet,102\n';
    const parts = cutAndRead(text);
    expect(parts.map(({ read }) => read.value?.readings.length)).toEqual([1, undefined, 1]);
    expect(parts[1]?.read.diagnostics[0]?.at).toMatchObject({ line: 3, column: 10 });
  });
});
