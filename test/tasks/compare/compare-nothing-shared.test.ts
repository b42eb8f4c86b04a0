/** Two files that share no panel, or no marked point, show nothing of the work, and that is said. */
import { describe, expect, test } from 'vitest';
import { type Film, readingsText, soundFilm, toldBy } from '../comparing.ts';

const only = (...ids: readonly string[]): Film =>
  Object.fromEntries(Object.entries(soundFilm).filter(([id]) => ids.includes(id)));
const told = (before: string, after: string, marked = true): string =>
  toldBy({ visits: [before, after], marked })
    .filter((text) => text.startsWith('compare-nothing-shared'))
    .join();
const renamed = (text: string): string => text.replaceAll(/,(\d),/gu, ',1$1,');

describe('files that are compared', () => {
  test('are told to have no panel in common, by what each reads', () => {
    expect(told(readingsText(only('roof', 'bonnet')), readingsText(only('boot')))).toBe(
      'compare-nothing-shared: visit-1.csv and visit-2.csv have no panel in common: visit-1.csv reads bonnet, roof, visit-2.csv boot lid; nothing can be compared',
    );
  });

  test('are told to have no marked point in common', () => {
    const text = readingsText(only('roof', 'bonnet'));
    expect(told(text, renamed(text))).toBe(
      'compare-nothing-shared: no marked point of visit-1.csv is read again in visit-2.csv: it has point 1, and that point 11; each panel is compared by its mean, which tells little',
    );
    expect(told(text, renamed(text), false)).toBe('');
  });

  test('are not where one panel, or one of its marked points, is read both times', () => {
    const text = readingsText(only('roof', 'bonnet'));
    expect(told(text, readingsText(only('roof')))).toBe('');
    const oneAgain = renamed(text).replace('roof,11,', 'roof,1,');
    expect(told(text, oneAgain)).toBe('');
  });
});
