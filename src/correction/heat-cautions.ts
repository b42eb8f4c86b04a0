import { type Remark, remark } from '../base/remark.ts';
import { shown } from '../base/rounding.ts';
import { degreesCelsius, seconds } from '../base/units.ts';
import type { Substrate } from '../film/template.ts';
import type { CorrectionModel } from './catalogue.ts';
import { heatVerdict, warmedTo, workingWarming } from './heat.ts';
import type { Skin } from './heat-model.ts';
import type { Step } from './step.ts';

const skinOf: Readonly<Record<Substrate, Skin>> = {
  steel: 'steel',
  aluminium: 'aluminium',
  plastic: 'plastic',
  // Resin takes heat up much as plastic does.
  composite: 'plastic',
};

/** Says so when a step, worked without a rest between its sets, warms the panel past the caution. */
export function heatCautions(
  substrate: Substrate,
  steps: readonly Step[],
  model: Pick<CorrectionModel, 'removal' | 'heat'>,
): readonly Remark[] {
  const skin = skinOf[substrate];
  const { heat } = model;
  const reached = steps.map(({ combination, sets }) =>
    warmedTo(workingWarming(combination.machine, model, skin, { sets, pause: seconds(0) }), heat),
  );
  const warmest = degreesCelsius(Math.max(heat.start, ...reached));
  const verdict = heatVerdict(warmest, skin, heat);
  if (verdict === 'cool') return [];
  const text =
    verdict === 'caution'
      ? `without a rest the panel warms to ${shown(warmest, 0)} °C: let it cool from ${heat.caution} °C`
      : `without a rest the panel warms to ${shown(warmest, 0)} °C, over the ${heat.stop} °C to stop at`;
  return [remark('panel-heat', text, warmest)];
}
