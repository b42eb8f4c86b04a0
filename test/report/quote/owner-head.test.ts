import { describe, expect, test } from 'vitest';
import { ownerHead } from '../../../src/report/quote/owner-head.ts';
import { quoteOf, readingsOf } from '../../tasks/quotes.ts';

const readings = readingsOf({ bonnet: 112, roof: 114, boot: 111 });
const shop = { prices: { currency: 'EUR', labour_minor_per_h: 4500 } };
const headOf = (vehicle: object, date: string | null = null): string =>
  JSON.stringify(ownerHead(quoteOf({ readings, shop, job: { taken_um: 0, vehicle } }), date));

describe('the head of the page for the owner', () => {
  test('has lines for the owner and the car where nobody names them, and the file of the readings', () => {
    expect(headOf({})).toContain('"fields":["For","Car","Date"]');
    expect(headOf({})).toContain('"label":"Readings","text":"readings.csv"');
    expect(headOf({}, '2026-11-25')).toContain('"fields":["For","Car"]');
  });

  test.each([{ id: 'IN-1' }, { make: 'Invented' }])(
    'has neither for a car that is named by %j',
    (vehicle) => {
      expect(headOf(vehicle)).toContain('"fields":["Date"]');
      expect(headOf(vehicle)).not.toContain('Readings');
      expect(headOf(vehicle, '2026-11-25')).not.toContain('"form"');
    },
  );

  test('has no line for an owner who is named', () => {
    const head = headOf({ owner: 'Odalys Brackenthorp' });
    expect(head).toContain('"label":"For","text":"Odalys Brackenthorp"');
    expect(head).toContain('"fields":["Car","Date"]');
  });

  test('names the files of readings alone, without their folders', () => {
    const result = quoteOf({ readings, shop });
    const [input] = result.inputs;
    if (input === undefined) throw new Error('no input');
    const inputs = [
      { ...input, file: 'cars/north/a.csv' },
      { ...input, file: 'cars\\b.csv' },
      { ...input, file: '-' },
      { ...input, file: 'spots.csv', decisions: null },
    ];
    expect(JSON.stringify(ownerHead({ ...result, inputs }, null))).toContain('"a.csv, b.csv"');
  });
});
