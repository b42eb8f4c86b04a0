import { metres, millimetres, squareMetres } from '../../base/units.ts';
import type { Panel, VehicleTemplate } from '../../film/template.ts';
import { type BodyClass, bodyClasses, panelArea } from './template-areas.ts';
import { type PanelKind, panelKinds } from './template-panels.ts';

/** Name for people, and tape round trim, rubbers and lamps of the whole vehicle in metres. */
const classes: Readonly<Record<BodyClass, { readonly name: string; readonly trim: number }>> = {
  supermini: { name: 'supermini', trim: 35.5 },
  hatch: { name: 'hatchback', trim: 38 },
  saloon: { name: 'saloon', trim: 41 },
  estate: { name: 'estate', trim: 43 },
  coupe: { name: 'coupé', trim: 37 },
  'mid-suv': { name: 'mid-size SUV', trim: 45 },
  'double-cab-pickup': { name: 'double-cab pickup', trim: 47 },
  'medium-van': { name: 'medium van', trim: 49.5 },
};

type Sized = { readonly kind: PanelKind; readonly area: number };

/**
 * A body class as a template. A panel's tape is the share of its weight in the class total, to 0.1 m:
 * trim = total · weight / Σ weights.
 */
function buildTemplate(bodyClass: BodyClass): VehicleTemplate {
  const { name, trim } = classes[bodyClass];
  const sized = panelKinds(bodyClass).flatMap((kind): Sized[] => {
    const area = panelArea(kind.row, bodyClass);
    return area === null ? [] : [{ kind, area }];
  });
  const weights = sized.reduce((sum, { kind }) => sum + kind.trimWeight, 0);
  const panels = sized.map(({ kind, area }) =>
    buildPanel(kind, area, Math.round((10 * trim * kind.trimWeight) / weights) / 10),
  );
  return { id: bodyClass, name, panels };
}

const otherSide = ({ id, side }: PanelKind): string | null => {
  if (side === null) return null;
  return id.replace(new RegExp(`${side}$`), side === 'left' ? 'right' : 'left');
};

const buildPanel = (kind: PanelKind, area: number, trim: number): Panel => ({
  id: kind.id,
  name: kind.name,
  area: squareMetres(area),
  substrate: kind.substrate,
  facing: kind.facing,
  mirror: otherSide(kind),
  flatWidth: millimetres(kind.flatWidth),
  trimLength: metres(trim),
  points: kind.points,
});

/** Eight body classes, each with its panels in walking order. */
export const builtInTemplates: readonly VehicleTemplate[] = bodyClasses.map(buildTemplate);

/** Where the numbers of the built-in templates come from: areas first, then every other field. */
export const templateBasis = {
  basis: 'derived',
  source: 'sum of simple shapes, ±25 %; no published table found',
  unit: 'm²',
  relativeUncertainty: 0.25,
  fields: {
    substrate: {
      basis: 'assumption',
      source:
        'steel body, plastic bumpers and mirror caps; check the vehicle: many bonnets are aluminium',
      unit: null,
    },
    facing: { basis: 'assumption', source: 'how the panel stands on an ordinary body', unit: null },
    flatWidth: {
      basis: 'assumption',
      source: 'narrowest flat stretch of an ordinary panel of its kind; no published table found',
      unit: 'mm',
    },
    trimLength: {
      basis: 'assumption',
      source: 'class total 35 to 50 m, shared among the panels by estimated edge length',
      unit: 'm',
    },
    points: {
      basis: 'assumption',
      source: 'five points as on a die, three on narrow panels, a fifth of the panel from its ends',
      unit: null,
    },
  },
} as const;
