/** Every number of the model in one list, each by the id that a shop file sets it with. */
import { once } from '../../base/kept.ts';
import { type DefaultTree, type ListedDefault, listDefaults } from '../default.ts';
import { correctionDefaults } from './correction-defaults.ts';
import { filmDefaults } from './film-defaults.ts';
import { priceDefaults } from './price-defaults.ts';
import { templateDefaults } from './template-defaults.ts';
import { trainingDefaults } from './training-defaults.ts';
import { workDefaults } from './work-defaults.ts';

export type Section = 'film' | 'correction' | 'work' | 'price' | 'template' | 'training';

export type NamedDefault = ListedDefault & { readonly id: string; readonly section: Section };

const trees = once(
  (): Readonly<Record<Section, DefaultTree>> => ({
    film: filmDefaults,
    correction: correctionDefaults,
    work: workDefaults(),
    price: priceDefaults,
    template: templateDefaults,
    training: trainingDefaults(),
  }),
);

/** In the order of the rooms that use them. */
export const listAllDefaults = (): readonly NamedDefault[] =>
  (Object.keys(trees()) as Section[]).flatMap((section) =>
    listDefaults(trees()[section]).map((one) => ({
      ...one,
      section,
      id: defaultId(section, one.path, one.unit),
    })),
  );

/** How a unit is written in the name of a key; a pure number and a count per minute add nothing. */
const unitWords: Readonly<Record<string, string>> = {
  '1': '',
  '1/min': '',
  '%': 'pct',
  '1/Pa': 'per_pa',
  µm: 'um',
  mm: 'mm',
  m: 'm',
  'm²': 'm2',
  ml: 'ml',
  'ml/m²': 'ml_per_m2',
  N: 'n',
  min: 'min',
  d: 'days',
  'm/s': 'm_per_s',
  'm/s²': 'm_per_s2',
  '°C': 'c',
  'J/m²K': 'j_per_m2_k',
  'W/m²K': 'w_per_m2_k',
  'W√s/m²K': 'w_sqrt_s_per_m2_k',
};

/** `film.earlier.unknown_clear_um`: the section, the path in snake case, the unit at the end. */
export function defaultId(section: Section, path: string, unit: string): string {
  const word = unitWords[unit];
  if (word === undefined) throw new Error(`no word for the unit ${unit}`);
  const name = path.replace(/[A-Z]/g, (letter) => `_${letter.toLowerCase()}`);
  const said = word === '' || name.endsWith(`_${word}`);
  return `${section}.${name}${said ? '' : `_${word}`}`;
}
