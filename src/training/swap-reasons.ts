/** Panels mixed up, in words: what fits which name, and how sure that is. */
import { at } from '../base/at.ts';
import { says } from '../base/sentence.ts';
import type { PanelSurvey } from '../film/survey.ts';
import type { Panel } from '../film/template/template.ts';
import { faceReadings, type GradedSurvey } from './graded-survey.ts';
import { type Reason, reason, together } from './reasons.ts';

export type MixedUp = {
  /** What stands under each name is the film of the next, under the last that of the first or of none. */
  readonly names: readonly Panel[];
  /** Of the panels, those that the file has. */
  readonly read: readonly PanelSurvey[];
  /** By film mark by mark; else by the means alone. */
  readonly byMarks: boolean;
  /** Panels whose names may have moved with these. */
  readonly asWell: readonly Panel[];
};

const MEND = 'write the name of a panel while you stand before it';

export function panelsReason(mixedUp: MixedUp, trainee: GradedSurvey): Reason {
  const { byMarks, read } = mixedUp;
  const [are, readings] = byMarks
    ? ['are', 'the readings agree']
    : ['seem', 'the means of their points agree'];
  const names = mixedUp.names.map(({ name }) => name);
  const moved = read.map((_, i) => at(names, i));
  const passedOver = moved.length < names.length ? `; the ${names[0]} itself was passed over` : '';
  const said =
    names.length === 2
      ? says`${together(names)} ${are} swapped: with their names changed ${readings} with the reference${asWellText(mixedUp)}; ${MEND}`
      : says`the names of ${together(moved)} ${are} moved on by one: ${movedText(moved, names)}${passedOver}${asWellText(mixedUp)}; ${MEND}`;
  return reason('panels-swapped', said, {
    panels: read.map(({ panel }) => panel.id),
    at: faceReadings(trainee, mixedUp.names[0]?.id)[0],
  });
}

/** Which of the two it was the values do not show; the page that the trainee wrote may. */
export const eitherReason = (read: readonly PanelSurvey[], trainee: GradedSurvey): Reason =>
  reason(
    'swapped-or-turned',
    `${together(read.map(({ panel }) => panel.name))} are swapped, or points of them are numbered in another order: as they stand the readings do not fit the marks, either way they do; look which it was, ${MEND}, and number points as the marks on the panel are`,
    {
      panels: read.map(({ panel }) => panel.id),
      at: faceReadings(trainee, read[0]?.panel.id)[0],
    },
  );

const MOST_NAMED = 3;

function asWellText({ asWell }: MixedUp): string {
  if (asWell.length === 0) return '';
  const which =
    asWell.length > MOST_NAMED
      ? `${asWell.length} other names`
      : `${asWell.length === 1 ? 'the name' : 'the names'} of ${together(asWell.map(({ name }) => name))}`;
  return `; by their means ${which} may have moved as well`;
}

const MOST_MOVES = 4;

/** Of many the first: the others go on so. */
function movedText(moved: readonly string[], names: readonly string[]): string {
  const moves = moved.map((name, i) => {
    const of = at(names, (i + 1) % names.length);
    return i === 0
      ? `what stands under ${name} agrees with the reference of ${of}`
      : `what stands under ${name} with that of ${of}`;
  });
  return moves.length > MOST_MOVES
    ? `${moves.slice(0, MOST_MOVES - 1).join(', ')}, and so on`
    : together(moves);
}

export function sidesReason(mixedUp: MixedUp, trainee: GradedSurvey): Reason {
  const { read, byMarks } = mixedUp;
  const swapped = byMarks ? 'are swapped' : 'seem swapped';
  const where = `${swapped}, ${together(read.map(({ panel }) => panel.name))}`;
  return toldSides(read, { where, asWell: asWellText(mixedUp) }, trainee);
}

export const allSidesReason = (read: readonly PanelSurvey[], trainee: GradedSurvey): Reason =>
  toldSides(read, { where: 'are swapped, all over the car', asWell: '' }, trainee);

const toldSides = (
  panels: readonly PanelSurvey[],
  { where, asWell }: { readonly where: string; readonly asWell: string },
  trainee: GradedSurvey,
): Reason =>
  reason(
    'sides-swapped',
    says`left and right ${where}: with the sides changed the readings agree with the reference${asWell}; sides are as seen from the driver’s seat`,
    {
      panels: panels.map(({ panel }) => panel.id),
      at: faceReadings(trainee, panels[0]?.panel.id)[0],
    },
  );
