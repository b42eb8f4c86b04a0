/** The template of a class → that of a vehicle whose size the job states. */
import { error, type Outcome, type Place } from '../../base/diagnostics.ts';
import { shown } from '../../base/rounding.ts';
import { scaledDimensions, scaleTemplate } from '../../film/template/scale-template.ts';
import type { Dimension, VehicleSize, VehicleTemplate } from '../../film/template/template.ts';
import type { TemplateRules } from '../../formats/data/template-defaults.ts';
import { implausibleDimensions } from '../../formats/template/plausible-size.ts';
import type { Assumption } from '../settings/assumption.ts';

/** The measures of a vehicle as a settings file states them. */
export type StatedSize = {
  readonly size: Partial<VehicleSize>;
  readonly placeOf: (dimension: Dimension) => Place;
};

export type ScaledTemplate = {
  readonly template: VehicleTemplate;
  readonly assumptions: readonly Assumption[];
};

export function scaleToVehicle(
  template: VehicleTemplate,
  stated: StatedSize | undefined,
  rules: TemplateRules,
): Outcome<ScaledTemplate> {
  if (stated === undefined || Object.keys(stated.size).length === 0) {
    return { value: { template, assumptions: [] }, diagnostics: [] };
  }
  const diagnostics = implausibleDimensions(template, stated.size, rules).map(
    ({ dimension, message, hint }) =>
      error('settings-invalid', `"vehicle.${dimension}_m" ${message}`, {
        at: stated.placeOf(dimension),
        hint,
      }),
  );
  if (diagnostics.length > 0) return { diagnostics };
  const scaled = scaleTemplate(template, stated.size);
  const text =
    scaled === template ? notScaled(template) : howScaled(template, scaled, stated.size, rules);
  return {
    value: { template: scaled, assumptions: [{ code: 'template-scaled', text, origin: 'job' }] },
    diagnostics: [],
  };
}

const notScaled = ({ id }: VehicleTemplate): string =>
  `template ${id} is not scaled: it does not say the size of the vehicle its areas are of`;

/** How far a built-in area may be off; of its own areas a file says nothing. */
const areaUncertainty = ({ origin }: VehicleTemplate, { areas }: TemplateRules): string =>
  origin === undefined || origin.base !== null
    ? `, still ±${shown(100 * areas.uncertainty, 0)} % a panel: its size is mended, not its shape`
    : '';

function howScaled(
  template: VehicleTemplate,
  scaled: VehicleTemplate,
  size: Partial<VehicleSize>,
  rules: TemplateRules,
): string {
  const factors = scaledDimensions(template, size).map(
    ({ dimension, factor }) => `${dimension} × ${shown(factor, 2)}`,
  );
  const area = ({ panels }: VehicleTemplate): string =>
    shown(
      panels.reduce((sum, panel) => sum + panel.area, 0),
      1,
    );
  return `template ${template.id} scaled to the vehicle (${factors.join(', ')}): ${area(template)} to ${area(scaled)} m²${areaUncertainty(template, rules)}`;
}
