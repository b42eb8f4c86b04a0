import fc from 'fast-check';
import { expect, test } from 'vitest';
import { readGaugeFile } from '../../src/intake/read-gauge-file.ts';
import { createLongFile } from '../../src/intake/read-long-file.ts';
import { brief, options, panelNames, utf8 } from './helpers.ts';

const head = '# a long export\nvehicle,panel,reading_um,note\n';

/** Reads a text in chunks of a size, the decisions taken from a sample of some hundred bytes. */
function readLong(text: string, chunk: number, sample = 200) {
  const bytes = utf8(text);
  const file = createLongFile('f', options, sample);
  const parts = [];
  for (let at = 0; at < bytes.length; at += chunk) {
    const last = at + chunk >= bytes.length;
    const read = file.push(bytes.subarray(at, at + chunk), last);
    if (read.value === undefined) return { diagnostics: read.diagnostics };
    parts.push(...read.value);
  }
  return { parts, diagnostics: [] };
}

const row = fc.tuple(
  fc.constantFrom(...panelNames),
  fc.oneof(
    fc.integer({ min: 600, max: 3_000 }).map((n) => (n / 10 + 0.05).toFixed(2)),
    fc.constant(''),
  ),
  fc.constantFrom('', '"a, b"', '"over\ntwo lines"', 'x'),
);
const cars = fc.array(fc.array(row, { minLength: 3, maxLength: 12 }), {
  minLength: 5,
  maxLength: 20,
});
const written = cars.map((all) => {
  const lines = all.flatMap((rows, k) => [
    `CAR${k},${panelNames[0]},100.25,`,
    ...rows.map((cells) => `CAR${k},${cells.join(',')}`),
  ]);
  return `${head}${lines.join('\n')}\n`;
});

test('a file of many vehicles gives the same readings and excluded cells in pieces as in one', () => {
  fc.assert(
    fc.property(written, fc.integer({ min: 50, max: 900 }), (text, chunk) => {
      const whole = readGaugeFile({ name: 'f', bytes: utf8(text) }, options).value;
      const { parts } = readLong(text, chunk);
      expect(parts?.flatMap(({ readings }) => readings)).toEqual(whole?.readings);
      expect(parts?.flatMap(({ excluded }) => excluded)).toEqual(whole?.excluded);
    }),
    { numRuns: 25 },
  );
});

const car = (name: string, reading = '100.5'): string =>
  panelNames.map((panel) => `${name},${panel},${reading},\n`).join('');
const manyCars = (count: number): string =>
  Array.from({ length: count }, (_, k) => car(`CAR${k}`)).join('');

test('the file is handed out vehicle by vehicle, not at the end', () => {
  const { parts } = readLong(head + manyCars(50), 500);
  expect(parts?.length).toBeGreaterThan(8);
});

test('a row that contradicts what the sample decided is told with its line', () => {
  const text = `${head}${manyCars(30)}${car('LAST', '"98,5"')}`;
  const { diagnostics } = readLong(text, 400);
  expect(diagnostics[0]?.at?.line).toBe(2 + 30 * panelNames.length + 1);
  expect(diagnostics[0]?.severity).toBe('error');
});

test('a byte that is no text late in the file is told with its line', () => {
  const bytes = [...utf8(head + manyCars(30)), ...utf8('CAR99,roof,10'), 0xb5, 0x0a];
  const file = createLongFile('f', options, 200);
  file.push(Uint8Array.from(bytes.slice(0, 900)), false);
  const { diagnostics } = file.push(Uint8Array.from(bytes.slice(900)), true);
  expect(diagnostics.map(brief)).toEqual([
    `${2 + 30 * panelNames.length + 1}:14+1 error encoding-unknown`,
  ]);
});

test('a vehicle that comes again after others is refused where it does', () => {
  const text = head + manyCars(20) + car('CAR3') + manyCars(3).replaceAll('CAR', 'VAN');
  const { diagnostics } = readLong(text, 300);
  expect(diagnostics[0]?.message).toContain('"CAR3" stands here again');
  expect(diagnostics[0]?.at?.line).toBe(2 + 20 * panelNames.length + 1);
});

/** Cars of different films, and every diagnostic of reading them in pieces. */
const mixedCars = Array.from({ length: 40 }, (_, k) => 90.5 + ((k * 37) % 80));
const mixedRows = mixedCars.map((film, k) => car(`CAR${k}`, String(film))).join('');
function toldOfLong(text: string): readonly string[] {
  const bytes = utf8(text);
  const file = createLongFile('f', options, 200);
  const told: string[] = [];
  for (let at = 0; at < bytes.length; at += 500) {
    const { diagnostics } = file.push(bytes.subarray(at, at + 500), at + 500 >= bytes.length);
    told.push(...diagnostics.map(({ severity, code }) => `${severity} ${code}`));
  }
  return told;
}

test('statistics at the end of a long file are held against all of its pieces', () => {
  const films = mixedCars.flatMap((film) => panelNames.map(() => film));
  const sum = films.reduce((all, film) => all + film, 0);
  const mean = sum / films.length;
  const squares = films.reduce((all, film) => all + (film - mean) ** 2, 0);
  const deviation = Math.sqrt(squares / (films.length - 1));
  const foot = [
    `,Mean,${mean.toFixed(2)},`,
    `,SD,${deviation.toFixed(2)},`,
    `,Sum,${sum},`,
    `,Count,${films.length},`,
    `,Min,${Math.min(...films)},`,
    `,Max,${Math.max(...films)},`,
  ];
  const text = `${head}${mixedRows}${foot.join('\n')}\n`;
  expect(toldOfLong(text)).toEqual(foot.map(() => 'note statistics-left-out'));
});

test('a sum at the end of a long file that its pieces do not give is refused', () => {
  const told = toldOfLong(`${head}${mixedRows},Sum,777.5,\n`);
  expect(told).toContain('error statistics-disagree');
});

test('a file of another layout is left to be read whole, and nothing is said of it', () => {
  const lines = Array.from({ length: 40 }, (_, k) => `${90 + k}.5,${95 + k}.5`).join('\n');
  const { parts, diagnostics } = readLong(`bonnet (µm),roof (µm)\n${lines}\n`, 100);
  expect(parts).toBeUndefined();
  expect(diagnostics).toEqual([]);
});

test('what is said of a name of a column is said once, not of each piece, and what of rows of each', () => {
  const text = `# a long export\nvehicle,panel,reading_um,Foo\n${manyCars(30)}`;
  const { parts } = readLong(text.replace('CAR3,roof,100.5', 'CAR3,roof,9.5'), 400);
  expect(parts?.length).toBeGreaterThan(3);
  const told = parts?.flatMap(({ diagnostics }) => diagnostics.map(brief));
  expect(told).toEqual(['2:26+3 warning column-unknown', '16:11+4 warning reading-implausible']);
});
