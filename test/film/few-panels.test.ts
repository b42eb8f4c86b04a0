/** A car of which few panels were read: repaint among them must not pass for its usual film. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { micrometres } from '../../src/base/units.ts';
import { factoryFilm } from '../../src/film/factory-film.ts';
import type { Finish, StatedLayer } from '../../src/film/film-model.ts';
import type { Reading } from '../../src/film/reading.ts';
import type { Survey } from '../../src/film/survey.ts';
import { filmModel } from '../../src/formats/models.ts';
import { fiveAround, onFace, panelOf, plainPanel, reading, surveyOf } from './car-builder.ts';

const read = (films: readonly number[]) =>
  surveyOf({
    panels: films.map((_, i) => plainPanel(`p${i}`)),
    readings: films.flatMap((film, i) => fiveAround(`p${i}`, film)),
  });
const lone = (film: number) => panelOf(read([film]), 'p0');

describe('a panel read alone', () => {
  it('is repaint where it reads far more than factories paint, 42 + 70 µm', () => {
    const panel = lone(181);
    expect(panel.condition).toBe('refinished');
    expect(panel.budget).toBe(0);
    expect(panel.evidence[0]?.text).toEqual(expect.anything());
  });
  it('is original where it reads as factories paint, and near its line to either side of that', () => {
    const words = [112, 125, 145].map((film) => lone(film));
    expect(words.map(({ condition }) => condition)).toEqual(['original', 'original', 'original']);
    expect(words.map(({ sureness }) => sureness?.sure)).toEqual(['near', 'clear', 'near']);
  });
  it('is cut back where it reads far less: it is no measure of itself', () => {
    expect([lone(95).condition, ...lone(95).also]).toContain('cut-back');
    expect(lone(95).budget).toBe(0);
  });
  it('never may give more for being thinner, as far as it is no repaint', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 60, max: 124 }),
        fc.integer({ min: 1, max: 40 }),
        (film, by) => {
          const least = Math.max(60, film - by);
          expect(lone(least).budget).toBeLessThanOrEqual(lone(film).budget + 1e-9);
        },
      ),
      { numRuns: 60 },
    );
  });
  it('never may give more than it would beside four that read the same', () => {
    fc.assert(
      fc.property(fc.integer({ min: 80, max: 190 }), (film) => {
        const among = panelOf(read([film, film, film, film, film]), 'p0').budget;
        expect(lone(film).budget).toBeLessThanOrEqual(among + 1e-9);
      }),
      { numRuns: 40 },
    );
  });
  it('is not original without a doubt at any film over what factories paint and the step of a repaint', () => {
    fc.assert(
      fc.property(fc.integer({ min: 153, max: 420 }), (film) => {
        expect(lone(film).condition).not.toBe('original');
      }),
      { numRuns: 40 },
    );
  });
});

describe('two panels', () => {
  it('are both repaint where both read as repaint does', () => {
    expect(read([183, 180]).panels.map(({ condition }) => condition)).toEqual([
      'refinished',
      'refinished',
    ]);
  });
  it('are told apart where one was painted again', () => {
    expect(read([112, 176]).panels.map(({ condition }) => condition)).toEqual([
      'original',
      'refinished',
    ]);
  });
});

it('from three panels on a car of thick paint speaks for itself', () => {
  const conditions = read([178, 181, 180]).panels.map(({ condition }) => condition);
  expect(conditions).toEqual(['original', 'original', 'original']);
});

describe('what factories paint', () => {
  const facts = { finish: 'clear-over-base', galvanised: false, clear: null, under: null } as const;
  const { layers } = filmModel;
  it('is the sum of the layers with the root of their variances: 42 + 70 µm ± √(6² + 10²)', () => {
    const film = factoryFilm(facts, layers);
    expect(film.value).toBe(112);
    expect(film.components.get('cars')?.contribution).toBeCloseTo(Math.sqrt(136), 12);
  });
  it('has the zinc of galvanised steel, and layers that the job states', () => {
    const zinc = factoryFilm({ ...facts, galvanised: true }, layers);
    expect(zinc.value).toBe(119);
    expect(zinc.components.get('cars')?.contribution).toBeCloseTo(
      Math.hypot(layers.clearOverBase.top.sd, layers.galvanisedUnder.sd),
      12,
    );
    const clear = { mean: 60, sd: 3, of: 'car' } as never;
    expect(factoryFilm({ ...facts, clear }, layers).value).toBe(130);
  });
  it('is the lesser of the two that a finish nobody knows may be: more is called repaint', () => {
    const thick = { mean: micrometres(90), sd: micrometres(6) };
    const own = { ...layers, singleStage: { ...layers.singleStage, top: thick } };
    for (const [by, lesser] of [
      [layers, 'single-stage-solid'],
      [own, 'clear-over-base'],
    ] as const) {
      const of = (finish: 'clear-over-base' | 'single-stage-solid' | 'unknown') =>
        factoryFilm({ ...facts, finish }, by).value;
      expect(of('unknown')).toBe(Math.min(of('clear-over-base'), of('single-stage-solid')));
      expect(of('unknown')).toBe(of(lesser));
      expect(of('clear-over-base')).not.toBe(of('single-stage-solid'));
    }
  });
  it('is clear over base under a matte clear, and single-stage under lacquer', () => {
    const of = (finish: Finish) => factoryFilm({ ...facts, finish }, layers).value;
    expect(of('matte')).toBe(of('clear-over-base'));
    expect(of('lacquer')).toBe(of('single-stage-metallic'));
    expect(of('lacquer')).not.toBe(of('matte'));
  });
});

describe('who speaks for the others', () => {
  const beside = (third: readonly Reading[]) =>
    surveyOf({
      panels: ['a', 'b', 'c'].map((id) => plainPanel(id)),
      readings: [...fiveAround('a', 118), ...fiveAround('b', 104), ...third],
    });
  const budgets = (survey: Survey) => ['a', 'b'].map((id) => panelOf(survey, id).budget);
  const two = budgets(beside([]));
  it('is no panel with one point: it frees no film of the two beside it', () => {
    const [first = 0, second = 0] = two;
    for (const [i, budget] of budgets(beside(onFace('c', 104))).entries()) {
      expect(budget).toBeLessThan((i === 0 ? first : second) + 0.1);
    }
    expect(beside(onFace('c', 104)).baselineMakers).toEqual([]);
  });
  it('is no panel with filler under a point, on its face or off it', () => {
    const shut = reading('c', '4', 640, { place: 'shut' });
    for (const third of [onFace('c', 104, 105, 640), [...onFace('c', 104, 105, 103), shut]]) {
      expect(beside(third).baselineMakers).toEqual([]);
      expect(beside(third).baseline).toBe(112);
    }
    expect(beside(onFace('c', 104, 105, 103)).baselineMakers).toHaveLength(3);
  });
  it('is none of a respray that most panels carry: the others read as factories paint', () => {
    for (const films of [
      [165, 165, 118],
      [165, 165, 165, 118, 118],
    ]) {
      const survey = read(films);
      expect(survey.baseline).toBe(112);
      expect(survey.panels.map(({ condition }) => condition)).toEqual(
        films.map((film) => (film === 165 ? 'refinished' : 'original')),
      );
    }
  });
  it('is fewer than three that agree where one is cut back to them: all are held to factories', () => {
    expect(read([118, 118, 100]).baselineMakers).toEqual([]);
    expect(read([118, 118, 118, 100]).baselineMakers).toHaveLength(4);
  });
  it('is a thick car whose panels agree, with a word that it reads far over what factories paint', () => {
    const survey = read([182, 182, 182]);
    expect(survey.baseline).toBe(182);
    const note = survey.notes.find(({ code }) => code === 'thick-baseline');
    expect(note?.text).toContain('112.0 µm');
    expect(read([150, 150, 150]).notes).toEqual([]);
  });
});

describe('panels over zinc that hardly agree', () => {
  const cutBackOf = (galvanised: boolean) => {
    const panels = ['p0', 'p1', 'p2'].map((id) => plainPanel(id));
    const by = galvanised ? 7 : 0;
    const readings = [95, 105, 105].flatMap((film, i) => fiveAround(`p${i}`, film + by));
    return panelOf(surveyOf({ panels, readings, facts: { galvanised } }), 'p1').sides.cutBack;
  };
  it('are held besides to what factories paint over zinc, where that makes them cut back', () => {
    const [plain, zinc] = [cutBackOf(false), cutBackOf(true)];
    expect([plain?.baseline, plain?.line]).toEqual([112, 100]);
    expect([zinc?.baseline, zinc?.line]).toEqual([119, 107]);
    expect(zinc?.ifHeld).toBeGreaterThan(0.1);
    // The same paint as far from the same line; zinc is known less surely.
    expect(zinc?.otherSide).toBeGreaterThanOrEqual(plain?.otherSide ?? 1);
  });
});

describe('layers that are stated of one panel', () => {
  const stated = (film: number, clear: StatedLayer, said: string): Survey =>
    surveyOf({
      panels: ['p0', 'p1'].map((id) => plainPanel(id)),
      readings: [...fiveAround('p0', film), ...fiveAround('p1', 112)],
      factsOf: (id) => (id === said ? { clear } : {}),
    });
  const ofPanel: StatedLayer = { mean: micrometres(16), sd: micrometres(2), of: 'panel' };
  it('are none that factories paint on the others, whichever was read first', () => {
    for (const said of ['p0', 'p1']) {
      expect(stated(90, ofPanel, said).baseline, said).toBe(112);
      expect(panelOf(stated(112, ofPanel, said), 'p1').baseline, said).toBe(112);
    }
    expect(panelOf(stated(90, ofPanel, 'p0'), 'p0').also).toContain('cut-back');
  });
  it('leave the others as they are', () => {
    const other = { ...ofPanel, mean: micrometres(42), sd: micrometres(6) };
    const [thin, usual] = [ofPanel, other].map((clear) => stated(112, clear, 'p0'));
    expect(thin?.baseline).toBe(usual?.baseline);
  });
  it('hold for all where they are stated of the car, and for a panel by itself', () => {
    expect(stated(90, { ...ofPanel, of: 'car' }, 'p0').baseline).toBe(86);
    const alone = surveyOf({
      panels: [plainPanel('p0')],
      readings: fiveAround('p0', 90),
      facts: { clear: ofPanel },
    });
    expect(alone.baseline).toBe(86);
  });
});

describe('a panel that lacks film to the others, where too few agree', () => {
  const first = (films: readonly number[]) => panelOf(read(films), 'p0');
  it('is cut back, and gives nothing, though what factories paint would free it', () => {
    expect(lone(121).budget).toBeGreaterThan(1);
    for (const films of [
      [121, 135, 135],
      [121, 135],
      [121, 140, 131, 165],
    ]) {
      expect(first(films).condition, `${films}`).toBe('cut-back');
      expect(first(films).budget, `${films}`).toBe(0);
    }
  });
  it('is told by the film of the others', () => {
    const survey = read([121, 135, 135]);
    expect(survey.baseline).toBe(112);
    expect(panelOf(survey, 'p0').baseline).toBe(135);
    expect(first([121, 135, 135]).evidence[0]?.text).toContain('14.0 µm under the baseline of 135');
    expect(survey.heldToOthers.map(({ id }) => id)).toEqual(['p0']);
    expect(panelOf(survey, 'p1').baseline).toBe(112);
  });
  it('is held to none that was painted again', () => {
    expect(first([121, 165]).budget).toBe(lone(121).budget);
    expect(first([121, 165]).baseline).toBe(112);
    expect(read([121, 118, 165]).heldToOthers).toEqual([]);
  });
  it('is held to what it would read itself, by whether zinc lies under it', () => {
    const { panels } = surveyOf({
      panels: ['p0', 'p1', 'p2'].map((id) => plainPanel(id)),
      readings: [...fiveAround('p0', 120), ...fiveAround('p1', 142), ...fiveAround('p2', 142)],
      factsOf: (id) => ({ galvanised: id !== 'p0' }),
    });
    expect(panels[0]?.baseline).toBe(135);
    expect(panels[0]?.condition).toBe('cut-back');
  });
  it('gives no more for lacking more, of film that factories paint', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 105, max: 140 }),
        fc.array(fc.integer({ min: -3, max: 3 }), { minLength: 2, maxLength: 4 }),
        (usual, others) => {
          const ladder = Array.from({ length: 11 }, (_, i) =>
            read([usual - 3 * i, ...others.map((by) => usual + by)]),
          );
          for (const [i, survey] of ladder.entries()) {
            const before = ladder[i - 1] ?? survey;
            // Its own film moves the middle of so few: less of it is less likely a car painted again all over.
            const fell = Math.max(0, (before.baseline ?? 0) - (survey.baseline ?? 0));
            const [budget, then] = [survey, before].map((one) => panelOf(one, 'p0').budget);
            expect(budget).toBeLessThanOrEqual((then ?? 0) + 0.5 + fell);
          }
        },
      ),
      { numRuns: 20 },
    );
  });
  it('gives more where it makes it unlikelier that the car was painted again all over', () => {
    const [before, after] = [first([146, 146, 145]), first([143, 146, 145])];
    const chances = [before, after].map(({ sides }) => sides.lost.map((line) => line.otherSide));
    // Of a risk of 5 %: near it the first half per cent frees 1.6 µm.
    expect(chances[0]?.[0]).toBeCloseTo(0.0458, 4);
    expect(chances[1]?.[0]).toBeCloseTo(0.0264, 4);
    expect(before.budget).toBe(0);
    expect(after.budget).toBeGreaterThan(1);
    expect(after.budget).toBeLessThan(1.6);
  });
});

describe('a finish that nobody knows', () => {
  const budgetsOf = (finish: Finish, films: readonly number[], clear: StatedLayer | null = null) =>
    surveyOf({
      panels: films.map((_, i) => plainPanel(`p${i}`)),
      readings: films.flatMap((film, i) => fiveAround(`p${i}`, film)),
      facts: { finish, clear },
    }).panels.map(({ budget }) => budget);
  const stated = { mean: micrometres(45), sd: micrometres(3), of: 'car' } as const;
  it('allows no more than either that it may be, panel by panel', () => {
    for (const clear of [null, stated]) {
      for (const films of [[104], [112], [96], [118, 104], [125, 99], [104, 104, 104]]) {
        const either = (['clear-over-base', 'single-stage-solid'] as const).map((finish) =>
          budgetsOf(finish, films, clear),
        );
        for (const [i, budget] of budgetsOf('unknown', films, clear).entries()) {
          const least = Math.min(...either.map((one) => one[i] ?? Number.NaN));
          expect(budget, `${films} of ${clear?.mean}`).toBeLessThanOrEqual(least + 1e-9);
        }
      }
    }
  });
});
