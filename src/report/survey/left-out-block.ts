/** Cells of a panel that gave no reading, beside what was read on it: a 0, an overflow, a value that was deleted. */
import { groupBy } from '../../base/group-by.ts';
import type { Panel } from '../../film/template/template.ts';
import type { SurveyResult } from '../../tasks/survey/survey-vehicle.ts';
import { joined } from '../facts.ts';
import { type Block, paragraph } from '../model.ts';

type LeftOut = SurveyResult['leftOut'][number];

/** `bonnet point 2 ("0": a 0 is no film reading)`; of cells that say nothing, as `-`, nothing is said. */
export function leftOutBlock(
  panels: readonly Panel[],
  { leftOut }: Pick<SurveyResult, 'leftOut'>,
): readonly Block[] {
  const ofPanel = groupBy(leftOut.filter(isTold), ({ panel }) => panel);
  const told = panels.flatMap(({ id, name }) => {
    const own = ofPanel.get(id);
    return own === undefined ? [] : [`${name} ${cellTexts(own)}`];
  });
  return told.length === 0 ? [] : [paragraph('Left out', joined(told, '; '))];
}

const isTold = ({ class: why }: LeftOut): boolean => why !== 'missing';

const cellTexts = (cells: readonly LeftOut[]): string =>
  [...groupBy(cells, whyText).values()]
    .map((alike) => `${pointsText(alike)} (${whyText(alike[0])})`)
    .join(', ');

function pointsText(cells: readonly LeftOut[]): string {
  const points = [...new Set(cells.flatMap(({ point }) => point ?? []))];
  return `${points.length === 1 ? 'point' : 'points'} ${points.join(', ')}`;
}

/** A reason that begins with the text of the cell says it already. */
const whyText = ({ text, reason }: LeftOut): string =>
  reason.startsWith(`"${text}"`) ? reason : `"${text}": ${reason}`;
