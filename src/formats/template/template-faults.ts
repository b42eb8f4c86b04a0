/** What is wrong with a template file beyond the kind of each value: names that do not add up. */
import { suggest } from '../../base/did-you-mean.ts';
import { groupBy } from '../../base/group-by.ts';
import { metres } from '../../base/units.ts';
import type { Dimension, VehicleTemplate } from '../../film/template/template.ts';
import type { TemplateRules } from '../data/template-defaults.ts';
import type { JsonPath } from '../json/json-text.ts';
import { quoted } from '../json/shorten.ts';
import { implausibleDimensions } from './plausible-size.ts';
import { measure } from './template-schema.ts';
import {
  type PanelSketch,
  panelsInAll,
  sketchTemplate,
  type TemplateSketch,
  type Word,
} from './template-sketch.ts';

export type TemplateFault = {
  readonly path: JsonPath;
  readonly what?: 'key' | 'value';
  readonly message: string;
  readonly hint?: string | undefined;
};

export function templateFaults(
  value: unknown,
  builtIn: readonly VehicleTemplate[],
  rules: TemplateRules,
): readonly TemplateFault[] {
  const sketch = sketchTemplate(value);
  const base = builtIn.find(({ id }) => id === sketch.base?.text);
  if (sketch.base !== undefined && base === undefined) {
    // Nothing can be said of how its panels go with those of a base that nobody knows.
    const said = [...sketch.changes, ...sketch.added];
    return [...formFaults(sketch), unknownBase(sketch.base, builtIn), ...said.flatMap(pointFaults)];
  }
  const panels = panelsInAll(sketch, base);
  return [
    ...formFaults(sketch),
    ...(base === undefined
      ? []
      : [...overrideFaults(sketch, base), ...sizeFaults(value, base, rules)]),
    ...(panels.length === 0 && (sketch.keys.has('panels') || base !== undefined)
      ? [{ path: [base === undefined ? 'panels' : 'remove'], message: 'no panel is left' }]
      : []),
    ...repeats(panels, ({ id, path }) => (id === undefined ? [] : [{ text: id, path }]), 'id'),
    ...repeats(panels, labelsOf, 'label'),
    ...mirrorFaults(panels),
    ...panels.flatMap(pointFaults),
  ];
}

/** Either all panels, or a base and changes to it. */
function formFaults({ keys }: TemplateSketch): readonly TemplateFault[] {
  if (keys.has('panels') && keys.has('base')) {
    return [
      {
        path: ['base'],
        what: 'key',
        message: 'a template has either "panels" or "base", not both',
        hint: 'with "base", new panels stand in "add"',
      },
    ];
  }
  if (keys.has('base')) return [];
  const strays = ['remove', 'change', 'add'].filter((key) => keys.has(key));
  if (keys.has('panels') || strays.length > 0) {
    return strays.map((key) => ({
      path: [key],
      what: 'key',
      message: `"${key}" changes a built-in template, and no "base" names one`,
      hint: 'for example "base": "saloon"',
    }));
  }
  return [
    {
      path: [],
      message: 'the template has no panels',
      hint: 'list them in "panels", or name a built-in template with "base": "saloon"',
    },
  ];
}

const unknownBase = ({ text, path }: Word, builtIn: readonly VehicleTemplate[]): TemplateFault => {
  const ids = builtIn.map(({ id }) => id);
  return {
    path,
    message: `"base" is ${quoted(text)}, and there is no built-in template of that name`,
    hint: suggest(text, ids) ?? `one of ${ids.join(', ')}`,
  };
};

function overrideFaults(
  { remove, changes, added }: TemplateSketch,
  base: VehicleTemplate,
): readonly TemplateFault[] {
  const ids = base.panels.map(({ id }) => id);
  const gone = remove.map(({ text }) => text);
  const notThere = (text: string, path: JsonPath, what: 'key' | 'value'): TemplateFault => ({
    path,
    what,
    message: `${base.id} has no panel ${quoted(text)}`,
    hint: suggest(text, ids) ?? `leastcut template show ${base.id} lists its panels`,
  });
  const taken = added.map(({ id }) => id);
  return [
    ...remove.flatMap(({ text, path }, i) => {
      if (!ids.includes(text)) return [notThere(text, path, 'value')];
      return gone.indexOf(text) === i
        ? []
        : [{ path, message: `${quoted(text)} is removed twice` }];
    }),
    ...changes.flatMap(({ id = '', path }) => {
      if (!ids.includes(id)) return [notThere(id, path, 'key' as const)];
      const message = `${quoted(id)} is both removed and changed`;
      return gone.includes(id) ? [{ path, what: 'key' as const, message, hint: 'keep one' }] : [];
    }),
    ...added.flatMap(({ after }) => {
      if (after === undefined || (ids.includes(after.text) && !gone.includes(after.text)))
        return [];
      return taken.includes(after.text) ? [] : [notThere(after.text, after.path, 'value')];
    }),
  ];
}

function sizeFaults(
  value: unknown,
  base: VehicleTemplate,
  rules: TemplateRules,
): readonly TemplateFault[] {
  const stated = (dimension: Dimension) => {
    const said = (value as Record<string, unknown>)[`${dimension}_m`];
    const read = measure.safeParse(said);
    // What is no measure of a vehicle at all is told by the schema.
    return read.success ? { [dimension]: metres(read.data) } : {};
  };
  const size = { ...stated('length'), ...stated('width'), ...stated('height') };
  return implausibleDimensions(base, size, rules).map(({ dimension, message, hint }) => ({
    path: [`${dimension}_m`],
    message: `"${dimension}_m" ${message}`,
    hint,
  }));
}

const labelsOf = ({ name, also, path }: PanelSketch): readonly Word[] => [
  ...(name === undefined ? [] : [{ text: name, path }]),
  ...also,
];

/** A word that names two panels, or one of them twice. */
function repeats(
  panels: readonly PanelSketch[],
  wordsOf: (panel: PanelSketch) => readonly Word[],
  kind: 'id' | 'label',
): readonly TemplateFault[] {
  const words = panels.flatMap((panel) => wordsOf(panel).map((word) => ({ ...word, panel })));
  const plain = ({ text }: Word): string => text.normalize('NFKC').trim().toLowerCase();
  return [...groupBy(words, plain).values()].flatMap(([first, ...again]) =>
    again.map(({ text, path, panel }) => ({
      path: path === panel.path ? [...path, kind === 'id' ? 'id' : 'name'] : path,
      message:
        first?.panel === panel
          ? `${quoted(text)} names this panel twice`
          : `${quoted(text)} names two panels`,
      hint: 'a file that says it would not be understood: give each panel its own',
    })),
  );
}

/** A panel and the one on the other side name each other. */
function mirrorFaults(panels: readonly PanelSketch[]): readonly TemplateFault[] {
  const ids = panels.flatMap(({ id }) => id ?? []);
  // With an id that cannot be read, its partner would be blamed for it.
  if (ids.length < panels.length) return [];
  return panels.flatMap(({ id, mirror }) => {
    if (mirror === null || mirror === undefined) return [];
    const { text, path } = mirror;
    if (text === id) {
      return [{ path, message: `${quoted(text)} is its own mirror`, hint: 'leave "mirror" out' }];
    }
    const other = panels.find((panel) => panel.id === text);
    if (other === undefined) {
      const message = `the mirror ${quoted(text)} is no panel of this template`;
      return [{ path, message, hint: suggest(text, ids) ?? 'leave "mirror" out' }];
    }
    if (other.mirror?.text === id) return [];
    const says = other.mirror ? `has ${quoted(other.mirror.text)}` : 'has none';
    const message = `the mirror of ${quoted(id ?? '')} is ${quoted(text)}, which itself ${says}`;
    return [{ path, message, hint: `in ${quoted(text)} write "mirror": ${quoted(id ?? '')}` }];
  });
}

function pointFaults({ points, path, hasBothPointKeys }: PanelSketch): readonly TemplateFault[] {
  const both: readonly TemplateFault[] = hasBothPointKeys
    ? [
        {
          path: [...path, 'point_count'],
          what: 'key',
          message: 'a panel has either "points" or "point_count", not both',
        },
      ]
    : [];
  return [
    ...both,
    ...points.flatMap((point, i): readonly TemplateFault[] => {
      const before = points.slice(0, i);
      if (point.name !== undefined && before.some(({ name }) => name === point.name)) {
        const message = `the point ${quoted(point.name)} is there twice`;
        return [{ path: [...point.path, 'point'], message, hint: 'give each its own name' }];
      }
      return point.place !== undefined && before.some(({ place }) => place === point.place)
        ? [{ path: point.path, message: 'two points lie in the same place' }]
        : [];
    }),
  ];
}
