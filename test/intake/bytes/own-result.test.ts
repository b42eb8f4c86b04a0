import { expect, test } from 'vitest';
import { askLeastcut } from '../../cli/ask-leastcut.ts';
import { briefs, read } from '../helpers.ts';

const readings =
  'panel,point,reading_um\nroof,1,112\nroof,2,114\nroof,3,113\nbonnet,1,118\nbonnet,2,117\n';
const sampled = (args: readonly string[]) => askLeastcut([...args, '-'], { stdin: readings });

test.each(['text', 'md', 'html', 'csv'])(
  'a survey as %s that is named as readings is refused for what it is',
  async (format) => {
    const { out } = await sampled(['survey', '--format', format]);
    const { code, err, out: nothing } = await askLeastcut(['survey', '-'], { stdin: out });
    expect([code, nothing]).toEqual([65, '']);
    expect(err).toContain('error[file-other-kind]');
    expect(err).toContain('name the readings it was made of');
  },
);

test('the columns of a result alone tell it, and readings as we write them are readings', async () => {
  expect(briefs('panel,thinnest_um\nroof,101\nbonnet,104\n')).toEqual([
    '1:1+17 error file-other-kind',
  ]);
  const { out } = await sampled(['read', '--format', 'csv']);
  expect(read(out).value?.readings).toHaveLength(5);
});
