/** Settings in force in words: name, value and where it came from. */
import type { EffectiveSetting, SettingValue } from '../tasks/settings/effective-settings.ts';
import { type Block, list } from './model.ts';

export const settingsList = (label: string, settings: readonly EffectiveSetting[]): Block =>
  list(label, settings.map(settingLine));

/** `risk_pct 4 (shop.json:5, shop)`. */
const settingLine = ({ name, value, origin, where }: EffectiveSetting): string =>
  `${name} ${settingText(value)} (${STANDS_ALONE.has(origin) ? where : `${where}, ${origin}`})`;

/** Origins that the place alone tells. */
const STANDS_ALONE: ReadonlySet<EffectiveSetting['origin']> = new Set([
  'built-in',
  'flag',
  'environment',
]);

export function settingText(value: SettingValue): string {
  if (value === null) return '–';
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if (typeof value === 'object') return value.length === 0 ? '–' : value.join(', ');
  return String(value);
}
