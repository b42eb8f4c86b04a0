import { describe, expect, test } from 'vitest';
import { builtInTemplates } from '../../../src/formats/data/templates.ts';
import type { ReadingDecisions } from '../../../src/formats/decisions.ts';
import { readDecisions } from '../../../src/formats/decisions.ts';
import { filmModel } from '../../../src/formats/models.ts';
import { renderJson } from '../../../src/render/json.ts';
import { decisionsFile } from '../../../src/report/read/decisions-file.ts';
import type { ReadRequest } from '../../../src/tasks/read/read-request.ts';
import { keepDecisions, readVehicles } from '../../../src/tasks/read/read-vehicles.ts';
import type { TypedReading } from '../../../src/tasks/read/reading-rules.ts';

const bytesOf = (text: string): Uint8Array => new TextEncoder().encode(text);

const request = (
  files: readonly (string | Uint8Array)[],
  more: Partial<ReadRequest> = {},
): ReadRequest => ({
  files: files.map((content, k) => ({
    name: `${k + 1}.csv`,
    bytes: typeof content === 'string' ? bytesOf(content) : content,
    sha256: String(k),
  })),
  templates: builtInTemplates,
  templateId: undefined,
  intake: { plausible: filmModel.measurement },
  vehicle: undefined,
  keepUnknownPanels: true,
  ...more,
});

const nothing: ReadingDecisions = { columns: new Map(), panelNames: new Map() };
const asDecided = (
  content: string | Uint8Array,
  decisions: Partial<ReadingDecisions>,
  typed: TypedReading = {},
) =>
  readVehicles(
    request([content], {
      typed,
      decided: { file: 'decided.json', decisions: { ...nothing, ...decisions } },
    }),
  );

const valuesOf = ({ value }: ReturnType<typeof readVehicles>) =>
  value?.vehicles.flatMap(({ readings }) =>
    readings.map(({ panel, thickness }) => [panel, Number(thickness)]),
  );
const told = ({ diagnostics }: ReturnType<typeof readVehicles>) =>
  diagnostics.map(({ code, message, hint, at }) => ({ code, message, hint, line: at?.line }));

const german = 'Bauteil;Messwert (µm)\nDach;101,5\nHaube;99,5\n';

describe('a file that fits its decisions', () => {
  test('is read as decided, panels and columns by their names', () => {
    const read = asDecided('a;b\nH;1.024\n', {
      ...{ delimiter: ';', decimal: ',', unit: 'um' },
      columns: new Map([
        ['panel', ['a']],
        ['reading', ['b']],
      ]),
      panelNames: new Map([['H', 'bonnet']]),
    });
    expect(valuesOf(read)).toEqual([['bonnet', 1024]]);
    expect(read.value?.inputs[0]?.decisions?.evidence[0]).toBe('read as decided.json says');
  });

  test('need not hold every panel that the decisions name', () => {
    const panelNames = new Map([['Klappe', 'boot lid']]);
    expect(valuesOf(asDecided(german, { panelNames }))).toHaveLength(2);
  });

  test('may be whole numbers where a decimal mark is decided, and have a byte order mark', () => {
    const text = '\ufeffBauteil;Messwert (µm)\nDach;101\n';
    expect(valuesOf(asDecided(text, { decimal: ',', encoding: 'utf-8' }))).toEqual([['roof', 101]]);
  });

  test('is read as a flag says where the flag contradicts the decisions, and it is said', () => {
    const read = asDecided(german, { delimiter: ',' }, { delimiter: ';' });
    expect(valuesOf(read)).toHaveLength(2);
    expect(read.value?.inputs[0]?.decisions?.evidence).toContain(
      '--delimiter semicolon wins over decided.json, which says the delimiter is a comma',
    );
  });

  test('holds against what the environment or a shop says', () => {
    const settled = request(['Bauteil;Wert\nDach;4,1\n'], {
      intake: { plausible: filmModel.measurement, unit: 'um' },
      decided: { file: 'decided.json', decisions: { ...nothing, unit: 'mil' } },
    });
    expect(valuesOf(readVehicles(settled))).toEqual([['roof', expect.closeTo(104.14, 9)]]);
  });
});

describe('a file that does not fit its decisions is refused, with what it says itself', () => {
  test.each<[string, Partial<ReadingDecisions>, string, string]>([
    ['the delimiter', { delimiter: ',' }, 'a comma', 'a semicolon'],
    ['the decimal mark', { decimal: '.' }, 'a point', 'a comma'],
    ['the unit', { unit: 'mil' }, 'mil', 'µm'],
    ['the header', { headerLine: 2 }, 'line 2', 'line 1'],
    ['the layout', { layout: 'wide' }, 'wide', 'long'],
    ['the encoding', { encoding: 'windows-1252' }, 'windows-1252', 'utf-8'],
  ])('%s', (named, decisions, said, own) => {
    const [first, ...more] = told(asDecided(german, decisions));
    expect(first).toMatchObject({
      code: 'decisions-mismatch',
      line: 1,
      message: `decided.json says ${named} is ${said}, and in this file it is ${own}`,
    });
    expect(first?.hint).toMatch(/^--[a-z-]+ \S+ reads this file; .*decided\.json$/);
    expect(more).toEqual([]);
  });

  test('several of them at once', () => {
    const both = told(asDecided(german, { delimiter: ',', decimal: '.', unit: 'mil' }));
    expect(both.map(({ message }) => message.replace(/.* says (.*) is .*, and.*/, '$1'))).toEqual([
      ...['the delimiter', 'the unit', 'the decimal mark'],
    ]);
  });

  test('a column that is named and not there, with those that are', () => {
    const [first] = told(
      asDecided(german, { columns: new Map([['reading', ['Messwerte (µm)']]]) }),
    );
    expect(first).toMatchObject({ code: 'decisions-mismatch', line: 1 });
    expect(first?.message).toContain('"Messwerte (µm)"');
    expect(first?.hint).toContain('did you mean "Messwert (µm)"?');
  });

  test('bytes of another code page', () => {
    const bytes = Uint8Array.from('Bauteil;Messwert (\u00b5m)\nDach;101,5\n', (sign) =>
      sign.charCodeAt(0),
    );
    expect(told(asDecided(bytes, { encoding: 'utf-8' }))[0]).toMatchObject({
      code: 'decisions-mismatch',
      message: 'decided.json says the encoding is utf-8, and in this file it is windows-1252',
    });
  });

  test('bytes of two to a character without a mark', () => {
    const text = 'panel;reading_um\nroof;101,5\n';
    const wide = Uint8Array.from([...text].flatMap((sign) => [0, sign.charCodeAt(0)]));
    expect(told(asDecided(wide, { encoding: 'utf-16le' }))[0]?.message).toBe(
      'decided.json says the encoding is utf-16le, and in this file it is utf-16be',
    );
    expect(valuesOf(asDecided(wide, { encoding: 'utf-16be' }))).toHaveLength(1);
  });

  test('but not by another name of its encoding', () => {
    const bytes = Uint8Array.from(
      'Bauteil;Messwert (\u00b5m)\nT\u00fcr vorne links;101,5\n',
      (sign) => sign.charCodeAt(0),
    );
    expect(valuesOf(asDecided(bytes, { encoding: 'latin1' }))).toHaveLength(1);
  });

  test('but an error that has nothing to do with them keeps its own name', () => {
    const read = asDecided('Bauteil;Messwert (µm)\nDach;abc\n', { delimiter: ';' });
    expect(told(read)[0]?.code).toBe('reading-not-a-number');
  });
});

describe('decisions that are kept', () => {
  const keep = (...files: readonly string[]) => keepDecisions(request(files));

  test('are those the file has shown, and read the file alike again', () => {
    const text = 'Gerät: X\nBauteil;Messwert (µm);Datum;Uhrzeit\nDach;101,5;1.2.26;10:00\n';
    const { value } = keep(text);
    expect(value).toEqual({
      ...{ encoding: 'utf-8', delimiter: ';', decimal: ',', layout: 'long', unit: 'um' },
      headerLine: 2,
      columns: new Map([
        ['panel', ['Bauteil']],
        ['reading', ['Messwert (µm)']],
        ['time', ['Datum', 'Uhrzeit']],
      ]),
      panelNames: new Map(),
    });
    if (value === undefined) return;
    const written = readDecisions('kept.json', renderJson(decisionsFile(value)));
    expect(written.value?.value).toEqual(value);
    expect(valuesOf(asDecided(text, value))).toEqual([['roof', 101.5]]);
  });

  test('leave a decimal mark open that no number of the file needs', () => {
    expect(keep(german.replaceAll(',5', '')).value).not.toHaveProperty('decimal');
    expect(keep(german).value).toHaveProperty('decimal', ',');
  });

  test('leave out a unit that differs from row to row, since none holds for all', () => {
    const { value } = keep('panel,reading,unit\nroof,101.5,um\nbonnet,4.1,mil\n');
    expect(value).toHaveProperty('delimiter', ',');
    expect(value).not.toHaveProperty('unit');
  });

  test('are refused where two files were not read alike', () => {
    const { diagnostics } = keep(german, german.replaceAll(';', '|'));
    expect(diagnostics).toMatchObject([
      { code: 'usage-option-value', message: expect.stringContaining('delimiter differs') },
    ]);
  });
});

describe('names of panels in several files', () => {
  const typed = { panelNames: new Map([['K', 'boot lid']]) };

  test('are wrong only where no file has them', () => {
    const files = ['panel,reading_um\nroof,101\n', 'panel,reading_um\nK,99\n'];
    expect(valuesOf(readVehicles(request(files, { typed })))).toEqual([
      ['roof', 101],
      ['boot', 99],
    ]);
    expect(told(readVehicles(request([files[0] ?? ''], { typed })))).toMatchObject([
      { code: 'usage-option-value', message: 'no panel of 1.csv is called "K"' },
    ]);
  });
});
