import { describe, expect, test } from 'vitest';
import { metres, squareMetres } from '../../../src/base/units.ts';
import type { Panel } from '../../../src/film/template/template.ts';
import { unusualThings } from '../../../src/film/template/unusual-template.ts';
import { templateRules } from '../../../src/formats/data/template-defaults.ts';
import { builtInTemplates } from '../../../src/formats/data/templates.ts';
import { plainPanel, plainTemplate } from '../car-builder.ts';

const said = (...panels: readonly Panel[]): readonly string[] =>
  unusualThings(plainTemplate(...panels), builtInTemplates, templateRules).map(({ text }) => text);

const doors = (left: Partial<Panel>, right: Partial<Panel> = left) =>
  said(
    plainPanel('door-front-left', { mirror: 'door-front-right', ...left }),
    plainPanel('door-front-right', { mirror: 'door-front-left', ...right }),
  );

describe('what is unusual about a template', () => {
  test.each(builtInTemplates.map((one) => [one.id, one] as const))(
    'is nothing on the built-in %s',
    (_, one) => {
      expect(unusualThings(one, builtInTemplates, templateRules)).toEqual([]);
    },
  );

  test('is a door of 3 m²', () => {
    expect(doors({ area: squareMetres(3) })).toEqual([
      'door front left: area 3.00 m²; built-in panels of its kind have 0.55 to 1.10 m²',
      'door front right: area 3.00 m²; built-in panels of its kind have 0.55 to 1.10 m²',
    ]);
  });

  test('is not a door twice the largest, nor one half the smallest', () => {
    expect(doors({ area: squareMetres(2.2) })).toEqual([]);
    expect(doors({ area: squareMetres(0.28) })).toEqual([]);
    expect(doors({ area: squareMetres(0.27) })).toHaveLength(2);
  });

  test('is a door with 20 m of trim', () => {
    expect(doors({ trimLength: metres(20) })[0]).toContain('door front left: trim 20.0 m;');
  });

  test('is a left panel without its right one', () => {
    expect(said(plainPanel('wing-front-left'))).toEqual([
      'wing front left: a left panel without its right one',
    ]);
    expect(said(plainPanel('wing-front-right'))).toEqual([
      'wing front right: a right panel without its left one',
    ]);
  });

  test('is told with its kind, its panel and what to look at', () => {
    const template = plainTemplate(
      plainPanel('door-front-left', { mirror: 'door-front-right', area: squareMetres(0.8) }),
      plainPanel('door-front-right', { mirror: 'door-front-left', area: squareMetres(0.9) }),
    );
    const [found, ...others] = unusualThings(template, builtInTemplates, templateRules);
    expect(others).toEqual([]);
    expect(found).toMatchObject({
      code: 'sides',
      panel: 'door-front-left',
      hint: 'the two sides of a vehicle are mostly alike',
    });
  });

  test('is a left panel much smaller than its right one', () => {
    expect(doors({ area: squareMetres(0.8) }, { area: squareMetres(0.9) })).toEqual([
      'door front left: 0.80 m², and door front right 0.90 m²',
    ]);
    expect(doors({ area: squareMetres(0.85) }, { area: squareMetres(0.9) })).toEqual([]);
  });

  test('is told of the side of which the file speaks', () => {
    const pair = plainTemplate(
      plainPanel('door-front-left', { mirror: 'door-front-right', area: squareMetres(0.8) }),
      plainPanel('door-front-right', { mirror: 'door-front-left', area: squareMetres(0.9) }),
    );
    const told = (own: readonly string[]) =>
      unusualThings(
        { ...pair, origin: { file: 'own.json', base: 'saloon', own } },
        builtInTemplates,
        templateRules,
      ).map(({ panel }) => panel);
    expect(told(['door-front-left'])).toEqual(['door-front-left']);
    expect(told(['door-front-right'])).toEqual(['door-front-right']);
  });

  test('is fewer points than say anything, more than help, and a point at the edge', () => {
    const at = (count: number) =>
      Array.from({ length: count }, (_, i) => ({
        point: `${i}`,
        u: 0.5,
        v: (i + 1) / (count + 2),
      }));
    const scoop = (points: Panel['points']) => said(plainPanel('scoop', { points }));
    expect(scoop(at(2))).toEqual(['scoop: 2 of at least 3 points']);
    expect(scoop(at(10))).toEqual(['scoop: 10 points']);
    expect(scoop([...at(4), { point: 'x', u: 0.01, v: 0.5 }])).toEqual([
      'scoop: point x at the edge',
    ]);
    expect(scoop(at(9))).toEqual([]);
  });

  test('is no size of a panel whose kind nobody knows', () => {
    expect(said(plainPanel('scoop', { area: squareMetres(7) }))).toEqual([]);
  });
});
