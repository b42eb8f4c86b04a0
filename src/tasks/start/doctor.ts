/** What a run finds around it and which settings are in force, with no private path in it. */
import { listAllDefaults } from '../../formats/data/all-defaults.ts';
import type { Assumption } from '../settings/assumption.ts';
import { type EffectiveSetting, isOwn, RISK } from '../settings/effective-settings.ts';
import type { Settings } from '../settings/settings.ts';

export type Machine = {
  readonly version: string;
  readonly node: string;
  readonly platform: string;
  readonly locale: string;
};

export type TerminalFacts = {
  readonly width: number;
  readonly widthFrom: string;
  readonly colour: boolean;
  readonly colourWhy: string;
  /** Written in signs of ASCII only. */
  readonly ascii: boolean;
  readonly asciiWhy: string;
};

export type SettingsFile = {
  readonly kind: 'job' | 'shop' | 'project' | 'user';
  /** As typed, relative or with `~`. */
  readonly file: string;
  readonly state: 'named' | 'found' | 'not found';
};

export type DoctorRequest = {
  readonly machine: Machine;
  readonly terminal: TerminalFacts;
  readonly files: readonly SettingsFile[];
  readonly settings: Settings;
  readonly home: string;
};

export type DoctorResult = Omit<DoctorRequest, 'settings' | 'home'> & {
  readonly settings: readonly EffectiveSetting[];
  /** Files that nobody named and that speak all the same, as in every result. */
  readonly assumptions: readonly Assumption[];
  /** Every number of the model. */
  readonly numbers: readonly EffectiveSetting[];
  /** How many of them are not at their built-in value. */
  readonly changedNumbers: number;
};

export function doctor({ settings, home, files, ...rest }: DoctorRequest): DoctorResult {
  const shown = (text: string): string => withoutHome(text, home);
  const all = settings.effective.map((one) => ({ ...one, where: shown(one.where) }));
  const changed = new Map(all.map((one) => [one.name, one]));
  const listed = listAllDefaults().filter(({ id }) => id !== RISK);
  const numbers = listed.map(
    ({ id, value }): EffectiveSetting =>
      changed.get(id) ?? { name: id, value, origin: 'built-in', where: 'built-in' },
  );
  const ids = new Set(numbers.map(({ name }) => name));
  return {
    ...rest,
    files: files.map((one) => ({ ...one, file: shown(one.file) })),
    settings: all.filter(({ name }) => !ids.has(name)),
    assumptions: settings.assumptions
      .filter(({ code }) => code === 'settings-file')
      .map((one) => ({ ...one, text: one.text.replaceAll(` ${home}/`, ' ~/') })),
    numbers,
    changedNumbers: numbers.filter(isOwn).length,
  };
}

/** The home is private, also where somebody typed it. */
export const withoutHome = (text: string, home: string): string =>
  home.length > 1 && text.startsWith(`${home}/`) ? `~${text.slice(home.length)}` : text;
