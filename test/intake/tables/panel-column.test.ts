import { expect, test } from 'vitest';
import { briefs, read, values } from '../helpers.ts';

test('a column whose every cell names a panel is that of the panels, whatever it is called', () => {
  const text = (heading: string) => `${heading};Reading µm\nbonnet;104\nroof;111\n`;
  for (const heading of ['Label', 'Pos.', 'Where'])
    expect(values(text(heading))?.map(([panel]) => panel)).toEqual(['bonnet', 'roof']);
  expect(read(text('Label')).value?.decisions.evidence).toContain(
    '"Label" is the column of panels: each of its cells names one',
  );
});

test('a column without a name can be that of the panels', () => {
  expect(values(';Reading µm\nbonnet;104\nroof;111\n')).toHaveLength(2);
});

test('one cell that names no panel leaves the column unknown', () => {
  const text = 'Label;Reading µm\nbonnet;104\nsomething;111\n';
  expect(briefs(text)).toEqual(['1:1+5 error column-missing']);
});

test('a row of readings is no row of names', () => {
  expect(values('bonnet;1;104;µm\nbonnet;2;106;µm\nroof;1;111;µm\n')).toHaveLength(3);
});
