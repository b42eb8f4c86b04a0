/** Where a setting's value comes from: the first layer that speaks decides, and says so. */

/** In the order they are asked; `list` is the list of a batch, and `readings` is what the readings themselves decide. */
export type SettingOrigin =
  | 'flag'
  | 'list'
  | 'environment'
  | 'job'
  | 'shop'
  | 'project'
  | 'user'
  | 'built-in'
  | 'readings';

/** A value in force, with the place to look for it: `--risk-pct`, `LEASTCUT_AIM`, `shop.json:4`. */
export type Effective<T> = {
  readonly value: T;
  readonly origin: SettingOrigin;
  readonly where: string;
};

/** What one layer says of a key; nothing where it is silent. */
export type Said<T> = Effective<T> | undefined;

export const builtIn = <T>(value: T): Effective<T> => ({
  value,
  origin: 'built-in',
  where: 'built-in',
});

/** The first that is said, else the built-in value. */
export function firstSaid<T>(said: readonly Said<T>[], otherwise: T): Effective<T> {
  return said.find((one) => one !== undefined) ?? builtIn(otherwise);
}
