import { describe, expect, it } from 'vitest';
import { furtherPoints, pointsAboutEdge } from '../../../src/film/help/further-points.ts';
import { pointsInRow, pointsOverFace } from '../../../src/film/template/point-layout.ts';

const key = ({ u, v }: { readonly u: number; readonly v: number }) => `${u} ${v}`;

describe('points to read next', () => {
  it('are the four that five as on a die leave free of nine in three rows', () => {
    const five = pointsOverFace(5);
    const next = furtherPoints(five, 5, 4);
    expect(next.map(key).sort()).toEqual(['0.2 0.5', '0.5 0.2', '0.5 0.8', '0.8 0.5']);
  });
  it.each([1, 2, 3, 4])('are never where %d points were read, nor twice the same', (read) => {
    const next = furtherPoints(pointsOverFace(5), read, 9 - read);
    expect(next).toHaveLength(9 - read);
    expect(new Set(next.map(key)).size).toBe(9 - read);
  });
  it('are no more than there is room for: a narrow panel read at 70 points has every place taken', () => {
    expect(furtherPoints(pointsInRow(70), 70, 4)).toEqual([]);
    expect(furtherPoints(pointsInRow(5), 5, 0)).toEqual([]);
  });
  it('come in reading order where several are as far', () => {
    const next = furtherPoints(pointsOverFace(5), 5, 4);
    expect(next.map(key)).toEqual(['0.5 0.2', '0.2 0.5', '0.8 0.5', '0.5 0.8']);
  });
  it('stay in a row on a panel that is read in one', () => {
    const next = furtherPoints(pointsInRow(5), 5, 4);
    expect(next.map(({ v }) => v)).toEqual([0.5, 0.5, 0.5, 0.5]);
  });
});

describe('points about the edge of a repair', () => {
  it('lie half-way between the points of one zone and the nearest of the other', () => {
    const five = pointsOverFace(5);
    const edge = pointsAboutEdge(five, [
      ['1', '4'],
      ['2', '3', '5'],
    ]);
    const at = (name: string) => five.find(({ point }) => point === name);
    const [one, middle] = [at('1'), at('3')];
    expect(edge[0]).toEqual({
      u: ((one?.u ?? 0) + (middle?.u ?? 0)) / 2,
      v: ((one?.v ?? 0) + (middle?.v ?? 0)) / 2,
    });
    expect(edge).toHaveLength(2);
  });
  it('are none beside a zone whose points the template does not have', () => {
    const five = pointsOverFace(5);
    expect(pointsAboutEdge(five, [['1', '4'], ['x']])).toEqual([]);
    expect(pointsAboutEdge(five, [['x'], ['1', '4']])).toEqual([]);
  });
  it('are towards the first of two that are as near', () => {
    const row = [
      { point: '1', u: 0.5, v: 0.5 },
      { point: '2', u: 0.2, v: 0.5 },
      { point: '3', u: 0.8, v: 0.5 },
    ];
    expect(pointsAboutEdge(row, [['1'], ['2', '3']])).toEqual([{ u: 0.35, v: 0.5 }]);
  });
  it('are told once where two points have the same nearest', () => {
    const cross = [
      { point: '1', u: 0.2, v: 0.5 },
      { point: '2', u: 0.2, v: 0.5 },
      { point: '3', u: 0.8, v: 0.5 },
    ];
    expect(pointsAboutEdge(cross, [['1', '2'], ['3']])).toEqual([{ u: 0.5, v: 0.5 }]);
  });
  it('are none where the points are not those of the template', () => {
    expect(pointsAboutEdge(pointsOverFace(5), [['a', 'b'], ['c']])).toEqual([]);
  });
});
