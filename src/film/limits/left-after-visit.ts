/**
 * What was left after a visit on record, told of the readings that ended it: by those alone a survey knows less than
 * the comparison did, which had the readings before, the plan and the other panels. It stands until something is read.
 */
import { type Remark, remark } from '../../base/remark.ts';
import { bare, type Sentence, says, um } from '../../base/sentence.ts';
import type { LeftAfterVisit, PanelFacts } from '../film-model.ts';
import type { PanelPoint } from '../panel-points.ts';
import type { LimitCode, UnsaidLimit } from './limit.ts';

/** As finely as a record keeps a reading, or a mean of them. */
const SAME_FILM = 1e-5;

/** With the visit whose later readings these points are, where one on record is; of several the one that left least. */
export function heldToVisit(facts: PanelFacts, points: readonly PanelPoint[]): PanelFacts {
  const left = facts.recorded?.left;
  if (left === undefined || points.length === 0) return facts;
  const mean = points.reduce((sum, { thickness }) => sum + thickness, 0) / points.length;
  const [first, ...others] = [
    ...left.filter(
      (one) =>
        (one.points === points.length && Math.abs(one.mean - mean) < SAME_FILM) ||
        areAmong(points, one.read),
    ),
    ...left
      .filter((one) => keepsNone(one) && points.length < one.points)
      .map((one) => ({ ...one, isByNumber: true })),
  ];
  if (first === undefined) return facts;
  const heldTo = others.reduce((least, one) => (one.most < least.most ? one : least), first);
  return { ...facts, heldTo };
}

/** An older record: whether fewer readings are some of its own nobody can say. */
const keepsNone = ({ read = [] }: LeftAfterVisit): boolean => read.length === 0;

/** Whoever leaves out some of what was read knows nothing more: each reading is one of the visit's, whatever its point is called. */
function areAmong(points: readonly PanelPoint[], read: LeftAfterVisit['read'] = []): boolean {
  const rest = [...read];
  return points.every(({ repeats }) =>
    repeats.every((film) => {
      const at = rest.findIndex((one) => Math.abs(one - film) < SAME_FILM);
      if (at >= 0) rest.splice(at, 1);
      return at >= 0;
    }),
  );
}

/** One zone of it by its own figure, where the visit told it apart. */
export function heldInZone(facts: PanelFacts, zone: string): PanelFacts {
  const { heldTo } = facts;
  const most = heldTo?.zones?.[zone];
  return heldTo === undefined || most === undefined
    ? facts
    : { ...facts, heldTo: { ...heldTo, most } };
}

export const leftLimits = ({ heldTo }: Pick<PanelFacts, 'heldTo'>): readonly UnsaidLimit[] =>
  heldTo === undefined
    ? []
    : [{ code: 'as-compared', value: heldTo.most, said: () => leftSaid(heldTo) }];

type HeldPanel = {
  readonly facts: Pick<PanelFacts, 'heldTo'>;
  readonly boundBy: { readonly code: LimitCode };
};

/** Why a panel is held to a visit of which the record keeps no readings. */
export function visitNotes({ facts: { heldTo }, boundBy }: HeldPanel): readonly Remark[] {
  if (heldTo?.isByNumber !== true || boundBy.code !== 'as-compared') return [];
  const { date, most, points } = heldTo;
  return [
    remark(
      'left-by-number',
      says`held to what was left after the visit${ofDay(date)}, ${um(most, 2)}: of the ${bare(points, 0)} points read then its record does not keep the readings, so fewer points tell nothing new; read it at ${bare(points, 0)} or more`,
      most,
    ),
  ];
}

const ofDay = (date: string | null): string => (date === null ? '' : ` of ${date}`);

function leftSaid({ date, most, points }: LeftAfterVisit): Sentence {
  const left = most === 0 ? says`nothing` : says`no more than ${um(most, 2)}`;
  return says`${left} was left after the visit${ofDay(date)}, by the readings before it and at ${bare(points, 0)} points after it; these hold nothing new`;
}
