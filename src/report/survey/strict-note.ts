import { shown } from '../../base/rounding.ts';
import { withoutStrictFloor } from '../../film/limits/strict-floor.ts';
import type { PanelSurvey } from '../../film/survey.ts';
import type { Settings } from '../../tasks/settings/settings.ts';
import type { SurveyResult } from '../../tasks/survey/survey-vehicle.ts';
import { type Block, notice, paragraph } from '../model.ts';
import { partNames } from '../panel-list.ts';

/**
 * What is unusual of the terms that everything is held to, said before anything else: who asks for the strict floors is
 * else taken aback by what they leave, or believes to have one where none is known.
 */
export const strictNote = ({
  settings: { terms },
  survey,
}: Pick<SurveyResult, 'settings' | 'survey'>): readonly Block[] => [
  ...(terms.policy === 'strict' ? [paragraph('Strict policy', policyText(survey.panels))] : []),
  ...ofRisk(terms),
];

function policyText(panels: readonly PanelSurvey[]): string {
  const asked = panels.filter(({ points }) => points.length > 0);
  const read = asked.length === 0 ? panels : asked;
  const unchanged = read.filter(({ facts }) => withoutStrictFloor(facts.finish) !== null);
  const paints = [
    ...new Set(unchanged.flatMap(({ facts }) => withoutStrictFloor(facts.finish) ?? [])),
  ];
  const noneKnown = `no strict floor of ${paints.join(' or ')} is known`;
  if (unchanged.length === read.length) return `it changes nothing here: ${noneKnown}.`;
  return unchanged.length === 0
    ? `${LEAVES_LITTLE}.`
    : `${LEAVES_LITTLE}; it changes nothing on ${partNames(unchanged)}: ${noneKnown}.`;
}

const LEAVES_LITTLE =
  'its floors are meant for instruments that read the clear by itself. From the whole film, which is all an electromagnetic gauge reads, it allows almost nothing';

/** Over this a page says what was asked for. */
const MUCH_RISK = 0.2;

const ofRisk = ({ risk }: Settings['terms']): readonly Block[] =>
  risk <= MUCH_RISK
    ? []
    : [
        notice(
          'Much risk',
          `${shown(100 * risk, 1)}\u00a0% a panel was accepted (risk_pct): of panels worked to what may go, that many end with too thin a clear. 5\u00a0% is usual.`,
        ),
      ];
