import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { unusualThings } from '../../../src/film/template/unusual-template.ts';
import { templateRules } from '../../../src/formats/data/template-defaults.ts';
import { builtInTemplates } from '../../../src/formats/data/templates.ts';
import { readTemplate } from '../../../src/formats/template/template.ts';

const written = (value: object): string =>
  JSON.stringify({ schema: 'leastcut/template/1', name: 'ours', ...value }, null, 2);

const read = (value: object) =>
  readTemplate('ours/Two door.json', written(value), builtInTemplates);

const template = (value: object) => {
  const { value: file, diagnostics } = read(value);
  if (file === undefined) throw new Error(JSON.stringify(diagnostics));
  return file.template;
};

/** What is said of a file that is refused, each with its hint and the line it points at. */
const complaints = (value: object) =>
  read(value).diagnostics.map(({ message, hint, at }) => ({
    message,
    hint,
    line: at?.lineText?.trim(),
  }));

const panel = (id: string, rest: object = {}) => ({
  id,
  name: id.replaceAll('-', ' '),
  area_m2: 1,
  substrate: 'steel',
  facing: 'vertical',
  flat_width_mm: 300,
  trim_m: 3,
  ...rest,
});

const panelOf = (of: ReturnType<typeof template>, id: string) => {
  const found = of.panels.find((one) => one.id === id);
  if (found === undefined) throw new Error(`no panel ${id}`);
  return found;
};

describe('a template file in full', () => {
  test('gives its panels in the order they are written, each with what it says', () => {
    const bus = template({
      panels: [
        panel('nose', {
          substrate: 'composite',
          also: ['Bug'],
          points: [
            { point: 'a', u: 0.25, v: 0.5 },
            { point: 2, u: 0.75, v: 0.5 },
          ],
          spans: ['width', 'height'],
        }),
        panel('side-left', { mirror: 'side-right', point_count: 9 }),
        panel('side-right', { mirror: 'side-left' }),
      ],
      length_m: 6.1,
    });
    expect(bus).toMatchObject({ name: 'ours', size: { length: 6.1 } });
    expect(bus.panels.map(({ id }) => id)).toEqual(['nose', 'side-left', 'side-right']);
    expect(panelOf(bus, 'nose')).toEqual({
      id: 'nose',
      name: 'nose',
      area: 1,
      substrate: 'composite',
      facing: 'vertical',
      mirror: null,
      flatWidth: 300,
      trimLength: 3,
      also: ['Bug'],
      spans: ['width', 'height'],
      points: [
        { point: 'a', u: 0.25, v: 0.5 },
        { point: '2', u: 0.75, v: 0.5 },
      ],
    });
    expect(panelOf(bus, 'side-left')).toMatchObject({ mirror: 'side-right' });
    expect(panelOf(bus, 'side-left').points).toHaveLength(9);
  });

  test('has five points as on a die on a panel that says nothing of points', () => {
    expect(template({ panels: [panel('lid')] }).panels[0]?.points).toEqual([
      { point: '1', u: 0.2, v: 0.2 },
      { point: '2', u: 0.8, v: 0.2 },
      { point: '3', u: 0.5, v: 0.5 },
      { point: '4', u: 0.2, v: 0.8 },
      { point: '5', u: 0.8, v: 0.8 },
    ]);
  });

  test('is called by its id, or by the name of its file', () => {
    expect(template({ panels: [panel('lid')] }).id).toBe('Two-door');
    expect(template({ id: 'bus', panels: [panel('lid')] }).id).toBe('bus');
  });

  test('knows the line on which it speaks of a panel', () => {
    const { value } = read({ panels: [panel('lid'), panel('nose')] });
    expect(value?.placeOfPanel('nose')?.lineText).toContain('"id": "nose"');
    const changed = read({
      base: 'saloon',
      change: { roof: { area_m2: 2 } },
      add: [panel('scoop')],
    }).value;
    expect(changed?.placeOfPanel('roof')?.lineText).toContain('"roof": {');
    expect(changed?.placeOfPanel('scoop')?.lineText).toContain('"id": "scoop"');
    expect(changed?.placeOfPanel('boot')?.lineText).toContain('"base": "saloon"');
  });
});

describe('a template file that changes a built-in one', () => {
  test('makes a two-door of a saloon', () => {
    const coupe = template({
      base: 'saloon',
      remove: ['door-rear-left', 'door-rear-right'],
      change: { 'door-front-left': { area_m2: 1.1 }, 'door-front-right': { area_m2: 1.1 } },
    });
    const saloon = builtInTemplates.find(({ id }) => id === 'saloon');
    expect(coupe.panels.map(({ id }) => id)).toEqual(
      saloon?.panels.map(({ id }) => id).filter((id) => !id.startsWith('door-rear')),
    );
    const door = saloon?.panels.find(({ id }) => id === 'door-front-left');
    expect(panelOf(coupe, 'door-front-left')).toEqual({ ...door, area: 1.1 });
    expect(panelOf(coupe, 'bonnet')).toEqual(saloon?.panels.find(({ id }) => id === 'bonnet'));
    expect(coupe.origin).toEqual({
      file: 'ours/Two door.json',
      base: 'saloon',
      own: ['door-front-left', 'door-front-right'],
    });
  });

  test('makes an estate of a saloon: a longer roof, and a tailgate where the boot lid was', () => {
    const estate = template({
      base: 'saloon',
      remove: ['boot'],
      change: { roof: { area_m2: 2.3 } },
      add: [panel('tailgate', { after: 'quarter-right', spans: ['width', 'height'] })],
    });
    const ids = estate.panels.map(({ id }) => id);
    expect(ids).not.toContain('boot');
    expect(ids[ids.indexOf('tailgate') - 1]).toBe('quarter-right');
    expect(panelOf(estate, 'roof').area).toBe(2.3);
  });

  test('makes a convertible of a coupé: what is of cloth goes', () => {
    const convertible = template({ base: 'coupe', remove: ['roof', 'rail-left', 'rail-right'] });
    expect(convertible.panels).toHaveLength(14);
  });

  test('puts a new panel behind the one it names, else at the end', () => {
    const ids = (add: object[]) => template({ base: 'saloon', add }).panels.map(({ id }) => id);
    expect(ids([panel('scoop', { after: 'bonnet' })]).slice(0, 2)).toEqual(['bonnet', 'scoop']);
    expect(ids([panel('spoiler')]).at(-1)).toBe('spoiler');
    const two = ids([panel('scoop', { after: 'bonnet' }), panel('vent', { after: 'scoop' })]);
    expect(two.slice(0, 3)).toEqual(['bonnet', 'scoop', 'vent']);
  });

  test('leaves the panel standing alone whose other side it removes', () => {
    const van = template({ base: 'hatch', remove: ['door-rear-left'] });
    expect(panelOf(van, 'door-rear-right').mirror).toBeNull();
  });

  test('grows with the size it states, before its own areas are put in', () => {
    const long = template({
      base: 'saloon',
      length_m: 5.17,
      change: { roof: { area_m2: 2.5 } },
    });
    // A saloon is 4.7 m: 5.17 is 1.1 times that.
    expect(panelOf(long, 'bonnet').area).toBeCloseTo(1.6 * 1.1, 12);
    expect(panelOf(long, 'roof').area).toBe(2.5);
    expect(long.size).toEqual({ length: 5.17, width: 1.83, height: 1.45 });
  });
});

describe('what is wrong with a template file', () => {
  test.each([
    [
      'base',
      { base: 'salon' },
      '"base" is "salon", and there is no built-in template of that name',
      'did you mean "saloon"?',
    ],
    [
      'remove',
      { base: 'saloon', remove: ['bonet'] },
      'saloon has no panel "bonet"',
      'did you mean "bonnet"?',
    ],
    [
      'change',
      { base: 'saloon', change: { bonet: {} } },
      'saloon has no panel "bonet"',
      'did you mean "bonnet"?',
    ],
    [
      'after',
      { base: 'saloon', add: [panel('scoop', { after: 'bonet' })] },
      'saloon has no panel "bonet"',
      'did you mean "bonnet"?',
    ],
    [
      'remove and change',
      { base: 'saloon', remove: ['roof'], change: { roof: { trim_m: 1 } } },
      '"roof" is both removed and changed',
      'keep one',
    ],
    [
      'removed twice',
      { base: 'saloon', remove: ['roof', 'roof'] },
      '"roof" is removed twice',
      undefined,
    ],
    [
      'both forms',
      { base: 'saloon', panels: [panel('lid')] },
      'a template has either "panels" or "base", not both',
      'with "base", new panels stand in "add"',
    ],
    [
      'neither form',
      {},
      'the template has no panels',
      'list them in "panels", or name a built-in template with "base": "saloon"',
    ],
    [
      'changes to nothing',
      { remove: ['roof'] },
      '"remove" changes a built-in template, and no "base" names one',
      'for example "base": "saloon"',
    ],
    ['no panels', { panels: [] }, 'no panel is left', undefined],
    [
      'id twice',
      { panels: [panel('lid'), panel('lid', { name: 'other' })] },
      '"lid" names two panels',
      'a file that says it would not be understood: give each panel its own',
    ],
    [
      'id of the base again',
      { base: 'saloon', add: [panel('roof', { name: 'top' })] },
      '"roof" names two panels',
      'a file that says it would not be understood: give each panel its own',
    ],
    [
      'name twice',
      { panels: [panel('a', { name: 'Lid' }), panel('b', { name: 'lid' })] },
      '"lid" names two panels',
      'a file that says it would not be understood: give each panel its own',
    ],
    [
      'other label twice',
      { panels: [panel('a', { also: ['Klappe'] }), panel('b', { also: ['klappe'] })] },
      '"klappe" names two panels',
      'a file that says it would not be understood: give each panel its own',
    ],
    [
      'mirror that is not there',
      { panels: [panel('side-left', { mirror: 'side-rigth' }), panel('side-right')] },
      'the mirror "side-rigth" is no panel of this template',
      'did you mean "side-right"?',
    ],
    [
      'mirror that is not mutual',
      { panels: [panel('side-left', { mirror: 'side-right' }), panel('side-right')] },
      'the mirror of "side-left" is "side-right", which itself has none',
      'in "side-right" write "mirror": "side-left"',
    ],
    [
      'its own mirror',
      { panels: [panel('lid', { mirror: 'lid' })] },
      '"lid" is its own mirror',
      'leave "mirror" out',
    ],
    [
      'mirror unset on one side',
      { base: 'saloon', change: { 'sill-left': { mirror: null } } },
      'the mirror of "sill-right" is "sill-left", which itself has none',
      'in "sill-left" write "mirror": "sill-right"',
    ],
    [
      'area of nothing',
      { panels: [panel('lid', { area_m2: 0 })] },
      '"panels[0].area_m2" is 0; it takes an area in m², above 0 and at most 8',
      undefined,
    ],
    [
      'area of a wall',
      { panels: [panel('lid', { area_m2: 8.1 })] },
      '"panels[0].area_m2" is 8.1; it takes an area in m², above 0 and at most 8',
      undefined,
    ],
    [
      'point outside',
      { panels: [panel('lid', { points: [{ point: '1', u: 20, v: 0 }] })] },
      '"panels[0].points[0].u" is 20; it takes a number from 0 to 1',
      'it is a share of the panel: 20 % is 0.2',
    ],
    [
      'point name twice',
      {
        panels: [
          panel('lid', {
            points: [
              { point: '1', u: 0.1, v: 0.2 },
              { point: 1, u: 0.3, v: 0.2 },
            ],
          }),
        ],
      },
      'the point "1" is there twice',
      'give each its own name',
    ],
    [
      'two points in one place',
      {
        panels: [
          panel('lid', {
            points: [
              { point: '1', u: 0.1, v: 0.2 },
              { point: '2', u: 0.1, v: 0.2 },
            ],
          }),
        ],
      },
      'two points lie in the same place',
      undefined,
    ],
    [
      'points and their count',
      { panels: [panel('lid', { point_count: 5, points: [{ point: '1', u: 0.1, v: 0.2 }] })] },
      'a panel has either "points" or "point_count", not both',
      undefined,
    ],
    [
      'width in metres',
      { panels: [panel('lid', { flat_width_mm: 0.4 })] },
      '"panels[0].flat_width_mm" is 0.4; it takes a number from 10 to 3000',
      '0.4 m is 400 mm',
    ],
    [
      'length in millimetres',
      { base: 'saloon', length_m: 4700 },
      '"length_m" is 4700; it takes a number from 1 to 12',
      '4700 mm is 4.7 m',
    ],
    [
      'a saloon of nine metres',
      { base: 'saloon', length_m: 9 },
      '"length_m" is 9; a vehicle like the saloon template is 2.82 to 7.52 m',
      'state it in metres, or choose another template',
    ],
  ])('%s: one sentence and a way out', (_, value, message, hint) => {
    const [first, ...more] = complaints(value);
    expect(first).toMatchObject({ message });
    expect(first?.hint).toBe(hint);
    expect(more).toEqual([]);
  });

  test('an area in square feet is sent to its key in m²', () => {
    const { area_m2: _, ...rest } = panel('lid');
    expect(complaints({ panels: [{ ...rest, area_ft2: 11 }] })[0]).toMatchObject({
      message: 'the key "area_ft2" means nothing here',
      line: '"area_ft2": 11',
    });
  });

  test('is told all at once, in the order of the file', () => {
    const said = complaints({
      panels: [
        panel('a', { area_m2: -1, mirror: 'z' }),
        panel('b', { substrate: 'tin', points: [{ point: '1', u: 2, v: 0 }] }),
        panel('b', { name: 'again' }),
      ],
    });
    expect(said.map(({ message }) => message)).toEqual([
      '"panels[0].area_m2" is -1; it takes an area in m², above 0 and at most 8',
      'the mirror "z" is no panel of this template',
      expect.stringContaining('"panels[1].substrate" is "tin"'),
      '"panels[1].points[0].u" is 2; it takes a number from 0 to 1',
      '"b" names two panels',
    ]);
  });

  test('of an unknown base does not hide what is wrong with its points', () => {
    const point = { point: '1', u: 0.2, v: 0.2 };
    const said = complaints({
      base: 'salon',
      change: { roof: { points: [point, { ...point, u: 0.4 }] } },
    });
    expect(said.map(({ message }) => message)).toEqual([
      '"base" is "salon", and there is no built-in template of that name',
      'the point "1" is there twice',
    ]);
  });

  test('that is of another kind is only that', () => {
    const { diagnostics } = readTemplate(
      'job.json',
      '{"schema": "leastcut/job/1"}',
      builtInTemplates,
    );
    expect(diagnostics.map(({ code }) => code)).toEqual(['settings-schema']);
  });

  test('points at the panel a repeat stands in', () => {
    const [said] = complaints({ panels: [panel('lid'), panel('lid', { name: 'other' })] });
    expect(said?.line).toBe('"id": "lid",');
  });
});

describe('the built-in templates, written as files', () => {
  test.each(builtInTemplates.map((one) => [one.id, one] as const))(
    '%s is read back as it is, with nothing wrong and nothing unusual',
    (_, one) => {
      const file = written({
        id: one.id,
        name: one.name,
        length_m: one.size?.length,
        width_m: one.size?.width,
        height_m: one.size?.height,
        panels: one.panels.map(({ area, flatWidth, trimLength, ...same }) => ({
          ...same,
          area_m2: area,
          flat_width_mm: flatWidth,
          trim_m: trimLength,
        })),
      });
      const { value, diagnostics } = readTemplate('own.json', file, []);
      expect(diagnostics).toEqual([]);
      const { origin: _origin, ...template } = value?.template ?? {};
      expect(template).toEqual(one);
      expect(unusualThings(one, builtInTemplates, templateRules)).toEqual([]);
    },
  );
});

test('whatever a template file holds, it is read or refused, and every fault has its line', () => {
  const keys = ['base', 'remove', 'change', 'add', 'panels', 'length_m', 'id'];
  const value = fc.oneof(fc.jsonValue(), fc.constantFrom('saloon', ['roof'], { roof: {} }));
  fc.assert(
    fc.property(fc.dictionary(fc.constantFrom(...keys), value), (file) => {
      const { value: made, diagnostics } = readTemplate('x.json', written(file), builtInTemplates);
      expect(made === undefined).toBe(diagnostics.length > 0);
      for (const { at } of diagnostics) expect(at?.line).toBeGreaterThan(0);
    }),
  );
});
