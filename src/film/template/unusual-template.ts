/**
 * What is unusual about a template and not wrong: more often a slip than a vehicle. A panel is held
 * against the built-in panels of its kind; a kind is what the vocabulary makes of its id and name.
 */
import { groupBy } from '../../base/group-by.ts';
import { shown } from '../../base/rounding.ts';
import { knownPanel } from './panel-fit.ts';
import type { Panel, VehicleTemplate } from './template.ts';

export type Unusual = {
  readonly code: 'size' | 'sides' | 'one-side' | 'few-points' | 'many-points' | 'edge-point';
  /** The panel it is about. */
  readonly panel: string;
  readonly text: string;
  readonly hint: string;
};

/** From which share or count on something is remarked on. */
export type UsualRules = {
  readonly points: { readonly fewest: number; readonly most: number };
  readonly unusual: {
    readonly less: number;
    readonly more: number;
    readonly sides: number;
    readonly edge: number;
  };
};

export function unusualThings(
  template: VehicleTemplate,
  builtIn: readonly VehicleTemplate[],
  rules: UsualRules,
): readonly Unusual[] {
  const usual = groupBy(
    builtIn.flatMap(({ panels }) => panels),
    kindOf,
  );
  return template.panels.flatMap((panel) => [
    ...unusualSize(panel, usual, rules),
    ...unusualSides(panel, template, rules),
    ...unusualPoints(panel, rules),
  ]);
}

/** What its id and name say it is; a door of a side is another kind than the doors across the back. */
function kindOf(panel: Panel): string | undefined {
  const [meaning] = knownPanel(panel).meanings;
  return meaning === undefined ? undefined : `${meaning.part} ${meaning.side !== undefined}`;
}

const MEASURES = [
  { name: 'area', unit: 'm²', digits: 2, of: ({ area }: Panel): number => area },
  { name: 'flat width', unit: 'mm', digits: 0, of: ({ flatWidth }: Panel): number => flatWidth },
  { name: 'trim', unit: 'm', digits: 1, of: ({ trimLength }: Panel): number => trimLength },
];

function unusualSize(
  panel: Panel,
  usual: ReadonlyMap<string | undefined, readonly Panel[]>,
  { unusual: { less, more } }: UsualRules,
): readonly Unusual[] {
  const alike = usual.get(kindOf(panel)) ?? [];
  if (alike.length === 0) return [];
  return MEASURES.flatMap(({ name, unit, digits, of }): readonly Unusual[] => {
    const [least, most] = [Math.min(...alike.map(of)), Math.max(...alike.map(of))];
    const value = of(panel);
    if (value >= less * least && value <= more * most) return [];
    const text = `${panel.name}: ${name} ${shown(value, digits)} ${unit}; built-in panels of its kind have ${shown(least, digits)} to ${shown(most, digits)} ${unit}`;
    return [
      { code: 'size', panel: panel.id, text, hint: 'measure it again, or leave it if right' },
    ];
  });
}

function unusualSides(
  panel: Panel,
  { panels, origin }: VehicleTemplate,
  { unusual: { sides } }: UsualRules,
): readonly Unusual[] {
  if (panel.mirror === null) {
    const side = knownPanel(panel).meanings.find((meaning) => meaning.side !== undefined)?.side;
    if (side === undefined) return [];
    const other = side === 'left' ? 'right' : 'left';
    return [
      {
        code: 'one-side',
        panel: panel.id,
        text: `${panel.name}: a ${side} panel without its ${other} one`,
        hint: 'if there is one, name it in "mirror" of both',
      },
    ];
  }
  const other = panels.find(({ id }) => id === panel.mirror);
  // Said once a pair, where the file speaks of one of them.
  if (other === undefined || other.area <= panel.area * (1 + sides)) return [];
  return [
    {
      code: 'sides',
      panel: origin?.own.includes(other.id) === true ? other.id : panel.id,
      text: `${panel.name}: ${shown(panel.area, 2)} m², and ${other.name} ${shown(other.area, 2)} m²`,
      hint: 'the two sides of a vehicle are mostly alike',
    },
  ];
}

function unusualPoints(
  { id, name, points }: Panel,
  { points: { fewest, most }, unusual: { edge } }: UsualRules,
): readonly Unusual[] {
  const about = (code: Unusual['code'], text: string, hint: string): Unusual => ({
    code,
    panel: id,
    text: `${name}: ${text}`,
    hint,
  });
  const atEdge = points.filter((point) =>
    [point.u, point.v].some((at) => at < edge || at > 1 - edge),
  );
  return [
    ...(points.length < fewest
      ? [about('few-points', `${points.length} of at least ${fewest} points`, 'add points')]
      : []),
    ...(points.length > most
      ? [
          about(
            'many-points',
            `${points.length} points`,
            `more than ${most} do not help: readings elsewhere do`,
          ),
        ]
      : []),
    ...(atEdge.length > 0
      ? [
          about(
            'edge-point',
            `point ${atEdge.map(({ point }) => point).join(', ')} at the edge`,
            'film is thinner there: move it in',
          ),
        ]
      : []),
  ];
}
