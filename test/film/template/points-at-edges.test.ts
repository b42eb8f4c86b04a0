import { expect, test } from 'vitest';
import { unusualThings } from '../../../src/film/template/unusual-template.ts';
import { templateRules } from '../../../src/formats/data/template-defaults.ts';
import { builtInTemplates } from '../../../src/formats/data/templates.ts';
import { plainPanel, plainTemplate } from '../car-builder.ts';

test('points are unusually near to an edge from nearer than the line on, from either side and either way', () => {
  const { edge } = templateRules.unusual;
  const told = (u: number, v: number): number => {
    const points = [1, 2, 3].map((n) => ({ point: `${n}`, u: n / 4, v: 0.5 }));
    const panel = plainPanel('panel', { points: [...points, { point: '4', u, v }] });
    return unusualThings(plainTemplate(panel), builtInTemplates, templateRules).length;
  };
  const usual = told(0.5, 0.5);
  const [near, far] = [edge, 1 - edge];
  for (const at of [near, far]) {
    expect([at, told(at, 0.5) - usual, told(0.5, at) - usual]).toEqual([at, 0, 0]);
  }
  for (const at of [near - 1e-6, far + 1e-6]) {
    expect([at, told(at, 0.5) - usual, told(0.5, at) - usual]).toEqual([at, 1, 1]);
  }
});
