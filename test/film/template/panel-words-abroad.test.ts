import { describe, expect, it } from 'vitest';
import { panelMatcher } from '../../../src/film/template/panel-names.ts';
import { englishWords } from '../../../src/film/template/panel-vocabulary.ts';
import { plainSpellings, wordSenses } from '../../../src/film/template/panel-word-rows.ts';
import { wordsAbroad } from '../../../src/film/template/panel-words-abroad.ts';
import { builtInTemplates } from '../../../src/formats/data/templates.ts';

const matcher = (id: string) => {
  const template = builtInTemplates.find((one) => one.id === id);
  if (template === undefined) throw new Error(`no template ${id}`);
  return panelMatcher(template);
};
const saloon = matcher('saloon');
const hatch = matcher('hatch');
const van = matcher('medium-van');
const answer = (label: string, match = saloon): string => {
  const found = match(label);
  return found.kind === 'match' ? found.panel.id : found.kind;
};

const saloonLabels: Readonly<Record<string, readonly (readonly [string, string])[]>> = {
  German: [
    ['Motorhaube', 'bonnet'],
    ['Dach', 'roof'],
    ['Kotflügel vorne links', 'wing-front-left'],
    ['KOTFLÜGEL V. R.', 'wing-front-right'],
    ['Kotfluegel rechts', 'wing-front-right'],
    ['Kotflügel hinten links', 'quarter-left'],
    ['Tür hinten rechts', 'door-rear-right'],
    ['Tuer VL', 'door-front-left'],
    ['linke Vordertür', 'door-front-left'],
    ['Hintertür rechts', 'door-rear-right'],
    ['Türe h.r.', 'door-rear-right'],
    ['Kofferraumdeckel', 'boot'],
    ['Heckklappe', 'boot'],
    ['Seitenteil links', 'quarter-left'],
    ['Seitenwand hinten rechts', 'quarter-right'],
    ['Schweller links', 'sill-left'],
    ['Stoßstange vorne', 'bumper-front'],
    ['Heckstossstange', 'bumper-rear'],
    ['Stoßfänger hinten', 'bumper-rear'],
    ['Außenspiegel rechts', 'mirror-right'],
  ],
  French: [
    ['Capot', 'bonnet'],
    ['Capot moteur', 'bonnet'],
    ['Toit', 'roof'],
    ['Pavillon', 'roof'],
    ['Aile avant gauche', 'wing-front-left'],
    ['Aile AVD', 'wing-front-right'],
    ['Aile arrière droite', 'quarter-right'],
    ['Portière avant gauche', 'door-front-left'],
    ['Porte AVG', 'door-front-left'],
    ['porte AR D', 'door-rear-right'],
    ['PORTE ARRIERE DROITE', 'door-rear-right'],
    ['Coffre', 'boot'],
    ['Hayon', 'boot'],
    ['Bas de caisse gauche', 'sill-left'],
    ['Pare-chocs avant', 'bumper-front'],
    ['Pare-choc AR', 'bumper-rear'],
    ['Rétroviseur côté droit', 'mirror-right'],
  ],
  Spanish: [
    ['Capó', 'bonnet'],
    ['CAPO', 'bonnet'],
    ['Techo', 'roof'],
    ['Aleta delantera izquierda', 'wing-front-left'],
    ['Aleta del. dcha.', 'wing-front-right'],
    ['Aleta trasera derecha', 'quarter-right'],
    ['Puerta delantera izq.', 'door-front-left'],
    ['Puerta trasera derecha', 'door-rear-right'],
    ['Maletero', 'boot'],
    ['Tapa del maletero', 'boot'],
    ['Portón trasero', 'boot'],
    ['Paragolpes delantero', 'bumper-front'],
    ['Parachoques trasero', 'bumper-rear'],
    ['Espejo izquierdo', 'mirror-left'],
    ['Estribo derecho', 'sill-right'],
  ],
  Italian: [
    ['Cofano', 'bonnet'],
    ['Cofano motore', 'bonnet'],
    ['Cofano posteriore', 'boot'],
    ['Tetto', 'roof'],
    ['Parafango anteriore sinistro', 'wing-front-left'],
    ['Parafango ant. dx', 'wing-front-right'],
    ['Portiera posteriore destra', 'door-rear-right'],
    ['Porta post. sx', 'door-rear-left'],
    ['Porta ant. sx', 'door-front-left'],
    ['Baule', 'boot'],
    ['Paraurti anteriore', 'bumper-front'],
    ['Specchietto sinistro', 'mirror-left'],
    ['Sottoporta destro', 'sill-right'],
    ['Fiancata posteriore destra', 'quarter-right'],
  ],
  Dutch: [
    ['Motorkap', 'bonnet'],
    ['Dak', 'roof'],
    ['Spatbord links voor', 'wing-front-left'],
    ['Voorspatbord rechts', 'wing-front-right'],
    ['Achterscherm links', 'quarter-left'],
    ['Portier rechts achter', 'door-rear-right'],
    ['Deur linksvoor', 'door-front-left'],
    ['Achterdeur links', 'door-rear-left'],
    ['Kofferklep', 'boot'],
    ['Achterklep', 'boot'],
    ['Dorpel links', 'sill-left'],
    ['Bumper voor', 'bumper-front'],
    ['Achterbumper', 'bumper-rear'],
    ['Spiegel links', 'mirror-left'],
  ],
};

describe.each(Object.entries(saloonLabels))('%s panel names', (_, labels) => {
  it.each(labels)('takes "%s" for %s of the saloon', (label, id) => {
    expect(answer(label)).toBe(id);
  });
});

describe('words of other languages elsewhere', () => {
  it.each([
    ['Heckklappe', hatch, 'tailgate'],
    ['Hayon', hatch, 'tailgate'],
    ['Seitenwand rechts', van, 'side-right'],
    ['Fiancata sinistra', van, 'side-left'],
    ['Zijpaneel links', van, 'side-left'],
    ['Hecktüren', van, 'doors-back'],
    ['Portes arrière', van, 'doors-back'],
    ['Achterdeuren', van, 'doors-back'],
  ])('takes "%s" for the panel of its own body', (label, match, id) => {
    expect(answer(label, match)).toBe(id);
  });

  it.each([
    'Tür links',
    'Porte gauche',
    'Puerta del izq.',
    'Porta destra',
    'Portier',
    'Stoßstange',
  ])('does not guess which panel "%s" is', (label) => expect(answer(label)).toBe('ambiguous'));

  it.each(['Fahrertür', 'Porte avant conducteur', 'Puerta delantera del conductor'])(
    'does not guess the country of "%s"',
    (label) => expect(answer(label)).toBe('ambiguous'),
  );

  it('leaves English words their meaning: no average is a front door, no post a rear one', () => {
    expect(answer('left door avg')).toBe('unknown');
    expect(answer('left door av')).toBe('unknown');
    expect(answer('left door post')).toBe('unknown');
    expect(answer('R/H wing')).toBe('wing-front-right');
    expect(answer('L H door')).toBe('ambiguous');
  });
});

describe('the words of all languages together', () => {
  const all = Object.values(wordsAbroad).flatMap(wordSenses);

  it('give every word one meaning, in whichever language it is said', () => {
    const meaning = new Map<string, unknown>(englishWords);
    const different = all.filter(([word, senses]) => {
      const before = meaning.get(word);
      meaning.set(word, senses);
      return before !== undefined && JSON.stringify(before) !== JSON.stringify(senses);
    });
    expect(different).toEqual([]);
  });

  it('are known without the letters a keyboard lacks', () => {
    expect(plainSpellings('stoßfänger')).toEqual([
      'stoßfänger',
      'stossfänger',
      'stossfaenger',
      'stossfanger',
    ]);
  });
});
