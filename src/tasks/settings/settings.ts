/** What the layers say and what is built in → the settings in force, each with where it came from. */

import type { LengthUnit } from '../../base/units.ts';
import type { CorrectionModel } from '../../correction/removal/catalogue.ts';
import { type Hardness, removalLogSd } from '../../correction/removal/removal-knowledge.ts';
import type { FilmModel } from '../../film/film-model.ts';
import type { GaugeAdjustment } from '../../film/gauge/gauge-adjustment.ts';
import type { RemovalTerms } from '../../film/limits/removal-limits.ts';
import type { Side } from '../../film/template/panel-sense.ts';
import type { TemplateRules } from '../../formats/data/template-defaults.ts';
import type { Aim } from '../../formats/json/setting-values.ts';
import type { Models } from '../../formats/models-with.ts';
import type { LearnedPace } from '../../work/history.ts';
import type { JobScope } from '../../work/job-scope.ts';
import type { KnownRates } from '../methods/rate-evidence.ts';
import type { Assumption } from './assumption.ts';
import { planAssumptions, settingsFileAssumptions, surveyAssumptions } from './assumptions.ts';
import { type EffectiveSetting, effectiveSettings } from './effective-settings.ts';
import { modelsInForce } from './models-in-force.ts';
import { carFacts, type EffectiveFacts } from './panel-facts.ts';
import { type PlainSettings, plainSettings } from './plain-settings.ts';
import { type PriceSettings, priceSettings } from './price-settings.ts';
import type { Effective } from './setting-origin.ts';
import {
  type ColourUse,
  type Key,
  type Layers,
  type Located,
  saidNumbers,
  sayings,
} from './settings-layers.ts';
import { placeText } from './settings-panels.ts';
import { type Catalogue, catalogueOf } from './shop-catalogue.ts';
import { heatOf, scopeOf, workAssumptions, workSettings } from './work-settings.ts';

export type Settings = {
  readonly aim: { readonly name: string; readonly share: number };
  /** The same as it was said, and where. */
  readonly saidAim: Effective<Aim>;
  readonly hazeAllowed: number;
  /** Dark or soft paint: haze shows whatever the aim. */
  readonly fussy: boolean;
  readonly hardness: Hardness;
  readonly terms: RemovalTerms;
  readonly film: FilmModel;
  readonly correction: CorrectionModel;
  /** Of the other rooms: each is made when it is asked for, and a survey asks for none. */
  readonly models: Pick<Models, 'work' | 'price' | 'training'>;
  /** What the shop charges, and whether a quote is an offer. */
  readonly money: PriceSettings;
  readonly scope: JobScope;
  /** What its hours taught; null where none are named, and before they are read. */
  readonly hours: LearnedPace | null;
  /** The file of those hours, if one is named. */
  readonly history: Located<string> | undefined;
  /** What is held of the whole car's paint; a panel's own facts stand above it. */
  readonly facts: EffectiveFacts;
  /** The template that is named, by id or by file, if any is. */
  readonly template: Located<string> | undefined;
  /** Template files of the shop. */
  readonly templates: readonly Located<string>[];
  readonly templateRules: TemplateRules;
  /** The gauge file that is named, if any is. */
  readonly gauge: Located<string> | undefined;
  /** What puts its readings right; null before that file is read, and where it has none. */
  readonly adjustment: GaugeAdjustment | null;
  readonly readingUnit: Effective<LengthUnit | null>;
  /** What files call the nearside; null where nobody said. */
  readonly nearside: Effective<Side | null>;
  readonly showUnit: Effective<LengthUnit>;
  readonly color: Effective<ColourUse>;
  /** The numbers of the model that are not at their built-in value. */
  readonly numbers: ReadonlyMap<string, Effective<number>>;
  readonly catalogue: Catalogue;
  /** The file of the shop's own observations, if one is named. */
  readonly ratesFile: Located<string> | undefined;
  /** What they are; null before that file is read, and where none is named. */
  readonly rates: KnownRates | null;
  /** Every setting by name, with where it came from. */
  readonly effective: readonly EffectiveSetting[];
  /** What a survey rests on, and what a plan rests on besides. */
  readonly assumptions: readonly Assumption[];
  readonly planAssumptions: readonly Assumption[];
};

export function resolveSettings(layers: Layers): Settings {
  const numbers = saidNumbers(layers);
  const models = modelsInForce(numbers);
  const catalogue = catalogueOf(layers, models.correction);
  const job = workSettings(layers, catalogue.model.heat, numbers);
  const correction = { ...catalogue.model, heat: heatOf(job, catalogue.model.heat) };
  const plain = plainSettings(layers, numbers, models.film.limits.riskPct);
  const facts = carFacts(plain, layers.job?.file, models.film.stated);
  const own = {
    money: priceSettings(layers),
    template: templateOf(layers),
    templates: templatesOf(layers),
    gauge: gaugeOf(layers),
    history: historyOf(layers),
    ratesFile: ratesFileOf(layers),
    job,
    numbers,
    catalogue,
  };
  return {
    ...own,
    adjustment: null,
    aim: namedAim(plain.aim.value, correction),
    saidAim: plain.aim,
    hazeAllowed: hazeAllowed(plain.aim.value, isFussy(plain), correction),
    fussy: isFussy(plain),
    hardness: plain.hardness.value,
    terms: {
      risk: plain.riskPct.value / 100,
      logSd: removalLogSd(correction.removal),
      policy: plain.policy.value,
      totalFloor: plain.floor.value,
    },
    film: models.film,
    correction,
    models,
    scope: scopeOf(job),
    hours: null,
    rates: null,
    templateRules: models.template,
    facts,
    readingUnit: plain.readingUnit,
    nearside: plain.nearside,
    showUnit: plain.showUnit,
    color: plain.color,
    effective: effectiveSettings(plain, facts, own),
    assumptions: [
      ...settingsFileAssumptions(layers.shops),
      ...surveyAssumptions(plain, facts, models.film),
    ],
    planAssumptions: [...planAssumptions(plain, catalogue), ...workAssumptions(job)],
  };
}

/** The template that the first layer names. */
const templateOf = (layers: Layers): Settings['template'] =>
  located(layers, {
    typed: ({ template }) => template,
    job: [({ template }) => template, 'template'],
    shop: [({ template }) => template, 'template'],
  });

const gaugeOf = (layers: Layers): Settings['gauge'] =>
  located(layers, {
    typed: ({ gauge }) => gauge,
    job: [({ gauge }) => gauge, 'gauge'],
    shop: [({ gauge }) => gauge, 'gauge'],
  });

const historyOf = (layers: Layers): Settings['history'] =>
  located(layers, {
    typed: ({ history }) => history,
    job: [() => undefined, 'history'],
    shop: [({ history }) => history, 'history'],
  });

const ratesFileOf = (layers: Layers): Settings['ratesFile'] =>
  located(layers, {
    typed: ({ rates }) => rates,
    job: [() => undefined, 'rates_file'],
    shop: [({ ratesFile }) => ratesFile, 'rates_file'],
  });

/** What the first layer says that speaks; a path is relative to the file that names it. */
function located(
  layers: Layers,
  key: Key<string> & { readonly job: readonly [unknown, string] },
): Located<string> | undefined {
  const said = sayings<string>(layers, key).find((one) => one !== undefined);
  if (said === undefined) return undefined;
  const shop = layers.shops.find(({ origin }) => origin === said.origin);
  const layer = said.origin === 'job' ? layers.job : shop;
  return layer === undefined
    ? { ...said, folder: '' }
    : { ...said, folder: layer.folder, at: layer.file.placeOf([key.job[1]]) };
}

/** Template files of the first shop file that lists some. */
function templatesOf({ shops }: Layers): readonly Located<string>[] {
  const layer = shops.find(({ file }) => file.value.templates !== undefined);
  if (layer === undefined) return [];
  const { origin, file, folder } = layer;
  return (file.value.templates ?? []).map((value, i) => {
    const at = file.placeOf(['templates', i]);
    return { value, origin, where: placeText(at), folder, at };
  });
}

/** The same settings under another aim, as if it had been asked for. */
export const withAim = (settings: Settings, aim: Aim): Settings => ({
  ...settings,
  aim: namedAim(aim, settings.correction),
  hazeAllowed: hazeAllowed(aim, settings.fussy, settings.correction),
});

const isFussy = ({ colourDepth, hardness }: PlainSettings): boolean =>
  colourDepth.value === 'dark' || hardness.value === 'soft';

const hazeAllowed = (
  aim: Aim,
  fussy: boolean,
  { correction: { haze } }: CorrectionModel,
): number => (aim === 'full' || fussy ? haze.allowedFussy : haze.allowed);

function namedAim(aim: Aim, { correction }: CorrectionModel): Settings['aim'] {
  return typeof aim === 'number'
    ? { name: `${aim} %`, share: aim / 100 }
    : { name: aim, share: correction.aims[aim] };
}
