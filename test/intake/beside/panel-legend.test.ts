import { expect, test } from 'vitest';
import { read, values } from '../helpers.ts';

const rows = 'Panel,Reading (um)\n1,112\n1,110\n2,99\n';
const panels = (text: string) => values(text)?.map(([panel]) => String(panel).toLowerCase());

test.each([
  '\n1 = bonnet\n2 = roof\n',
  '\n1: Bonnet, 2: Roof\n',
  '\n1 -> bonnet\n2 -> roof\n',
  '\nLegend: 1=bonnet 2=roof\n'.replace(' 2', '; 2'),
])('lines that say what each panel is name them: %j', (legend) => {
  expect(panels(rows + legend)).toEqual(['bonnet', 'bonnet', 'roof']);
  expect(read(rows + legend).value?.decisions.evidence.join()).toContain('what its panels are');
});

test('one that leaves a panel out names none', () => {
  expect(panels(`${rows}\n1 = bonnet\n`)).toEqual(['1', '1', '2']);
});
