import { expect, test } from 'vitest';
import { fileStem, saidFile, shownFile } from '../../src/base/file-name.ts';

test('a file is shown by its name, and the dash as what it stands for', () => {
  expect([shownFile('a.csv'), shownFile('-')]).toEqual(['a.csv', 'standard input']);
  expect([saidFile('a.csv'), saidFile('-')]).toEqual(['"a.csv"', 'standard input']);
});

test('a stem is a name without folders and without its last ending', () => {
  expect(fileStem('/home/me/cars/blue car.csv')).toBe('blue car');
  expect(fileStem('C:\\cars\\blue.tar.gz')).toBe('blue.tar');
  expect(fileStem('cars.d/blue')).toBe('blue');
  expect(fileStem('-')).toBe('standard input');
});

test('a stem is never nothing: a name that begins with its only dot keeps it', () => {
  expect(fileStem('.csv')).toBe('.csv');
  expect(fileStem('cars/.csv')).toBe('.csv');
  expect(fileStem('..csv')).toBe('.');
});
