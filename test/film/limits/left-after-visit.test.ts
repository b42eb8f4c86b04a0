/** What a comparison left of a panel stands for the readings it was told of, and for no others. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { tell } from '../../../src/base/sentence.ts';
import { micrometres } from '../../../src/base/units.ts';
import type { LeftAfterVisit, PanelFacts } from '../../../src/film/film-model.ts';
import {
  heldInZone,
  heldToVisit,
  leftLimits,
  visitNotes,
} from '../../../src/film/limits/left-after-visit.ts';
import type { LimitCode } from '../../../src/film/limits/limit.ts';
import type { PanelPoint } from '../../../src/film/panel-points.ts';
import { knownFacts } from '../car-builder.ts';

const points = (...films: readonly number[]): readonly PanelPoint[] =>
  films.map((film) => readAs(film));
/** A point with its repeats. */
const readAs = (...repeats: readonly number[]): PanelPoint =>
  ({
    thickness: micrometres(repeats.reduce((sum, film) => sum + film, 0) / repeats.length),
    repeats: repeats.map(micrometres),
  }) as unknown as PanelPoint;
const visit = (most: number, rest: Partial<LeftAfterVisit> = {}): LeftAfterVisit => ({
  date: '2026-03-31',
  most: micrometres(most),
  points: 3,
  mean: micrometres(110),
  ...rest,
});
const withVisits = (...left: readonly LeftAfterVisit[]): PanelFacts => ({
  ...knownFacts,
  recorded: { mean: micrometres(2), sd: micrometres(0.4), left },
});
const read = points(108, 110, 112);
const mostOf = (facts: PanelFacts): number | undefined => facts.heldTo?.most;

describe('the readings that ended a visit on record', () => {
  it('are held to what was left then', () => {
    expect(mostOf(heldToVisit(withVisits(visit(1.2)), read))).toBe(1.2);
  });

  it('are held to the least where several visits ended with them, whichever comes first', () => {
    for (const left of [
      [visit(1.2), visit(0.4), visit(0.9)],
      [visit(0.4), visit(1.2)],
    ]) {
      expect(mostOf(heldToVisit(withVisits(...left), read))).toBe(0.4);
    }
  });

  it('are known by their number and their mean', () => {
    const held = withVisits(visit(1.2));
    expect(mostOf(heldToVisit(held, points(108, 110, 112, 110)))).toBeUndefined();
    expect(mostOf(heldToVisit(held, points(108, 110, 112.1)))).toBeUndefined();
    expect(mostOf(heldToVisit(held, []))).toBeUndefined();
  });

  it('are held to it with any of them left out, in any order and without their repeats', () => {
    const film = fc.integer({ min: 900, max: 1300 }).map((tenths) => tenths / 10);
    const pointsRead = fc.array(fc.array(film, { minLength: 1, maxLength: 3 }), { minLength: 2 });
    fc.assert(
      fc.property(pointsRead, fc.infiniteStream(fc.boolean()), (all, isLeft) => {
        const rest = all
          .map((repeats) => repeats.filter(() => isLeft.next().value === true))
          .filter(({ length }) => length > 0)
          .reverse();
        fc.pre(rest.length > 0);
        const kept = visit(1.2, { points: all.length, read: all.flat().map(micrometres) });
        const facts = withVisits(kept);
        expect(
          mostOf(
            heldToVisit(
              facts,
              rest.map((one) => readAs(...one)),
            ),
          ),
        ).toBe(1.2);
        // One reading that is not of the visit is something new.
        const more = [...rest, [131]].map((one) => readAs(...one));
        expect(mostOf(heldToVisit(facts, more))).toBeUndefined();
      }),
    );
  });

  it('are not of the visit where one of its readings is there more often than it was read', () => {
    const held = withVisits(visit(1.2, { read: [108, 110, 112].map(micrometres) }));
    expect(mostOf(heldToVisit(held, points(108, 110)))).toBe(1.2);
    expect(mostOf(heldToVisit(held, points(108, 108)))).toBeUndefined();
    expect(mostOf(heldToVisit(held, points(108.1, 110)))).toBeUndefined();
  });

  it('are held to it where they are fewer than a record knows that keeps none of them', () => {
    const held = withVisits(visit(1.2, { points: 4 }));
    expect(heldToVisit(held, points(108, 110, 113)).heldTo).toMatchObject({
      most: 1.2,
      isByNumber: true,
    });
    for (const as of [points(108, 110, 113, 114), points(108, 110, 112, 110), []]) {
      expect(heldToVisit(held, as).heldTo?.isByNumber).toBeUndefined();
    }
    expect(mostOf(heldToVisit(held, points(108, 110, 113, 114)))).toBeUndefined();
    const known = withVisits(visit(1.2, { points: 4, read: [108, 110, 112].map(micrometres) }));
    expect(mostOf(heldToVisit(known, points(108, 113)))).toBeUndefined();
  });

  it('are held to what they are known by, where another visit left the same', () => {
    const both = withVisits(visit(1.2, { points: 4 }), visit(1.2));
    expect(heldToVisit(both, read).heldTo?.isByNumber).toBeUndefined();
  });

  it('are held to nothing where no visit says what was left', () => {
    expect(heldToVisit(knownFacts, read)).toBe(knownFacts);
    const without = { ...knownFacts, recorded: { mean: micrometres(2), sd: micrometres(0.4) } };
    expect(heldToVisit(without, read)).toBe(without);
  });
});

describe('a zone of such a panel', () => {
  const zones = { thinner: micrometres(0.3) };

  it('has its own figure where the visit told it apart, else that of the panel', () => {
    const facts = heldToVisit(withVisits(visit(1.2, { zones })), read);
    expect(mostOf(heldInZone(facts, 'thinner'))).toBe(0.3);
    expect(mostOf(heldInZone(facts, 'thicker'))).toBe(1.2);
    expect(mostOf(heldInZone(heldToVisit(withVisits(visit(1.2)), read), 'thinner'))).toBe(1.2);
  });

  it('is held to nothing where its panel is not', () => {
    expect(heldInZone(knownFacts, 'thinner')).toBe(knownFacts);
  });
});

describe('what is said of fewer readings than a record knows', () => {
  const notesOf = (facts: PanelFacts, code: LimitCode, read: readonly PanelPoint[]) =>
    visitNotes({ facts: heldToVisit(facts, read), boundBy: { code } });

  it('is what they are held to, why, and how to get free of it', () => {
    const held = withVisits(visit(1.2, { points: 4 }));
    expect(notesOf(held, 'as-compared', points(108, 110, 113))).toEqual([
      expect.objectContaining({
        code: 'left-by-number',
        value: 1.2,
        text: 'held to what was left after the visit of 2026-03-31, 1.20 µm: of the 4 points read then its record does not keep the readings, so fewer points tell nothing new; read it at 4 or more',
      }),
    ]);
  });

  it('is nothing where another limit binds, or the readings are known', () => {
    const held = withVisits(visit(1.2, { points: 4 }));
    expect(notesOf(held, 'clear', points(108, 110, 113))).toEqual([]);
    expect(notesOf(withVisits(visit(1.2)), 'as-compared', read)).toEqual([]);
    expect(notesOf(knownFacts, 'as-compared', read)).toEqual([]);
  });
});

describe('the limit', () => {
  const said = (left: LeftAfterVisit): readonly string[] =>
    leftLimits(heldToVisit(withVisits(left), read)).map(({ said: text }) => {
      const told = text();
      return typeof told === 'string' ? told : tell(told, 'um');
    });

  it('is none without such a visit', () => {
    expect(leftLimits(knownFacts)).toEqual([]);
  });

  it('says how much was left, when, and of which readings', () => {
    expect(said(visit(1.2))).toEqual([
      'no more than 1.20 µm was left after the visit of 2026-03-31, by the readings before it and at 3 points after it; these hold nothing new',
    ]);
    expect(said(visit(0, { date: null }))).toEqual([
      'nothing was left after the visit, by the readings before it and at 3 points after it; these hold nothing new',
    ]);
  });
});
