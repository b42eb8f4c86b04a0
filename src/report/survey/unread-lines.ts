/** Panels that nobody read, or no gauge for metal can: what they are made of, and what would help. */
import { groupBy } from '../../base/group-by.ts';
import { textIn } from '../../base/remark.ts';
import type { LengthUnit } from '../../base/units.ts';
import { needsUltrasound } from '../../film/condition/condition.ts';
import type { SurveyAdvice } from '../../film/help/survey-advice.ts';
import { type PanelSurvey, partsOf } from '../../film/survey.ts';
import { panelNames } from '../../film/template/side-names.ts';
import { joined } from '../facts.ts';
import { type Block, paragraph } from '../model.ts';
import { minutes } from './help-lines.ts';

/** `both mirrors (plastic: ultrasonic gauge, or leave it alone), both sills (steel: read 3 points on the face, 3 min)`. */
export function unreadLine(surveyed: readonly PanelSurvey[], unit: LengthUnit): readonly Block[] {
  const unread = surveyed.filter(({ points }) => points.length === 0);
  const groups = groupBy(unread, (one) => `${one.panel.substrate}: ${adviceText(one, unit)}`);
  const told = [...groups].map(
    ([what, group]) => `${panelNames(group.map(({ panel }) => panel)).join(', ')} (${what})`,
  );
  if (told.length === 0) return [];
  const isHeld =
    surveyed.some(waitsForOthers) && !unread.every(({ panel }) => needsUltrasound(panel));
  const held = isHeld ? ['once read, repaint gets no more than on them'] : [];
  const note = held.map((one) => ` (${one})`).join('');
  const text = `${told.join(', ')}: none may go${note}`;
  return [
    paragraph('Not read', { text, facts: [...told.map((one) => `${one}: none may go`), ...held] }),
  ];
}

/** Whether it is repaint that may be worked one day, by what may go from the original panels: those not read count once they are. */
const waitsForOthers = (survey: PanelSurvey): boolean =>
  partsOf(survey).some(({ boundBy: { code } }) =>
    ['test-spot', 'sound-panels', 'spot-depth'].includes(code),
  );

/** Of panels that were read in vain what that may mean, by name. */
export function readInVain(surveyed: readonly PanelSurvey[], unit: LengthUnit): readonly Block[] {
  const said = surveyed
    .filter(({ condition, points }) => condition === 'unread' && points.length > 0)
    .map((one) => ({ name: one.panel.name, text: `${noGauge(one)}: ${adviceText(one, unit)}` }));
  const each = [...groupBy(said, ({ text }) => text)].map(
    ([text, group]) => `${group.map(({ name }) => name).join(', ')}${text}`,
  );
  return each.length === 0 ? [] : [paragraph('Read in vain', joined(each, '; '))];
}

const adviceText = ({ advice }: PanelSurvey, unit: LengthUnit): string =>
  advice.map((one) => `${textIn(one, unit)}${timeText(one)}`).join(', ');

const timeText = ({ time }: SurveyAdvice): string =>
  time === undefined ? '' : `, ${minutes(time)}`;

const noGauge = ({ panel }: PanelSurvey): string =>
  needsUltrasound(panel) ? ', which no gauge for metal reads' : '';
