/** Readings as they lie in drawers: sheets of which a part is numbered, or has its figures under no name. */
import type { Kind } from './kind.ts';
import { lines, literalKinds, on } from './literal-files.ts';

const { read, refused, either } = literalKinds('drawers');

const films = [...on('Bonnet', 112.4, 108.9, 115.2), ...on('Roof', 121.3, 118.8, 119.5)];
const under = (word: string, head: readonly string[] = []) =>
  lines(
    ...head,
    'Point;Bonnet (µm);Roof (µm)',
    '1;112.4;121.3',
    '2;108.9;118.8',
    '3;115.2;119.5',
    `${word};101;98`,
  );

export const drawerKinds: readonly Kind[] = [
  ...['Usual', 'Last visit', 'Pass', 'Foo', 'n'].map((word) =>
    refused(`a row called ${word} below numbered points`, under(word), {
      refusedAt: 5,
      says: /nothing says that it is one|is no point|no number of/,
    }),
  ),
  read(
    'a line of the unit straight above the names of panels',
    lines('Unit;µm', 'Point;Bonnet;Roof', '1;112.4;121.3', '2;108.9;118.8', '3;115.2;119.5'),
    films,
  ),
  refused(
    'a limit below numbered points, and the unit straight above the names of panels',
    lines('Unit;µm', 'Point;Bonnet;Roof', '1;112.4;121.3', '2;108.9;118.8', 'Limit;101;98'),
    { refusedAt: 5 },
  ),
  refused(
    'a word for no point on each of two panels',
    lines(
      'Panel;Point;Reading µm',
      ...['Bonnet;1;112.4', 'Bonnet;2;108.9', 'Bonnet;Usual;101'],
      ...['Roof;1;121.3', 'Roof;2;118.8', 'Roof;Usual;98'],
    ),
    { refusedAt: 4 },
  ),
  either(
    'a place by a word on one panel',
    lines(
      'Panel;Point;Reading µm',
      ...['Bonnet;1;112.4', 'Bonnet;2;108.9', 'Bonnet;badge;115.2'],
      ...['Roof;1;121.3', 'Roof;2;118.8', 'Roof;3;119.5'],
    ),
    films,
    { says: /may name something else/ },
  ),
  refused(
    'a name that nobody knows after each panel',
    lines(
      'Panel;Reading µm',
      ...['Bonnet;112.4', 'Bonnet;108.9', 'Usual;101'],
      ...['Roof;121.3', 'Roof;118.8', 'Usual;98'],
    ),
    { refusedAt: 4 },
  ),
  read(
    'panels in two rounds, one of them unknown',
    lines(
      'Panel;Point;Reading µm',
      ...['Bonnet;1;112.4', 'Brow;1;108.9', 'Roof;1;121.3'],
      ...['Bonnet;2;113.4', 'Brow;2;109.9', 'Roof;2;122.3'],
    ),
    [...on('Bonnet', 112.4, 113.4), ...on('Brow', 108.9, 109.9), ...on('Roof', 121.3, 122.3)],
  ),
  refused(
    'running numbers before the readings of one panel alone, in mil',
    lines('Roof', '4.31 mil', '4.32 mil', '', 'Bonnet', '1;4.72 mil', '2;4.65 mil'),
    { refusedAt: 6, hint: /running numbers/ },
  ),
  refused(
    'running numbers that look like thousands',
    lines('Unit: µm', 'Roof', '103.3', '107.8', '', 'Bonnet', '1,105.6', '2,103.1'),
    { refusedAt: 7, hint: /running numbers/ },
  ),
  read(
    'the means of whole readings of two panels, last and unnamed',
    lines('Readings in µm', 'Bonnet 112 109 115 112', 'Roof 121 118 121 120'),
    [...on('Bonnet', 112, 109, 115, 112), ...on('Roof', 121, 118, 121, 120)],
    { says: /is the mean of the readings beside it, on all 2 panels/ },
  ),
  refused(
    'temperatures beside the readings of two panels, under no name',
    lines(
      ...['1;Bonnet;112.4 µm;21.4', '2;Bonnet;108.9 µm;21.4', '3;Bonnet;115.2 µm;21.5'],
      ...['4;Roof;121.3 µm;21.5', '5;Roof;118.8 µm;21.6', '6;Roof;119.5 µm;21.6'],
    ),
  ),
  ...['Bare steel', 'Cal check', 'Cale étalon'].map((word) =>
    read(
      `a check of the gauge called ${word}`,
      lines('panel;1;2;unit', `${word};0.2;0.1;µm`, 'Bonnet;112.4;108.9;µm', 'Roof;121.3;118.8;µm'),
      [...on('Bonnet', 112.4, 108.9), ...on('Roof', 121.3, 118.8)],
      { says: /is a check of the gauge, and no panel/ },
    ),
  ),
  read(
    'times of the day behind the readings of blocks',
    lines('Bonnet', '112.4 µm;09:12', '108.9 µm;09:13', '115.2 µm;09:13', '', 'Roof').concat(
      lines('121.3 µm;09:15', '118.8 µm;09:15', '119.5 µm;09:16'),
    ),
    films,
  ),
  refused(
    'panels that come again under lines of sides, their side in none of them',
    lines(
      'panel;1;2;unit',
      ...['LEFT SIDE;;;', 'Quarter;112.4;108.9;µm', 'Front door;102.4;101.2;µm'],
      ...['RIGHT SIDE;;;', 'Quarter;121.3;118.8;µm', 'Front door;111.3;108.8;µm'],
    ),
  ),
  refused(
    'doors that have one name under a line of either side',
    lines(
      'panel;1;2;unit',
      ...['LEFT SIDE;;;', 'Front door;112.4;108.9;µm', 'Rear door;102.4;101.2;µm'],
      ...['RIGHT SIDE;;;', 'Front door;121.3;118.8;µm', 'Rear door;111.3;108.8;µm'],
    ),
    { refusedAt: 6, hint: /write the side into the name of each panel: "right Front door"/ },
  ),
  refused(
    'two numbered names that may both be of readings',
    lines('Panel;Reading 1;T 1;Reading 2;T 2', 'Bonnet;112.4;21.0;108.9;21.1'),
    { refusedAt: 1, hint: /"Reading 1" and "T 1" may both be readings/ },
  ),
  refused(
    'readings in columns of two metals without a unit',
    lines('Panel;Fe;NFe', 'Bonnet;112.4;', 'Roof;;121.3'),
    { refusedAt: 1, hint: /the metal beside it in a column "substrate"/ },
  ),
];
