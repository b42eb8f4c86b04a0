/** Names that say which in order: `first`, `zweite`, `troisième`. Columns called so are points, counted. */
import { once } from '../../base/kept.ts';
import { plainWords } from './header.ts';

const inOrder = once((): readonly (readonly string[])[] =>
  [
    'first second third fourth fifth sixth seventh eighth ninth tenth',
    'erste zweite dritte vierte funfte sechste siebte achte neunte zehnte',
    'erster zweiter dritter vierter funfter sechster siebter achter neunter zehnter',
    'erstes zweites drittes viertes funftes sechstes siebtes achtes neuntes zehntes',
    'premier deuxieme troisieme quatrieme cinquieme sixieme septieme huitieme neuvieme dixieme',
    'premiere deuxieme troisieme quatrieme cinquieme sixieme septieme huitieme neuvieme dixieme',
    'primero segundo tercero cuarto quinto sexto septimo octavo noveno decimo',
    'primera segunda tercera cuarta quinta sexta septima octava novena decima',
    'primo secondo terzo quarto quinto sesto settimo ottavo nono decimo',
    'prima seconda terza quarta quinta sesta settima ottava nona decima',
    'eerste tweede derde vierde vijfde zesde zevende achtste negende tiende',
  ].map((words) => words.split(' ')),
);

/** Whether the names are the ordinals of one language, from the first on and without a gap. */
export const areOrdinals = (names: readonly string[]): boolean =>
  inOrder().some((words) => names.every((name, k) => plainWords(name) === words[k]));

/** Whether a name is an ordinal, and so no other word misspelt. */
export const isOrdinal = (name: string): boolean =>
  inOrder().some((words) => words.includes(plainWords(name)));
