import { expect, test } from 'vitest';
import { read } from '../helpers.ts';

const hint = (header: string): string =>
  read(`${header}\nbonnet;1;112\n`).diagnostics.find(({ message }) => message.includes('"reading"'))
    ?.hint ?? '';

test.each([
  ['Panel;Point;Readng', 'did you mean "reading" by "Readng"?'],
  ['Bauteil;Punkt;Messwrt', 'did you mean "messwert" by "Messwrt"?'],
  ['Bautl;Pkkt;Messwrt', 'did you mean "messwert" by "Messwrt"?'],
  ['Pieza;Punto;Valro', 'did you mean "valor" by "Valro"?'],
])('a slip in %j is told by the word of its language', (header, said) => {
  expect(hint(header)).toContain(said);
});

test.each(['Panel;Point;Grade', 'Bauteil;Punkt;Grade', 'Panel;Point;Ord'])(
  'a word that is near one of another language alone is no slip of it: %j',
  (header) => {
    expect(hint(header)).not.toContain('did you mean');
    expect(hint(header)).toContain('--columns reading=NAME');
  },
);
