/** Gloss before and after: the look, not the film. */
import { shown } from '../../base/rounding.ts';
import type { GlossChange } from '../../film/compare/compare-gloss.ts';
import { column, figures } from '../columns.ts';
import { joined } from '../facts.ts';
import { type Block, type Cell, cell, gap, paragraph } from '../model.ts';

export function glossBlocks(gloss: readonly GlossChange[]): readonly Block[] {
  if (gloss.length === 0) return [];
  const hazed = gloss.some(({ haze }) => haze !== null);
  return [
    gap,
    {
      kind: 'table',
      columns: [
        column('gloss in GU'),
        figures('places'),
        figures('gloss before'),
        figures('gloss after'),
        figures('gloss gained'),
        ...(hazed ? [figures('haze')] : []),
      ],
      rows: gloss.map((one) => glossRow(one, hazed)),
    },
    paragraph(
      null,
      joined(['Gloss tells of the look and not of the film.', ...angleAdvice(gloss)], ' '),
    ),
  ];
}

function glossRow(one: GlossChange, hazed: boolean): readonly Cell[] {
  const reach = one.interval === null ? '' : ` ± ${shown(one.interval[1] - one.gained, 1)}`;
  const { haze } = one;
  return [
    cell(`${one.panel.name} at ${one.angle}°`),
    cell(`${one.places}`),
    cell(shown(one.before, 1)),
    cell(shown(one.after, 1)),
    cell(`${shown(one.gained, 1)}${reach}`, 'strong'),
    ...(hazed
      ? [cell(haze === null ? '–' : `${shown(haze.before, 0)} to ${shown(haze.after, 0)}`)]
      : []),
  ];
}

/** The standards' own rule for the angle. */
function angleAdvice(gloss: readonly GlossChange[]): readonly string[] {
  const better = new Set(gloss.flatMap(({ betterAngle }) => betterAngle ?? []));
  return [
    ...(better.has(20)
      ? ['Over 70 GU at 60° read at 20° too: differences show better there.']
      : []),
    ...(better.has(85)
      ? ['Under 10 GU at 60° read at 85° too: differences show better there.']
      : []),
  ];
}
