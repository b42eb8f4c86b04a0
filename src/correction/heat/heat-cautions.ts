import { type Remark, remark } from '../../base/remark.ts';
import { shown } from '../../base/rounding.ts';
import { type DegreesCelsius, degreesCelsius, seconds } from '../../base/units.ts';
import type { Substrate } from '../../film/template/template.ts';
import type { CorrectionModel } from '../removal/catalogue.ts';
import type { Step } from '../removal/step.ts';
import { heatVerdict, warmest } from './heat.ts';
import type { HeatModel, Skin } from './heat-model.ts';

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
    warmest(combination.machine, model, skin, { sets, pause: seconds(0) }),
  );
  const most = degreesCelsius(Math.max(heat.start, ...reached));
  const verdict = heatVerdict(most, skin, heat);
  if (steps.length === 0 || verdict === 'cool') return [];
  const text =
    verdict === 'caution'
      ? `without a rest the panel warms to ${shown(most, 0)} °C: let it cool from ${heat.caution} °C${faster(most, heat)}`
      : `without a rest the panel warms to ${shown(most, 0)} °C, over the ${heat.stop} °C to stop at`;
  return [remark('panel-heat', text, most)];
}

/** An arm faster than this many times is no longer the set that was planned. */
const MOST_HASTE = 2;

/** A pass warms as long as it touches: an arm so many times as fast keeps under the caution. */
function faster(most: DegreesCelsius, { start, caution }: HeatModel): string {
  if (start >= caution) return ' before any step';
  const haste = (most - start) / (caution - start);
  return haste > MOST_HASTE ? '' : `, or move the arm ${shown(haste, 1)} times as fast`;
}
