import { describe, expect, it } from 'vitest';
import { labelWords } from '../../../src/film/template/panel-label.ts';
import { panelMatcher } from '../../../src/film/template/panel-names.ts';
import {
  englishWords,
  vocabulary,
  vocabularyFor,
} from '../../../src/film/template/panel-vocabulary.ts';
import { wordSenses } from '../../../src/film/template/panel-word-rows.ts';
import { wordsAbroad } from '../../../src/film/template/panel-words-abroad.ts';
import { wordsEast } from '../../../src/film/template/panel-words-east.ts';
import { wordsFurther } from '../../../src/film/template/panel-words-further.ts';
import { wordsOfNeighbours } from '../../../src/film/template/panel-words-neighbours.ts';
import { builtInTemplates } from '../../../src/formats/data/templates.ts';

const saloon = builtInTemplates.find(({ id }) => id === 'saloon');
const answer = (label: string): string => {
  if (saloon === undefined) throw new Error('no saloon');
  const found = panelMatcher(saloon)(label);
  return found.kind === 'match' ? found.panel.id : found.kind;
};

const labels: Readonly<Record<string, readonly (readonly [string, string])[]>> = {
  Portuguese: [
    ['Capô', 'bonnet'],
    ['Teto', 'roof'],
    ['Porta dianteira esquerda', 'door-front-left'],
    ['Guarda-lamas direito', 'wing-front-right'],
    ['Para-choque traseiro', 'bumper-rear'],
    ['Porta-malas', 'boot'],
  ],
  Polish: [
    ['Maska', 'bonnet'],
    ['Dach', 'roof'],
    ['Błotnik przedni lewy', 'wing-front-left'],
    ['Drzwi przednie prawe', 'door-front-right'],
    ['Drzwi tylne lewe', 'door-rear-left'],
    ['Klapa bagażnika', 'boot'],
    ['Błotnik LT', 'quarter-left'],
    ['PT Błotnik', 'quarter-right'],
    ['Błotnik LP', 'wing-front-left'],
    ['Drzwi LT', 'door-rear-left'],
    ['Drzwi PP', 'door-front-right'],
  ],
  Slovak: [
    ['Strecha', 'roof'],
    ['Ľavé predné dvere', 'door-front-left'],
  ],
  Slovenian: [
    ['Pokrov motorja', 'bonnet'],
    ['Streha', 'roof'],
    ['Leva sprednja vrata', 'door-front-left'],
  ],
  Croatian: [
    ['Hauba', 'bonnet'],
    ['Krov', 'roof'],
    ['Prednja lijeva vrata', 'door-front-left'],
    ['Stražnji branik', 'bumper-rear'],
  ],
  Romanian: [
    ['Capotă motor', 'bonnet'],
    ['Plafon', 'roof'],
    ['Ușă față stânga', 'door-front-left'],
    ['Aripă față dreapta', 'wing-front-right'],
  ],
  Norwegian: [
    ['Panser', 'bonnet'],
    ['Venstre fordør', 'door-front-left'],
  ],
  Estonian: [
    ['Kapott', 'bonnet'],
    ['Katus', 'roof'],
    ['Vasak esiuks', 'door-front-left'],
  ],
  Latvian: [
    ['Motora pārsegs', 'bonnet'],
    ['Jumts', 'roof'],
    ['Kreisās priekšējās durvis', 'door-front-left'],
  ],
  Lithuanian: [
    ['Kapotas', 'bonnet'],
    ['Stogas', 'roof'],
    ['Kairė priekinė durys', 'door-front-left'],
  ],
  Ukrainian: [
    ['Капот', 'bonnet'],
    ['Дах', 'roof'],
    ['Ліві передні двері', 'door-front-left'],
  ],
  Bulgarian: [
    ['Преден капак', 'bonnet'],
    ['Таван', 'roof'],
    ['Предна лява врата', 'door-front-left'],
  ],
  Czech: [
    ['Kapota', 'bonnet'],
    ['Střecha', 'roof'],
    ['Levé přední dveře', 'door-front-left'],
    ['PRAVE ZADNI DVERE', 'door-rear-right'],
  ],
  Swedish: [
    ['Motorhuv', 'bonnet'],
    ['Tak', 'roof'],
    ['Vänster framdörr', 'door-front-left'],
    ['Dörr HB', 'door-rear-right'],
  ],
  Danish: [
    ['Motorhjelm', 'bonnet'],
    ['Venstre fordør', 'door-front-left'],
  ],
  Turkish: [
    ['Kaput', 'bonnet'],
    ['TAVAN', 'roof'],
    ['Sol ön kapı', 'door-front-left'],
    ['SAĞ ÖN KAPI', 'door-front-right'],
    ['Bagaj kapağı', 'boot'],
  ],
  Russian: [
    ['Капот', 'bonnet'],
    ['Крыша', 'roof'],
    ['Дверь передняя левая', 'door-front-left'],
    ['Дверь ЗП', 'door-rear-right'],
    ['Переднее правое крыло', 'wing-front-right'],
    ['Крышка багажника', 'boot'],
  ],
  Chinese: [
    ['引擎盖', 'bonnet'],
    ['引擎蓋', 'bonnet'],
    ['车顶', 'roof'],
    ['左前门', 'door-front-left'],
    ['右後門', 'door-rear-right'],
    ['左后翼子板', 'quarter-left'],
    ['右前翼子板', 'wing-front-right'],
  ],
  Japanese: [
    ['ボンネット', 'bonnet'],
    ['ﾎﾞﾝﾈｯﾄ', 'bonnet'],
    ['ルーフ', 'roof'],
    ['左フロントドア', 'door-front-left'],
    ['右リアドア', 'door-rear-right'],
    ['左リアフェンダー', 'quarter-left'],
  ],
  Finnish: [
    ['Konepelti', 'bonnet'],
    ['Katto', 'roof'],
    ['Vasen etuovi', 'door-front-left'],
    ['Oikea takalokasuoja', 'quarter-right'],
  ],
  Hungarian: [
    ['Motorháztető', 'bonnet'],
    ['Tető', 'roof'],
    ['Bal első ajtó', 'door-front-left'],
    ['Jobb hátsó sárvédő', 'quarter-right'],
  ],
  Greek: [
    ['Καπό', 'bonnet'],
    ['ΟΡΟΦΗ', 'roof'],
    ['Εμπρός αριστερή πόρτα', 'door-front-left'],
    ['Πίσω δεξί φτερό', 'quarter-right'],
  ],
  German: [
    ['Kotfl. v. l.', 'wing-front-left'],
    ['Kotflügel RH', 'wing-front-right'],
  ],
  Korean: [
    ['보닛', 'bonnet'],
    ['루프', 'roof'],
    ['앞 좌측 도어', 'door-front-left'],
    ['우측뒤도어', 'door-rear-right'],
  ],
};

describe.each(Object.entries(labels))('%s labels', (_, own) => {
  it.each(own)('"%s" is the %s', (label, panel) => expect(answer(label)).toBe(panel));
});

it.each([
  'Drzwi lewe',
  'Дверь левая',
  '左门',
  '左ドア',
  'Sol kapı',
  '운전석 도어',
  '助手席ドア',
  'Kotflügel LH',
  'Tür LH',
])('does not guess which panel "%s" is', (label) => expect(answer(label)).toBe('ambiguous'));

it('gives every word one meaning, in whichever language it is said', () => {
  const meaning = new Map<string, unknown>(englishWords);
  const all = { ...wordsAbroad, ...wordsFurther, ...wordsEast, ...wordsOfNeighbours };
  const different = Object.values(all)
    .flatMap(wordSenses)
    .filter(([word, senses]) => {
      const before = meaning.get(word);
      meaning.set(word, senses);
      return before !== undefined && JSON.stringify(before) !== JSON.stringify(senses);
    });
  expect(different).toEqual([]);
});

describe('words that are all English are looked up in English alone, for', () => {
  const further = [...vocabulary().keys()].filter((phrase) => !englishWords.has(phrase));

  it('no other language has a phrase of such words', () => {
    const english = further.filter((phrase) =>
      phrase.split(' ').every((word) => englishWords.has(word)),
    );
    expect(further.length).toBeGreaterThan(1000);
    expect(english).toEqual([]);
  });

  it('no other language has a word that is the plural of one', () => {
    const words = new Set(further.flatMap((phrase) => phrase.split(' ')));
    const plurals = [...words].filter(
      (word) => !englishWords.has(word) && englishWords.has(word.replace(/s$/, '')),
    );
    expect(plurals).toEqual([]);
  });

  it.each(['Left front doors', 'rear doors', 'Dach', 'Tür hinten', 'door av g', 'roof rail links'])(
    'of "%s" every phrase means what it means among all languages',
    (label) => {
      const words = labelWords(label);
      const phrases = words.flatMap((_, from) =>
        words.slice(from).map((__, k) => words.slice(from, from + k + 1).join(' ')),
      );
      for (const phrase of phrases) {
        expect(vocabularyFor(words).get(phrase)).toEqual(vocabulary().get(phrase));
      }
    },
  );
});
