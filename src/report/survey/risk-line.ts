/** What risk is taken on a car: of what may go, of thinner clear, and of panels left alone. */
import { groupBy } from '../../base/group-by.ts';
import { rangeShown, shown } from '../../base/rounding.ts';
import { type Sentence, says, tell } from '../../base/sentence.ts';
import { budgetRisk } from '../../film/help/panel-why.ts';
import type { LimitCode } from '../../film/limits/limit.ts';
import { type PanelSurvey, partsOf } from '../../film/survey.ts';
import type { Settings } from '../../tasks/settings/settings.ts';
import { joined } from '../facts.ts';
import type { Said } from '../model.ts';
import type { PageOptions } from '../page-options.ts';
import { whichPanels } from '../panel-list.ts';
import { coatName } from './coat-name.ts';
import { wereThinner } from './thinner-clear.ts';

/**
 * The risk of what may go, over all that each panel may be; by how many panels it comes true if all of it is taken; and
 * what it would be over thinner clear. All of every panel from which something may go.
 */
export function riskLine(
  settings: Settings,
  read: readonly PanelSurvey[],
  { unit, verbose }: Pick<PageOptions, 'unit' | 'verbose'>,
): Said {
  const { terms, film } = settings;
  const parts = read.flatMap(partsOf);
  const worked = parts.filter(({ budget }) => budget > 0);
  const untouched = atRiskUntouched(read, settings, verbose);
  const tooThin = `too thin ${coatName(parts)}`;
  if (worked.length === 0) return noRisk(tooThin, untouched);
  const risks = worked.flatMap((part) => budgetRisk(part, terms, film) ?? []);
  const each = `at most ${shown(100 * terms.risk, 1)}\u00a0% chance of ${tooThin} on each panel worked`;
  const sum = risks.reduce((all, { risk }) => all + risk, 0);
  const all = `${shown(sum, 1)} of ${worked.length} panels`;
  const expected =
    risks.length < 2
      ? []
      : [{ text: `${all} expected in all`, facts: [`${tooThin} expected on ${all} in all`] }];
  const apart =
    untouched === ''
      ? []
      : [{ text: `untouched ${untouched}`, facts: [evenUntouched(tooThin, untouched)] }];
  const thinner = ifThinner(risks, film).map((one) => {
    const text = tell(one, unit);
    return { text, facts: [`chance of ${tooThin} ${text}`] };
  });
  return joined([joined([each, ...expected], ', '), ...thinner, ...apart], '; ', '.');
}

const noRisk = (tooThin: string, untouched: string): Said =>
  joined(
    [
      'none is taken, as nothing may go',
      ...(untouched === '' ? [] : [evenUntouched(tooThin, untouched)]),
    ],
    '; ',
    '.',
  );

const evenUntouched = (tooThin: string, untouched: string): string =>
  `chance of ${tooThin} even untouched: ${untouched}`;

/** `22 % on front right door`: panels from which nothing may go for that, in no figure before; those of one figure together. */
function atRiskUntouched(
  read: readonly PanelSurvey[],
  { terms, film }: Settings,
  isFull: boolean,
): string {
  const parts = read.flatMap(partsOf);
  const risks = parts
    .filter(({ budget, boundBy }) => budget === 0 && BY_CLEAR.includes(boundBy.code))
    .map((part) => ({ part, already: budgetRisk(part, terms, film)?.already ?? 0 }))
    .filter(({ already }) => already > terms.risk)
    .sort((one, other) => other.already - one.already);
  const groups = [...groupBy(risks, ({ already }) => percent(already)).values()];
  const told = groups.length > MOST_FIGURES && !isFull ? [risks] : groups;
  return told
    .map((group) => {
      const range = rangeShown(
        group.map(({ already }) => already),
        percent,
        ' to ',
      );
      const which = whichPanels(
        group.map(({ part }) => part),
        parts,
      );
      return `${range}\u00a0% on ${which}`;
    })
    .join(', ');
}

const percent = (share: number): string => shown(100 * share, 0);

/** Of panels at risk, before a range of all is told. */
const MOST_FIGURES = 3;

const BY_CLEAR: readonly LimitCode[] = ['clear', 'near-line'];

/** `22 to 29 % were the topcoat 6 µm thinner than reckoned`. */
function ifThinner(
  risks: readonly { readonly riskIfThin: number }[],
  { thinnerClear }: Settings['film'],
): readonly Sentence[] {
  if (risks.length === 0) return [];
  const thin = risks.map(({ riskIfThin }) => riskIfThin);
  const range = rangeShown(thin, (risk) => shown(100 * risk, 0), ' to ');
  return [says`${range}\u00a0% ${wereThinner(thinnerClear)}`];
}
