/** What stands out on single panels, in words; panels of which the same is to be said together. */

import { groupBy } from '../../base/group-by.ts';
import { type Remark, textIn } from '../../base/remark.ts';
import { LEAST_TOLD } from '../../base/rounding.ts';
import {
  bareRange,
  joinSentences,
  type Sentence,
  says,
  tell,
  thicknessText,
  um,
} from '../../base/sentence.ts';
import { expandedUncertainty } from '../../base/uncertainty.ts';
import type { LengthUnit } from '../../base/units.ts';
import { isFactoryFilm } from '../../film/condition/condition.ts';
import type { Help } from '../../film/help/what-would-help.ts';
import type { LimitCode } from '../../film/limits/limit.ts';
import type { PanelSurvey } from '../../film/survey.ts';
import type { SurveyHelp } from '../../tasks/survey/survey-help.ts';
import { joined, remarkFacts } from '../facts.ts';
import { type Block, paragraph, type Said } from '../model.ts';
import type { PageOptions } from '../page-options.ts';
import { partNames } from '../panel-list.ts';
import { mostOfDoubt } from './doubt-sources.ts';
import { gainRange } from './gain-groups-text.ts';
import { isAskedFirst, signed } from './help-lines.ts';
import { hasDoubtedWord, isColourElsewhere, isDoubtfulWord } from './leave-reason.ts';
import { isToldNear } from './near-lines.ts';
import { sureOf } from './sureness-lines.ts';

/** Those of factory film that is in order have nothing to say. */
export function evidenceLines(
  read: readonly PanelSurvey[],
  helped: SurveyHelp,
  { unit, verbose }: Pick<PageOptions, 'unit' | 'verbose'>,
): readonly Block[] {
  const alike = verbose ? [] : alikeRepaints(read);
  const said = read
    .filter((survey) => hasMoreToSay(survey) && !alike.some((group) => group.includes(survey)))
    .map((survey) => {
      const isOriginal = survey.condition === 'original';
      const told = survey.evidence
        .filter(isOriginal ? isOfAny : (one) => isOfFilm(one) && !isSaidByFiller(survey, one))
        .map((one) => remarkFacts(one, unit));
      const flags = isFactoryFilm(survey.condition)
        ? readAgain(survey, helped, { unit, verbose })
        : [];
      const parts = [
        ...words(survey, { unit, verbose }),
        ...told,
        ...flags,
        ...nothing(survey, { unit, verbose }),
      ];
      return { survey, text: joined(parts, '; ') };
    })
    .filter(({ text }) => text.text !== '');
  return [
    ...[...groupBy(said, ({ text }) => text.text).values()].map((group) =>
      paragraph(partNames(group.map(({ survey }) => survey)), group[0].text),
    ),
    ...alike.map((group) => paragraph(partNames(group), tell(repaintsText(group), unit))),
  ];
}

type Told = Pick<PageOptions, 'unit' | 'verbose'>;

/** In short only of words that are in doubt: of the others the page says how sure they are together. */
function words(survey: PanelSurvey, { unit, verbose }: Told): readonly Said[] {
  if (survey.condition === 'original') return [];
  if (verbose) return [...wordTexts(survey), ...meanText(survey, unit)];
  const inDoubt = hasDoubtedWord(survey) || survey.sureness?.sure === 'near';
  return inDoubt && !isToldNear(survey) ? wordTexts(survey) : [];
}

/** Repaints of which there is nothing to say but that they read over a line, by the line. */
function alikeRepaints(
  read: readonly PanelSurvey[],
): readonly (readonly [PanelSurvey, ...PanelSurvey[]])[] {
  const plain = read.filter(
    (survey) =>
      survey.condition === 'refinished' &&
      survey.also.length + survey.keyingSlips.length + survey.zones.length === 0 &&
      survey.sureness?.deciding.compared === 'median' &&
      !isToldNear(survey) &&
      survey.evidence.filter(isOfFilm).every(({ code }) => code === 'refinished') &&
      !SAYS_MORE.includes(survey.boundBy.code),
  );
  return [...groupBy(plain, ({ sureness }) => sureness?.deciding.line).values()];
}

/** `median 216.4 to 245.7, over 200.0 µm, the line for any car`. */
function repaintsText(group: readonly PanelSurvey[]): Sentence {
  const found = group.flatMap(({ sureness }) => sureness?.deciding ?? []);
  const medians = found.map(({ figure }) => figure);
  const range = bareRange(Math.min(...medians), Math.max(...medians));
  return joinSentences(
    found
      .slice(0, 1)
      .map(
        ({ line, baseline }) =>
          says`median ${range}, over ${um(line)}${baseline === null ? ', the line for any car' : ''}`,
      ),
    '',
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
function wordTexts({
  condition,
  also,
  sureness: found,
  keyingSlips,
  points,
}: PanelSurvey): readonly Said[] {
  const isTold = found !== null && keyingSlips.length === 0;
  const told = [condition, ...also].map((word, i) => {
    const own = i === 0 ? found?.deciding : found?.beside.find((one) => one.condition === word);
    if (!isTold || own === undefined) return word;
    const isDoubtful = isDoubtfulWord(own);
    // Of the first word a line of its own says why.
    const why = isDoubtful && i > 0 ? ` (${mostOfDoubt(own.difference, points.length)})` : '';
    // A point under the floor is told besides; what is so sure is the bound drawn from all.
    const by = own.compared === 'thinnest' ? ' by its least' : '';
    return `${word}${isDoubtful ? '?' : ''}, ${sureOf(own)}${by}${why}`;
  });
  return [joined(told, ', and ')];
}

/** Over filler film is not of one kind: its mean says nothing. */
const meanText = ({ condition, uncertainty }: PanelSurvey, unit: LengthUnit): readonly string[] =>
  uncertainty === null || condition === 'filler'
    ? []
    : [tell(says`mean ± ${um(expandedUncertainty(uncertainty))} (95\u00a0%)`, unit)];

/** Why nothing at all may go; in short where that says more than the table and the answer do. */
function nothing(survey: PanelSurvey, { unit, verbose }: Told): readonly string[] {
  const { budget, zones, boundBy, condition } = survey;
  // Of thin film the floor is told already, and what a test spot is for its own advice says.
  const isTold =
    boundBy.code === 'test-spot' ||
    isColourElsewhere(survey) ||
    (boundBy.code === 'total' && condition === 'thin');
  const isSaid = !verbose && !SAYS_MORE.includes(boundBy.code);
  return budget > 0 || zones.length > 0 || isTold || isSaid
    ? []
    : [`nothing may go: ${textIn(boundBy, unit)}`];
}

const SAYS_MORE: readonly LimitCode[] = [
  'readings',
  'finish',
  'covered',
  'fresh-paint',
  'clear-coat-failure',
  'colour-at-spot',
];

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

/** `point 1 (132.1) is high: read again: +0.60 µm if as the others`; no need where nothing would come of it. */
function readAgain(
  survey: PanelSurvey,
  helped: SurveyHelp,
  { unit, verbose }: Told,
): readonly string[] {
  const told = flagText(survey, unit).join(', ');
  const help = (helped.get(survey) ?? []).find(({ code }) => code === 'read-again');
  const isSaidFirst = help !== undefined && isAskedFirst(help, survey);
  if (told === '' || (!verbose && isSaidFirst)) return [];
  return [`${told}: ${tell(worthOfAgain(help), unit)}`];
}

/** Whether to read it again: for what that changes here, or else on the other panels. */
function worthOfAgain(help: Pick<Help, 'gain' | 'elsewhere'> | undefined): Sentence {
  const { gain = 0, elsewhere = [] } = help ?? {};
  const others = elsewhere.map((one) => one.gain);
  if (Math.abs(gain) >= LEAST_TOLD) return says`read again: ${signed(gain)} if as the others`;
  return others.length === 0
    ? says`no need to read again`
    : says`read again: ${gainRange(others)} on other panels if as the others`;
}

/** What is asked of the readings themselves, and of earlier work what passed a limit or was not read, are worth a word on any panel. */
const isOfAny = ({ code }: Remark): boolean =>
  ['keying-slip', 'overrun-on-record', 'worked-unread', 'place-on-record'].includes(code);

/** Evidence of what the film is; what a test spot would allow is a matter of limits. */
export const isOfFilm = ({ code }: Remark): boolean => code !== 'sound-panel-cap';
