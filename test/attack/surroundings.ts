/**
 * Surroundings in which the same input has to give the same bytes: locales that sort, spell numbers or
 * change case in their own way (tr: i and I; ar: digits and direction), zones on both sides of the date
 * line and off the full hour, and Node with the prototypes of its objects shut or frozen.
 */
export type Surrounding = {
  readonly name: string;
  readonly env: Readonly<Record<string, string>>;
  readonly flags: readonly string[];
};

const inLocale = (locale: string, zone: string): Surrounding => ({
  name: `${locale} in ${zone}`,
  env: { LANG: locale, LC_ALL: locale, LANGUAGE: locale.slice(0, 2), TZ: zone },
  flags: [],
});

const withFlags = (...flags: readonly string[]): Surrounding => ({
  name: flags.join(' '),
  env: {},
  flags,
});

export const locales: readonly Surrounding[] = [
  inLocale('C', 'UTC'),
  inLocale('de_DE.UTF-8', 'America/New_York'),
  inLocale('tr_TR.UTF-8', 'Asia/Kolkata'),
  inLocale('ar_EG.UTF-8', 'Pacific/Apia'),
];

export const shutPrototypes: readonly Surrounding[] = [
  withFlags('--disable-proto=delete', '--frozen-intrinsics'),
  withFlags('--disable-proto=throw'),
];

export const nothingSaid: Surrounding = { name: 'nothing said', env: {}, flags: [] };
