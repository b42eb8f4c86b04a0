/** Whether a vehicle may be of the size that is stated, beside a template of its kind. */
import { roundTo, shown } from '../../base/rounding.ts';
import { scaledDimensions } from '../../film/template/scale-template.ts';
import type { Dimension, VehicleSize, VehicleTemplate } from '../../film/template/template.ts';
import type { TemplateRules } from '../data/template-defaults.ts';

export type ImplausibleDimension = {
  readonly dimension: Dimension;
  /** After the name of the key: `is 47; …`. */
  readonly message: string;
  readonly hint: string;
};

/** The stated measures that are too small or too large for the template's kind of vehicle. */
export function implausibleDimensions(
  template: VehicleTemplate,
  size: Partial<VehicleSize>,
  { scaling }: TemplateRules,
): readonly ImplausibleDimension[] {
  return scaledDimensions(template, size).flatMap(({ dimension, stated, own }) => {
    // The bounds as they are told, so that what they name is allowed.
    const [least, most] = [roundTo(scaling.least * own, 2), roundTo(scaling.most * own, 2)];
    if (stated >= least && stated <= most) return [];
    return [
      {
        dimension,
        message: `is ${stated}; a vehicle like the ${template.name} template is ${shown(least, 2)} to ${shown(most, 2)} m`,
        hint: 'state it in metres, or choose another template',
      },
    ];
  });
}
