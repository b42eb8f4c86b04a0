/** What would help a panel near its line: told beside what it hangs on, as its gains are unlike those of the others. */
import { joinSentences, type Sentence, says } from '../../base/sentence.ts';
import type { Condition } from '../../film/condition/condition.ts';
import { wordThatTakes } from '../../film/condition/other-side.ts';
import type { Help } from '../../film/help/what-would-help.ts';
import { isOnRecord } from '../../film/limits/earlier-work.ts';
import { sideOfWord } from '../../film/limits/over-sides.ts';
import type { PanelSurvey } from '../../film/survey.ts';
import type { SurveyHelp } from '../../tasks/survey/survey-help.ts';
import { coatName } from './coat-name.ts';
import { signed } from './help-lines.ts';

/** Whether its gains stand in its own paragraph. */
export const isToldApart = ({ otherSide }: PanelSurvey): boolean => otherSide !== null;

/**
 * `a clear read settles it, and ends the clear’s own doubt: +2.07 µm if it reads as original, −3.05 µm as
 * cut-back; short of that test spot +0.49 µm`;
 * what settles it otherwise, and its gains, where a clear read does not.
 */
export function ownGains(
  part: PanelSurvey,
  ways: readonly Sentence[],
  helped: SurveyHelp,
): readonly Sentence[] {
  const help = helped.get(part) ?? [];
  const coat = coatName([part]);
  const clear = help.find(({ code }) => code === 'clear');
  const gained = listed(help.filter(({ gain }) => gain > 0).flatMap((one) => gainText(one, part)));
  const lost = listed(help.filter(({ gain }) => gain < 0).flatMap((one) => gainText(one, part)));
  const lowers = lost.map((one) => says`would lower it: ${one}`);
  if (clear === undefined || !part.advice.some(({ code }) => code === 'settle-clear')) {
    const read = clear === undefined ? [] : [says`${coat} read ${clearGain(clear, part)}`];
    return [...ways, ...read, ...gained, ...lowers];
  }
  const rest =
    gained.length > 0
      ? gained.map((one) => says`short of that ${one}`)
      : [says`more points that read the same free none: without a ${coat} read leave it alone`];
  return [
    says`a ${coat} read settles it, and ends the ${coat}’s own doubt: ${clearGain(clear, part)}`,
    ...rest,
    ...lowers,
  ];
}

const listed = (told: readonly Sentence[]): readonly Sentence[] =>
  told.length === 0 ? [] : [joinSentences(told, ', ')];

/** Of a checked gauge it is told over the car, as it is next to nothing everywhere. */
function gainText(
  { code, gain, points, otherwise, isElsewhere }: Help,
  part: PanelSurvey,
): readonly Sentence[] {
  switch (code) {
    case 'points':
      return [says`${points ?? 0} points ${signed(gain)}`];
    case 'test-spot':
      return [says`test spot${isElsewhere === true ? ' on another panel' : ''} ${signed(gain)}`];
    case 'history': {
      const more =
        otherwise === undefined
          ? says``
          : says` (${signed(otherwise.gain)} if twice the allowance was gone)`;
      const known = isOnRecord(part.facts)
        ? 'known as never polished but as on record'
        : 'known as never polished';
      return [says`${known} ${signed(gain)}${more}`];
    }
    case 'zinc':
      return [says`zinc ${signed(gain)}`];
    case 'read-again':
      return [says`read again as the others ${signed(gain)}`];
    case 'edge-point':
      return [says`a low point written as edge, if it is one, ${signed(gain)}`];
    case 'clear':
    case 'gauge':
      return [];
  }
}

/** A clear that is read will read as on one side or the other: first the one on which more may go. */
const clearGain = (clear: Help, part: PanelSurvey): Sentence => {
  const [more, less] = clearGains(clear, part);
  return less === undefined
    ? signed(more.gain)
    : says`${signed(more.gain)} if it reads as ${more.word}, ${signed(less.gain)} as ${less.word}`;
};

type SideGain = { readonly gain: number; readonly word: Condition };

/** What may go more once the clear is read, on the side where that is most, then on the other where there is one. */
export function clearGains(
  { gain, otherwise }: Help,
  part: PanelSurvey,
): readonly [SideGain, SideGain?] {
  const other = wordThatTakes(part);
  const own = { gain, word: sideOfWord([part.condition, ...part.also]) };
  if (otherwise === undefined || other === null) return [own];
  const there = { gain: otherwise.gain, word: other };
  return there.gain > own.gain ? [there, own] : [own, there];
}
