import { describe, expect, test } from 'vitest';
import { wordsIn } from '../../../src/intake/cells/word-list.ts';
import { type GaugeRole, gaugeVocabulary } from '../../../src/intake/header/gauge-vocabulary.ts';
import { plainWords, roleReader } from '../../../src/intake/header/header.ts';
import { type LayoutContext, layoutOf } from '../../../src/intake/header/layout.ts';

const roleOf = roleReader(gaugeVocabulary);
const lists = Object.entries(gaugeVocabulary) as [GaugeRole, string][];
const names = lists.flatMap(([role, list]) => wordsIn(list).map((name) => ({ role, name })));

describe('a name of a column', () => {
  test('means its role, in whatever accents and marks the vocabulary writes it', () => {
    const wrong = names
      .filter(({ name }) => name !== '' && !(plainWords(name) in gaugeVocabulary))
      .filter(({ role, name }) => roleOf(name) !== role);
    expect(names.length).toBeGreaterThan(1000);
    expect(wrong).toEqual([]);
  });

  test.each(lists)('that is "%s" itself means that, whichever list it stands in', (role) => {
    expect(roleOf(role)).toBe(role);
  });

  test('means nothing where there is none, or where the vocabulary has an empty list', () => {
    expect(roleOf('')).toBeUndefined();
    expect(roleOf('constructor')).toBeUndefined();
    expect(roleOf('bonnet')).toBeUndefined();
  });
});

const context = (captions: boolean): LayoutContext => ({
  isPanel: (label) => label === 'bonnet',
  mayBePanel: (label) => label === 'bonnet',
  captions,
});

describe('a row of one cell', () => {
  test.each(['Reading', 'Messwert', 'µm', 'Thickness (mil)'])(
    '"%s" names the readings where lines name their panel, and no table else',
    (name) => {
      expect(layoutOf([name], context(true))).toMatchObject({ kind: 'blocks' });
      expect(layoutOf([name], context(false))).toBeUndefined();
    },
  );

  test.each(['Panel', 'bonnet', '1', 'Point', 'bonnet;1;104'])(
    '"%s" is no header at all',
    (name) => {
      expect(layoutOf([name], context(true))).toBeUndefined();
      expect(layoutOf([name], context(false))).toBeUndefined();
    },
  );
});
