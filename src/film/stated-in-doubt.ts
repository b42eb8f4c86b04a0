/**
 * A layer that is stated of the whole car and cannot be true of one panel as it was painted: it is one paint, so that it
 * is in doubt on every panel of that finish.
 */
import { at } from '../base/at.ts';
import type { Finish, PanelFacts } from './film-model.ts';
import type { GatheredPanel } from './gathered-panel.ts';
import type { PanelSurvey } from './survey.ts';

export function withStatedInDoubt(
  gathered: readonly GatheredPanel[],
  surveyed: readonly PanelSurvey[],
  assess: (panel: GatheredPanel) => PanelSurvey,
): readonly PanelSurvey[] {
  const doubted = new Set(surveyed.filter(contradicts).map(({ facts }) => facts.finish));
  if (doubted.size === 0) return surveyed;
  return gathered.map((panel, place) =>
    sharesDoubt(panel.facts, doubted)
      ? assess({ ...panel, facts: { ...panel.facts, statedInDoubt: true } })
      : at(surveyed, place),
  );
}

/** A panel in zones or cut back says nothing of what the others carry. */
const contradicts = ({ condition, also, topcoat, facts, zones }: PanelSurvey): boolean =>
  condition === 'original' &&
  also.length === 0 &&
  zones.length === 0 &&
  topcoat?.apart !== undefined &&
  topcoat.apart.from !== 'own-clear' &&
  isStatedOfCar(facts);

const sharesDoubt = (facts: PanelFacts, doubted: ReadonlySet<Finish>): boolean =>
  doubted.has(facts.finish) && isStatedOfCar(facts);

const isStatedOfCar = ({ clear, under }: PanelFacts): boolean =>
  clear?.of === 'car' || under?.of === 'car';
