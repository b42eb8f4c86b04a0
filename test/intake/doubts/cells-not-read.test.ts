import { expect, test } from 'vitest';
import { briefs } from '../helpers.ts';

const text = (heading: string, cell: string, panel = 'roof') =>
  `panel;point;reading_um;${heading}\n${panel};1;104;\nroof;2;188;${cell}\n`;

test.each([
  ['Quality', 'rejected'],
  ['Error code', 'E07'],
  ['Remark', 'probe lifted'],
])('a cell under %s that speaks against its reading is told', (heading, cell) => {
  expect(briefs(text(heading, cell))).toContain(`3:12+${cell.length} warning reading-doubted`);
});

test('a lone mark in a column that is not read says nothing', () => {
  expect(briefs(text('Painted', 'x')).join()).not.toContain('reading-doubted');
});

test.each(['?????', '\ufffd\ufffd'])('a panel whose name was lost as %s is refused', (panel) => {
  expect(briefs(text('note', '', panel)).join()).toContain('2:1+');
  expect(briefs(text('note', '', panel)).join()).toContain('error character-lost');
});
