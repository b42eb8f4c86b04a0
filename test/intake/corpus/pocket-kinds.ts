/** Notes off phones, out of mails and notebooks. */

import type { Kind } from './kind.ts';
import { lines, literalKinds, on } from './literal-files.ts';

const { read, refused, either } = literalKinds('pockets');

const bonnetRoof = [...on('bonnet', 112, 115, 118), ...on('roof', 101, 99, 103)];

export const pocketKinds: readonly Kind[] = [
  read(
    'a panel, a colon and its readings',
    lines('µm', 'bonnet: 112, 115, 118', 'roof: 101, 99, 103'),
    bonnetRoof,
  ),
  read(
    'readings with strokes between them',
    lines('readings in um', 'bonnet 112/115/118', 'roof 101/99/103'),
    bonnetRoof,
  ),
  read(
    'a bullet before each panel and a dash behind it',
    lines('Paint readings (um)', '- bonnet – 112 / 115 / 118', '- roof – 101 / 99 / 103'),
    bonnetRoof,
  ),
  read(
    'a small picture before each panel',
    lines('🚗 film in µm', '✅ bonnet 112 115 118', '✅ roof 101 99 103'),
    [...on('✅ bonnet', 112, 115, 118), ...on('✅ roof', 101, 99, 103)],
  ),
  read(
    'German decimals with semicolons',
    lines('Werte in µm', 'Dach 101,5; 102,0; 99,5', 'Motorhaube 112,5; 115,0; 118,5'),
    [...on('Dach', 101.5, 102, 99.5), ...on('Motorhaube', 112.5, 115, 118.5)],
  ),
  read(
    'a side in short and a doubt in brackets',
    lines('um', 'LF wing 110 112 114 (resprayed?)', 'bonnet 112 115 118'),
    [...on('LF wing', 110, 112, 114), ...on('bonnet', 112, 115, 118)],
  ),
  either(
    'points counted in words before each reading',
    lines('um', 'bonnet 1st 112 2nd 115 3rd 118', 'roof 1st 101 2nd 99 3rd 103'),
    bonnetRoof,
  ),
  either(
    'messages with day, time and sender before each',
    lines(
      '[03/11/2026, 14:22:10] Ines: bonnet 112 115 118 um',
      '[03/11/2026, 14:23:41] Ines: roof 101 99 103 um',
    ),
    bonnetRoof,
  ),
  either(
    'how many points in the last line',
    lines('bonnet 112 115 118', 'roof 101 99 103', '6 points, all um'),
    bonnetRoof,
  ),
  read(
    'an arrow behind each panel',
    lines('um', 'bonnet -> 112 115 118', 'roof -> 101 99 103'),
    bonnetRoof,
  ),
  either(
    'how many readings behind the panel',
    lines('um', 'bonnet x3: 112 115 118', 'roof x3: 101 99 103'),
    bonnetRoof,
  ),
  read('capitals with tabs', 'UNIT\tUM\nBONNET\t112\t115\t118\nROOF\t101\t99\t103\n', [
    ...on('BONNET', 112, 115, 118),
    ...on('ROOF', 101, 99, 103),
  ]),
  either(
    'a reading with a question mark',
    lines('um', 'bonnet 112 115? 118', 'roof 101 99 103'),
    bonnetRoof,
  ),
  read('Swedish panels with blanks', lines('mätt i µm', 'huv 112 115 118', 'tak 101 99 103'), [
    ...on('huv', 112, 115, 118),
    ...on('tak', 101, 99, 103),
  ]),
  read(
    'wide digits in Japanese',
    lines('単位 µm', 'ボンネット １１２ １１５ １１８', 'ルーフ １０１ ９９ １０３'),
    [...on('ボンネット', 112, 115, 118), ...on('ルーフ', 101, 99, 103)],
  ),
  read(
    'wide colons in Chinese',
    lines('单位：微米', '引擎盖：112，115，118', '车顶：101，99，103'),
    [...on('引擎盖', 112, 115, 118), ...on('车顶', 101, 99, 103)],
  ),
  read(
    'a mail that is quoted',
    lines('> values in um', '> bonnet 112 115 118', '> roof 101 99 103'),
    bonnetRoof,
  ),
  either(
    'a table in the language of pages',
    '<table><tr><th>panel</th><th>um</th></tr><tr><td>bonnet</td><td>112</td></tr></table>\n',
    on('bonnet', 112),
  ),
  read(
    'Spanish panels with decimals and a greeting',
    lines(
      'Hola, te paso las medidas en micras:',
      'capó 112,5 115,0 118,5',
      'techo 101,5 99,0 103,5',
      'Un saludo',
    ),
    [...on('capó', 112.5, 115, 118.5), ...on('techo', 101.5, 99, 103.5)],
  ),
  read(
    'Italian panels, one reading to a line',
    lines('micron', 'cofano 112', 'cofano 115', 'cofano 118', 'tetto 101', 'tetto 99', 'tetto 103'),
    [...on('cofano', 112, 115, 118), ...on('tetto', 101, 99, 103)],
  ),
  read(
    'a panel to a line, its readings below it',
    lines('um', 'bonnet', '112', '115', '118', '', 'roof', '101', '99', '103'),
    bonnetRoof,
  ),
  either(
    'a mean in words behind the readings',
    lines('um', 'bonnet 112 115 118 avg 115', 'roof 101 99 103 avg 101'),
    bonnetRoof,
  ),
  either(
    'a reading that was struck out with an x',
    lines('panel,1,2,3,4', 'bonnet,112,12x,115,118', 'roof,101,99,103,100', 'unit,um'),
    [...bonnetRoof, ...on('roof', 100)],
  ),
  refused(
    'a before and an after on one line',
    lines(
      'um',
      'bonnet before 122 125 128 after 112 115 118',
      'roof before 111 109 113 after 101 99 103',
    ),
  ),
  refused(
    'no unit, and values that may be either',
    lines('bonnet 4.1 4.3 4.5', 'roof 104 102 101'),
  ),
  either(
    'an equals sign and the unit behind each',
    lines('bonnet=112um,115um,118um', 'roof=101um,99um,103um'),
    bonnetRoof,
  ),
  read(
    'a heading, a blank line and a signature',
    lines(
      'Paint check, silver estate',
      '',
      'bonnet 112 115 118 µm',
      'roof 101 99 103 µm',
      '',
      'Regards, Ole',
    ),
    bonnetRoof,
  ),
];
