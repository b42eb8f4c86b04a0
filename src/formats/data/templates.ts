import { metres, millimetres, squareMetres } from '../../base/units.ts';
import type { Panel, VehicleTemplate } from '../../film/template/template.ts';
import { type BodyClass, bodyClasses, panelArea } from './template-areas.ts';
import { templateRules } from './template-defaults.ts';
import { type PanelKind, panelKinds } from './template-panels.ts';

type BodyClassTraits = {
  /** Name for people. */
  readonly name: string;
  /** Tape round trim, rubbers and lamps of the whole vehicle, metres. */
  readonly trim: number;
  /** Length, width without mirrors, and height of the vehicle that the areas are of, metres. */
  readonly size: readonly [length: number, width: number, height: number];
};

const classes: Readonly<Record<BodyClass, BodyClassTraits>> = {
  supermini: { name: 'supermini', trim: 35.5, size: [4.05, 1.74, 1.45] },
  hatch: { name: 'hatchback', trim: 38, size: [4.35, 1.8, 1.46] },
  saloon: { name: 'saloon', trim: 41, size: [4.7, 1.83, 1.45] },
  estate: { name: 'estate', trim: 43, size: [4.75, 1.83, 1.48] },
  coupe: { name: 'coupé', trim: 37, size: [4.55, 1.85, 1.38] },
  'mid-suv': { name: 'mid-size SUV', trim: 45, size: [4.6, 1.87, 1.66] },
  'double-cab-pickup': { name: 'double-cab pickup', trim: 47, size: [5.3, 1.86, 1.8] },
  'medium-van': { name: 'medium van', trim: 49.5, size: [5.2, 1.95, 1.98] },
};

type Sized = { readonly kind: PanelKind; readonly area: number };

/**
 * A body class as a template. A panel's tape is the share of its weight in the class total, to 0.1 m:
 * trim = total · weight / Σ weights.
 */
function buildTemplate(bodyClass: BodyClass): VehicleTemplate {
  const { name, trim, size } = classes[bodyClass];
  const [length, width, height] = size;
  const sized = panelKinds(bodyClass).flatMap((kind): Sized[] => {
    const area = panelArea(kind.row, bodyClass);
    return area === null ? [] : [{ kind, area }];
  });
  const weights = sized.reduce((sum, { kind }) => sum + kind.trimWeight, 0);
  const panels = sized.map(({ kind, area }) =>
    buildPanel(kind, area, Math.round((10 * trim * kind.trimWeight) / weights) / 10),
  );
  return {
    id: bodyClass,
    name,
    panels,
    size: { length: metres(length), width: metres(width), height: metres(height) },
  };
}

/** What has a side ends in it. */
const otherSide = ({ id, side }: PanelKind): string | null =>
  side === null ? null : `${id.slice(0, -side.length)}${side === 'left' ? 'right' : 'left'}`;

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
  spans: kind.spans,
});

/** Eight body classes, each with its panels in walking order. */
export const builtInTemplates: readonly VehicleTemplate[] = bodyClasses.map(buildTemplate);

/** Where the numbers of the built-in templates come from: areas first, then every other field. */
export const templateBasis = {
  basis: 'derived',
  source: `sum of simple shapes, ±${100 * templateRules.areas.uncertainty} %; no published table found`,
  unit: 'm²',
  relativeUncertainty: templateRules.areas.uncertainty,
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
    size: {
      basis: 'assumption',
      source: 'an ordinary vehicle of the class, its mirrors not counted; no published table used',
      unit: 'm',
    },
    spans: {
      basis: 'assumption',
      source:
        'a panel grows with the two measures of the vehicle it stretches along; mirrors do not grow',
      unit: null,
    },
  },
} as const;
