/**
 * Points whose change stands out, until they are read again: other panels are told without the odd reading, and the
 * panel itself both with it and without, by the safer of the two.
 */
import { type Remark, remark } from '../../base/remark.ts';
import { type Sentence, says, um } from '../../base/sentence.ts';
import { micrometres } from '../../base/units.ts';
import { hardestVerdict } from '../../correction/go-on.ts';
import type { PointApart } from '../../film/compare/compare-points.ts';
import type { SurveyComparison } from '../../film/compare/compare-surveys.ts';
import type { PanelLeft } from './compare-left-parts.ts';
import { type Allowed, isOver, perhapsOver } from './compare-overrun.ts';
import type { PartLeft } from './part-left.ts';

/** `total` has what is held of each panel; a panel without such points is told as if no other had any. */
export function saferParts(
  { panels }: SurveyComparison,
  all: readonly PanelLeft[],
  rest: readonly PanelLeft[],
): readonly PanelLeft[] {
  return rest.map((without, i): PanelLeft => {
    const [held, whole] = [panels[i], all[i]];
    if (held === undefined || whole === undefined || held.apart === null) return without;
    const { points, counted } = held.apart;
    const [first, other] = counted ? [whole, without] : [without, whole];
    const zones = first.zones.map((zone, k) => {
      const again = other.zones[k];
      return again === undefined ? undecided(zone) : safer(zone, again);
    });
    const panel = { ...safer(first, other), comparison: held };
    return withPoints({ ...panel, zones }, points);
  });
}

/** What is held of the removal is the first's; what may go, and the word, those of the one that allows less. */
function safer<Part extends PartLeft>(held: Part, other: PartLeft): Part {
  const hardest = hardestVerdict([held.verdict, other.verdict]);
  const [one, another] =
    other.verdict === hardest && held.verdict !== hardest ? [other, held] : [held, other];
  const isLess = one.verdict === another.verdict && budgetOf(another) < budgetOf(one);
  const { left, oneMore, riskOneMore, isRiskUnknown, reasons } = isLess ? another : one;
  const over = [held, other].find(({ overruns }) => isOver(overruns));
  const perhaps = [held, other].find(({ overruns }) => overruns.length > 0);
  return undecided({
    ...held,
    allowed: lesser(held.allowed, other.allowed),
    overruns: (over ?? perhaps ?? held).overruns,
    ...{ left, oneMore, riskOneMore, isRiskUnknown, reasons },
    verdict: hardest,
  });
}

const budgetOf = ({ left }: PartLeft): number => left?.budget ?? Number.POSITIVE_INFINITY;

/** Nobody goes on before the point was read again. */
const undecided = <Part extends PartLeft>(part: Part): Part =>
  part.verdict === 'go-on' ? { ...part, verdict: 'unresolved' } : part;

const lesser = (one: Allowed | null, other: Allowed | null): Allowed | null =>
  one !== null && other !== null && other.most < one.most ? other : one;

/** A loss is held to be true: it may be more than might go there, though the panel lost less in the middle. */
function withPoints(panel: PanelLeft, points: readonly PointApart[]): PanelLeft {
  const { overruns, allowed, reasons } = panel;
  const local =
    overruns.length > 0 || panel.zones.some((zone) => zone.overruns.length > 0)
      ? []
      : points.flatMap((one) =>
          one.lost === 'more' ? perhapsOver(lostText(one), lossOf(one), allowed) : [],
        );
  return {
    ...panel,
    overruns: [...overruns, ...local],
    reasons: [...points.map(pointRemark), ...local, ...reasons],
  };
}

const lossOf = ({ before, after }: PointApart) => micrometres(before - after);

const lostText = (one: PointApart): Sentence =>
  says`${um(lossOf(one))} came off at point ${one.point}, if it was read right`;

const pointRemark = (one: PointApart): Remark =>
  remark('point-stands-out', pointText(one), lossOf(one));

/** `point 2 reads 171.9 µm after 119.7 µm, and the others lost 2.3 µm: read it again (117.9 µm with two digits exchanged)` */
export function pointText({ point, before, after, others, swapped }: PointApart): Sentence {
  const digits =
    swapped === null ? says`` : says`, perhaps ${um(swapped, null)} with two digits exchanged`;
  return says`point ${point} reads ${um(after, null)} after ${um(before, null)}, where ${um(others)} came off at the panel’s other points${digits}: read it again`;
}
