/**
 * What a command prints on a terminal, as a picture: every sign at its column, in the colours of the
 * terminal, light or dark as the reader's screen is. The same screen gives the same picture.
 */
import { displayWidth } from '../../src/render/printable.ts';
import { wrap } from '../../src/render/wrap.ts';

/** Signs of one look that stand together. */
export type Run = {
  readonly column: number;
  readonly text: string;
  readonly look: 'plain' | 'strong' | 'quiet' | 'binding';
};

const LOOKS: Readonly<Record<string, Run['look']>> = {
  '1': 'strong',
  '2': 'quiet',
  '94': 'binding',
};

/** What begins a mark of colour (ECMA-48, SGR): a number and `m` follow. */
const MARK = '\u001b[';

/** A line as the terminal shows it, in runs; blanks between columns are left out. */
export function runsOf(line: string): readonly Run[] {
  const runs: Run[] = [];
  let look: Run['look'] = 'plain';
  let column = 0;
  for (const [at, part] of line.split(MARK).entries()) {
    const [mark = '', number = ''] = at === 0 ? [] : (/^(\d+)m/.exec(part) ?? []);
    if (at > 0) look = LOOKS[number] ?? 'plain';
    const words = part.slice(mark.length);
    for (const { 0: text, index } of words.matchAll(/\S+(?: \S+)*/g)) {
      runs.push({ column: column + displayWidth(words.slice(0, index)), text, look });
    }
    column += displayWidth(words);
  }
  return runs;
}

const CELL = { width: 8.4, height: 18 };
const EDGE = 14;
const BASELINE = 13;
/** At the end of a typed line that goes on. */
const CONTINUED = ' \\';

const STYLE = `
.paper { fill: #ffffff; stroke: #c4c4c4; }
text { font: 14px ui-monospace, "DejaVu Sans Mono", Menlo, Consolas, monospace; fill: #1a1a1a; white-space: pre; }
.strong { font-weight: 700; }
.quiet { fill: #595959; }
.binding { fill: #0072b2; }
@media (prefers-color-scheme: dark) {
  .paper { fill: #161616; stroke: #4a4a4a; }
  text { fill: #ececec; }
  .quiet { fill: #b0b0b0; }
  .binding { fill: #56b4e9; }
}`;

export type Screen = {
  readonly command: string;
  readonly output: string;
  readonly columns: number;
};

export function screenSvg({ command, output, columns }: Screen): string {
  const typed = wrap(`$ ${command}`, columns - CONTINUED.length, '    ');
  const printed = output.replace(/\n$/, '').split('\n');
  const width = round(2 * EDGE + columns * CELL.width);
  const height = 2 * EDGE + (typed.length + printed.length) * CELL.height;
  const shown = [
    ...typed.flatMap((line, at) =>
      runsOf(at + 1 < typed.length ? line + CONTINUED : line).map((run) =>
        textLine(at, { ...run, look: 'strong' }),
      ),
    ),
    ...printed.flatMap((line, at) => runsOf(line).map((run) => textLine(typed.length + at, run))),
  ];
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}" width="${width}" height="${height}" role="img">
<title>${escaped(command)}</title>
<style>${STYLE}
</style>
<rect class="paper" x=".5" y=".5" width="${round(width - 1)}" height="${height - 1}" rx="6"/>
${shown.join('\n')}
</svg>
`;
}

/** Its length is stated, so that it fills its columns in whatever type the reader has. */
function textLine(line: number, { column, text, look }: Run): string {
  const x = round(EDGE + column * CELL.width);
  const y = EDGE + line * CELL.height + BASELINE;
  const length = round(displayWidth(text) * CELL.width);
  const named = look === 'plain' ? '' : ` class="${look}"`;
  return `<text x="${x}" y="${y}" textLength="${length}" lengthAdjust="spacingAndGlyphs"${named}>${escaped(text)}</text>`;
}

const round = (value: number): number => Math.round(10 * value) / 10;

const escaped = (text: string): string =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');
