/**
 * What the plans of a quote leave as it is found: at which aims, and why, in words for the owner of the car. A part
 * that one aim leaves may be worked at another: an aim that asks for more may find no way to it.
 */
import { at } from '../base/at.ts';
import { groupBy } from '../base/group-by.ts';
import { inWords } from '../base/in-words.ts';
import { isWorked, type PanelPlan } from '../correction/plan/plan.ts';
import { isZone, type PanelSurvey } from '../film/survey.ts';
import { panelNames } from '../film/template/side-names.ts';
import type { QuoteOption } from './quote-option.ts';

/** The plans of a quote, from the mildest aim to the strongest. */
export type AimedPlan = Pick<QuoteOption, 'aim' | 'plan'>;

export type LeftAsFound = {
  readonly panels: readonly string[];
  readonly text: string;
  /** By name; none where it is every aim of the quote. */
  readonly aims: readonly string[];
};

/** A part that an aim leaves, by the code of the plan's own reason. */
type Left = { readonly survey: PanelSurvey; readonly reason: string; readonly aim: string };

/** What is left at the same aims for the same reason stands together. */
export function leftAsFound(
  options: readonly AimedPlan[],
  isToldOf: (panel: PanelPlan) => boolean,
): readonly LeftAsFound[] {
  const lefts = options.flatMap(({ aim, plan }) =>
    plan.panels
      .filter((panel) => !isToldOf(panel))
      .flatMap(leftParts)
      .map((part): Left => ({ ...part, aim: aim.name })),
  );
  const parts = groupBy(lefts, ({ reason, survey }) => `${reason} ${partForOwner(survey)}`);
  const alike = groupBy([...parts.values()], (part) =>
    [part[0].reason, ...part.map(({ aim }) => aim)].join(' '),
  );
  return [...alike.values()].map((group) => {
    const [part] = group;
    const aims = part.map(({ aim }) => aim);
    const isEvery = aims.length === options.length;
    const why = `left as found: ${reasonForOwner(part[0].reason)}`;
    return {
      panels: namesOf(group.map(([{ survey }]) => survey)),
      text: isEvery ? why : `if ${inWords(aims, 'or')} is chosen, ${why}`,
      aims: isEvery ? [] : aims,
    };
  });
}

/** The panel, or of one whose other zone is worked the zone that is not. */
const leftParts = (panel: PanelPlan): readonly Omit<Left, 'aim'>[] =>
  (isWorked(panel) ? panel.zones : [panel])
    .filter(isLeft)
    .map(({ survey, reasons }) => ({ survey, reason: at(reasons, 0).code }));

/** With neither of its zones worked. */
export const isLeftWhole = (panel: PanelPlan): boolean => !isWorked(panel) && isLeft(panel);

/** Left, though there is something to correct. */
const isLeft = ({ verdict, reasons }: Pick<PanelPlan, 'verdict' | 'reasons'>): boolean =>
  verdict === 'leave' && at(reasons, 0).code !== 'nothing-to-correct';

const namesOf = (surveys: readonly PanelSurvey[]): readonly string[] => [
  ...panelNames(surveys.filter((survey) => !isZone(survey)).map(({ panel }) => panel)),
  ...surveys.filter(isZone).map(partForOwner),
];

/** `roof`, or `roof (where its paint is thinner)`: nobody but the trade knows what a zone is. */
export const partForOwner = (survey: PanelSurvey): string =>
  isZone(survey) ? `${survey.panel.name} (where its paint is ${survey.zone})` : survey.panel.name;

const reasonForOwner = (code: string): string => REASONS[code] ?? NOTHING_MAY_GO;

/** By the code of the plan's reason; the rest are limits of the paint. */
const REASONS: Readonly<Record<string, string>> = {
  'no-technique': 'no machine of ours fits there and leaves the finish that is asked for',
  'nothing-fits': 'even the mildest polishing would take more than the paint can give',
  'not-worth-it': 'what the paint can give would clear too few marks',
  'shop-too-mild': 'what we work with would clear too few marks there',
  'stronger-than-tried':
    'what was tried there clears too few marks, and more must be tried there before it is done',
  'limit-fresh-paint': 'the paint is not hard yet',
  'limit-test-spot': 'a trial on that very panel comes first',
  'limit-no-data': 'too little is known of the paint',
};

const NOTHING_MAY_GO = 'the paint can give nothing';
