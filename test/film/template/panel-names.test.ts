import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { squareMetres } from '../../../src/base/units.ts';
import {
  panelMatcher,
  panelRecogniser,
  placeRecogniser,
} from '../../../src/film/template/panel-names.ts';
import type { Panel, VehicleTemplate } from '../../../src/film/template/template.ts';
import { builtInTemplates } from '../../../src/formats/data/templates.ts';

const template = (id: string): VehicleTemplate => {
  const one = builtInTemplates.find((candidate) => candidate.id === id);
  if (one === undefined) throw new Error(`no template ${id}`);
  return one;
};

/** The id matched, `?` with the ids of an ambiguous label, `-` with the suggestion for an unknown. */
const answer = (
  of: VehicleTemplate,
  label: string,
  said: Pick<VehicleTemplate, 'nearside'> = {},
): string => {
  const match = panelMatcher({ ...of, ...said })(label);
  if (match.kind === 'match') return match.panel.id;
  if (match.kind === 'unknown') return ['-', match.suggestion ?? ''].join(' ').trim();
  return `? ${match.panels.map(({ id }) => id).join(' ')}`;
};

const fourDoors: readonly (readonly [string, string])[] = [
  // plain British and American words
  ['Bonnet', 'bonnet'],
  ['Hood', 'bonnet'],
  ['bonnet (hood)', 'bonnet'],
  ['Roof', 'roof'],
  ['Roof Panel', 'roof'],
  ['Top', 'roof'],
  ['Front Bumper', 'bumper-front'],
  ['bumper, front', 'bumper-front'],
  ['Front bumper cover', 'bumper-front'],
  ['Rear fascia', 'bumper-rear'],
  ['Left front wing', 'wing-front-left'],
  ['Front Left Fender', 'wing-front-left'],
  ['Left Wing', 'wing-front-left'],
  ['Right fender', 'wing-front-right'],
  ['Right front guard', 'wing-front-right'],
  ['Front quarter panel left', 'wing-front-left'],
  ['Rear left wing', 'quarter-left'],
  ['Left rear fender', 'quarter-left'],
  ['Left Rear Quarter Panel', 'quarter-left'],
  ['quarterpanel RH', 'quarter-right'],
  ['Right quarter', 'quarter-right'],
  ['Left sill', 'sill-left'],
  ['Right rocker panel', 'sill-right'],
  ['side skirt LH', 'sill-left'],
  ['Left mirror cover', 'mirror-left'],
  ['RH wing mirror', 'mirror-right'],
  ['Right side mirror', 'mirror-right'],
  ['Left roof rail', 'rail-left'],
  ['Rooftrail right', 'rail-right'],
  ['left pillar', 'rail-left'],
  ['Right-hand-side door rear', 'door-rear-right'],
  ['Left side front door', 'door-front-left'],
  ['back left door', 'door-rear-left'],
  // codes of corners and sides
  ['LF fender', 'wing-front-left'],
  ['RF Door', 'door-front-right'],
  ['LR door', 'door-rear-left'],
  ['RR door', 'door-rear-right'],
  ['FL door', 'door-front-left'],
  ['FR door', 'door-front-right'],
  ['RL door', 'door-rear-left'],
  ['L/F door', 'door-front-left'],
  ['L.R. door', 'door-rear-left'],
  ['R/R door', 'door-rear-right'],
  ['RHF wing', 'wing-front-right'],
  ['LH rear door', 'door-rear-left'],
  ['LHS front door', 'door-front-left'],
  ['L/H front door', 'door-front-left'],
  ['LT FRT DOOR', 'door-front-left'],
  ['LH FR door', 'door-front-left'],
  ['LH RR door', 'door-rear-left'],
  ['fr bumper', 'bumper-front'],
  ['RR bumper', 'bumper-rear'],
  ['r bumper', 'bumper-rear'],
  ['r mirror', 'mirror-right'],
  ['right r door', 'door-rear-right'],
  ['l sill', 'sill-left'],
  // ways of writing
  ['DOOR_FRONT_LEFT', 'door-front-left'],
  ['doorFrontLeft', 'door-front-left'],
  ['frontleftdoor', 'door-front-left'],
  ['FLdoor', 'door-front-left'],
  ['LFFender', 'wing-front-left'],
  ['  the   left\tfront—door ', 'door-front-left'],
  ['ＬＦ ｄｏｏｒ', 'door-front-left'],
  // refused: fits several
  ['door', '? door-front-right door-rear-right door-rear-left door-front-left'],
  ['Left door', '? door-rear-left door-front-left'],
  ['front door', '? door-front-right door-front-left'],
  ['rear doors', '? door-rear-right door-rear-left'],
  ['bumper', '? bumper-rear bumper-front'],
  ['mirrors', '? mirror-right mirror-left'],
  ['quarter', '? quarter-right quarter-left'],
  ['r door', '? door-front-right door-rear-right door-rear-left'],
  ['r wing', '? wing-front-right quarter-right quarter-left'],
  ['nearside mirror', '? mirror-right mirror-left'],
  ['NSF door', '? door-front-right door-front-left'],
  ['O/S/R door', '? door-rear-right door-rear-left'],
  ["driver's door", '? door-front-right door-rear-right door-rear-left door-front-left'],
  ['LF', '? door-front-left mirror-left wing-front-left'],
  // refused: fits none
  ['', '-'],
  ['—', '-'],
  ['panel', '-'],
  ['bonet', '- bonnet'],
  ['frnt left dor', '- front left door'],
  ['rear bumpre', '- rear bumper'],
  ['left wingmiror', '- left mirror'],
  ['bonnet left', '- bonnet'],
  ['rear bonnet', '-'],
  ['left front bumper', '- front bumper'],
  ['left right door', '-'],
  ['front left door handle', '-'],
  ['bonnet 2', '- bonnet'],
  ['left A pillar', '-'],
  ['topside', '-'],
  ['bedside', '-'],
  ['door roof', '-'],
  ['windscreen', '-'],
  ['nearside bonnet', '- bonnet'],
  ['frontleftdoor'.repeat(4), '-'],
];

const others: readonly (readonly [string, string, string])[] = [
  ['saloon', 'Boot', 'boot'],
  ['saloon', 'boot-lid', 'boot'],
  ['saloon', 'Trunk', 'boot'],
  ['saloon', 'deck lid', 'boot'],
  ['saloon', 'Tailgate', 'boot'],
  ['saloon', 'rear trunk lid', 'boot'],
  ['saloon', 'boot / tailgate', 'boot'],
  ['estate', 'Boot', 'tailgate'],
  ['estate', 'liftgate', 'tailgate'],
  ['estate', 'Tail-gate', 'tailgate'],
  ['mid-suv', 'hatch', 'tailgate'],
  ['mid-suv', 'trunk', 'tailgate'],
  ['mid-suv', 'tailgait', '- tailgate'],
  // Not the three letters of another language that are as near.
  ['saloon', 'bul', '- boot lid'],
  ['coupe', 'left door', 'door-front-left'],
  ['coupe', 'R door', 'door-front-right'],
  ['coupe', 'LF door', 'door-front-left'],
  ['coupe', 'left rear door', '-'],
  ['coupe', 'rear doors', '-'],
  ['coupe', 'RL', '? quarter-left'],
  ['double-cab-pickup', 'left bedside', 'bedside-left'],
  ['double-cab-pickup', 'Box side RH', 'bedside-right'],
  ['double-cab-pickup', 'LR fender', 'bedside-left'],
  ['double-cab-pickup', 'right quarter panel', 'bedside-right'],
  ['double-cab-pickup', 'back of the cab', 'cab-rear'],
  ['double-cab-pickup', 'Cab roof', 'roof'],
  ['double-cab-pickup', 'tailgate', 'tailgate'],
  ['double-cab-pickup', 'cab', '-'],
  ['medium-van', 'Rear doors', 'doors-back'],
  ['medium-van', 'barn doors', 'doors-back'],
  ['medium-van', 'Left side panel', 'side-left'],
  ['medium-van', 'bodyside RH', 'side-right'],
  ['medium-van', 'left door', 'door-front-left'],
  ['medium-van', 'left side door', 'door-front-left'],
  ['medium-van', 'left rear door', '- rear doors'],
  ['medium-van', 'left quarter', '-'],
  ['medium-van', 'side', '? side-right side-left'],
];

describe('matching panel names', () => {
  it.each(fourDoors)('reads %j on a hatchback as %s', (label, expected) => {
    expect(answer(template('hatch'), label)).toBe(expected);
  });

  it.each(others)('on a %s reads %j as %s', (id, label, expected) => {
    expect(answer(template(id), label)).toBe(expected);
  });

  it.each([
    ['nearside mirror', 'left', 'mirror-left'],
    ['nearside mirror', 'right', 'mirror-right'],
    ['OSF wing', 'left', 'wing-front-right'],
    ['n/s/r door', 'left', 'door-rear-left'],
    ['o/s/r door', 'left', 'door-rear-right'],
    ['r n/s door', 'right', 'door-rear-right'],
    ['driver side front door', 'right', '? door-front-right door-front-left'],
    ["passenger's side rear door", 'right', '? door-rear-right door-rear-left'],
    ['DSF door', 'left', '? door-front-right door-front-left'],
  ] as const)('reads %j where the nearside is %s as %s', (label, nearside, expected) => {
    expect(answer(template('hatch'), label, { nearside })).toBe(expected);
  });

  it.each([
    ['LH mirror', 'mirror-left'],
    ['RH mirror', 'mirror-right'],
    ['hood', 'bonnet'],
    ['nearside left mirror', 'mirror-left'],
  ])('reads %j the same wherever traffic keeps, where no kerb word decides it', (label, id) => {
    expect(answer(template('hatch'), label)).toBe(id);
    expect(answer(template('hatch'), label, { nearside: 'left' })).toBe(id);
    if (!label.includes('nearside'))
      expect(answer(template('hatch'), label, { nearside: 'right' })).toBe(id);
  });

  it('keeps a code and a short word apart by their capitals, where no other gap tells', () => {
    expect(answer(template('hatch'), 'LHTür')).toBe('? door-rear-left door-front-left');
    expect(answer(template('hatch'), 'TürLH')).toBe('? door-rear-left door-front-left');
  });

  it('reads words of any language set together, in the plural as well', () => {
    expect(answer(template('saloon'), 'AileAvantGauche')).toBe('wing-front-left');
    expect(answer(template('saloon'), 'AilesAvantGauche')).toBe('wing-front-left');
    expect(answer(template('saloon'), 'PortieresAvantGauche')).toBe('door-front-left');
  });

  it('knows no side of the doors across the back', () => {
    expect(answer(template('medium-van'), 'left barn doors')).toBe('-');
    expect(answer(template('medium-van'), 'nearside barn doors')).toBe('-');
  });

  it('takes the side that is written beside a kerb word, unless the two contradict', () => {
    expect(answer(template('hatch'), 'nearside left mirror')).toBe('mirror-left');
    const answered = answer(template('hatch'), 'nearside right mirror', { nearside: 'left' });
    expect(answered).toMatch(/^-/);
  });

  it.each([
    [
      'door NSF',
      'nearside means the kerb side, which depends on the country: write left or right, or say which with --nearside',
    ],
    [
      'offside door',
      'offside means the side away from the kerb, which depends on the country: write left or right, or say which with --nearside',
    ],
    ['drivers mirror', 'which side is the driver’s depends on the country: write left or right'],
    [
      'passenger mirror',
      'which side is the passenger’s depends on the country: write left or right',
    ],
    ['door r', '"r" may mean right or rear: write the word'],
    ['door left', 'it does not say front or rear'],
    ['doors', 'it does not say front or rear, nor left or right'],
    ['sills', 'it does not say left or right'],
    ['left', 'it says where and not which panel'],
    ['front', 'it says where and not which panel'],
  ])('says of %j why it cannot tell: %s', (label, why) => {
    expect(panelMatcher(template('hatch'))(label)).toMatchObject({ kind: 'ambiguous', why });
  });
});

describe('a label that fits no panel', () => {
  it.each([
    ['bonnet scoop', '- bonnet'],
    ['roof antenna', '- roof'],
    ['scoop', '-'],
    ['left scoop', '-'],
    ['rs door', '-'],
    ['lfs mirror', '- left mirror'],
    ['bonet, frnt', '- bonnet'],
    ['tail lamp', '-'],
    ['left bonnet scoop', '-'],
  ])('%j is answered with %j', (label, expected) => {
    expect(answer(template('hatch'), label)).toBe(expected);
  });
});

describe('a word that names a place on some vehicle', () => {
  const isPlace = placeRecogniser([template('coupe'), template('hatch')]);
  it('is a panel of any of the templates, or says where on the car', () => {
    for (const label of ['bonnet', 'left rear door', 'LF', 'door', 'nearside mirror'])
      expect(isPlace(label), label).toBe(true);
  });
  it('is nothing else: no number, no blank, no other word', () => {
    for (const label of ['', '12', '—', 'windscreen', 'total', 'left bedside'])
      expect(isPlace(label), label).toBe(false);
  });
  it('names one panel only where no more than one fits', () => {
    const isPanel = panelRecogniser([template('coupe'), template('hatch')]);
    for (const label of ['bonnet', 'left rear door']) expect(isPanel(label), label).toBe(true);
    for (const label of ['LF', 'rear door', 'mirror', '', '12', 'windscreen'])
      expect(isPanel(label), label).toBe(false);
  });
});

describe('on every template', () => {
  const everyPanel = builtInTemplates.flatMap((of) => of.panels.map((panel) => ({ of, panel })));

  it('a panel answers to its id and name however they are cased and spaced', () => {
    const ways: readonly ((text: string) => string)[] = [
      (text) => text,
      (text) => text.toUpperCase(),
      (text) => text.replaceAll(/[ -]/g, '_'),
      (text) => text.replaceAll(/[ -]/g, ''),
      (text) => ` ${text.replaceAll(/[ -]/g, ' / ')} `,
      (text) => text.replaceAll(/[ -](\w)/g, (_, letter: string) => letter.toUpperCase()),
    ];
    fc.assert(
      fc.property(
        fc.constantFrom(...everyPanel),
        fc.constantFrom(...ways),
        ({ of, panel }, way) => {
          expect(answer(of, way(panel.id))).toBe(panel.id);
          expect(answer(of, way(panel.name))).toBe(panel.id);
        },
      ),
      { numRuns: 2000 },
    );
  });

  it('the words of a name may stand in any order', () => {
    const arbitrary = fc
      .constantFrom(...everyPanel)
      .chain(({ of, panel }) =>
        fc.tuple(
          fc.constant({ of, panel }),
          fc.shuffledSubarray(panel.id.split('-'), { minLength: panel.id.split('-').length }),
        ),
      );
    fc.assert(
      fc.property(arbitrary, ([{ of, panel }, words]) => {
        expect(answer(of, words.join(' '))).toBe(panel.id);
      }),
      { numRuns: 1000 },
    );
  });

  it('a word that is no word for a panel never matches, alone or beside a good name', () => {
    const strange = fc.oneof(
      fc.constantFrom(
        'wheel',
        'glass',
        'spoiler',
        'grille',
        'handle',
        'lamp',
        'badge',
        'visor',
        'upper',
      ),
      fc.stringMatching(/^[xzqjkvyw]{2,8}$/),
      fc.stringMatching(/^[0-9]{1,4}$/),
    );
    fc.assert(
      fc.property(
        strange,
        fc.constantFrom(...everyPanel),
        fc.boolean(),
        (word, { of, panel }, last) => {
          expect(answer(of, word)).toMatch(/^-/);
          expect(answer(of, last ? `${panel.name} ${word}` : `${word} ${panel.id}`)).toMatch(/^-/);
        },
      ),
      { numRuns: 1000 },
    );
  });

  it('any text at all is answered, and the same each time', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', maxLength: 200 }), (label) => {
        const match = panelMatcher(template('saloon'));
        expect(match(label)).toEqual(match(label));
      }),
    );
  });

  it('a matched left is never the right, whatever panel and corner are named', () => {
    const sides = ['left', 'LH', 'l', 'lhs', 'right', 'RH', 'rhs'];
    const words = [
      'door',
      'wing',
      'fender',
      'quarter panel',
      'sill',
      'mirror',
      'rail',
      'rear wing',
    ];
    for (const of of builtInTemplates) {
      for (const side of sides) {
        for (const word of words) {
          const id = answer(of, `${side} ${word}`);
          const other = side.toLowerCase().startsWith('l') ? /right/ : /left/;
          expect(id).not.toMatch(other);
        }
      }
    }
  });
});

describe('a template of one’s own', () => {
  const model = template('hatch').panels[0];
  if (model === undefined) throw new Error('the hatch has no panels');
  const own = (id: string, name: string): Panel => ({ ...model, id, name, area: squareMetres(1) });
  const of = (...panels: readonly Panel[]): VehicleTemplate => ({ id: 'own', name: 'own', panels });

  it('is matched by ids and names the vocabulary does not know', () => {
    const van = of(own('flap', 'Tankdeckel'), own('p2', 'left sill'));
    expect(answer(van, 'FLAP')).toBe('flap');
    expect(answer(van, 'tankdeckel')).toBe('flap');
    expect(answer(van, 'rocker LH')).toBe('p2');
    expect(answer(van, 'flaps')).toBe('- Tankdeckel');
  });

  it('keeps boot and tailgate apart when it has both', () => {
    const both = of(own('boot', 'boot'), own('tailgate', 'tailgate'));
    expect(answer(both, 'trunk')).toBe('boot');
    expect(answer(both, 'liftgate')).toBe('tailgate');
    expect(answer(both, 'boot / tailgate')).toBe('? boot tailgate');
  });

  it('is not told where two of its panels differ by nothing that words say', () => {
    const doubled = of(own('hood-a', 'bonnet, outer'), own('p2', 'hood skin'), own('p3', 'hood'));
    expect(panelMatcher(doubled)('motorhaube')).toMatchObject({
      kind: 'ambiguous',
      why: 'several panels fit it',
    });
  });

  it('is not guessed from a corner where a panel’s own name says only where it is', () => {
    const where = of(own('p1', 'front left'), own('p2', 'roof'));
    expect(answer(where, 'LF')).toBe('-');
    expect(answer(where, 'front left')).toBe('p1');
  });

  it('is ambiguous where two panels bear one name, but not by their ids', () => {
    const twins = of(own('one', 'flap'), own('two', 'flap'));
    expect(answer(twins, 'flap')).toBe('? one two');
    expect(answer(twins, 'two')).toBe('two');
  });
});
