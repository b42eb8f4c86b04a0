import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { asciiBlocks } from '../../src/render/ascii.ts';
import { asciiDrawing, asciiText } from '../../src/render/ascii-text.ts';
import { displayWidth } from '../../src/render/printable.ts';
import { renderText } from '../../src/render/text.ts';
import { type Block, cell } from '../../src/report/model.ts';
import { projectRoot } from '../cli/run-leastcut.ts';

describe('a sign that ASCII lacks', () => {
  test.each([
    ['2.5\u00a0µm ± 0.3', '2.5\u00a0um +/- 0.3'],
    ['3× da, 1–2 %, −0.8', '3x da, 1-2 %, -0.8'],
    ['20 °C at 60°', '20 deg C at 60 deg'],
    ['10⁻³ · x₁₂ ≤ √ν', '10^-3 * x_12 <= sqrt nu'],
    ['x̄ → σ²', 'x_bar -> sigma^2'],
    ['‘a’ “b” …', `'a' "b" ...`],
    ['coupé', 'coupe'],
    ['Tür', 'T\\u{fc}r'],
    ['\u{1f697}', '\\u{1f697}'],
  ])('%j is written %j', (text, written) => {
    expect(asciiText(text)).toBe(written);
  });

  test('has a spelling wherever our own sentences use it', () => {
    const rooms = ['base', 'correction', 'work', 'training', 'tasks', 'report', 'render'];
    const files = rooms.flatMap((room) =>
      readdirSync(join(projectRoot, 'src', room), { recursive: true, encoding: 'utf8' })
        .filter((name) => name.endsWith('.ts') && name !== 'ascii-text.ts')
        .map((name) => join(projectRoot, 'src', room, name)),
    );
    const data = ['glossary', 'formulas', 'remark-meanings', 'state-meanings', 'templates'].map(
      (name) => join(projectRoot, 'src/formats/data', `${name}.ts`),
    );
    const signs = new Set(
      [...files, ...data].flatMap((file) =>
        [...readFileSync(file, 'utf8').matchAll(/\P{ASCII}/gu)].map(([sign]) => sign),
      ),
    );
    expect(signs.size).toBeGreaterThan(30);
    // Letters are of words that are looked for in files.
    const isLetter = (sign: string): boolean => /\p{Script=Latin}/u.test(sign);
    const unspelled = (sign: string): boolean =>
      asciiText(sign).startsWith('\\u{') && asciiDrawing(sign).startsWith('\\u{');
    expect([...signs].filter((sign) => !isLetter(sign) && unspelled(sign))).toEqual([]);
  });
});

test('things to do are spelled out to the last word: the note, and each box by itself', () => {
  const ticks: Block = {
    kind: 'ticks',
    label: 'Tür',
    note: 'takes 2 µm',
    items: [{ text: '2× it', boxes: 2, apart: ['±1', '±2'] }],
  };
  expect(asciiBlocks([ticks])).toEqual([
    {
      kind: 'ticks',
      label: 'T\\u{fc}r',
      note: 'takes 2 um',
      items: [{ text: '2x it', boxes: 2, apart: ['+/-1', '+/-2'] }],
    },
  ]);
});

test('what is drawn keeps its places', () => {
  const table: Block = {
    kind: 'table',
    columns: [
      { title: 'panel', align: 'left' },
      { title: '', align: 'left', axis: { from: 0, to: 100, line: 50 } },
    ],
    rows: [
      [cell('Tür'), { kind: 'strip', values: [1, 26, 26, 76, 76, 76], marked: 40 }],
      [cell('roof'), { kind: 'strip', values: [120], marked: -5 }],
    ],
  };
  const style = { width: 29, paint: (text: string) => text };
  const page = asciiDrawing(renderText(asciiBlocks([table]), style));
  expect(page.trimEnd().split('\n')).toEqual([
    'panel    0         |      100',
    'T\\u{fc}r .    :  < |    #',
    'roof     {         |        }',
  ]);
  expect(page.split('\n').map(displayWidth)).toEqual(page.split('\n').map(({ length }) => length));
});
