import { describe, expect, test } from 'vitest';
import { briefs, read, values } from '../helpers.ts';

const brief = (text: string) =>
  values(text)?.map(([panel, point, , value]) => `${panel}/${point} ${value}`);

describe('lines of words and numbers are read where every word of them is understood', () => {
  test.each([
    ['a blank before each number', 'Bonnet 112um 109um\nRoof 104um\n'],
    ['commas, and the unit below', 'Bonnet 112, 109\nRoof 104\nall in microns\n'],
    ['arrows', 'paint check, microns\nBonnet -> 112 109\nRoof -> 104\n'],
    ['slashes between blanks', 'alles in µm\n\nBonnet 112 / 109\nRoof 104\n\nGruß, Micha\n'],
    ['a list with its numbers', 'Coating, µm\n1. Bonnet = 112, 109\n2. Roof = 104\n'],
    ['bullets', 'Readings (µm):\n- Bonnet: 112; 109\n- Roof: 104\n'],
    ['one line for all', 'Bonnet 112 and 109, Roof 104 µm\n'],
    ['commas without blanks', 'Bonnet 112,109,115 µm\nRoof 104 µm\n'],
  ])('with %s', (_, text) => {
    const own = text.includes(',115') ? ['Bonnet/3 115'] : [];
    expect(brief(text)).toEqual(['Bonnet/1 112', 'Bonnet/2 109', ...own, 'Roof/1 104']);
  });

  test.each([
    ['in brackets', 'Bonnet 112 109 115 (112)'],
    ['in brackets with the unit', 'Bonnet 112 109 115 (112 µm)'],
    ['in brackets before the others', 'Bonnet (112): 112 109 115'],
    ['in other brackets', 'Bonnet {112} 112 109 115'],
    ['in quotes', 'Bonnet "112" 112 109 115'],
    ['between stars', 'Bonnet *112* 112 109 115'],
    ['behind an arrow', 'Bonnet 112 109 115 -> 112'],
    ['behind another arrow', 'Bonnet 112 109 115 => 112'],
    ['behind an equals sign', 'Bonnet 112, 109, 115 = 112'],
    ['behind a rule', 'Bonnet 112 109 115 | 112'],
    ['behind a slash', 'Bonnet 112 109 115 / 112'],
    ['behind a semicolon', 'Bonnet 112 109 115; 112'],
    ['behind an arrow, and alone', 'Bonnet 112 -> 109'],
    ['in brackets, and alone', 'Bonnet 112 (109)'],
  ])(
    'and a number that a mark sets apart from the others may be their mean, or was there before: %s',
    (_, line) => {
      const { value, diagnostics } = read(`${line} µm\n${line.replace('Bonnet', 'Roof')} µm\n`);
      expect(value).toBeUndefined();
      expect(diagnostics[0]).toMatchObject({ severity: 'error', at: { line: 1 } });
    },
  );

  test('a comma behind the first number makes no panel of what stands before it', () => {
    const text = 'Bonnet: 112, 109, 115 (112) µm\nRoof: 110, 111, 109 (110) µm\n';
    const [diagnostic] = read(text).diagnostics;
    expect(diagnostic?.message).toContain('is more than a panel and its readings');
    expect(diagnostic?.hint).toContain(
      'write nothing but the readings behind the panel, "Bonnet 112 109 µm"',
    );
  });

  test.each([
    ['Unit: µm\nBonnet (112) (109)\nRoof (104)\n'],
    ['Unit: µm\nBonnet "112" "109"\nRoof "104"\n'],
    ['Unit: µm\nBonnet *112* *109*\nRoof *104*\n'],
    ['Bonnet 112; 109 µm\nRoof 104 µm\n'],
    ['Bonnet 112 | 109 µm\nRoof | 104 µm\n'],
  ])('and marks that all of them have set none apart: %j', (text) => {
    expect(brief(text)).toEqual(['Bonnet/1 112', 'Bonnet/2 109', 'Roof/1 104']);
  });

  test('an area behind a panel is no point of it', () => {
    expect(read('Bonnet (1.2 m²): 112 109 µm\nRoof (1.4 m²): 104 µm\n').value).toBeUndefined();
  });

  test.each([
    ['P1 Bonnet: 121 µm\nP2 Bonnet: 118 µm\nP1 Roof: 99 µm\n', ['P1', 'P2', 'P1']],
    [
      'Bonnet / left: 121 µm\nBonnet / right: 118 µm\nRoof / left: 99 µm\n',
      ['left', 'right', 'left'],
    ],
    ['Bonnet: left 121, right 118 µm\nRoof: left 99 µm\n', ['left', 'right', 'left']],
    ['Bonnet P1 121µm, P2 118µm\nRoof P1 99µm\n', ['P1', 'P2', 'P1']],
  ])('and the point is what else stands before the number: %j', (text, points) => {
    expect(values(text)?.map(([panel, point, , value]) => [panel, point, value])).toEqual([
      ['Bonnet', points[0], 121],
      ['Bonnet', points[1], 118],
      ['Roof', points[2], 99],
    ]);
  });

  test('each reading is found again at its place in the line', () => {
    const { origin } = read('Unit: µm\nBonnet left 121, right 118\n').value?.readings[1] ?? {};
    expect(origin).toMatchObject({ line: 2, column: 24 });
  });
});

describe('a line that names a panel is that of the numbers below it, however it is dressed up', () => {
  test.each([
    ['Bonnet (µm)\n======\n1) 112\n2) 109\nRoof (µm)\n======\n1) 104\n'],
    ['Units: µm\n【Bonnet】\n112　109\n【Roof】\n104\n'],
    [
      'Units: microns\nPanel 1/2: Bonnet (2 readings)\n  112  109\nPanel 2/2: Roof (1 reading)\n  104\n',
    ],
    [
      'Panel : Bonnet\nUnit : µm\nReading 1 : 112\nReading 2 : 109\n--\nPanel : Roof\nUnit : µm\nReading 1 : 104\n',
    ],
  ])('%j', (text) => {
    expect(values(text)?.map(([panel, , , value]) => [panel, value])).toEqual([
      ['Bonnet', 112],
      ['Bonnet', 109],
      ['Roof', 104],
    ]);
  });
});

describe('nothing is passed over or guessed', () => {
  test.each([
    ['a panel that nobody knows', 'Bonnet 112 µm\nSpoiler 120 µm\nRoof 104 µm\n'],
    ['the same in the last line', 'all in µm\nBonnet 112\nRoof 104\nSpoiler 120\n'],
    ['a letter among the digits', 'all in µm\nBonnet 112\nRoof 1O4\n'],
    ['a range', 'all in µm\nBonnet 95-110\nRoof 90-105\n'],
    ['one number or two about a comma', 'all in µm\nBonnet 112,109\nRoof 104,118\n'],
    ['points whose numbers do not count', 'Bonnet / 1: 121 µm\nBonnet / 3: 115 µm\n'],
    ['a table under names that mean nothing', 'Who;Before;After\nBonnet;112;109\nRoof;104;101\n'],
  ])('%s is refused', (_, text) => {
    expect(values(text)).toBeUndefined();
  });
});

describe('a list of numbers and nothing else is one group of nobody’s panel', () => {
  test.each(['112 µm\n109 µm\n', 'µm\n112\n109\n', 'Thickness (µm)\n112\n109\n', '112, 109 um\n'])(
    '%j',
    (text) => {
      expect(values(text)).toEqual([
        ['', '1', 1, 112],
        ['', '2', 1, 109],
      ]);
      expect(read(text).value?.decisions.evidence.join()).toContain('nothing names a panel');
    },
  );

  test('which the user may name', () => {
    const named = { panelNames: new Map([['', 'roof']]) };
    expect(values('µm\n112\n109\n', named)?.map(([panel]) => panel)).toEqual(['roof', 'roof']);
  });

  test('but without a unit it is asked about', () => {
    expect(briefs('112\n109\n')).toEqual(['1:1+3 error unit-missing']);
    expect(values('112\n109\n', { unit: 'um' })).toHaveLength(2);
  });
});

describe('one line that is no note among others is refused where it stands', () => {
  test.each([
    ['a panel that nobody knows', 'Bonnet 112 115\nSpoiler 130 128\n', '2:1+7 error panel-unknown'],
    ['the same above the others', 'Spoiler 130\nBonnet 112\n', '1:1+7 error panel-unknown'],
    [
      'a side that depends on the country',
      'Bonnet 112\n  n/s/f wing 130\nRoof 104\n',
      '2:3+10 error panel-ambiguous',
    ],
    [
      'a letter among the digits',
      'Bonnet 112\nRoof 1O4\nBoot 110\n',
      '2:1+8 error reading-not-a-number',
    ],
  ])('%s', (_, text, said) => {
    expect(briefs(text, { unit: 'um' })).toEqual([said]);
  });

  test('in its own words, with the option that names its panel', () => {
    const text = 'Bonnet 112\nn/s/f wing 130\nRoof 104\n';
    const [said] = read(text, { unit: 'um' }).diagnostics;
    expect(said?.message).toBe('"n/s/f wing" may be left or right');
    expect(said?.hint).toContain('--panel-names "n/s/f wing=PANEL"');
    const panelNames = new Map([['n/s/f wing', 'front left wing']]);
    expect(values(text, { unit: 'um', panelNames })?.map(([panel]) => panel)).toContain(
      'front left wing',
    );
  });

  test('but not where most lines are no notes, or a delimiter is asked for', () => {
    const many = 'Bonnet 112\nSpoiler 130\nTank 131\nRoof 104\nSeat 90\n';
    expect(briefs(many, { unit: 'um' })).toEqual(['1:1+10 error header-missing']);
    const asked = { unit: 'um', delimiter: ';' } as const;
    expect(briefs('Bonnet 112\nSpoiler 130\n', asked)).toEqual(['1:1+10 error header-missing']);
  });
});

describe('what a gauge shows for no reading is left out of a line', () => {
  test.each([
    ['behind the others', 'Bonnet 112 115 ERR\nRoof 104\n', '1:16+3 warning reading-error'],
    ['between them', 'Bonnet 112 OL 115\nRoof 104\n', '1:12+2 warning reading-over-range'],
    ['before them', 'Bonnet OL 112 115\nRoof 104\n', '1:8+2 warning reading-over-range'],
  ])('%s', (_, text, said) => {
    expect(values(text, { unit: 'um' })?.map(([panel, , , film]) => [panel, film])).toEqual([
      ['Bonnet', 112],
      ['Bonnet', 115],
      ['Roof', 104],
    ]);
    expect(briefs(text, { unit: 'um' })).toContain(said);
  });

  test.each(['low', 'bad', 'deleted'])('but "%s" may be said of the number before it', (word) => {
    const text = `Bonnet 112 115 ${word}\nRoof 104\nBoot 101\n`;
    expect(values(text, { unit: 'um' })).toBeUndefined();
  });
});

test('notes are the layout "list", and are read where it is asked for', () => {
  const text = 'Bonnet 112 115 109\nRoof 104 101 99\n';
  expect(values(text, { unit: 'um', layout: 'list' })).toEqual(values(text, { unit: 'um' }));
  expect(values(text, { unit: 'um', layout: 'list' })).toHaveLength(6);
  expect(values(text, { unit: 'um', layout: 'wide' })).toBeUndefined();
});

describe('notes without one plain panel name', () => {
  test.each([
    'wing nsf 112 109 111\nwing osf 118 117 121\ndoor nsf 101 99 103\n',
    'n/s/f wing 112 109 111\no/s/f wing 118 117 121\n',
  ])('are refused at the first name that may be left or right, with the way out: %j', (text) => {
    const [said] = read(text, { unit: 'um' }).diagnostics;
    const name = text.slice(0, text.indexOf(' 112'));
    expect(said).toMatchObject({ code: 'panel-ambiguous', at: { line: 1, length: name.length } });
    expect(said?.hint).toContain('--nearside');
    expect(said?.hint).toContain(`--panel-names "${name}=PANEL"`);
  });

  test('are refused at the first name that no template has, where every line is a name and its films', () => {
    const [said] = read('nsf 112 109 111\nosf 118 117 121\n', { unit: 'um' }).diagnostics;
    expect(said).toMatchObject({ code: 'panel-unknown', at: { line: 1, column: 1, length: 3 } });
    expect(said?.hint).toContain('--panel-names "nsf=PANEL"');
  });

  test.each(['Abc;112\nDef;118\n', 'name value\nAbc 112\nDef 118\n', 'Abc 112\n'])(
    'but rows of a table are asked for the names of their columns: %j',
    (text) => {
      expect(read(text, { unit: 'um' }).diagnostics[0]?.code).toMatch(
        /^(?:header|column)-missing$/u,
      );
    },
  );

  test('are read once each name is said', () => {
    const names = new Map([
      ['wing nsf', 'roof'],
      ['door nsf', 'bonnet'],
    ]);
    const text = 'wing nsf 112 109\ndoor nsf 101\n';
    expect(values(text, { unit: 'um', panelNames: names })).toHaveLength(3);
  });
});

describe('what was seen of the paint, behind the numbers of a line', () => {
  test.each(['Bonnet 112 115 (patched)', 'Bonnet 112 115 patched', 'Bonnet 112 115 - stone chips'])(
    'is kept as a note of its readings, and said: %s',
    (line) => {
      const word = line.includes('stone') ? 'stone chips' : 'patched';
      const { value, diagnostics } = read(`${line}\nRoof 104\n`, { unit: 'um' });
      expect(value?.readings.map(({ note }) => note)).toEqual([word, word, undefined]);
      expect(value?.decisions.evidence).toContain(
        `"${word}" behind the numbers of a line is kept as a note`,
      );
      expect(diagnostics).toEqual([]);
    },
  );

  test('is of the panel that the line names last', () => {
    const { value } = read('Bonnet 112, roof 104 repainted\n', { unit: 'um' });
    expect(value?.readings.map(({ note }) => note)).toEqual([undefined, 'repainted']);
  });

  test.each(['slipped', 'not sure', 'patched, ignore', 'edge', 'wet'])(
    'and a word that is none of these is refused: %s',
    (word) => {
      expect(values(`Bonnet 112 115 (${word})\nRoof 104\n`, { unit: 'um' })).toBeUndefined();
    },
  );
});

describe('a line of a list whose panel is not plain', () => {
  test('is not lost where another mark parts its readings', () => {
    const text = 'n/s wing: 112, 109\no/s wing: 118, 117\nroof: 99 100\n';
    expect(values(text, { unit: 'um' })?.map(([panel, , , film]) => [panel, film])).toEqual([
      ['n/s wing', 112],
      ['n/s wing', 109],
      ['o/s wing', 118],
      ['o/s wing', 117],
      ['roof', 99],
      ['roof', 100],
    ]);
  });
});

describe('a letter behind a panel', () => {
  test('is a point, as people write it on tape', () => {
    expect(values('bonnet A 119.1\nbonnet B 118.4\nroof D 112.2\n', { unit: 'um' })).toEqual([
      ['bonnet', 'A', 1, 119.1],
      ['bonnet', 'B', 1, 118.4],
      ['roof', 'D', 1, 112.2],
    ]);
  });

  test('is refused where all are one letter: an A may say that the number is an average', () => {
    const [said] = read('bonnet A 119.1\nroof A 112.2\n', { unit: 'um' }).diagnostics;
    expect(said?.code).toBe('reading-ambiguous');
    expect(said?.at?.column).toBe(8);
  });

  test.each(['bonnet 112 118 A 115\nroof 99 98 A 98.5\n', 'bonnet Q 119\nroof 99\n'])(
    'is none alone before a number, nor any other letter: %j',
    (text) => {
      expect(read(text, { unit: 'um' }).value).toBeUndefined();
    },
  );
});

test('a name that leaves panels open is told with them, whoever says which side is which', () => {
  const leftOpen = (name: string) =>
    name === 'NS door'
      ? { names: ['front left door', 'rear left door'], why: 'it does not say front or rear' }
      : undefined;
  const text = 'bonnet 118 121\nNS door 108 106\n';
  const [said] = read(text, { unit: 'um', leftOpen }).diagnostics;
  expect(said).toMatchObject({
    code: 'panel-ambiguous',
    message: '"NS door" may be front left door, rear left door',
    hint: 'it does not say front or rear: write the panel in full, or --panel-names "NS door=PANEL" says which it is',
  });
});

test.each(['bonnet: 112 x3, 115 µm', 'bonnet 112 (x3), 115 µm', 'bonnet: 112 × 2; 115 µm'])(
  'a reading so many times over is never read once: %j',
  (line) => {
    expect(read(`${line}\nroof: 101, 99 µm\n`).value).toBeUndefined();
  },
);

describe('a number before what can be counted', () => {
  const text = (line: string): string => `µm\n${line}\nroof 101 99\n`;

  test('is no reading where the others of its line are thicker: it may count them', () => {
    const [said] = read(text('bonnet 112 115 30 stone chips')).diagnostics;
    expect(said?.message).toBe(
      '"30 stone chips" may be a reading and what was seen there, or count something',
    );
    expect(said?.at?.column).toBe(16);
  });

  test.each([
    ['as large as the others', 'bonnet 112 115 109 stone chips', 5],
    ['with the words in brackets', 'bonnet 112 115 60 (stone chips)', 5],
    ['with its unit', 'bonnet 112 115 60 µm stone chips', 5],
    ['alone', 'bonnet 60 stone chips', 3],
  ])('is a reading %s', (_, line, count) => {
    expect(
      values(line.includes('µm') ? text(line).replace('99', '99 µm') : text(line)),
    ).toHaveLength(count);
  });
});
