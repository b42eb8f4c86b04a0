/**
 * A template file as far as it can be made out, whatever else is wrong with it: what the checks look
 * at, so that a slip in one place does not hide another.
 */
import type { Panel, VehicleTemplate } from '../../film/template/template.ts';
import type { JsonPath } from '../json/json-text.ts';

/** A word of the file, and where it stands. */
export type Word = { readonly text: string; readonly path: JsonPath };

export type PointSketch = {
  readonly path: JsonPath;
  readonly name: string | undefined;
  /** Its place as text, to tell two points in one place. */
  readonly place: string | undefined;
};

export type PanelSketch = {
  readonly path: JsonPath;
  readonly id: string | undefined;
  readonly name: string | undefined;
  /** Null where it is said to have none, undefined where nothing is said. */
  readonly mirror: Word | null | undefined;
  readonly also: readonly Word[];
  readonly points: readonly PointSketch[];
  readonly hasBothPointKeys: boolean;
  readonly after: Word | undefined;
};

export type TemplateSketch = {
  readonly keys: ReadonlySet<string>;
  readonly base: Word | undefined;
  readonly remove: readonly Word[];
  readonly changes: readonly PanelSketch[];
  readonly added: readonly PanelSketch[];
  readonly panels: readonly PanelSketch[];
};

type Tree = Readonly<Record<string, unknown>>;

export function sketchTemplate(value: unknown): TemplateSketch {
  const file = tree(value);
  const changes = tree(file['change']);
  return {
    keys: new Set(Object.keys(file)),
    base: word(file['base'], ['base']),
    remove: words(file['remove'], ['remove']),
    changes: Object.entries(changes).map(([id, change]) => ({
      ...sketchPanel(change, ['change', id]),
      id,
    })),
    added: list(file['add']).map((panel, i) => sketchPanel(panel, ['add', i])),
    panels: list(file['panels']).map((panel, i) => sketchPanel(panel, ['panels', i])),
  };
}

function sketchPanel(value: unknown, path: JsonPath): PanelSketch {
  const panel = tree(value);
  return {
    path,
    id: textOf(panel['id']),
    name: textOf(panel['name']),
    mirror: panel['mirror'] === null ? null : word(panel['mirror'], [...path, 'mirror']),
    also: words(panel['also'], [...path, 'also']),
    points: list(panel['points']).map((point, i) => sketchPoint(point, [...path, 'points', i])),
    hasBothPointKeys: 'points' in panel && 'point_count' in panel,
    after: word(panel['after'], [...path, 'after']),
  };
}

function sketchPoint(value: unknown, path: JsonPath): PointSketch {
  const { point, u, v } = tree(value);
  return {
    path,
    name: typeof point === 'number' ? String(point) : textOf(point),
    place: typeof u === 'number' && typeof v === 'number' ? `${u} ${v}` : undefined,
  };
}

/** A panel of the base as it stands after a change, told of at the change. */
export const changedSketch = (
  { id, name, mirror, also = [] }: Panel,
  change: PanelSketch | undefined,
): PanelSketch => {
  const path = change?.path ?? ['base'];
  const at = (text: string): Word => ({ text, path });
  const asBefore = mirror === null ? null : at(mirror);
  return {
    path,
    id,
    name: change?.name ?? name,
    mirror: change?.mirror === undefined ? asBefore : change.mirror,
    also: change === undefined || change.also.length === 0 ? also.map(at) : change.also,
    points: change?.points ?? [],
    hasBothPointKeys: change?.hasBothPointKeys ?? false,
    after: undefined,
  };
};

/** The panels that the file comes to: its own, or those of the base with what it changes. */
export function panelsInAll(
  { panels, remove, changes, added }: TemplateSketch,
  base: VehicleTemplate | undefined,
): readonly PanelSketch[] {
  if (base === undefined) return [...panels, ...added];
  const gone = new Set(remove.map(({ text }) => text));
  const kept = base.panels
    .filter(({ id }) => !gone.has(id))
    .map((panel) => {
      const mirror = panel.mirror !== null && gone.has(panel.mirror) ? null : panel.mirror;
      return changedSketch(
        { ...panel, mirror },
        changes.find(({ id }) => id === panel.id),
      );
    });
  return [...kept, ...added];
}

const tree = (value: unknown): Tree =>
  typeof value === 'object' && value !== null && !Array.isArray(value) ? (value as Tree) : {};
const list = (value: unknown): readonly unknown[] => (Array.isArray(value) ? value : []);
const textOf = (value: unknown): string | undefined =>
  typeof value === 'string' ? value : undefined;
const word = (value: unknown, path: JsonPath): Word | undefined =>
  typeof value === 'string' ? { text: value, path } : undefined;
const words = (value: unknown, path: JsonPath): readonly Word[] =>
  list(value).flatMap((text, i) => word(text, [...path, i]) ?? []);
