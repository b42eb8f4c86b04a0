/** The settings in force by the names they have in files, each with where it came from. */
import { percentOfShare } from '../../work/money.ts';
import type { EffectiveFacts } from './panel-facts.ts';
import type { PlainSettings } from './plain-settings.ts';
import type { PriceSettings } from './price-settings.ts';
import type { Effective, SettingOrigin } from './setting-origin.ts';
import type { Located } from './settings-layers.ts';
import type { Catalogue } from './shop-catalogue.ts';
import type { WorkSettings } from './work-settings.ts';

export type SettingValue = string | number | boolean | null | readonly string[];

export type EffectiveSetting = {
  /** As in a settings file: `risk_pct`, `machines`, `film.earlier.unknown_clear_um`. */
  readonly name: string;
  /** Null where nothing is set and nothing is assumed. */
  readonly value: SettingValue;
  readonly origin: SettingOrigin;
  readonly where: string;
};

type Own = {
  readonly money: PriceSettings;
  readonly template: Located<string> | undefined;
  readonly templates: readonly Located<string>[];
  readonly gauge: Located<string> | undefined;
  readonly history: Located<string> | undefined;
  readonly ratesFile: Located<string> | undefined;
  readonly job: WorkSettings;
  readonly numbers: ReadonlyMap<string, Effective<number>>;
  readonly catalogue: Catalogue;
};

/** Settings first, then the numbers that are not at their built-in value. */
export function effectiveSettings(
  plain: PlainSettings,
  facts: EffectiveFacts,
  { money, template, templates, gauge, history, ratesFile, job, numbers, catalogue }: Own,
): readonly EffectiveSetting[] {
  const { taken, clear, under, paintedDaysAgo, covered } = facts;
  return [
    setting('aim', plain.aim),
    setting('risk_pct', plain.riskPct),
    setting('policy', plain.policy),
    setting('floor_um', plain.floor),
    setting('finish', facts.finish),
    setting('galvanised', facts.galvanised),
    setting('taken_um', taken),
    setting('clear_um', { ...clear, value: clear.value?.mean ?? null }),
    setting('under_um', { ...under, value: under.value?.mean ?? null }),
    setting('painted_days_ago', paintedDaysAgo),
    setting('covered', covered),
    setting('hardness', plain.hardness),
    setting('colour_depth', plain.colourDepth),
    setting('template', template ?? NOTHING),
    setting('templates', {
      ...(templates[0] ?? NOTHING),
      value: templates.map(({ value }) => value),
    }),
    setting('gauge', gauge ?? NOTHING),
    setting('rates_file', ratesFile ?? NOTHING),
    ...workList(job),
    setting('history', history ?? NOTHING),
    ...priceList(money),
    setting('prices.kind', money.kind),
    setting('machines', catalogue.machines),
    setting('pads', catalogue.pads),
    setting('products', catalogue.products),
    ...[...catalogue.rates].map(([key, rate]) =>
      setting(`rates.${key}`, { ...rate, value: rate.value.rate }),
    ),
    setting('reading_unit', plain.readingUnit),
    // It matters only to files that have such names.
    ...(plain.nearside.value === null ? [] : [setting('nearside', plain.nearside)]),
    setting('show_unit', plain.showUnit),
    setting('color', plain.color),
    ...[...numbers].filter(([id]) => id !== RISK).map(([id, number]) => setting(id, number)),
  ];
}

function workList({ scope, panelTemperature, roomTemperature }: WorkSettings) {
  return [
    setting('scope.wheels', scope.wheels),
    setting('scope.shuts', scope.shuts),
    setting('scope.decontamination', scope.decontamination),
    setting('scope.trim', scope.trim),
    setting('scope.engine_bay', scope.engineBay),
    setting('scope.interior', scope.interior),
    setting('scope.glass', scope.glass),
    setting('scope.protection', scope.protection),
    setting('arrival', scope.soiling),
    setting('hands', scope.hands),
    setting('hours_per_day', scope.hoursPerDay),
    setting('order', scope.order),
    setting('panel_c', panelTemperature),
    setting('room_c', roomTemperature),
  ];
}

/** What decides most of a price; the rest stands in the file. */
function priceList({ prices, whereOf }: PriceSettings): readonly EffectiveSetting[] {
  const list = prices.value?.list;
  const rates = [...(list?.labour.bySkill ?? [])].map(([skill, rate]) => `${skill} ${rate}`);
  const other = list?.labour.other ?? null;
  const labour =
    other === null ? rates : [...rates, rates.length === 0 ? `${other}` : `other ${other}`];
  const taxed = list === undefined ? null : `${list.tax.name} ${percentOfShare(list.tax.share)} %`;
  const part = (key: keyof typeof whereOf, value: SettingValue): EffectiveSetting =>
    setting(`prices.${key}`, { value, origin: prices.origin, where: whereOf[key] });
  return [
    part('currency', list?.currency.code ?? null),
    part('labour_minor_per_h', list === undefined ? null : labour),
    part('tax', taxed),
  ];
}

/** Listed as `risk_pct`. */
export const RISK = 'film.limits.risk_pct';

const NOTHING: Effective<null> = { value: null, origin: 'built-in', where: 'built-in' };

const setting = (
  name: string,
  { value, origin, where }: Effective<SettingValue>,
): EffectiveSetting => ({ name, value, origin, where });

export const isOwn = ({ origin }: EffectiveSetting): boolean => origin !== 'built-in';
