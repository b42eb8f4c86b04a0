import { expect, test } from 'vitest';
import { briefs, values } from '../helpers.ts';

test('a line behind a # that splits like a row with a reading is refused', () => {
  expect(briefs('point;panel;reading_um\n1;roof;101\n#2;bonnet;40\n')).toEqual([
    '3:1+12 error comment-or-row',
  ]);
});

test('a # line of words, of another width or above the header is a comment', () => {
  const text =
    '# device,7,8\npoint,panel,reading_um\n# by hand, in the cold, twice\n# 2 June\n1,roof,101\n';
  expect(values(text)).toHaveLength(1);
  expect(values('panel,reading_um,note\nroof,101,"of\n# x,5,y\nall"\n')).toBeUndefined();
  expect(values('panel,reading_um,note\nroof,101,"of\n# all"\n')).toHaveLength(1);
});

test('a quote that swallows what looks like a row was forgotten where it opens', () => {
  expect(briefs('panel,reading_um,note\nroof,101,"chip\nboot,99,\nbonnet,98,x"\n')).toEqual([
    '2:10+1 error quote-unclosed',
  ]);
  expect(values('panel,reading_um,note\nroof,101,"chip, small,\nboot, dent, x"\n')).toHaveLength(1);
});

test('a header behind a # is read where the file has no other, and rows below it', () => {
  expect(values('#,panel,reading_um\n1,roof,101\n2,boot,99\n')).toHaveLength(2);
  expect(values('# by hand\n# panel;point;reading_um\nroof;1;101\n')).toEqual([
    ['roof', '1', 1, 101],
  ]);
  expect(values('# panel,reading_um,note\npanel,reading_um\nroof,101\n')).toHaveLength(1);
  expect(briefs('# panel,reading_um\nroof,1O1\n')).toEqual(['2:6+3 error reading-not-a-number']);
});
