import { expect, test } from 'vitest';
import { panelMatcher, panelRecogniser } from '../../src/film/template/panel-names.ts';
import { bestTemplate } from '../../src/film/template/template-fit.ts';
import { plainPanel, plainTemplate } from './car-builder.ts';

const german = plainTemplate(
  plainPanel('bonnet', { also: ['Mootorikate', 'esikate'] }),
  plainPanel('door-front-left', { also: ['Uks ees vasakul'] }),
  plainPanel('roof'),
);
const matched = (label: string) => {
  const answer = panelMatcher(german)(label);
  return answer.kind === 'match' ? answer.panel.id : answer.kind;
};

test('a panel is known by the other labels its template gives, however they are joined or capped', () => {
  expect(matched('Mootorikate')).toBe('bonnet');
  expect(matched('MOOTORIKATE ')).toBe('bonnet');
  expect(matched('esikate')).toBe('bonnet');
  expect(matched('uks_ees_vasakul')).toBe('door-front-left');
});

test('the words of the trade still mean what they mean', () => {
  expect(matched('hood')).toBe('bonnet');
  expect(matched('Veermik')).toBe('unknown');
});

test('a template that gives the labels is the one that fits them', () => {
  const plain = { ...plainTemplate(plainPanel('bonnet'), plainPanel('roof')), id: 'other' };
  expect(bestTemplate(['Mootorikate', 'Uks ees vasakul'], [plain, german])?.template.id).toBe(
    'plain',
  );
  expect(panelRecogniser([plain])('Mootorikate')).toBe(false);
  expect(panelRecogniser([plain, german])('Mootorikate')).toBe(true);
});

test('a template read from a file goes before built-in ones that fit as well', () => {
  const plain = plainTemplate(plainPanel('bonnet'), plainPanel('roof'));
  const own = { ...plain, id: 'own', origin: { file: 'own.json', base: null, own: [] } };
  const larger = { ...plainTemplate(plainPanel('bonnet'), plainPanel('roof')), id: 'larger' };
  const best = bestTemplate(['bonnet', 'roof'], [plain, larger, own]);
  expect(best?.template.id).toBe('own');
  expect(best?.tied.map(({ id }) => id)).toEqual(['plain', 'larger']);
});

test('an id or a name goes before another panel’s other label', () => {
  const odd = plainTemplate(plainPanel('lid', { also: ['roof'] }), plainPanel('roof'));
  expect(panelMatcher(odd)('roof')).toMatchObject({ kind: 'match', panel: { id: 'roof' } });
});
