/** What the readings of a panel say it is, sentence by sentence, by lines of round numbers. */
import { describe, expect, it } from 'vitest';
import { micrometres } from '../../../src/base/units.ts';
import {
  byPrecedence,
  type Finding,
  isRepaintTo,
  repaintReach,
  thinFinding,
  unreadFinding,
} from '../../../src/film/condition/condition.ts';
import { type ConditionEvidence, filmFindings } from '../../../src/film/condition/film-findings.ts';
import type { PanelFacts } from '../../../src/film/film-model.ts';
import { filmModel } from '../../../src/formats/models.ts';
import { knownFacts, plainPanel } from '../car-builder.ts';

const um = micrometres;
const conditions = {
  ...filmModel.conditions,
  filler: um(500),
  refinished: um(180),
  refinishedAbove: um(30),
  refinishedAboveShare: 0.25,
  cutBack: um(12),
};

type Read = Partial<Omit<ConditionEvidence, 'facts' | 'points' | 'otherPoints'>> & {
  readonly points: readonly number[];
  readonly edges?: readonly number[];
  readonly facts?: Partial<PanelFacts>;
};

const middle = (films: readonly number[]): number =>
  [...films].sort((a, b) => a - b)[Math.floor(films.length / 2)] ?? Number.NaN;

/** Of an odd number of points, against a baseline of 100 µm unless another is said. */
function findingsOf({ points, edges = [], facts = {}, ...rest }: Read): readonly Finding[] {
  const at = (films: readonly number[]) =>
    films.map((film, i) => ({ point: `${i + 1}`, thickness: um(film) }));
  return filmFindings(
    {
      panel: plainPanel('roof'),
      facts: { ...knownFacts, ...facts },
      median: um(middle(points)),
      mean: um(points.reduce((sum, one) => sum + one, 0) / points.length),
      points: at(points),
      otherPoints: at(edges).map((one) => ({ ...one, point: `e${one.point}`, place: 'edge' })),
      baseline: um(100),
      overRest: null,
      ...rest,
    },
    conditions,
  );
}

const told = (read: Read): readonly (readonly [string, string])[] =>
  findingsOf(read).map(({ condition, evidence }) => [condition, evidence.text]);

describe('film in line with the others', () => {
  it('is nothing but what the factory left, on each line itself as well', () => {
    expect(told({ points: [100] })).toEqual([]);
    // 100 + 30 is the line of repaint, and 100 − 12 that of film cut back.
    expect(told({ points: [130, 130, 130] })).toEqual([]);
    expect(told({ points: [88, 88, 88] })).toEqual([]);
  });
});

describe('filler', () => {
  it('under one point is told with what the other points read like', () => {
    expect(told({ points: [98, 510, 104] })).toEqual([
      [
        'filler',
        'point 2 reads 510.0 µm, over 500 µm; the other 2 read 98.0 to 104.0 µm, like factory film',
      ],
    ]);
  });
  it('under several is told as a range, and the one point beside them as one', () => {
    expect(told({ points: [510, 620, 104] })).toEqual([
      [
        'filler',
        'points 1, 2 read 510.0 to 620.0 µm, over 500 µm; the other reads 104.0 µm, like factory film',
      ],
    ]);
  });
  it('under all points is told as such, and is repaint by their median', () => {
    expect(told({ points: [510, 530, 520] })).toEqual([
      ['filler', 'all of its points over 500 µm, at 510.0 to 530.0 µm'],
      ['refinished', 'median 520.0 µm is over 130.0 µm, which is 30.0 µm over the baseline'],
    ]);
  });
  it('beside repaint counts how many of the others read like it', () => {
    const evidence = (points: readonly number[]) => told({ points })[0]?.[1];
    expect(evidence([510, 140, 150])).toMatch(
      /; the other 2 read 140.0 to 150.0 µm, like repaint$/,
    );
    expect(evidence([510, 140, 110])).toMatch(/ 110.0 to 140.0 µm, 1 of them like repaint$/);
  });
  it('off the face is filler of the panel, unless there is some on the face', () => {
    expect(told({ points: [98, 101, 104], edges: [90, 640] })).toEqual([
      [
        'filler',
        'point e2 (edge) off the face reads 640.0 µm, over 500 µm; those on the face read 98.0 to 104.0 µm',
      ],
    ]);
    expect(told({ points: [100], edges: [640, 700] })[0]?.[1]).toBe(
      'points e1 (edge), e2 (edge) off the face read 640.0 to 700.0 µm, over 500 µm; those on the face read 100.0 µm',
    );
    expect(told({ points: [98, 510, 104], edges: [640] })).toHaveLength(1);
  });
  it('is no film at 500 µm itself', () => {
    expect(told({ points: [500, 500, 500] }).map(([condition]) => condition)).toEqual([
      'refinished',
    ]);
  });
});

describe('repaint', () => {
  it('is held to the lower of two lines, and says which', () => {
    expect(told({ points: [131, 131, 131] })[0]?.[1]).toBe(
      'median 131.0 µm is over 130.0 µm, which is 30.0 µm over the baseline',
    );
    const anyCar = 'median 181.0 µm is over 180.0 µm, the line for any car';
    expect(told({ points: [181], baseline: null })).toEqual([['refinished', anyCar]]);
    // 160 + 40 lies over 180.
    expect(told({ points: [181], baseline: um(160) })).toEqual([['refinished', anyCar]]);
    expect(told({ points: [180], baseline: um(160) })).toEqual([]);
  });
  it('reaches a quarter over a thick baseline, where that is more than 30 µm', () => {
    expect([80, 120, 140].map((film) => repaintReach(um(film), conditions))).toEqual([30, 30, 35]);
    expect(isRepaintTo(um(140), um(175), conditions)).toBe(false);
    expect(isRepaintTo(um(140), um(175.1), conditions)).toBe(true);
  });
  it('by the job stands before what the film reads like, and holds whatever it reads', () => {
    expect(told({ points: [100], facts: { paintedDaysAgo: 30 } })).toEqual([
      [
        'refinished',
        'painted 30 days ago, by the job, so no factory film, whatever the total reads',
      ],
    ]);
    expect(told({ points: [131], facts: { paintedDaysAgo: 1 } })[0]?.[1]).toBe(
      'painted 1 day ago, by the job; median 131.0 µm is over 130.0 µm, which is 30.0 µm over the baseline',
    );
  });
  it('by what came on since is told with its day, or as just compared', () => {
    const gained = (date: string | null, film: number) =>
      told({
        points: [film],
        facts: { recorded: { mean: um(0), sd: um(0), gains: [{ date, by: um(55) }] } },
      });
    const counts = 'counts as repaint, unless a gauge, wax or other places made it';
    expect(gained('2026-05-02', 100)).toEqual([
      ['refinished', `reads 55.0 µm more since 2026-05-02, by the film record: ${counts}`],
    ]);
    expect(gained(null, 131)[0]?.[1]).toBe(
      `reads 55.0 µm more than before: ${counts}; median 131.0 µm is over 130.0 µm, which is 30.0 µm over the baseline`,
    );
  });
  it('is the zone that lies over the rest of its panel, where its film is over no line', () => {
    expect(told({ points: [120], overRest: um(25) })).toEqual([
      [
        'refinished',
        '25.0 µm over the rest of its panel, which factory film is not: counts as repaint till a test spot',
      ],
    ]);
  });
  it('is not cut back as well, however little it reads', () => {
    expect(told({ points: [60], facts: { paintedDaysAgo: 30 } })).toHaveLength(1);
  });
});

describe('film that lacks to the others', () => {
  it('is told by its mean, with what its topcoat has lost', () => {
    const evidence =
      'mean 87.0 µm is 13.0 µm under the baseline of 100.0 µm: counts as cut-back, be it cut or painted thin, with what it lacks gone from the';
    expect(told({ points: [85, 87, 89] })).toEqual([['cut-back', `${evidence} clear`]]);
    expect(told({ points: [87], facts: { finish: 'single-stage-solid' } })).toEqual([
      ['cut-back', `${evidence} topcoat`],
    ]);
    expect(told({ points: [87], baseline: null })).toEqual([]);
  });
  it('is judged with what is known to have gone put back, and says so', () => {
    const taken = { taken: um(3), recorded: { mean: um(2), sd: um(1) } };
    expect(told({ points: [84], facts: taken })).toEqual([]);
    expect(told({ points: [82], facts: taken })[0]?.[1]).toMatch(
      /^with the 5\.0 µm taken before put back, mean 87\.0 µm is 13\.0 µm under the baseline/,
    );
    expect(told({ points: [496, 100, 98], facts: taken })[0]?.[1]).toBe(
      'with the 5.0 µm taken before put back, point 1 reads 501.0 µm, over 500 µm; the other 2 read 103.0 to 105.0 µm, like factory film',
    );
    expect(told({ points: [100], edges: [496], facts: taken })[0]?.[0]).toBe('filler');
    expect(told({ points: [126], facts: taken })[0]?.[1]).toMatch(/put back, median 131\.0 µm/);
  });
});

it('a panel that is covered is nothing else', () => {
  expect(told({ points: [510], facts: { covered: true } })).toEqual([
    ['covered', 'declared as covered by film, wrap or coating'],
  ]);
});

it('findings carry the figure that they rest on', () => {
  const valuesOf = (read: Read) =>
    findingsOf(read).map(({ evidence }) => ('value' in evidence ? evidence.value : null));
  expect(valuesOf({ points: [510, 620, 150] })).toEqual([620, 150]);
  expect(valuesOf({ points: [100], edges: [700, 640] })).toEqual([700]);
  expect(valuesOf({ points: [85, 87, 86] })).toEqual([86]);
});

describe('a panel', () => {
  it('is thin by a point under the floor, else by what is credible, and on the floor is neither', () => {
    const thin = (smallest: number, thinnest: number | null) =>
      thinFinding(um(smallest), thinnest === null ? null : um(thinnest), um(80))?.evidence.text;
    expect(thin(79, 60)).toBe('a point reads 79.0 µm, under the floor of 80.0 µm');
    expect(thin(80, 79)).toBe('may be thin: 79.0 µm is credible somewhere on it');
    expect([thin(80, 80), thin(80, null)]).toEqual([undefined, undefined]);
  });
  it('is unread for what it is made of, or for where its points lie', () => {
    const why = (onFace: boolean, offFace: boolean) =>
      unreadFinding(plainPanel('sill', { substrate: 'plastic' }), { onFace, offFace }).evidence
        .text;
    expect(why(true, false)).toBe('on plastic a magnetic or eddy-current gauge reads no film');
    expect(why(false, true)).toBe(
      'no reading on its face, only off it: what paint it carries is not known',
    );
    expect(why(false, false)).toBe('no reading: what paint it carries is not known');
  });
  it('is the strongest of what was found, the others beside it, and original without any', () => {
    const all = findingsOf({ points: [510, 530, 520] });
    expect(byPrecedence([...all].reverse())).toEqual(all);
    expect(byPrecedence([])).toEqual([
      {
        condition: 'original',
        evidence: expect.objectContaining({ text: 'in line with factory film' }),
      },
    ]);
  });
});
