import { describe, expect, test } from 'vitest';
import { knownPanel } from '../../../src/film/template/panel-fit.ts';
import { builtInTemplates } from '../../../src/formats/data/templates.ts';

const panels = [
  ...new Map(
    builtInTemplates.flatMap(({ panels: all }) => all.map((one) => [one.id, one])),
  ).values(),
];

describe('what the id and the name of a panel say', () => {
  test.each(panels)('is the same where they are the same words: $id, $name', (panel) => {
    const byName = knownPanel({ ...panel, id: 'x' }).meanings;
    const byId = knownPanel({ ...panel, name: 'x' }).meanings;
    const both = knownPanel(panel).meanings;
    for (const meaning of [...byId, ...byName]) expect(both).toContainEqual(meaning);
    expect(both.length).toBeGreaterThan(0);
  });

  test('is both where they are other words', () => {
    const [bonnet] = panels;
    if (bonnet === undefined) throw new Error('no panel');
    const parts = knownPanel({ ...bonnet, id: 'roof' }).meanings.map(({ part }) => part);
    expect(parts).toEqual(['roof', 'bonnet']);
  });
});
