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
  ...['Vorige', '%', 'Usual'].map((word) =>
    refused(
      `a row called ${word} in a block of numbered readings`,
      lines(
        'Unit: µm',
        'Bonnet',
        '1;112.4',
        '2;108.9',
        `${word};111`,
        'Roof',
        '1;121.3',
        '2;118.8',
      ),
      { refusedAt: 5, says: /nothing says that it is one/ },
    ),
  ),
  refused(
    'words in a block that are as many as its numbers',
    lines('Unit: µm', 'Bonnet', '1;112.4', 'Vorige;111', 'Doel;105', 'Roof', '1;121.3', 'Doel;105'),
    { refusedAt: 4 },
  ),
  ...['Panel;Sollwert', 'Foo;Target', 'Panel;Vorher', 'Foo;Mean'].map((names) =>
    refused(
      `names of no readings, ${names}, straight above a list`,
      lines('Unit: µm', '', names, 'Bonnet;112.4', 'Bonnet;108.9', 'Roof;121.3'),
      { refusedAt: 3 },
    ),
  ),
  refused(
    'targets under a number and a name of panels, below a customer',
    lines(
      'Client;Dupont',
      'Unit;µm',
      '',
      'N°;Panel;Soll',
      '1;Capot;112',
      '2;Capot;109',
      '3;Toit;121',
    ),
    { refusedAt: 4, hint: /columns found/ },
  ),
  read(
    'running numbers called N° before panels and readings',
    lines('N°;Panel;Épaisseur µm', '1;Bonnet;112.4', '2;Bonnet;108.9', '3;Roof;121.3'),
    [...on('Bonnet', 112.4, 108.9), ...on('Roof', 121.3)],
    { points: 'open' },
  ),
  refused(
    'temperatures beside two readings of each of two panels',
    lines(
      'Unit: µm',
      'Bonnet;112.4;21.4',
      'Bonnet;108.9;21.5',
      'Roof;121.3;21.4',
      'Roof;118.8;21.6',
    ),
  ),
  ...['Foo Sollwert', 'Target values', 'Panel Vorher'].map((title) =>
    refused(
      `a title of no readings, ${title}, straight above lines of panels`,
      lines('Unit: µm', title, 'Bonnet 112', 'Bonnet 109', 'Roof 121'),
      { refusedAt: 2 },
    ),
  ),
  refused(
    'the unit behind the panels above their numbers',
    lines('Bonnet;µm', '1;112.4', '2;108.9', 'Roof;µm', '1;121.3', '2;118.8'),
    { refusedAt: 1, hint: /write "Bonnet" alone above its numbers/ },
  ),
  ...['Mål', 'Fe', 'Vorige'].map((word) =>
    refused(
      `a row called ${word} in a block of times and readings`,
      lines(
        'Unit: µm',
        'Bonnet',
        '09:01;112.4',
        '09:02;108.9',
        `${word};101`,
        'Roof',
        '09:04;121.3',
      ),
      { refusedAt: 5 },
    ),
  ),
  read(
    'the least of a block of times and readings',
    lines('Unit: µm', 'Bonnet', '09:01;112.4', '09:02;108.9', 'Min;108.9', 'Roof', '09:04;121.3'),
    [...on('Bonnet', 112.4, 108.9), ...on('Roof', 121.3)],
  ),
  ...['Frunk:', 'Frunk: black'].map((name) =>
    read(
      `a panel that nobody knows, called ${name}, between blocks`,
      lines('Unit: µm', 'Bonnet:', '112', '108', '', name, '122', '125', '', 'Roof:', '121', '119'),
      [
        ...on('Bonnet', 112, 108),
        ...on(name.replace(/:$/u, ''), 122, 125),
        ...on('Roof', 121, 119),
      ],
    ),
  ),
  ...['Č.', '', 'No.', 'Foo'].map((name) =>
    refused(
      `a limit below the numbers of points under "${name}"`,
      lines('Unit;µm', '', `${name};Bonnet;Roof`, '1;112.4;121.3', '2;108.9;118.8', 'Mez;75;75'),
      { refusedAt: 6 },
    ),
  ),
  refused(
    'figures on each panel that are more than its readings',
    lines(
      'Panel;Point;Reading µm',
      ...['Bonnet;1;112.4', 'Bonnet;Cel;118', 'Bonnet;%;98'],
      ...['Roof;1;121.3', 'Roof;Cel;118', 'Roof;%;94'],
    ),
    { refusedAt: 3 },
  ),
  refused(
    'a second value of each panel among numbered points',
    lines(
      'Panel;Point;Reading µm',
      ...['Bonnet;1;112.4', 'Bonnet;2;108.9', 'Bonnet;Value 2;101'],
      ...['Roof;1;121.3', 'Roof;2;118.8', 'Roof;Value 2;98'],
    ),
    { refusedAt: 4 },
  ),
  refused(
    'lone readings whose number may be that of thousands',
    lines('Bonnet', '1,119.1 µm', '', 'Roof:', '1,269.1 µm'),
    { refusedAt: 2, hint: /running numbers/ },
  ),
  read(
    'times of the day and whole readings, a comma between them',
    lines('Unit: µm', 'Bonnet:', '09:01,114', '09:02,108', 'Roof:', '09:05,118', '09:06,123'),
    [...on('Bonnet', 114, 108), ...on('Roof', 118, 123)],
  ),
  refused(
    'a target below numbers that no line names, where a column further on is numbered',
    lines('Unit;µm', '', ';Bonnet;Roof;No.', '1;112.4;121.3;1', '2;108.9;118.8;2', 'Ziel;105;105;'),
    { refusedAt: 6 },
  ),
  refused(
    'a column that numbers the visits, of panels without points',
    lines('Panel;Visit;µm', 'Bonnet;1;112.4', 'Roof;1;121.3', 'Bonnet;2;108.9', 'Roof;2;118.8'),
    { refusedAt: 4, hint: /one file for each visit/ },
  ),
  refused('a reading so many times over', lines('Bonnet: 112 x3, 115 µm', 'Roof: 101, 99 µm'), {
    refusedAt: 1,
  }),
  refused(
    'chips that are counted behind the readings',
    lines('Bonnet 112.4 108.9 µm 30 stone chips', 'Roof 121.3 118.8 µm'),
    { refusedAt: 1, hint: /take it out of the line/ },
  ),
  refused(
    'a line that says which unit it is not',
    lines('Panel;Reading', 'Bonnet;112.4', 'Roof;121.3', 'Values not in µm'),
    { refusedAt: 1 },
  ),
  read(
    'a unit in every row under no name',
    lines(
      'Panel;Reading;',
      'Bonnet;112.4;µm',
      'Bonnet;108.9;µm',
      'Bonnet;115.2;µm',
      'Roof;121.3;µm',
    ),
    [...on('Bonnet', 112.4, 108.9, 115.2), ...on('Roof', 121.3)],
  ),
  read(
    'times whose parts are parted by blanks, and no names of columns',
    lines('µm', '10 32 05;Bonnet;112.4', '10 32 15;Bonnet;108.9', '10 33 05;Roof;121.3'),
    [...on('Bonnet', 112.4, 108.9), ...on('Roof', 121.3)],
  ),
  either(
    'a row without a point below numbered ones',
    lines(
      'Point;Bonnet (µm);Roof (µm)',
      '1;112.4;121.3',
      '2;108.9;118.8',
      '3;115.2;119.5',
      ';101;98',
    ),
    [...on('Bonnet', 112.4, 108.9, 115.2, 101), ...on('Roof', 121.3, 118.8, 119.5, 98)],
    { says: /names no point/ },
  ),
  either(
    'a panel that nobody knows as the last line of a list, with one reading',
    lines('µm', 'Bonnet: 112.4 108.9 115.2', 'Roof: 121.3 118.8 119.5', 'Rear lip: 109.7'),
    films,
    { says: /may be a panel that is not known/ },
  ),
];
