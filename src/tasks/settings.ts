/** Flags, job, shop and built-in defaults → the settings in force, each with where it came from. */
import { shown } from '../base/rounding.ts';
import type { Micrometres } from '../base/units.ts';
import type { CorrectionModel } from '../correction/catalogue.ts';
import { type Hardness, removalLogSd } from '../correction/plan-correction.ts';
import type { Finish, LimitPolicy, PanelFacts } from '../film/film-model.ts';
import type { RemovalTerms } from '../film/removal-limits.ts';
import type { Substrate, VehicleTemplate } from '../film/template.ts';
import { correctionModel } from '../formats/data/correction-defaults.ts';
import { filmModel } from '../formats/data/film-defaults.ts';
import { workModel } from '../formats/data/work-defaults.ts';
import type { Job, JobPanel } from '../formats/job.ts';
import type { Aim } from '../formats/setting-values.ts';
import type { Shop } from '../formats/shop.ts';
import type { WorkModel } from '../work/work-model.ts';

export type SettingOrigin = 'flag' | 'job' | 'shop' | 'built-in' | 'readings';

/** Something the result rests on and nobody measured. */
export type Assumption = {
  readonly code: string;
  readonly text: string;
  readonly origin: SettingOrigin;
};

/** What the command line says; all of it optional. */
export type Flags = {
  readonly aim?: Aim;
  readonly riskPct?: number;
  readonly policy?: LimitPolicy;
  readonly finish?: Finish;
  readonly floor?: Micrometres;
};

export type Settings = {
  readonly aim: { readonly name: string; readonly share: number };
  readonly hazeAllowed: number;
  readonly hardness: Hardness;
  readonly terms: RemovalTerms;
  readonly correction: CorrectionModel;
  readonly work: WorkModel;
  readonly carFacts: PanelFacts;
  /** By the job's own names of panels, matched to the template later. */
  readonly panels: ReadonlyMap<string, JobPanel>;
  /** What a survey rests on, and what a plan rests on besides. */
  readonly assumptions: readonly Assumption[];
  readonly planAssumptions: readonly Assumption[];
};

const DEFAULT_AIM: Aim = 'correct';
const DEFAULT_RISK_PCT = 5;
/** Machines of a shop that has not said what it owns (common practice). */
const USUAL_MACHINES = ['rotary', 'da', 'da-small', 'hand'];

type Source = {
  readonly flags: Flags;
  readonly job: Job | undefined;
  readonly shop: Shop | undefined;
};

/** The first that is given, with its origin. */
function pick<T>(
  flag: T | undefined,
  job: T | undefined,
  shop: T | undefined,
  builtIn: T,
): { readonly value: T; readonly origin: SettingOrigin } {
  if (flag !== undefined) return { value: flag, origin: 'flag' };
  if (job !== undefined) return { value: job, origin: 'job' };
  if (shop !== undefined) return { value: shop, origin: 'shop' };
  return { value: builtIn, origin: 'built-in' };
}

export function resolveSettings({ flags, job, shop }: Source): Settings {
  const aim = pick(flags.aim, job?.aim, shop?.aim, DEFAULT_AIM);
  const risk = pick(flags.riskPct, job?.riskPct, shop?.riskPct, DEFAULT_RISK_PCT);
  const policy = pick(flags.policy, job?.policy, shop?.policy, 'standard' as const);
  const finish = pick<Finish>(flags.finish, job?.finish, undefined, 'clear-over-base');
  const hardness = pick<Hardness>(undefined, job?.hardness, undefined, 'unknown');
  const correction = shopCorrection(shop);
  const fussy = aim.value === 'full' || job?.colourDepth === 'dark' || hardness.value === 'soft';
  return {
    aim: namedAim(aim.value, correction),
    hazeAllowed: fussy ? 0 : 1,
    hardness: hardness.value,
    terms: {
      risk: risk.value / 100,
      logSd: removalLogSd(correction.removal),
      policy: policy.value,
      totalFloor: flags.floor ?? job?.floor ?? null,
    },
    correction,
    work: shopWork(shop),
    carFacts: {
      finish: finish.value,
      taken: job?.taken ?? null,
      galvanised: job?.galvanised ?? false,
      covered: false,
      clearCoatFailure: false,
      paintedDaysAgo: job?.paintedDaysAgo ?? null,
    },
    panels: job?.panels ?? new Map(),
    assumptions: [
      ...assumed(finish.origin, 'finish', 'clear over base, as nothing says otherwise'),
      ...strictPolicy(policy.value, policy.origin),
      ...unknownFinish(finish.value),
      ...assumed(
        job?.galvanised === undefined ? 'built-in' : 'job',
        'galvanised',
        'steel not galvanised',
      ),
      ...assumed(job?.taken === undefined ? 'built-in' : 'job', 'history', HISTORY),
      ...assumed(risk.origin, 'risk', `risk ${shown(risk.value, 1)} % a panel`),
    ],
    planAssumptions: [
      ...assumed(aim.origin, 'aim', `aim ${describeAim(aim.value)}`),
      ...assumed(
        shop?.machines === undefined ? 'built-in' : 'shop',
        'machines',
        `a shop with ${USUAL_MACHINES.join(', ')} and every pad and product`,
      ),
    ],
  };
}

const { unknownClear, unknownLife } = filmModel.earlier;
const HISTORY = `earlier work unknown: ${unknownClear} µm of topcoat gone, ${unknownLife} µm of the life limit`;

const strictPolicy = (policy: LimitPolicy, origin: SettingOrigin): readonly Assumption[] =>
  policy === 'strict'
    ? [
        {
          code: 'strict-policy',
          text: 'strict policy is meant for instruments that resolve layers: from totals it allows almost nothing',
          origin,
        },
      ]
    : [];

const unknownFinish = (finish: Finish): readonly Assumption[] =>
  finish === 'unknown'
    ? [
        {
          code: 'finish',
          text: 'finish unknown: the worse of clear over base and single-stage; look for colour on the pad',
          origin: 'built-in',
        },
      ]
    : [];

/** Only what nobody stated is an assumption. */
const assumed = (origin: SettingOrigin, code: string, text: string): readonly Assumption[] =>
  origin === 'built-in' ? [{ code, text, origin }] : [];

const describeAim = (aim: Aim): string => (typeof aim === 'number' ? `${aim} %` : aim);

function namedAim(aim: Aim, { correction }: CorrectionModel): Settings['aim'] {
  return typeof aim === 'number'
    ? { name: `${aim} %`, share: aim / 100 }
    : { name: aim, share: correction.aims[aim] };
}

function shopCorrection(shop: Shop | undefined): CorrectionModel {
  const machines = shop?.machines ?? USUAL_MACHINES;
  const owned = <T extends { readonly id: string }>(
    all: readonly T[],
    ids: readonly string[] | undefined,
  ): readonly T[] => (ids === undefined ? all : all.filter(({ id }) => ids.includes(id)));
  return {
    ...correctionModel,
    // Hands are in every shop.
    machines: owned(correctionModel.machines, [...machines, 'hand']),
    pads: owned(correctionModel.pads, shop?.pads),
    products: owned(correctionModel.products, shop?.products),
  };
}

function shopWork(shop: Shop | undefined): WorkModel {
  const { times } = shop ?? {};
  return {
    ...workModel,
    perSection: {
      wipe: times?.wipePerSection ?? workModel.perSection.wipe,
      padCleaning: times?.padCleaningPerSection ?? workModel.perSection.padCleaning,
    },
    setUp: times?.setupPerCombination ?? workModel.setUp,
  };
}

/** Facts of one panel: the car's, with what the job says of the panel itself. */
export function panelFacts(settings: Settings, panel: JobPanel | undefined): PanelFacts {
  const car = settings.carFacts;
  return {
    finish: panel?.finish ?? car.finish,
    taken: panel?.taken ?? car.taken,
    galvanised: car.galvanised,
    covered: panel?.covered ?? car.covered,
    clearCoatFailure: panel?.clearCoatFailure ?? car.clearCoatFailure,
    paintedDaysAgo: car.paintedDaysAgo,
  };
}

/** The template with the job's own substrates. */
export const withSubstrates = (
  template: VehicleTemplate,
  substrateOf: (panelId: string) => Substrate | undefined,
): VehicleTemplate => ({
  ...template,
  panels: template.panels.map((panel) => ({
    ...panel,
    substrate: substrateOf(panel.id) ?? panel.substrate,
  })),
});
