/** Encodings, and what code pages do to the micro sign. */
import { inventSurvey, type Survey } from './invented-survey.ts';
import { instance, type Kind, kindsOf, readingsOf, utf8 } from './kind.ts';
import type { Random } from './random.ts';
import {
  dosPage,
  encodedTwice,
  gb18030,
  joined,
  latin1,
  macRoman,
  shiftJis,
  takenForWindows1252,
  utf16be,
  utf16le,
  windows1250,
  windows1251,
  windows1252,
  windows1254,
} from './spoiled-bytes.ts';
import { csv, type LongStyle, longRows, longTable } from './write-table.ts';

const kind = kindsOf('encoding', 'bytes');

const microHeader = ['panel', 'point', 'Thickness (µm)'];
const german: LongStyle = {
  header: ['Bauteil', 'Messpunkt', 'Schichtdicke (µm)'],
  delimiter: ';',
  decimal: ',',
  eol: '\r\n',
};
const germanPanels = ['Motorhaube', 'Dach', 'Kotflügel vorn links', 'Tür hinten rechts'];
const frenchPanels = ['capot', 'pavillon', 'aile arrière gauche', 'portière avant'];
const german_ = (random: Random): Survey => inventSurvey(random, { panels: germanPanels });
const micro = (random: Random, style: LongStyle = {}): readonly [Survey, string] => {
  const survey = inventSurvey(random);
  return [survey, longTable(survey, { header: microHeader, ...style })];
};
/** A label as it looks when its bytes are taken for another page: as good only where that is said. */
const mistaken = (survey: Survey, bytesOf: (text: string) => Uint8Array, says: RegExp) => ({
  readings: readingsOf(survey).map((one) => ({
    ...one,
    panel: takenForWindows1252(bytesOf(one.panel)),
  })),
  says,
});
const namesPage = /125\d|code page|encoding/i;

const unicode: readonly Kind[] = [
  kind('UTF-8 with a micro sign in the header', 'read', (random) => {
    const [survey, text] = micro(random);
    return instance(text, survey);
  }),
  kind('UTF-8 behind a byte order mark', 'read', (random) => {
    const [survey, text] = micro(random);
    return instance(`\ufeff${text}`, survey);
  }),
  kind('a byte order mark before a quoted header', 'read', (random) => {
    const [survey, text] = micro(random, { quote: 'all' });
    return instance(`\ufeff${text}`, survey);
  }),
  kind('a byte order mark before sep=;', 'read', (random) => {
    const [survey, text] = micro(random, { delimiter: ';', decimal: ',' });
    return instance(`\ufeffsep=;\r\n${text}`, survey);
  }),
  ...(['with', 'without'] as const).flatMap((mark) =>
    (
      [
        ['LE', utf16le],
        ['BE', utf16be],
      ] as const
    ).map(([order, encode]) =>
      kind(`UTF-16 ${order} ${mark} a byte order mark`, 'read', (random) => {
        const [survey, text] = micro(random, { eol: '\r\n' });
        return instance(encode(mark === 'with' ? `\ufeff${text}` : text), survey);
      }),
    ),
  ),
  kind('UTF-16 LE without a mark, German words', 'read', (random) => {
    const survey = german_(random);
    return instance(utf16le(longTable(survey, german)), survey);
  }),
  kind('UTF-16 text of a spreadsheet, tabs and a byte order mark', 'read', (random) => {
    const [survey, text] = micro(random, { delimiter: '\t', eol: '\r\n', decimal: ',' });
    return instance(utf16le(`\ufeff${text}`), survey);
  }),
  kind('UTF-16 with half a unit at the end', 'either-but-never-wrong', (random) => {
    const [survey, text] = micro(random);
    return instance(joined(utf16le(`\ufeff${text}`), Uint8Array.of(0x0d)), survey);
  }),
  kind('UTF-16 appended to UTF-8, as a pipe with >> does', 'refused', (random) => {
    const survey = inventSurvey(random, { panelCount: 4 });
    const [head = [], ...rows] = longRows(survey);
    const half = Math.floor(rows.length / 2);
    return instance(
      joined(utf8(csv([head, ...rows.slice(0, half)])), utf16le(csv(rows.slice(half)))),
      survey,
    );
  }),
  kind('UTF-32 LE', 'read', (random) => {
    const [survey, text] = micro(random);
    const bytes = [...`\ufeff${text}`].flatMap((c) => {
      const code = c.codePointAt(0) ?? 0;
      return [code & 0xff, code >> 8, 0, 0];
    });
    return instance(Uint8Array.from(bytes), survey);
  }),
  kind(
    'two exports one after the other, each with its byte order mark and header',
    'read',
    (random) => {
      const survey = inventSurvey(random, { panelCount: 4 });
      const [head = [], ...rows] = longRows(survey);
      const half = Math.floor(rows.length / 2);
      const part = (some: readonly (readonly string[])[]) => `\ufeff${csv([head, ...some])}`;
      return instance(part(rows.slice(0, half)) + part(rows.slice(half)), survey);
    },
  ),
  kind('UTF-8 cut in the middle of its last character', 'either-but-never-wrong', (random) => {
    const survey = inventSurvey(random);
    const text = longTable(survey, {
      header: ['panel', 'point', 'reading', 'unit'],
      row: ({ panel, point }, show, i) => [panel, point, show(survey.shots[i]?.value ?? 0), 'µm'],
      finalEnd: false,
    });
    return instance(utf8(text).slice(0, -2), survey);
  }),
];

const pages: readonly Kind[] = [
  kind('Windows-1252 that shows only in µ', 'read', (random) => {
    const [survey, text] = micro(random, { eol: '\r\n' });
    return instance(windows1252(text), survey);
  }),
  kind('Windows-1252, a German spreadsheet', 'read', (random) => {
    const survey = german_(random);
    return instance(windows1252(longTable(survey, german)), survey);
  }),
  kind('Windows-1252, a French spreadsheet', 'read', (random) => {
    const survey = inventSurvey(random, { panels: frenchPanels });
    const header = ['Élément', 'Point', 'Épaisseur (µm)'];
    return instance(windows1252(longTable(survey, { ...german, header })), survey);
  }),
  kind('Latin-1, a Spanish table', 'read', (random) => {
    const survey = inventSurvey(random, { panels: ['capó', 'techo', 'puerta delantera'] });
    const header = ['Panel', 'Punto', 'Espesor (µm)'];
    return instance(latin1(longTable(survey, { ...german, header })), survey);
  }),
  kind('Windows-1252 with curly quotes and dashes in labels', 'read', (random) => {
    const survey = inventSurvey(random, { panels: ['bonnet – “new”', 'roof…', 'driver’s door'] });
    return instance(windows1252(longTable(survey, { header: microHeader })), survey);
  }),
  kind('Windows-1252 with a hard space after thousands', 'read', (random) => {
    const survey = inventSurvey(random, { filler: true });
    return instance(windows1252(longTable(survey, { ...german, thousands: '\u00a0' })), survey);
  }),
  kind('Windows-1252 with é in a note only', 'read', (random) => {
    const survey = inventSurvey(random);
    const text = longTable(survey, {
      header: ['panel', 'point', 'reading_um', 'note'],
      row: ({ panel, point, value }, show, i) => [panel, point, show(value), i === 1 ? 'café' : ''],
    });
    return instance(windows1252(text), survey);
  }),
  kind('Windows-1250 labels without a word about the page', 'either-but-never-wrong', (random) => {
    const survey = inventSurvey(random, { panels: ['błotnik', 'dach', 'próg', 'część'] });
    const bytes = windows1250(longTable(survey, { header: microHeader }));
    return instance(bytes, survey, { others: [mistaken(survey, windows1250, namesPage)] });
  }),
  ...(
    [
      ['windows-1250', windows1250, ['błotnik', 'próg', 'část']],
      ['windows-1251', windows1251, ['капот', 'крыша', 'дверь']],
      ['windows-1254', windows1254, ['sağ kapı', 'ön çamurluk', 'şasi']],
      ['macintosh', macRoman, ['Kotflügel', 'Tür', 'portière']],
      ['windows-1252', windows1252, ['Kotflügel', 'Tür', 'portière']],
    ] as const
  ).map(([encoding, encode, panels]) =>
    kind(`${encoding}, named by a flag`, 'read', (random) => {
      const survey = inventSurvey(random, { panels: panels.map((p) => p.replace('á', 'ę')) });
      return instance(encode(longTable(survey, { header: microHeader })), survey, {
        options: { encoding },
      });
    }),
  ),
  kind('Windows-1251, Russian words and no flag', 'either-but-never-wrong', (random) => {
    const survey = inventSurvey(random, { panels: ['капот', 'крыша', 'дверь'] });
    const header = ['Панель', 'Точка', 'Толщина (мкм)'];
    return instance(windows1251(longTable(survey, { ...german, header })), survey);
  }),
  kind('Mac Roman without a flag', 'either-but-never-wrong', (random) => {
    const survey = inventSurvey(random, { panels: ['Kotflügel', 'Tür', 'Dach'] });
    return instance(macRoman(longTable(survey, { header: microHeader, eol: '\r' })), survey, {
      others: [mistaken(survey, macRoman, namesPage)],
    });
  }),
  ...(
    [
      ['shift_jis', shiftJis, ['ボンネット', 'ルーフ'], ['パネル', '測定点', '膜厚(μm)']],
      ['gb18030', gb18030, ['引擎盖', '车顶'], ['面板', '测点', '厚度(μm)']],
    ] as const
  ).flatMap(([encoding, encode, panels, header]) => [
    kind(`${encoding}, named by a flag`, 'read', (random) => {
      const survey = inventSurvey(random, { panels });
      return instance(encode(longTable(survey, { header })), survey, { options: { encoding } });
    }),
    kind(`${encoding} without a flag`, 'either-but-never-wrong', (random) => {
      const survey = inventSurvey(random, { panels, points: 5 });
      return instance(encode(longTable(survey, { header })), survey);
    }),
  ]),
  kind('UTF-8 labels and a Windows micro sign in one file', 'refused', (random) => {
    const survey = german_(random);
    const [head = [], ...rows] = longRows(survey, german);
    return instance(joined(windows1252(csv([head], german)), utf8(csv(rows, german))), survey);
  }),
];

const lostAt = { refusedAt: 1, hint: /reading-unit/ };
const signs: readonly Kind[] = [
  ...(
    [
      ['U+03BC', 'μm'],
      ['the squared ㎛', '㎛'],
      ['an upper-case µM', 'µM'],
      ['the word microns', 'microns'],
      ['um', 'um'],
    ] as const
  ).map(([name, unit]) =>
    kind(`the unit written with ${name}`, 'read', (random) => {
      const [survey, text] = micro(random, { header: ['panel', 'point', `Thickness (${unit})`] });
      return instance(text, survey);
    }),
  ),
  kind('the squared ㎛ after every value', 'read', (random) => {
    const [survey, text] = micro(random, {
      header: ['panel', 'point', 'reading'],
      row: ({ panel, point, value }, show) => [panel, point, `${show(value)}㎛`],
    });
    return instance(text, survey);
  }),
  kind('a header encoded twice (Âµm)', 'read', (random) => {
    const [survey, text] = micro(random, { header: ['panel', 'point', 'Thickness (Âµm)'] });
    return instance(text, survey, { says: /Âµ/ });
  }),
  kind('a Greek µ encoded twice (Î¼m)', 'read', (random) => {
    const [survey, text] = micro(random, { header: ['panel', 'point', 'Thickness (Î¼m)'] });
    return instance(text, survey, { says: /Î¼/ });
  }),
  kind('a unit encoded twice after every value', 'read', (random) => {
    const [survey, text] = micro(random, {
      header: ['panel', 'point', 'reading'],
      row: ({ panel, point, value }, show) => [panel, point, `${show(value)} Âµm`],
    });
    return instance(text, survey, { says: /Âµ/ });
  }),
  kind('a German file encoded twice, umlauts and all', 'read', (random) => {
    const survey = german_(random);
    return instance(encodedTwice(longTable(survey, german)), survey, { says: /repair|twice|Â|Ã/i });
  }),
  kind('a lost micro sign (U+FFFD) in the header', 'refused', (random) => {
    const [survey, text] = micro(random, { header: ['panel', 'point', 'Thickness (\ufffdm)'] });
    return instance(text, survey, lostAt);
  }),
  kind('a lost micro sign (?m) in the header', 'refused', (random) => {
    const [survey, text] = micro(random, { header: ['panel', 'point', 'Thickness (?m)'] });
    return instance(text, survey, lostAt);
  }),
  kind('a lost micro sign from a Windows pipe, in UTF-16', 'refused', (random) => {
    const [survey, text] = micro(random, {
      header: ['panel', 'point', 'Thickness [?m]'],
      eol: '\r\n',
    });
    return instance(utf16le(`\ufeff${text}`), survey, lostAt);
  }),
  kind('a lost micro sign after every value', 'refused', (random) => {
    const [survey, text] = micro(random, {
      header: ['panel', 'point', 'reading'],
      row: ({ panel, point, value }, show) => [panel, point, `${show(value)} ?m`],
    });
    return instance(text, survey, { hint: /reading-unit/ });
  }),
  ...(['\ufffdm', '?m'] as const).map((unit) =>
    kind(`a lost micro sign (${unit}) and --reading-unit`, 'read', (random) => {
      const [survey, text] = micro(random, { header: ['panel', 'point', `Thickness (${unit})`] });
      return instance(text, survey, { options: { unit: 'um' } });
    }),
  ),
  kind('a DOS page, µ shown as æ', 'either-but-never-wrong', (random) => {
    const [survey, text] = micro(random, { eol: '\r\n' });
    return instance(dosPage(text), survey, { says: /æ|DOS/ });
  }),
  kind('a DOS page turned into UTF-8 (æm)', 'either-but-never-wrong', (random) => {
    const [survey, text] = micro(random, { header: ['panel', 'point', 'Thickness (æm)'] });
    return instance(text, survey, { says: /æ|DOS/ });
  }),
  kind('a DOS page with umlauts', 'either-but-never-wrong', (random) => {
    const survey = german_(random);
    return instance(dosPage(longTable(survey, german)), survey, {
      others: [mistaken(survey, dosPage, namesPage)],
    });
  }),
  kind('the micro sign as an HTML entity', 'either-but-never-wrong', (random) => {
    const [survey, text] = micro(random, { header: ['panel', 'point', 'Thickness (&micro;m)'] });
    return instance(text, survey);
  }),
];

export const encodingKinds: readonly Kind[] = [...unicode, ...pages, ...signs];
