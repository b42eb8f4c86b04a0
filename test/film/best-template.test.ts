import { describe, expect, it } from 'vitest';
import { bestTemplate } from '../../src/film/template/template-fit.ts';
import { builtInTemplates } from '../../src/formats/data/templates.ts';

const best = (...labels: readonly string[]) => bestTemplate(labels, builtInTemplates);
const sides = (...names: readonly string[]) =>
  names.flatMap((name) => [`left ${name}`, `right ${name}`]);

describe('the best template for a set of panel names', () => {
  it.each(builtInTemplates.map((template) => [template.id, template] as const))(
    'finds the %s by its own panel names, or one with the very same panels',
    (_, template) => {
      const found = best(...template.panels.map(({ name }) => name));
      const equals = [found?.template, ...(found?.tied ?? [])];
      expect(equals).toContain(template);
      expect(found).toMatchObject({
        matched: template.panels.length,
        unmatched: [],
        unlabelled: 0,
      });
    },
  );

  it('knows a saloon by its boot', () => {
    const found = best('hood', 'roof', 'trunk', ...sides('front door', 'rear door', 'fender'));
    expect(found?.template.id).toBe('saloon');
    expect(found?.tied).toEqual([]);
  });

  it('takes the one of middling area when names cannot tell, and says which others it could be', () => {
    const found = best('bonnet', 'roof', 'tailgate', ...sides('front door', 'rear door'));
    expect(found?.template.id).toBe('hatch');
    expect(found?.tied.map(({ id }) => id)).toEqual(['supermini', 'estate', 'mid-suv']);
  });

  it('prefers the fewest panels without a label among templates that match alike', () => {
    expect(best('bonnet', 'boot', 'left door', 'right door')?.template.id).toBe('coupe');
  });

  it('takes no car with two doors where the names are of four, though one of them leaves open which it is', () => {
    const known = builtInTemplates.map((one) => ({ ...one, nearside: 'left' as const }));
    const doors = ['NS door', 'NSR door', 'OS door', 'OSR door'];
    const found = bestTemplate(['bonnet', 'roof', 'tailgate', 'NS wing', ...doors], known);
    expect(found?.template.id).toBe('hatch');
    expect(found?.unmatched).toEqual(['NS door', 'OS door']);
    expect(found?.strange).toBe(0);
  });

  it('knows a van and a pickup by what only they have', () => {
    expect(best('bonnet', 'left side panel', 'rear doors')?.template.id).toBe('medium-van');
    expect(best('bonnet', 'left bedside', 'tailgate')?.template.id).toBe('double-cab-pickup');
  });

  it('names the labels it could not match, and counts a repeated label once', () => {
    const found = best('hood', 'hood', 'trunk', 'spoiler');
    expect(found).toMatchObject({ matched: 2, unmatched: ['spoiler'] });
  });

  it('takes half of the labels for enough and less for none', () => {
    expect(best('bonnet', 'x1')?.matched).toBe(1);
    expect(best('bonnet', 'x1', 'x2')).toBeUndefined();
    expect(best()).toBeUndefined();
    expect(best('x1')).toBeUndefined();
    expect(bestTemplate(['bonnet'], [])).toBeUndefined();
  });

  it('reads nearside and offside once it is said which is which', () => {
    const labels = ['bonnet', 'NSF door', 'OSF door', 'boot'];
    expect(best(...labels)?.matched).toBe(2);
    const known = builtInTemplates.map((one) => ({ ...one, nearside: 'left' as const }));
    expect(bestTemplate(labels, known)?.matched).toBe(4);
  });

  it('ranks all the other templates behind the best', () => {
    const found = best('bonnet', 'left bedside', 'cab rear');
    expect(found?.runnersUp).toHaveLength(builtInTemplates.length - 1);
    const counts = [found?.matched, ...(found?.runnersUp ?? []).map(({ matched }) => matched)];
    expect(counts).toEqual([...counts].sort((a, b) => (b ?? 0) - (a ?? 0)));
  });
});
