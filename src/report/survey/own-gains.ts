/** What would help a panel near its line: told beside what it hangs on, as its gains are unlike those of the others. */
import { shown } from '../../base/rounding.ts';
import { type Sentence, says } from '../../base/sentence.ts';
import type { Help } from '../../film/help/what-would-help.ts';
import type { PanelSurvey } from '../../film/survey.ts';
import type { SurveyHelp } from '../../tasks/survey/survey-help.ts';
import { signed } from './help-lines.ts';

/** Whether its gains stand in its own paragraph. */
export const isToldApart = ({ otherSide }: PanelSurvey): boolean => otherSide !== null;

/** `clear read +2.07 µm, test spot +0.49 µm, 9 points +0.32 µm`; nothing where nothing changes what may go. */
export function ownGains(part: PanelSurvey, helped: SurveyHelp): readonly Sentence[] {
  const told = (helped.get(part) ?? []).flatMap((help) => gainText(help, part));
  const [first, ...others] = told;
  return first === undefined ? [] : [others.reduce((all, one) => says`${all}, ${one}`, first)];
}

/** Of a checked gauge it is told over the car, as it is next to nothing everywhere. */
function gainText(help: Help, { condition }: PanelSurvey): readonly Sentence[] {
  const { code, gain, points, gainByWord, isElsewhere } = help;
  switch (code) {
    case 'clear':
      return [says`clear read ${signed(gain)}${byWord(gain, gainByWord, condition)}`];
    case 'points':
      return [says`${points ?? 0} points ${signed(gain)}`];
    case 'test-spot':
      return [says`test spot${isElsewhere === true ? ' on another panel' : ''} ${signed(gain)}`];
    case 'history':
      return [says`known as never polished ${signed(gain)}`];
    case 'zinc':
      return [says`zinc ${signed(gain)}`];
    case 'gauge':
      return [];
  }
}

/** A clear read is reckoned at what is expected over both sides; it will read as one of them. */
const byWord = (gain: number, gainByWord: number | undefined, word: string): Sentence =>
  gainByWord === undefined || shown(gainByWord, 2) === shown(gain, 2)
    ? says``
    : says` if as both sides together expect, ${signed(gainByWord)} if as ${word}`;
