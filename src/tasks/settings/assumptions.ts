/** What a survey and a plan rest on that nobody stated, in words. */
import { spoken } from '../../base/remark.ts';
import { shown } from '../../base/rounding.ts';
import { type Sentence, says, um } from '../../base/sentence.ts';
import type { FilmModel, Finish } from '../../film/film-model.ts';
import { withoutStrictFloor } from '../../film/limits/strict-floor.ts';
import type { Assumption } from './assumption.ts';
import type { EffectiveFacts } from './panel-facts.ts';
import type { PlainSettings } from './plain-settings.ts';
import type { Effective } from './setting-origin.ts';
import type { ShopLayer } from './settings-layers.ts';
import type { Catalogue } from './shop-catalogue.ts';

export function surveyAssumptions(
  { policy, finish, riskPct }: PlainSettings,
  { taken, galvanised }: EffectiveFacts,
  { earlier: { unknownClear, unknownLife } }: FilmModel,
): readonly Assumption[] {
  return [
    ...assumed(finish, 'finish', 'clear over base, as nothing says otherwise'),
    ...strictPolicy(policy, finish.value),
    ...unknownFinish(finish.value),
    ...assumed(galvanised, 'galvanised', 'steel not galvanised'),
    ...assumed(
      taken,
      'history',
      says`earlier work unknown: ${um(unknownClear, null)} of topcoat and ${um(unknownLife, null)} of the life limit allowed for it`,
    ),
    ...assumed(riskPct, 'risk', `risk ${shown(riskPct.value, 1)} % a panel`),
  ];
}

function strictPolicy(
  { value, origin }: PlainSettings['policy'],
  finish: Finish,
): readonly Assumption[] {
  if (value !== 'strict') return [];
  const paint = withoutStrictFloor(finish);
  const text =
    paint === null
      ? 'strict policy is meant for instruments that resolve layers: from totals it allows almost nothing'
      : `strict policy changes nothing on ${paint}: no strict floor of it is known`;
  return [{ code: 'strict-policy', text, origin }];
}

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

export const planAssumptions = (
  { aim }: PlainSettings,
  { machines }: Catalogue,
): readonly Assumption[] => [
  ...assumed(aim, 'aim', `aim ${typeof aim.value === 'number' ? `${aim.value} %` : aim.value}`),
  ...assumed(machines, 'machines', `machines ${machines.value.join(', ')}, every pad and product`),
];

/** Only what nobody stated is an assumption. */
const assumed = (
  { origin }: Effective<unknown>,
  code: string,
  said: string | Sentence,
): readonly Assumption[] => (origin === 'built-in' ? [{ code, ...spoken(said), origin }] : []);

/** Settings files that nobody named on the command line and that speak all the same. */
export const settingsFileAssumptions = (shops: readonly ShopLayer[]): readonly Assumption[] =>
  shops.flatMap(({ origin, file, named }) => {
    const { file: name } = file.placeOf([]);
    if (named === 'flag') return [];
    const how = named === null ? 'found, not named' : `named by ${named}`;
    return [{ code: 'settings-file', text: `settings of ${name} (${how})`, origin }];
  });
