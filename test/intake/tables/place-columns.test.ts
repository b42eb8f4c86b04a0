import { expect, test } from 'vitest';
import { briefs, values } from '../helpers.ts';

const text = (...names: readonly string[]) =>
  `Panel;${names.join(';')};Unit\nbonnet;${names.map((_, k) => 104 + k).join(';')};µm\n`;

test.each(['Top left|Top right|Centre', 'oben|Mitte|unten', 'A|B|C'])(
  'columns called %s are readings',
  (names) => {
    expect(values(text(...names.split('|')))?.map((one) => one[3])).toEqual([104, 105, 106]);
  },
);

test.each(['left|right', 'A|B', 'A|C|D', 'Top|Edge', 'Top|Top'])(
  'columns called %s may be something else and are asked about',
  (names) => {
    expect(briefs(text(...names.split('|')))).toContain('1:1+5 error column-missing');
  },
);
