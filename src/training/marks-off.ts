/**
 * Marks that a trainee reads off on panel after panel, where others of the same panels agree with the reference: who
 * sets the probe down at an edge, or on a bend, reads it so there and nowhere else.
 *
 * By marks of one name over the panels that both read them on: F of the means of the names against what is left over
 * names and panels (two ways, without interaction), with a chance under the false alarm; off is a name whose mean
 * difference is questionable or worse (over 2·σ_pt), one agrees within σ_pt, and there must be both.
 */
import { groupBy } from '../base/group-by.ts';
import { fUpperTail } from '../base/stats/incomplete-beta.ts';
import { mean } from '../base/stats/summary.ts';
import { sum } from '../base/sum.ts';
import { type Micrometres, micrometres } from '../base/units.ts';
import type { MarkCompared } from './marks-compared.ts';

export type MarksOff = {
  readonly off: readonly string[];
  readonly agreeing: readonly string[];
  readonly mean: Micrometres;
  /** The marks that are off lie nearer to an edge than those that agree, as the template has them. */
  readonly atEdges: boolean;
};

type Limits = {
  readonly falseAlarm: number;
  /** On fewer panels it is a matter of the panel. */
  readonly leastPanels: number;
  readonly leastMarks: number;
  /** A difference that agrees, and from when one is off. */
  readonly agrees: number;
  readonly off: number;
};

export function marksOff(marks: readonly MarkCompared[], limits: Limits): MarksOff | null {
  const table = onAllPanels(marks, limits.leastPanels);
  const names = [...groupBy(table, ({ point }) => point).entries()];
  if (names.length < limits.leastMarks || chanceOf(table) >= limits.falseAlarm) return null;
  const means = names.map(([name, own]) => ({ name, own, mean: meanOf(own) }));
  const agreeing = means.filter((one) => Math.abs(one.mean) <= limits.agrees);
  const off = means.filter((one) => Math.abs(one.mean) > limits.off);
  const oneWay = new Set(off.map((one) => Math.sign(one.mean))).size === 1;
  if (agreeing.length === 0 || !oneWay) return null;
  const toEdge = (some: typeof means): readonly number[] =>
    some.flatMap(({ own }) => own.flatMap(edgeDistance));
  const [far, near] = [toEdge(agreeing), toEdge(off)];
  return {
    off: off.map(({ name }) => name),
    agreeing: agreeing.map(({ name }) => name),
    mean: micrometres(mean(off.map((one) => one.mean))),
    atEdges: far.length > 0 && near.length > 0 && Math.max(...near) < Math.min(...far),
  };
}

const meanOf = (marks: readonly MarkCompared[]): number =>
  mean(marks.map(({ difference }) => difference));

/** Panels on which the most marks were read, and the marks that all of them have: a full table. */
function onAllPanels(marks: readonly MarkCompared[], leastPanels: number): readonly MarkCompared[] {
  const panels = [...groupBy(marks, ({ panel }) => panel.id).values()];
  const most = Math.max(0, ...panels.map(({ length }) => length));
  const full = panels.filter(({ length }) => length === most);
  if (full.length < leastPanels) return [];
  const onEach = (name: string): boolean =>
    full.every((own) => own.some(({ point }) => point === name));
  return full.flat().filter(({ point }) => onEach(point));
}

/** That the means of the names differ so by chance. */
function chanceOf(table: readonly MarkCompared[]): number {
  const names = [...groupBy(table, ({ point }) => point).values()];
  const panels = [...groupBy(table, ({ panel }) => panel.id).values()];
  const centre = meanOf(table);
  const between = (groups: readonly (readonly MarkCompared[])[]): number =>
    sum(groups.map((own) => own.length * (meanOf(own) - centre) ** 2));
  const ofNames = between(names);
  const all = sum(table.map(({ difference }) => (difference - centre) ** 2));
  const left = Math.max(0, all - ofNames - between(panels));
  const [dof, dofLeft] = [names.length - 1, (names.length - 1) * (panels.length - 1)];
  if (ofNames === 0) return 1;
  return left === 0 ? 0 : fUpperTail(ofNames / dof / (left / dofLeft), dof, dofLeft);
}

/** As a share of the panel, where the template says where the mark is. */
const edgeDistance = ({ panel, point }: MarkCompared): readonly number[] =>
  panel.points.filter((one) => one.point === point).map(({ u, v }) => Math.min(u, 1 - u, v, 1 - v));
