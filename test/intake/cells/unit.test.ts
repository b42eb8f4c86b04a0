import { expect, test } from 'vitest';
import {
  isLostMicro,
  otherUnitHint,
  splitUnit,
  unitNamed,
} from '../../../src/intake/cells/unit.ts';

test.each([
  ['reading_um', 'reading', 'um'],
  ['Thickness (µm)', 'Thickness', 'um'],
  ['Thickness (μm)', 'Thickness', 'um'],
  ['Value [㎛]', 'Value', 'um'],
  ['Film [mil]', 'Film', 'mil'],
  ['Panel (unit: µm)', 'Panel', 'um'],
  ['部位（単位：μm）', '部位', 'um'],
  ['thou', '', 'mil'],
  ['DFT microns', 'DFT', 'um'],
  ['Thickness (inch)', 'Thickness', 'inch'],
  ['Dicke [mm]', 'Dicke', 'mm'],
  ['Thickness (nm)', 'Thickness', 'nm'],
  ['bonnet', 'bonnet', undefined],
  ['u', 'u', undefined],
])('the header %s names %s in %s', (header, label, unit) => {
  expect(splitUnit(header)).toMatchObject({ label });
  expect(splitUnit(header).unit).toBe(unit);
});

test('a word that is no unit names none', () => expect(unitNamed('gauge')).toBeUndefined());

test.each(
  `µm μm ㎛ um UM Um µ μ my µm. micron Microns micrometre Micrometers Mikrometer micromètre
  micromètres Mikron micrómetros micrometri мкм МКМ микрон 微米 マイクロメートル ミクロン`.split(
    /\s+/u,
  ),
)('%s is a spelling of µm', (word) => expect(unitNamed(word)).toBe('um'));

test.each(['mil', 'MILS', 'mils', 'thou', 'Thou', '密耳', 'ミル'])(
  '%s is a spelling of mil',
  (word) => expect(unitNamed(word)).toBe('mil'),
);

test.each(['mm', 'MM', '㎜', '毫米', 'мм', 'millimètre'])('%s is a spelling of mm', (word) =>
  expect(unitNamed(word)).toBe('mm'),
);

test.each(['inch', 'in', 'Zoll', 'pouces', '英寸'])('%s is a spelling of inch', (word) =>
  expect(unitNamed(word)).toBe('inch'),
);

test.each([
  ['nm', 'nm'],
  ['㎚', 'nm'],
  ['нм', 'nm'],
  ['cm', 'cm'],
  ['µin', 'other'],
])('%s is a length of another size: %s', (word, unit) => expect(unitNamed(word)).toBe(unit));

test('a micro sign in either normal form of Unicode is one unit', () => {
  for (const word of ['micromètre', 'micrómetros', 'マイクロメートル', 'µm'])
    for (const form of ['NFC', 'NFD', 'NFKC'] as const)
      expect(unitNamed(word.normalize(form))).toBe('um');
});

test.each(['?m', '??m', '\ufffdm', '\ufffd\ufffdm', '(?m)', 'æm', 'жm'])(
  '%s is a lost micro sign, and no unit',
  (text) => {
    expect(isLostMicro(text)).toBe(true);
    expect(unitNamed(text)).toBe(undefined);
  },
);

test.each(['mm', 'nm', 'm', 'um', 'µm', '?', 'am', 'what?m'])('%s has lost no micro sign', (text) =>
  expect(isLostMicro(text)).toBe(false),
);

test.each([
  ['mm', /1000.*µm/u],
  ['millimètres', /1000.*µm/u],
  ['nm', /divide.*1000.*µm/u],
  ['inch', /1000.*mil/u],
  ['Zoll', /1000.*mil/u],
  ['cm', /multiply.*10000.*µm/u],
])('readings in %s get a hint how to bring them to a unit of film', (word, hint) =>
  expect(otherUnitHint(word)).toMatch(hint),
);
