/** What stands out on single panels, in words; panels of which the same is to be said together. */

import { groupBy } from '../../base/group-by.ts';
import { type Remark, textIn } from '../../base/remark.ts';
import { says, tell, thicknessText, um } from '../../base/sentence.ts';
import { expandedUncertainty } from '../../base/uncertainty.ts';
import type { LengthUnit } from '../../base/units.ts';
import { isFactoryFilm } from '../../film/condition/condition.ts';
import type { PanelSurvey } from '../../film/survey.ts';
import type { SurveyHelp } from '../../tasks/survey/survey-help.ts';
import { joined, remarkFacts } from '../facts.ts';
import { type Block, paragraph, type Said } from '../model.ts';
import { mostOfDoubt } from './doubt-sources.ts';
import { signed } from './help-lines.ts';
import { isColourElsewhere, isDoubtfulWord } from './leave-reason.ts';
import { sureOf } from './sureness-lines.ts';

/** Those of factory film that is in order have nothing to say. */
export function evidenceLines(
  read: readonly PanelSurvey[],
  helped: SurveyHelp,
  unit: LengthUnit,
): readonly Block[] {
  const said = read.filter(hasMoreToSay).map((survey) => {
    const isOriginal = survey.condition === 'original';
    const told = survey.evidence
      .filter(isOriginal ? isOfAny : (one) => isOfFilm(one) && !isSaidByFiller(survey, one))
      .map((one) => remarkFacts(one, unit));
    const word = isOriginal ? [] : wordTexts(survey, unit);
    const flags = isFactoryFilm(survey.condition) ? readAgain(survey, helped, unit) : [];
    const text = joined([...word, ...told, ...flags, ...nothing(survey, unit)], '; ');
    return { name: survey.panel.name, text };
  });
  return [...groupBy(said, ({ text }) => text.text).values()].map((group) =>
    paragraph(group.map(({ name }) => name).join(', '), group[0].text),
  );
}

/** Under filler it is told what the other points read like. */
const isSaidByFiller = ({ condition }: PanelSurvey, { code }: Remark): boolean =>
  condition === 'filler' && code === 'refinished';

const hasMoreToSay = (survey: PanelSurvey): boolean => {
  const { condition, lowPoints, highPoints, evidence, boundBy } = survey;
  return (
    lowPoints.length + highPoints.length > 0 ||
    evidence.some(isOfAny) ||
    // What is unread has a line of its own, and so has what is near its line.
    (condition !== 'unread' &&
      (condition !== 'original' ||
        (survey.budget === 0 && boundBy.code !== 'near-line' && !isColourElsewhere(survey))))
  );
};

/** `thin, 99.9 % sure by its least, and cut-back, over 99.9 % sure`: every word with how sure it is, a doubtful one with ?. */
function wordTexts(
  { condition, also, sureness: found, uncertainty, keyingSlips, points }: PanelSurvey,
  unit: LengthUnit,
): readonly Said[] {
  const isTold = found !== null && keyingSlips.length === 0;
  const words = [condition, ...also].map((word, i) => {
    const own = i === 0 ? found?.deciding : found?.beside.find((one) => one.condition === word);
    if (!isTold || own === undefined) return word;
    const isDoubtful = isDoubtfulWord(own);
    // Of the first word a line of its own says why.
    const why = isDoubtful && i > 0 ? ` (${mostOfDoubt(own.difference, points.length)})` : '';
    // A point under the floor is told besides; what is so sure is the bound drawn from all.
    const by = own.compared === 'thinnest' ? ' by its least' : '';
    return `${word}${isDoubtful ? '?' : ''}, ${sureOf(own)}${by}${why}`;
  });
  // Over filler film is not of one kind: its mean says nothing.
  const mean =
    uncertainty === null || condition === 'filler'
      ? []
      : [tell(says`mean ± ${um(expandedUncertainty(uncertainty))} (95\u00a0%)`, unit)];
  return [joined(words, ', and '), ...mean];
}

/** Why nothing at all may go. */
function nothing(survey: PanelSurvey, unit: LengthUnit): readonly string[] {
  const { budget, zones, boundBy, condition } = survey;
  // Of thin film the floor is told already, and what a test spot is for its own advice says.
  const isTold =
    boundBy.code === 'test-spot' ||
    isColourElsewhere(survey) ||
    (boundBy.code === 'total' && condition === 'thin');
  return budget > 0 || zones.length > 0 || isTold
    ? []
    : [`nothing may go: ${textIn(boundBy, unit)}`];
}

/** `point 2 (225.5) is low`. */
export const flagText = (survey: PanelSurvey, unit: LengthUnit): readonly string[] => [
  ...flagged(survey, survey.lowPoints, 'low', unit),
  ...flagged(survey, survey.highPoints, 'high', unit),
];

function flagged(
  { points }: PanelSurvey,
  names: readonly string[],
  side: 'low' | 'high',
  unit: LengthUnit,
): readonly string[] {
  const found = points.filter(({ point }) => names.includes(point));
  if (found.length === 0) return [];
  const told = found.map(({ point, thickness: film }) => `${point} (${thicknessText(film, unit)})`);
  return [
    `${found.length === 1 ? 'point' : 'points'} ${told.join(', ')} ${found.length === 1 ? 'is' : 'are'} ${side}`,
  ];
}

/** `point 1 (132.1) is high: read again: +0.60 µm if as the others`. */
function readAgain(survey: PanelSurvey, helped: SurveyHelp, unit: LengthUnit): readonly string[] {
  const told = flagText(survey, unit).join(', ');
  if (told === '') return [];
  const gain = (helped.get(survey) ?? []).find(({ code }) => code === 'read-again')?.gain;
  const worth = gain === undefined ? '' : tell(says` ${signed(gain)} if as the others`, unit);
  return [`${told}: read again${worth === '' ? '' : `:${worth}`}`];
}

/** What is asked of the readings themselves, and a loss beyond what might go, are worth a word on any panel. */
const isOfAny = ({ code }: Remark): boolean =>
  code === 'keying-slip' || code === 'overrun-on-record';

/** Evidence of what the film is; what a test spot would allow is a matter of limits. */
export const isOfFilm = ({ code }: Remark): boolean => code !== 'sound-panel-cap';
