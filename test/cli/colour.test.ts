import { stripVTControlCharacters } from 'node:util';
import { describe, expect, test } from 'vitest';
import { colourDecision, textStyle, textWidth } from '../../src/cli/terminal.ts';
import { contrast } from '../render/contrast.ts';
import { askLeastcut } from './ask-leastcut.ts';

const words = ['survey', 'samples/sound-saloon/readings.csv'];
const ESC = '\u001b';

describe('who decides on colour', () => {
  const terminal = { isTTY: true };
  const pipe = { isTTY: false };
  test.each([
    {
      flag: 'always',
      stream: pipe,
      env: { NO_COLOR: '1' },
      colour: true,
      why: 'the flag before NO_COLOR',
    },
    {
      flag: 'never',
      stream: terminal,
      env: { FORCE_COLOR: '1' },
      colour: false,
      why: 'the flag before FORCE_COLOR',
    },
    {
      flag: 'auto',
      stream: terminal,
      env: { NO_COLOR: '1', FORCE_COLOR: '1' },
      colour: false,
      why: 'NO_COLOR before FORCE_COLOR',
    },
    {
      flag: 'auto',
      stream: terminal,
      env: { NO_COLOR: '' },
      colour: true,
      why: 'an empty NO_COLOR says nothing',
    },
    {
      flag: 'auto',
      stream: pipe,
      env: { FORCE_COLOR: '1' },
      colour: true,
      why: 'FORCE_COLOR before the pipe',
    },
    {
      flag: 'auto',
      stream: terminal,
      env: { FORCE_COLOR: '0' },
      colour: false,
      why: 'FORCE_COLOR=0 before the terminal',
    },
    { flag: 'auto', stream: pipe, env: {}, colour: false, why: 'a pipe has none' },
    { flag: 'auto', stream: terminal, env: {}, colour: true, why: 'a terminal has some' },
    {
      flag: 'auto',
      stream: terminal,
      env: { TERM: 'dumb' },
      colour: false,
      why: 'a dumb terminal has none',
    },
  ] as const)('$why', ({ flag, stream, env, colour }) => {
    const typed = { value: flag, origin: 'flag', where: '--color' } as const;
    expect(colourDecision(typed, stream, env).colour).toBe(colour);
  });

  test('a settings file decides where nothing of the run does', () => {
    const file = { value: 'always', origin: 'user', where: 'shop.json:3' } as const;
    expect(colourDecision(file, pipe, {})).toEqual({
      colour: true,
      why: 'shop.json:3 says always',
    });
    expect(colourDecision(file, terminal, { NO_COLOR: '1' }).colour).toBe(false);
    expect(colourDecision({ ...file, origin: 'environment' }, pipe, { NO_COLOR: '1' }).colour).toBe(
      true,
    );
  });
});

describe('how wide a page is', () => {
  test.each([
    [{ columns: 132 }, { COLUMNS: '100' }, 132],
    [{}, { COLUMNS: '100' }, 100],
    [{}, {}, 80],
    [{}, { COLUMNS: 'wide' }, 80],
    [{ columns: 20 }, {}, 60],
  ])('%o with %o is %i columns', (stream, env, width) => {
    expect(textWidth(stream, env).width).toBe(width);
  });
});

test('without colour the style changes nothing', async () => {
  const { paint } = await textStyle(80, false);
  expect(paint('clear', 'binding')).toBe('clear');
});

describe.concurrent('colour of the built program', () => {
  test('text with its colours taken off is the plain text', async () => {
    const [plain, coloured] = await Promise.all([
      askLeastcut([...words, '--color', 'never']),
      askLeastcut([...words, '--color', 'always']),
    ]);
    expect(plain.out).not.toContain(ESC);
    expect(coloured.out).toContain(ESC);
    expect(stripVTControlCharacters(coloured.out)).toBe(plain.out);
  });

  test('NO_COLOR and FORCE_COLOR together are plain and say nothing on standard error', async () => {
    const { out, err } = await askLeastcut(words, { env: { NO_COLOR: '1', FORCE_COLOR: '1' } });
    expect(out).not.toContain(ESC);
    expect(err).toBe('');
  });

  test('FORCE_COLOR paints a pipe, and JSON never', async () => {
    const env = { FORCE_COLOR: '1' };
    const [text, json] = await Promise.all([
      askLeastcut(words, { env }),
      askLeastcut([...words, '--format', 'json'], { env }),
    ]);
    expect(text.out).toContain(ESC);
    expect(json.out).not.toContain(ESC);
  });
});

test('what binds is in a blue that can be read on black and on white', async () => {
  const { paint } = await textStyle(80, true);
  // The palette of xterm (XTerm-col.ad), by the number of the mark of colour.
  const palette: Readonly<Record<string, string>> = { '34': '#0000ee', '94': '#5c5cff' };
  const number = paint('clear', 'binding').split(`${ESC}[`)[1]?.split('m')[0] ?? '';
  const colour = palette[number] ?? '';
  for (const paper of ['#000000', '#ffffff']) {
    expect(contrast(colour, paper), `${colour} on ${paper}`).toBeGreaterThan(4);
  }
});
