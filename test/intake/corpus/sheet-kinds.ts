/** Sheets that people keep themselves: totals, merged cells, units in odd places, other languages. */

import type { Kind } from './kind.ts';
import { lines, literalKinds, on } from './literal-files.ts';

const { read, refused, either } = literalKinds('sheets');

const bonnetRoof = [...on('Bonnet', 112.4, 115.1, 118.6), ...on('Roof', 101.2, 99.7, 103.5)];
/** The letters of code page 1250 that are in none of Latin-1. */
const page1250: Readonly<Record<string, number>> = { č: 0xe8, ř: 0xf8, ě: 0xec, ů: 0xf9 };
const cp1250 = (text: string): Uint8Array =>
  Uint8Array.from(text, (letter) => page1250[letter] ?? letter.charCodeAt(0));

export const sheetKinds: readonly Kind[] = [
  read(
    'a mean and a spread behind the points of each row',
    lines(
      'Panel,P1,P2,P3,Mean,SD',
      'Bonnet,112.4,115.1,118.6,115.4,3.1',
      'Roof,101.2,99.7,103.5,101.5,1.9',
      'all values in µm',
    ),
    bonnetRoof,
  ),
  read(
    'a mean in German under a column for each panel',
    lines(
      'Punkt;Motorhaube (µm);Dach (µm)',
      '1;112,4;101,2',
      '2;115,1;99,7',
      '3;118,6;103,5',
      'Mittel;115,4;101,5',
    ),
    [...on('Motorhaube', 112.4, 115.1, 118.6), ...on('Dach', 101.2, 99.7, 103.5)],
  ),
  read(
    'a panel that stands once, in a merged cell, for its rows',
    lines(
      'Panel;Point;Film µm',
      'Bonnet;front;112.4',
      ';middle;115.1',
      ';rear;118.6',
      'Roof;front;101.2',
      ';middle;99.7',
      ';rear;103.5',
    ),
    bonnetRoof,
  ),
  read(
    'panels in merged cells over the numbers of their points',
    lines('µm;Bonnet;;;Roof;;', 'point;1;2;3;1;2;3', 'reading;112.4;115.1;118.6;101.2;99.7;103.5'),
    bonnetRoof,
  ),
  read(
    'a row of units under the names',
    lines(
      'Panel,Point,Film,Temp',
      ',,µm,°C',
      'Bonnet,1,112.4,19',
      'Bonnet,2,115.1,19',
      'Bonnet,3,118.6,19',
      'Roof,1,101.2,20',
      'Roof,2,99.7,20',
      'Roof,3,103.5,20',
    ),
    bonnetRoof,
  ),
  read(
    'the unit at the end of the title',
    lines(
      'Lackdicke Kombi silber, µm',
      'Teil;1;2;3',
      'Bonnet;112,4;115,1;118,6',
      'Roof;101,2;99,7;103,5',
    ),
    bonnetRoof,
  ),
  read(
    'the unit at the end of the title, without the letter',
    lines(
      'Paint film estate car, um',
      'panel,1,2,3',
      'Bonnet,112.4,115.1,118.6',
      'Roof,101.2,99.7,103.5',
    ),
    bonnetRoof,
  ),
  read(
    'thousands by an apostrophe',
    lines(
      'Teil;Punkt;µm',
      'Motorhaube;1;112.4',
      "Motorhaube;2;1'245.5",
      'Dach;1;101.2',
      'Dach;2;99.7',
    ),
    [...on('Motorhaube', 112.4, 1245.5), ...on('Dach', 101.2, 99.7)],
  ),
  read(
    'a Spanish mean behind the points',
    lines(
      'Panel;1;2;3;Media',
      'Capó;112,4;115,1;118,6;115,4',
      'Techo;101,2;99,7;103,5;101,5',
      'Unidad: µm',
    ),
    [...on('Capó', 112.4, 115.1, 118.6), ...on('Techo', 101.2, 99.7, 103.5)],
  ),
  read(
    'an Italian mean below the points',
    lines(
      'Punto;Cofano (µm);Tetto (µm)',
      '1;112,4;101,2',
      '2;115,1;99,7',
      '3;118,6;103,5',
      'Media;115,4;101,5',
    ),
    [...on('Cofano', 112.4, 115.1, 118.6), ...on('Tetto', 101.2, 99.7, 103.5)],
  ),
  read(
    'a Spanish mean of each panel in a row of its own',
    lines(
      'Pieza;Punto;Espesor (µm)',
      'Capó;1;112,4',
      'Capó;2;115,1',
      'Capó;media;113,8',
      'Techo;1;101,2',
      'Techo;2;99,7',
      'Techo;media;100,5',
    ),
    [...on('Capó', 112.4, 115.1), ...on('Techo', 101.2, 99.7)],
  ),
  read(
    'thousands by narrow blanks in French',
    lines(
      'Élément;Point;Épaisseur (µm)',
      'Capot;1;112,4',
      'Capot;2;1\u202f245,5',
      'Pavillon;1;101,2',
      'Pavillon;2;99,7',
    ),
    [...on('Capot', 112.4, 1245.5), ...on('Pavillon', 101.2, 99.7)],
  ),
  read(
    'Polish panels by side, a column for each point',
    lines(
      'Element;pkt 1;pkt 2;pkt 3',
      'Maska;112,4;115,1;118,6',
      'Dach;101,2;99,7;103,5',
      'Drzwi przednie lewe;104,1;105,2;103,3',
      'jednostka: µm',
    ),
    [
      ...on('Maska', 112.4, 115.1, 118.6),
      ...on('Dach', 101.2, 99.7, 103.5),
      ...on('Drzwi przednie lewe', 104.1, 105.2, 103.3),
    ],
  ),
  read(
    'Dutch panels with remarks',
    lines(
      'Onderdeel,Meting (µm),Opmerking',
      'Motorkap,112.4,',
      'Motorkap,115.1,"steenslag, licht"',
      'Dak,101.2,',
      'Dak,99.7,2 krassen',
    ),
    [...on('Motorkap', 112.4, 115.1), ...on('Dak', 101.2, 99.7)],
  ),
  read(
    'Czech names in code page 1250',
    cp1250(
      'Díl;Bod;Tlouška um\r\nKapota;1;112,4\r\nKapota;2;115,1\r\nStřecha;1;101,2\r\nStřecha;2;99,7\r\n',
    ),
    [...on('Kapota', 112.4, 115.1), ...on('Střecha', 101.2, 99.7)],
  ),
  read(
    'Turkish panels with a mean in a column',
    lines(
      'Parça;1;2;3;Ortalama',
      'Kaput;112,4;115,1;118,6;115,4',
      'Tavan;101,2;99,7;103,5;101,5',
      'Birim: µm',
    ),
    [...on('Kaput', 112.4, 115.1, 118.6), ...on('Tavan', 101.2, 99.7, 103.5)],
  ),
  read(
    'Finnish panels with a mean in a column',
    lines(
      'Osa;1;2;3;Keskiarvo',
      'Konepelti;112,4;115,1;118,6;115,4',
      'Katto;101,2;99,7;103,5;101,5',
      'yksikkö: µm',
    ),
    [...on('Konepelti', 112.4, 115.1, 118.6), ...on('Katto', 101.2, 99.7, 103.5)],
  ),
  read(
    'a count of all readings in the last line, in German',
    lines(
      'Teil;Punkt;µm',
      'Motorhaube;1;112,4',
      'Motorhaube;2;115,1',
      'Dach;1;101,2',
      'Gesamt: 3 Messungen',
    ),
    [...on('Motorhaube', 112.4, 115.1), ...on('Dach', 101.2)],
  ),
  read(
    'remarks with numbers in them',
    lines(
      'panel,um,remark',
      'Bonnet,112.4,"chip 3 mm, touched up 2024"',
      'Bonnet,115.1,',
      'Bonnet,118.6,5 cm from edge',
      'Roof,101.2,',
      'Roof,99.7,see photo 12',
      'Roof,103.5,',
    ),
    bonnetRoof,
  ),
  read(
    'how far each is from the mean, in per cent',
    lines(
      'panel,point,um,diff %',
      'Bonnet,1,112.4,-2.6',
      'Bonnet,2,115.1,-0.2',
      'Bonnet,3,118.6,2.8',
      'Roof,1,101.2,-0.3',
      'Roof,2,99.7,-1.7',
      'Roof,3,103.5,2.0',
    ),
    bonnetRoof,
  ),
  read(
    'what the panel should have before what it has',
    lines(
      'Bauteil;Soll (µm);Ist (µm)',
      'Motorhaube;120;112,4',
      'Motorhaube;120;115,1',
      'Dach;110;101,2',
      'Dach;110;99,7',
    ),
    [...on('Motorhaube', 112.4, 115.1), ...on('Dach', 101.2, 99.7)],
  ),
  read(
    'a code of the panel and its name',
    lines(
      'Code,Panel,Point,Film um',
      'B1,Bonnet,1,112.4',
      'B1,Bonnet,2,115.1',
      'B1,Bonnet,3,118.6',
      'R1,Roof,1,101.2',
      'R1,Roof,2,99.7',
      'R1,Roof,3,103.5',
    ),
    bonnetRoof,
  ),
  read(
    'three readings at each point, in columns',
    lines(
      'Panel;Point;1st µm;2nd µm;3rd µm',
      'Bonnet;1;112.4;112.9;112.1',
      'Bonnet;2;115.1;115.6;114.8',
      'Roof;1;101.2;101.0;101.9',
    ),
    [...on('Bonnet', 112.4, 112.9, 112.1, 115.1, 115.6, 114.8), ...on('Roof', 101.2, 101.0, 101.9)],
  ),
  read(
    'cells without a reading, in three ways',
    lines(
      'Panel;1;2;3;4;5;6',
      'Bonnet;112.4;n/a;115.1;;118.6;-',
      'Roof;101.2;;99.7;n/a;103.5;-',
      'µm',
    ),
    bonnetRoof,
    { excluded: [['missing'], ['missing'], ['missing'], ['missing'], ['missing'], ['missing']] },
  ),
  read(
    'a first line that names the mark between cells, and totals at the end',
    lines(
      'sep=;',
      'Teil;Punkt;Wert µm',
      'Motorhaube;1;112,4',
      'Motorhaube;2;115,1',
      'Dach;1;101,2',
      'Mittelwert;;109,6',
      'Minimum;;101,2',
      'Maximum;;115,1',
    ),
    [...on('Motorhaube', 112.4, 115.1), ...on('Dach', 101.2)],
  ),
  either(
    'a block for each panel: its name, its points, its values',
    lines(
      'Bonnet',
      'point,1,2,3',
      'um,112.4,115.1,118.6',
      '',
      'Roof',
      'point,1,2,3',
      'um,101.2,99.7,103.5',
    ),
    bonnetRoof,
  ),
  read(
    'stars that a line below explains as repainted',
    lines(
      'Panel,1,2,3',
      'Bonnet,112.4,115.1,118.6',
      'Roof,245.3*,251.8*,103.5',
      '* = repainted',
      'Unit µm',
    ),
    [...on('Bonnet', 112.4, 115.1, 118.6), ...on('Roof', 245.3, 251.8, 103.5)],
  ),
  read(
    'the unit in every cell',
    lines('Panel,1,2,3', 'Bonnet,112.4 µm,115.1 µm,118.6 µm', 'Roof,101.2 µm,99.7 µm,103.5 µm'),
    bonnetRoof,
  ),
  either(
    'an uncertainty behind every value',
    lines(
      'Panel;1 (µm);2 (µm);3 (µm)',
      'Bonnet;112.4 ±2;115.1 ±2;118.6 ±2',
      'Roof;101.2 ±2;99.7 ±2;103.5 ±2',
    ),
    bonnetRoof,
  ),
  read(
    'a table of tyres below the readings',
    lines(
      'Panel,Point,um',
      'Bonnet,1,112.4',
      'Bonnet,2,115.1',
      'Bonnet,3,118.6',
      'Roof,1,101.2',
      'Roof,2,99.7',
      'Roof,3,103.5',
      '',
      'Tyre,Tread mm,Pressure bar',
      'front left,5.2,2.3',
      'front right,5.1,2.3',
    ),
    bonnetRoof,
  ),
  either(
    'the least and the most of each panel, and no reading',
    lines('Panel,Min µm,Max µm', 'Bonnet,112.4,118.6', 'Roof,99.7,103.5'),
    [...on('Bonnet', 112.4, 118.6), ...on('Roof', 99.7, 103.5)],
  ),
  read(
    'ticks between the panel and its reading',
    lines(
      'Panel;checked;Film µm',
      'Bonnet;✓;112.4',
      'Bonnet;✓;115.1',
      'Bonnet;✓;118.6',
      'Roof;✓;101.2',
      'Roof;✓;99.7',
      'Roof;✓;103.5',
    ),
    bonnetRoof,
  ),
  read(
    'points written with a full stop',
    lines(
      'Teil;Punkt;Wert (µm)',
      'Motorhaube;1.;112,4',
      'Motorhaube;2.;115,1',
      'Dach;1.;101,2',
      'Dach;2.;99,7',
    ),
    [...on('Motorhaube', 112.4, 115.1), ...on('Dach', 101.2, 99.7)],
    { points: 'stated' },
  ),
  read(
    'how long each panel took beside it',
    lines(
      'Panel,um,work',
      'Bonnet,112.4,2 hours',
      'Bonnet,115.1,2 hours',
      'Bonnet,118.6,2 hours',
      'Roof,101.2,1 hour',
      'Roof,99.7,1 hour',
      'Roof,103.5,1 hour',
    ),
    bonnetRoof,
  ),
  refused(
    'before and after in two columns',
    lines(
      'Panel,Point,Before µm,After µm',
      'Bonnet,1,122.4,112.4',
      'Bonnet,2,125.1,115.1',
      'Roof,1,111.2,101.2',
    ),
    { hint: /compare|reading/ },
  ),
  refused(
    'the names of the columns again, and below them the same panels and points a little thinner',
    lines(
      'panel,point,um',
      'Bonnet,1,122.4',
      'Bonnet,2,125.1',
      'Roof,1,111.2',
      'panel,point,um',
      'Bonnet,1,112.4',
      'Bonnet,2,115.1',
      'Roof,1,101.2',
    ),
    { refusedAt: 5, hint: /compare/ },
  ),
  read(
    'the names of the columns again on the next page of one list',
    lines(
      'panel,point,um',
      'Bonnet,1,112.4',
      'Bonnet,2,115.1',
      'Bonnet,3,118.6',
      'panel,point,um',
      'Roof,1,101.2',
      'Roof,2,99.7',
      'Roof,3,103.5',
    ),
    bonnetRoof,
  ),
];
