/**
 * A template scaled to the size of a vehicle.
 *
 * With the factor f of a measure = the vehicle's / the template's own, for a panel that spans a and b:
 * area · f_a · f_b, trim · (f_a + f_b)/2, flat width · f_b. A measure that is not known on either side
 * has the factor 1. Shapes stay as they are, so that the areas stay as uncertain as they were.
 */
import { metres, scale } from '../../base/units.ts';
import type { Dimension, Facing, Panel, VehicleSize, VehicleTemplate } from './template.ts';

export const dimensions: readonly Dimension[] = ['length', 'width', 'height'];

/** A measure of the vehicle beside the template's own. */
export type ScaledDimension = {
  readonly dimension: Dimension;
  readonly stated: number;
  readonly own: number;
  readonly factor: number;
};

/** The measures that both know, with their factors. */
export const scaledDimensions = (
  { size = {} }: VehicleTemplate,
  vehicle: Partial<VehicleSize>,
): readonly ScaledDimension[] =>
  dimensions.flatMap((dimension) => {
    const [stated, own] = [vehicle[dimension], size[dimension]];
    return stated === undefined || own === undefined
      ? []
      : [{ dimension, stated, own, factor: stated / own }];
  });

/** How a panel grows that does not say so itself. */
const spansByFacing: Readonly<Record<Facing, readonly Dimension[]>> = {
  horizontal: ['length', 'width'],
  vertical: ['length', 'height'],
  low: ['width', 'height'],
};

export const spansOf = ({ spans, facing }: Pick<Panel, 'spans' | 'facing'>): readonly Dimension[] =>
  spans ?? spansByFacing[facing];

export function scaleTemplate(
  template: VehicleTemplate,
  vehicle: Partial<VehicleSize>,
): VehicleTemplate {
  const scaled = scaledDimensions(template, vehicle);
  if (scaled.length === 0) return template;
  const factorOf = (dimension: Dimension): number =>
    scaled.find((one) => one.dimension === dimension)?.factor ?? 1;
  const size = Object.fromEntries(
    scaled.map(({ dimension, stated }) => [dimension, metres(stated)]),
  );
  return {
    ...template,
    size: { ...template.size, ...size },
    panels: template.panels.map((panel) => scalePanel(panel, factorOf)),
  };
}

function scalePanel(panel: Panel, factorOf: (dimension: Dimension) => number): Panel {
  const factors = spansOf(panel).map(factorOf);
  const product = factors.reduce((all, factor) => all * factor, 1);
  const mean =
    factors.length === 0 ? 1 : factors.reduce((sum, factor) => sum + factor, 0) / factors.length;
  return {
    ...panel,
    area: scale(panel.area, product),
    trimLength: scale(panel.trimLength, mean),
    flatWidth: scale(panel.flatWidth, factors[1] ?? 1),
  };
}
