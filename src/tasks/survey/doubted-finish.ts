/**
 * A finish without a clear against a test spot that left no colour on the pad: one of the two is wrong. Till it is
 * settled the finish is held to be unknown, so that the lesser of both reckonings counts: of the panel where it was
 * stated of that panel, else of every panel that has it from the car.
 */
import type { PanelSurvey } from '../../film/survey.ts';
import type { EffectiveFacts } from '../settings/panel-facts.ts';
import { clearsShown, type MadeSpots } from './colour-at-spots.ts';
import type { FactsByPanel } from './survey-grounds.ts';

export function withDoubtedFinish(
  facts: FactsByPanel,
  made: MadeSpots,
  panels: readonly PanelSurvey[],
  {
    finishOfCar,
    nearRisk,
  }: { readonly finishOfCar: EffectiveFacts['finish']; readonly nearRisk: number },
): FactsByPanel {
  const isOfPanel = (id: string): boolean => facts.get(id)?.finish !== finishOfCar;
  const shown = clearsShown(made, panels, isOfPanel, nearRisk);
  if (shown.size === 0) return facts;
  const isCar = [...shown.keys()].some((id) => !isOfPanel(id));
  return new Map(
    [...facts].map(([id, own]) => {
      const spots = shown.get(id);
      const isDoubted = isOfPanel(id) ? spots !== undefined : isCar;
      if (!isDoubted) return [id, own] as const;
      const unknown = { ...own, finish: UNKNOWN };
      return [
        id,
        spots === undefined ? unknown : { ...unknown, clearShownAt: byReadings(spots) },
      ] as const;
    }),
  );
}

const byReadings = <Value>(value: Value) =>
  ({ value, origin: 'readings', where: 'test spots' }) as const;

const UNKNOWN = byReadings('unknown' as const);
