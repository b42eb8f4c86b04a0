/**
 * Whole files drawn at random: any layout in any dialect, encoding and decimal mark, below any preamble
 * and above any foot. Single kinds show one fault each; people's files have several at once.
 */
import { inventSurvey, panelsOf, pointsOf, type Survey, valuesAt } from './invented-survey.ts';
import { type Instance, instance, type Kind, kindsOf, type Rest, utf8 } from './kind.ts';
import type { Random } from './random.ts';
import { utf16be, utf16le, windows1252 } from './spoiled-bytes.ts';
import { csv, shown } from './write-table.ts';

const kind = kindsOf('mixed', 'layout');

type Language = {
  readonly heads: readonly [panel: string, point: string, reading: string];
  readonly repeat: string;
  readonly statistics: readonly [
    mean: string,
    least: string,
    most: string,
    deviation: string,
    count: string,
  ];
  readonly facts: readonly (readonly [string, string])[];
};
const english: Language = {
  heads: ['Panel', 'Point', 'Thickness'],
  repeat: 'Reading',
  statistics: ['Average', 'Minimum', 'Maximum', 'Std Dev', 'Count'],
  facts: [
    ['Device', 'gauge 2'],
    ['Serial no.', '00471'],
    ['Date', '2026-11-25'],
    ['Operator', 'Kim'],
    ['Temperature', '21'],
  ],
};
const german: Language = {
  heads: ['Bauteil', 'Messpunkt', 'Schichtdicke'],
  repeat: 'Messung',
  statistics: ['Mittelwert', 'Minimum', 'Maximum', 'Standardabweichung', 'Anzahl'],
  facts: [
    ['Gerät', 'Prüfer 2'],
    ['Seriennummer', '00471'],
    ['Datum', '25.11.2026'],
    ['Bediener', 'Kim'],
  ],
};
const french: Language = {
  heads: ['Panneau', 'Point', 'Épaisseur'],
  repeat: 'Mesure',
  statistics: ['Moyenne', 'Minimum', 'Maximum', 'Écart type', 'Nombre'],
  facts: [
    ['Appareil', 'jauge 2'],
    ['Numéro de série', '00471'],
    ['Date', '25/11/2026'],
    ['Opérateur', 'Kim'],
  ],
};

type Draw = {
  readonly language: Language;
  readonly delimiter: string;
  readonly decimal: string;
  readonly eol: string;
  readonly quote: 'needed' | 'all';
  readonly unit: string;
  readonly encode: (text: string) => Uint8Array;
  readonly layout: 'long' | 'repeats' | 'panels' | 'blocks';
  readonly preamble: 'none' | 'colon' | 'cells' | 'padded' | 'comment';
  readonly foot: 'none' | 'statistics' | 'statistics after a blank line' | 'note';
  readonly index: boolean;
  readonly padded: boolean;
  readonly holes: boolean;
};

function draw(random: Random): Draw {
  const decimal = random.pick(['.', ',']);
  return {
    language: random.pick([english, german, french]),
    delimiter: random.pick([',', ';', '\t', '|']),
    decimal,
    eol: random.pick(['\n', '\r\n', '\r']),
    quote: random.pick(['needed', 'needed', 'all']),
    unit: random.pick(['µm', 'μm', 'um', 'microns', 'mil']),
    encode: random.pick([
      utf8,
      (text) => utf8(`\ufeff${text}`),
      (text) => windows1252(text.replaceAll('μ', 'µ')),
      (text) => utf16le(`\ufeff${text}`),
      utf16le,
      utf16be,
    ]),
    layout: random.pick(['long', 'repeats', 'panels', 'blocks']),
    preamble: random.pick(['none', 'colon', 'cells', 'padded', 'comment']),
    foot: random.pick(['none', 'statistics', 'statistics after a blank line', 'note']),
    index: random.chance(0.3),
    padded: random.chance(0.2),
    holes: random.chance(0.2),
  };
}

type Rows = readonly (readonly string[])[];
type Body = { readonly rows: Rows; readonly points: 'stated' | 'open' };

function bodyOf(survey: Survey, how: Draw, show: (value: number) => string): Body {
  const { heads, repeat } = how.language;
  const reading = `${heads[2]} (${how.unit})`;
  const panels = panelsOf(survey);
  const points = pointsOf(survey);
  const own = (panel: string) => survey.shots.filter((shot) => shot.panel === panel);
  if (how.layout === 'long')
    return {
      points: 'stated',
      rows: [
        [heads[0], heads[1], reading],
        ...survey.shots.map(({ panel, point, value }) => [panel, point, show(value)]),
      ],
    };
  if (how.layout === 'repeats') {
    const columns = Array.from(
      { length: valuesAt(survey, panels[0] ?? '', points[0]).length },
      (_, i) => `${repeat} ${i + 1} (${how.unit})`,
    );
    const rows = panels.flatMap((panel) =>
      points.map((point) => [panel, point, ...valuesAt(survey, panel, point).map(show)]),
    );
    return { points: 'stated', rows: [[heads[0], heads[1], ...columns], ...rows] };
  }
  if (how.layout === 'panels')
    return {
      points: 'open',
      rows: [
        [heads[1], ...panels.map((panel) => `${panel} (${how.unit})`)],
        ...points.map((point) => [
          point,
          ...panels.map((panel) => valuesAt(survey, panel, point).map(show).join('')),
        ]),
      ],
    };
  return {
    points: 'stated',
    rows: panels.flatMap((panel, i) => [
      ...(i === 0 ? [] : [[]]),
      [panel],
      [heads[1], reading],
      ...own(panel).map(({ point, value }) => [point, show(value)]),
    ]),
  };
}

function preambleOf({ preamble, language, delimiter, eol }: Draw, width: number): string {
  const lines = language.facts.map(([key, value]) => {
    if (preamble === 'colon') return `${key}: ${value}`;
    if (preamble === 'comment') return `# ${key}: ${value}`;
    return [
      key,
      value,
      ...Array.from({ length: preamble === 'padded' ? Math.max(0, width - 2) : 0 }, () => ''),
    ].join(delimiter);
  });
  const blank = preamble === 'padded' ? delimiter.repeat(width - 1) : '';
  return preamble === 'none' ? '' : [...lines, blank, ''].join(eol);
}

/** Statistics of all values, each in the column of the readings; the word leads the row. */
function footOf(survey: Survey, how: Draw, width: number): Rows {
  if (how.foot === 'none') return [];
  if (how.foot === 'note') return [[], ['All points were dry.']];
  const values = survey.shots.map(({ value }) => value);
  const centre = values.reduce((sum, value) => sum + value, 0) / values.length;
  const deviation = Math.sqrt(
    values.reduce((sum, value) => sum + (value - centre) ** 2, 0) / (values.length - 1),
  );
  const all = [centre, Math.min(...values), Math.max(...values), deviation].map((value) =>
    shown(value, { digits: 2, decimal: how.decimal }),
  );
  const rows = [...all, String(values.length)].map((value, i) => [
    how.language.statistics[i] ?? '',
    ...Array.from({ length: Math.max(0, width - 2) }, () => ''),
    value,
  ]);
  return how.foot === 'statistics' ? rows : [[], ...rows];
}

function file(random: Random, how: Draw): Instance {
  const unit = how.unit === 'mil' ? 'mil' : 'um';
  const survey = inventSurvey(random, {
    unit,
    points: 4,
    repeats: how.layout === 'repeats' ? 3 : 1,
    filler: random.chance(0.2),
  });
  const show = (value: number) =>
    shown(value, { decimal: how.decimal, digits: unit === 'mil' ? 2 : 1 });
  // One cell of a long table is over the gauge's range.
  const hole = how.holes && how.layout === 'long' ? random.int(0, survey.shots.length - 1) : -1;
  const body = bodyOf(survey, how, show);
  const rows = [
    ...body.rows.map((row, i) => (i === hole + 1 && hole >= 0 ? [...row.slice(0, -1), 'OL'] : row)),
    ...(hole >= 0 ? [] : footOf(survey, how, body.rows[0]?.length ?? 1)),
  ];
  const numbered =
    how.index && how.layout === 'long'
      ? rows.map((row, i) =>
          row.length === 3 && i <= survey.shots.length
            ? [i === 0 ? 'No.' : String(i), ...row]
            : row.length === 3
              ? ['', ...row]
              : row,
        )
      : rows;
  const cells = how.padded ? numbered.map((row) => row.map((cell) => ` ${cell}  `)) : numbered;
  const text = preambleOf(how, numbered[0]?.length ?? 1) + csv(cells, how);
  const rest: Rest = {
    points: body.points,
    ...(hole >= 0 ? { excluded: [['over-range'] as const] } : {}),
  };
  const kept = { ...survey, shots: survey.shots.filter((_, i) => i !== hole) };
  return instance(how.encode(text), kept, rest);
}

const layouts = ['long', 'repeats', 'panels', 'blocks'] as const;
const preambles = ['none', 'colon', 'cells', 'padded', 'comment'] as const;

export const mixedKinds: readonly Kind[] = layouts.flatMap((layout) =>
  preambles.flatMap((preamble) =>
    (['none', 'statistics', 'statistics after a blank line', 'note'] as const).map((foot) =>
      // Statistics of everything under tables of several panels belong to no column: only not wrong.
      kind(
        `any dialect: ${layout}, preamble ${preamble}, foot ${foot}`,
        foot.startsWith('statistics') && layout !== 'long' ? 'either-but-never-wrong' : 'read',
        (random) => file(random, { ...draw(random), layout, preamble, foot }),
      ),
    ),
  ),
);
