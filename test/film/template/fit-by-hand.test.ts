/** Which panels of a template a meaning fits, and what is said where none or several do: by meanings laid out by hand. */
import { describe, expect, it } from 'vitest';
import { kerbHint, suggestionFor, whyUndecided } from '../../../src/film/template/panel-advice.ts';
import {
  type KnownPanel,
  knownPanel,
  panelsThatFit,
} from '../../../src/film/template/panel-fit.ts';
import { type LabelMeaning, meanings } from '../../../src/film/template/panel-label.ts';
import { plainPanel } from '../car-builder.ts';

const known = (...ids: readonly string[]): readonly KnownPanel[] =>
  ids.map((id) => knownPanel(plainPanel(id)));
const fitting = (panels: readonly KnownPanel[], ...said: readonly LabelMeaning[]) =>
  panelsThatFit(panels, said).map(({ id }) => id);

const SALOON = known(
  'bonnet',
  'roof',
  'door-front-left',
  'door-front-right',
  'door-rear-left',
  'quarter-left',
  'boot',
);

describe('a meaning', () => {
  it('fits the panels of which all is so that it says', () => {
    expect(fitting(SALOON, { part: 'bonnet' })).toEqual(['bonnet']);
    expect(fitting(SALOON, { part: 'door', end: 'front' })).toEqual([
      'door-front-left',
      'door-front-right',
    ]);
    expect(fitting(SALOON, { part: 'door', side: 'left' })).toEqual([
      'door-front-left',
      'door-rear-left',
    ]);
    expect(fitting(SALOON, { part: 'door', end: 'rear', side: 'right' })).toEqual([]);
    expect(fitting(SALOON, { side: 'left', end: 'front' })).toEqual(['door-front-left']);
  });
  it('with a side fits no panel on the centre line, nor does a kerb side', () => {
    expect(fitting(SALOON, { part: 'bonnet', side: 'left' })).toEqual([]);
    expect(fitting(SALOON, { part: 'bonnet', kerb: 'nearside' })).toEqual([]);
    expect(fitting(SALOON, { part: 'quarter', kerb: 'nearside' })).toEqual(['quarter-left']);
  });
  it('beside another fits what either does, each panel once and in the order of the template', () => {
    expect(fitting(SALOON, { part: 'roof' }, { part: 'bonnet' }, { part: 'roof' })).toEqual([
      'bonnet',
      'roof',
    ]);
    expect(fitting(SALOON)).toEqual([]);
  });
  it('of boot or tailgate fits the one rear closure that there is, and its own of two', () => {
    const estate = known('roof', 'tailgate');
    expect(fitting(estate, { part: 'boot' })).toEqual(['tailgate']);
    expect(fitting(SALOON, { part: 'tailgate' })).toEqual(['boot']);
    expect(fitting(SALOON, { part: 'closure' })).toEqual(['boot']);
    const both = known('boot', 'tailgate');
    expect(fitting(both, { part: 'boot' })).toEqual(['boot']);
    expect(fitting(both, { part: 'tailgate' })).toEqual(['tailgate']);
    expect(fitting(both, { part: 'closure' })).toEqual(['boot', 'tailgate']);
  });
  it('of a quarter fits the bedside where there are no quarters', () => {
    const pickup = known('bedside-left', 'bedside-right');
    expect(fitting(pickup, { part: 'quarter', side: 'left' })).toEqual(['bedside-left']);
    expect(fitting(known('bedside-left', 'quarter-left'), { part: 'quarter' })).toEqual([
      'quarter-left',
    ]);
    expect(fitting(known('bedside-left', 'quarter-left'), { part: 'bedside' })).toEqual([
      'bedside-left',
    ]);
  });
  it('is none of a panel whose id and name say nothing', () => {
    expect(known('xyzzy')[0]?.meanings).toEqual([]);
    expect(fitting(known('xyzzy'), {})).toEqual([]);
  });
});

describe('the words of a label', () => {
  it('say together what each says', () => {
    expect(meanings(['front', 'left', 'door'])).toEqual([
      expect.objectContaining({ part: 'door', end: 'front', side: 'left' }),
    ]);
  });
  it('say nothing where two contradict, none is known, or there are none', () => {
    expect(meanings(['left', 'right', 'door'])).toEqual([]);
    expect(meanings(['front', 'rear', 'door'])).toEqual([]);
    expect(meanings(['door', 'xyzzy'])).toEqual([]);
    expect(meanings([])).toEqual([]);
  });
  it('say nothing from thirteen on: that is prose', () => {
    const words = (count: number) => ['door', ...Array.from({ length: count - 1 }, () => 'left')];
    expect(meanings(words(12))).toEqual([expect.objectContaining({ part: 'door', side: 'left' })]);
    expect(meanings(words(13))).toEqual([]);
  });
  it('say a part at its own end alone', () => {
    expect(meanings(['front', 'bonnet'])).toEqual(meanings(['bonnet']));
    expect(meanings(['rear', 'bonnet'])).toEqual([]);
    expect(meanings(['rear', 'wing'])).toEqual([
      expect.objectContaining({ part: 'quarter', end: 'rear' }),
    ]);
    expect(meanings(['front', 'quarter'])).toEqual([
      expect.objectContaining({ part: 'wing', end: 'front' }),
    ]);
  });
  it('name boot and tailgate as one thing', () => {
    expect(meanings(['boot', 'tailgate'])).toEqual([expect.objectContaining({ part: 'closure' })]);
    expect(meanings(['boot', 'bonnet'])).toEqual([]);
  });
});

describe('what is said where several panels fit', () => {
  const why = (words: readonly string[], ...ids: readonly string[]) =>
    whyUndecided(
      SALOON,
      SALOON.map(({ panel }) => panel).filter(({ id }) => ids.includes(id)),
      words,
    );
  it('is what the label leaves open', () => {
    expect(why(['door', 'left'], 'door-front-left', 'door-rear-left')).toBe(
      'it does not say front or rear',
    );
    expect(why(['front', 'door'], 'door-front-left', 'door-front-right')).toBe(
      'it does not say left or right',
    );
    expect(why(['door'], 'door-front-right', 'door-rear-left')).toBe(
      'it does not say front or rear, nor left or right',
    );
  });
  it('is that it may be another kind of panel before that', () => {
    expect(why(['x'], 'bonnet', 'door-front-left')).toBe(
      'it may mean panels of more than one kind',
    );
  });
  it('is that "r" may be two words, whatever fits', () => {
    expect(why(['door', 'r'], 'door-front-right', 'door-rear-left')).toBe(
      '"r" may mean right or rear: write the word',
    );
  });
  it('is no more than that where they are alike', () => {
    expect(why(['roof'], 'roof')).toBe('several panels fit it');
  });
});

describe('the panel that was probably meant', () => {
  const meant = (words: readonly string[], named: readonly LabelMeaning[] = meanings(words)) =>
    suggestionFor(SALOON, words, named);
  it('is the one that a misspelt word names', () => {
    expect(meant(['bonet'])).toBe('bonnet');
    expect(meant(['front', 'lefft', 'door'])).toBe('door front left');
  });
  it('is the one on the centre line of a side too many, or at the one end of an end too many', () => {
    expect(meant(['left', 'bonnet'])).toBe('bonnet');
    expect(meant(['nearside', 'roof'])).toBe('roof');
    expect(meant(['front', 'roof'])).toBe('roof');
  });
  it('is none at another end or on another side', () => {
    expect(meant(['rear', 'right', 'door'])).toBeUndefined();
    expect(meant(['right', 'quarter'])).toBeUndefined();
  });
  it('is none where two might be', () => {
    expect(meant(['dor'])).toBeUndefined();
  });
  it('is what the one known word of a label says', () => {
    expect(meant(['bonnet', 'scoop'])).toBe('bonnet');
    expect(meant(['bonnet', 'roof', 'scoop'])).toBeUndefined();
    expect(meant(['left', 'scoop'])).toBeUndefined();
    expect(meant(['scoop'])).toBeUndefined();
    // A word of three letters is too little to go by, as it is or misspelt.
    expect(meant(['top', 'scoop'])).toBeUndefined();
    expect(meant(['tup'])).toBeUndefined();
  });
});

it('a side that depends on the country is asked for, and can be set for all only by the kerb', () => {
  const nearside = 'write left or right, or say which with --nearside';
  expect(kerbHint('nearside')).toBe(
    `nearside means the kerb side, which depends on the country: ${nearside}`,
  );
  expect(kerbHint('offside')).toBe(
    `offside means the side away from the kerb, which depends on the country: ${nearside}`,
  );
  expect(kerbHint('driver')).toBe(
    'which side is the driver’s depends on the country: write left or right',
  );
  expect(kerbHint('passenger')).toBe(
    'which side is the passenger’s depends on the country: write left or right',
  );
});
