import { expect, test } from 'vitest';
import { quoteOutcome, readingsOf } from '../quotes.ts';

const readings = readingsOf({ bonnet: 112, roof: 114 });

function toldOf(...rows: readonly string[]): readonly string[] {
  const defects = `panel,defect,grade,extent,depth_um\n${rows.join('\n')}\n`;
  const { value, diagnostics } = quoteOutcome({ readings, defects });
  expect(value).toBeDefined();
  return diagnostics
    .filter(({ code }) => code === 'defect-graded-twice')
    .map(({ severity, message, at }) => `${severity} ${at?.line}: ${message}`);
}

test('one defect of a panel with two grades is told with both, and which of them counts', () => {
  const worse =
    'warning 3: swirl marks of "bonnet" stand in two rows: grade 3 in line 2 and grade 1 in line 3; the worse counts';
  expect(toldOf('bonnet,swirl-marks,3,,', 'bonnet,swirls,1,,', 'roof,swirl-marks,1,,')).toEqual([
    worse,
  ]);
  expect(toldOf('bonnet,swirl-marks,2,,', 'hood,swirl-marks,2,,1.5')).toEqual([
    expect.stringContaining('1.5\u00a0µm deep in line 3'),
  ]);
});

test('rows that agree, that say each where it is, or that are marks of their own are not told', () => {
  expect(toldOf('bonnet,swirl-marks,3,,', 'bonnet,swirl-marks,3,,')).toEqual([]);
  expect(toldOf('bonnet,swirl-marks,3,front,', 'bonnet,swirl-marks,1,middle,')).toEqual([]);
  expect(toldOf('bonnet,deep-scratches,3,,', 'bonnet,deep-scratches,1,,')).toEqual([]);
});

test('a local mark that stands twice word for word is told, as both rows get a spot', () => {
  const scratch = 'bonnet,deep-scratches,4,near point 3,5';
  expect(toldOf(scratch, 'roof,deep-scratches,4,near point 3,5', scratch)).toEqual([
    'warning 4: deep scratches of "bonnet" stand here as in line 2, word for word: each row is a mark of its own, with its own spot',
  ]);
  expect(toldOf('bonnet,deep-scratches,4,,', 'hood,deep scratches,4,,')).toHaveLength(1);
  expect(toldOf('bonnet,deep-scratches,4,front,', 'bonnet,deep-scratches,4,rear,')).toEqual([]);
  expect(toldOf('bonnet,deep-scratches,4,,5', 'bonnet,deep-scratches,4,,4')).toEqual([]);
});
