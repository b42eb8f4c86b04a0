import { describe, expect, test } from 'vitest';
import { shortTexts } from '../../../src/report/quote/quote-words.ts';
import type { QuoteOption } from '../../../src/work/quote-option.ts';
import { panel } from '../../work/small-plans.ts';

const option = (name: string, short: Readonly<Record<string, number>>) =>
  ({
    aim: { name, share: 0.9 },
    short: Object.entries(short).map(([id, expected]) => ({ ...panel(id, 1), expected })),
  }) as unknown as QuoteOption;

const told = (...options: readonly QuoteOption[]): readonly string[] =>
  shortTexts(options, ({ panel }) => panel.name).map((text) => text.replaceAll('\u00a0', ' '));

describe('where an aim falls short', () => {
  test('as the aim before it is said of no panel that has another figure now', () => {
    expect(
      told(
        option('enhance', { rail: 0.22, sill: 0.4 }),
        option('full', { rail: 0, sill: 0.4, roof: 0.93 }),
      ),
    ).toEqual([
      'enhance: 22 % on rail, 40 % on sill',
      'full: as enhance, but nothing on rail, 93 % on roof',
    ]);
  });

  test('all is told where nothing of it is as before', () => {
    expect(
      told(option('enhance', { rail: 0.22 }), option('full', { rail: 0, roof: 0.93 })),
    ).toEqual(['enhance: 22 % on rail', 'full: nothing on rail, 93 % on roof']);
  });

  test('further panels come beside those that are as before', () => {
    expect(
      told(option('enhance', { rail: 0.22 }), option('full', { rail: 0.22, roof: 0.93 })),
    ).toEqual(['enhance: 22 % on rail', 'full: as enhance, and 93 % on roof']);
  });

  test('a panel that falls short no more is not among those that are as before', () => {
    expect(
      told(option('enhance', { rail: 0.22, sill: 0.4 }), option('full', { sill: 0.4 })),
    ).toEqual(['enhance: 22 % on rail, 40 % on sill', 'full: 40 % on sill']);
  });

  test('aims that fall short alike stand together, and an aim that is had everywhere is not named', () => {
    expect(
      told(
        option('enhance', { rail: 0.22 }),
        option('correct', { rail: 0.22 }),
        option('full', {}),
      ),
    ).toEqual(['enhance and correct: 22 % on rail']);
  });
});
