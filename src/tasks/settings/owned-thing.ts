import type { SettingOrigin } from './setting-origin.ts';

/** A machine, pad, product or rate that a settings file speaks of: where, and what it states itself. */
export type OwnedThing = {
  readonly origin: SettingOrigin;
  /** `shop.json:4` */
  readonly where: string;
  /** The built-in thing that fills what is left out. */
  readonly base: string | null;
  /** Where each key stands, by the key as the file writes it. */
  readonly stated: ReadonlyMap<string, string>;
};
