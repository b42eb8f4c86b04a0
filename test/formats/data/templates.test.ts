import { describe, expect, it } from 'vitest';
import type { Panel, VehicleTemplate } from '../../../src/film/template/template.ts';
import { builtInTemplates, templateBasis } from '../../../src/formats/data/templates.ts';

const total = (template: VehicleTemplate, of: (panel: Panel) => number): number =>
  template.panels.reduce((sum, panel) => sum + of(panel), 0);

const ids = (template: VehicleTemplate): readonly string[] => template.panels.map(({ id }) => id);

const template = (id: string): VehicleTemplate => {
  const one = builtInTemplates.find((candidate) => candidate.id === id);
  if (one === undefined) throw new Error(`no template ${id}`);
  return one;
};

const panel = (of: string, id: string): Panel => {
  const one = template(of).panels.find((candidate) => candidate.id === id);
  if (one === undefined) throw new Error(`no panel ${id} on ${of}`);
  return one;
};

describe('the built-in vehicle templates', () => {
  // Totals of the working table the areas were derived in (sum of simple shapes, ±25 %), m².
  it.each([
    ['supermini', 10.5],
    ['hatch', 12.5],
    ['saloon', 13.6],
    ['estate', 14.4],
    ['coupe', 12.1],
    ['mid-suv', 15.3],
    ['double-cab-pickup', 14.9],
    ['medium-van', 23.8],
  ])('add up to the painted area stated for a %s: %d m²', (id, stated) => {
    expect(Math.abs(total(template(id), ({ area }) => area) - stated)).toBeLessThanOrEqual(0.051);
  });

  it('are these eight, in this order', () => {
    expect(builtInTemplates.map(({ id }) => id)).toEqual([
      'supermini',
      'hatch',
      'saloon',
      'estate',
      'coupe',
      'mid-suv',
      'double-cab-pickup',
      'medium-van',
    ]);
  });

  it('keep the roof of a hatchback within what was published for usable car roofs', () => {
    // Fraunhofer ISE, vehicle-integrated photovoltaics, EU PVSEC 2020: 1.7 to 2.0 m².
    expect(panel('hatch', 'roof').area).toBeGreaterThanOrEqual(1.7);
    expect(panel('hatch', 'roof').area).toBeLessThanOrEqual(2);
  });

  it('give each side half of what a pair of panels has together', () => {
    expect(panel('saloon', 'quarter-left').area).toBe(1);
    expect(panel('supermini', 'sill-right').area).toBe(0.175);
    expect(panel('medium-van', 'side-left').area).toBe(4.75);
  });

  it('walk round a saloon clockwise from the bonnet and end on the roof', () => {
    expect(ids(template('saloon'))).toEqual([
      'bonnet',
      'wing-front-right',
      'mirror-right',
      'door-front-right',
      'sill-right',
      'door-rear-right',
      'rail-right',
      'quarter-right',
      'boot',
      'bumper-rear',
      'quarter-left',
      'rail-left',
      'door-rear-left',
      'sill-left',
      'door-front-left',
      'mirror-left',
      'wing-front-left',
      'bumper-front',
      'roof',
    ]);
  });

  it('have only the panels their body class has', () => {
    expect(ids(template('coupe')).filter((id) => id.startsWith('door-rear'))).toEqual([]);
    expect(ids(template('medium-van')).filter((id) => id.startsWith('door'))).toEqual([
      'door-front-right',
      'doors-back',
      'door-front-left',
    ]);
    expect(builtInTemplates.filter((one) => ids(one).includes('cab-rear'))).toEqual([
      template('double-cab-pickup'),
    ]);
    expect(ids(template('double-cab-pickup'))).toContain('bedside-left');
    for (const one of builtInTemplates) {
      const closures = ids(one).filter((id) => ['boot', 'tailgate', 'doors-back'].includes(id));
      expect([one.id, closures.length]).toEqual([one.id, 1]);
    }
  });

  it('name plastic where gauges for metal read nothing: bumpers and mirrors, and no other panel', () => {
    for (const { panels } of builtInTemplates) {
      for (const { id, substrate } of panels) {
        const expected = /^(bumper|mirror)-/.test(id) ? 'plastic' : 'steel';
        expect([id, substrate]).toEqual([id, expected]);
      }
    }
  });

  it('lay a boot lid flat and stand a tailgate upright', () => {
    expect(panel('saloon', 'boot').facing).toBe('horizontal');
    expect(panel('estate', 'tailgate').facing).toBe('vertical');
    expect(panel('medium-van', 'doors-back').facing).toBe('vertical');
    expect(panel('hatch', 'sill-left').facing).toBe('low');
  });

  it('call panels by British words', () => {
    expect(panel('hatch', 'wing-front-left').name).toBe('front left wing');
    expect(panel('hatch', 'quarter-left').name).toBe('left quarter');
  });

  describe.each(builtInTemplates.map((one) => [one.id, one] as const))('%s', (_, one) => {
    it('has unique panel ids and names', () => {
      expect(new Set(ids(one)).size).toBe(one.panels.length);
      expect(new Set(one.panels.map(({ name }) => name)).size).toBe(one.panels.length);
    });

    it('pairs left with right both ways, alike but for the side', () => {
      const paired = one.panels.filter(({ mirror }) => mirror !== null);
      expect(paired.length).toBe(one.panels.filter(({ id }) => /-(left|right)$/.test(id)).length);
      for (const { id, mirror, name, points, ...traits } of paired) {
        const other = one.panels.find((candidate) => candidate.id === mirror);
        expect(other).toMatchObject({ mirror: id, ...traits });
        expect(mirror).not.toBe(id);
      }
    });

    it('keeps measuring points a good way from the edges, each with its own name', () => {
      for (const { id, points } of one.panels) {
        const expected = /^(sill|mirror|rail)-/.test(id) ? 3 : 5;
        expect([id, points.length]).toEqual([id, expected]);
        expect(new Set(points.map(({ point }) => point)).size).toBe(points.length);
        for (const { u, v } of points) {
          expect(Math.min(u, v)).toBeGreaterThanOrEqual(0.12);
          expect(Math.max(u, v)).toBeLessThanOrEqual(0.88);
        }
      }
    });

    it('needs between 35 and 50 m of tape in all, and some on every panel', () => {
      // Sum of edge lengths of rubbers, trim, lamps and badges: 35 to 50 m a car.
      const tape = total(one, ({ trimLength }) => trimLength);
      expect(tape).toBeGreaterThanOrEqual(35);
      expect(tape).toBeLessThanOrEqual(50);
      expect(Math.min(...one.panels.map(({ trimLength }) => trimLength))).toBeGreaterThan(0);
    });

    it('has wide flats on wings and doors, and narrow ones on sills, mirrors and rails', () => {
      for (const { id, flatWidth } of one.panels) {
        if (/^(wing|door)/.test(id)) expect(flatWidth).toBeGreaterThanOrEqual(300);
        if (/^(sill|mirror|rail)/.test(id)) expect(flatWidth).toBeLessThanOrEqual(100);
      }
    });
  });

  it('say of every number that it is derived or assumed, never that it was published', () => {
    const bases = [templateBasis, ...Object.values(templateBasis.fields)];
    expect(new Set(bases.map(({ basis }) => basis))).toEqual(new Set(['derived', 'assumption']));
    expect(bases.filter(({ source }) => source.length < 20)).toEqual([]);
  });
});
