import { remembered } from '../../base/kept.ts';
import { type LabelMeaning, labelWords, meanings } from './panel-label.ts';
import type { Part } from './panel-sense.ts';
import { rearClosures } from './panel-vocabulary.ts';
import type { Panel } from './template.ts';

/** A panel with what its id and name say in the vocabulary; empty where they say nothing. */
export type KnownPanel = { readonly panel: Panel; readonly meanings: readonly LabelMeaning[] };

const said = remembered((text) =>
  meanings(labelWords(text)).filter(({ part, weak }) => part !== undefined && !weak),
);

/** Templates share most of their panels: what an id and a name say is worked out once for all. */
export const knownPanel = (panel: Panel): KnownPanel => ({
  panel,
  meanings: [...(isSameInWords(panel) ? [] : said(panel.id)), ...said(panel.name)],
});

/** `wing-front-left` of a front left wing, as most are: what it may mean need not be worked out twice. */
const isSameInWords = ({ id, name }: Panel): boolean =>
  id.split('-').sort().join(' ') === name.split(' ').sort().join(' ');

export function panelsThatFit(
  panels: readonly KnownPanel[],
  said: readonly LabelMeaning[],
): readonly Panel[] {
  const wanted = said.map((meaning) => ({ ...meaning, parts: partsMeant(panels, meaning.part) }));
  return panels
    .filter((known) => wanted.some((meaning) => fits(meaning, known)))
    .map(({ panel }) => panel);
}

/** A label's meaning, with the parts that its part may be on the template. */
type Wanted = LabelMeaning & { readonly parts: readonly Part[] | undefined };

/** Whatever is said must be so: a label with a side does not fit a panel on the centre line. */
const fits = (said: Wanted, known: KnownPanel): boolean =>
  known.meanings.some(
    (panel) =>
      (said.parts === undefined || (panel.part !== undefined && said.parts.includes(panel.part))) &&
      (said.end === undefined || said.end === panel.end) &&
      (said.side === undefined || said.side === panel.side) &&
      (said.kerb === undefined || panel.side !== undefined),
  );

/**
 * Boot and tailgate name the rear closure of a template that has just one; a quarter is the bedside
 * where there are no quarters.
 */
function partsMeant(
  panels: readonly KnownPanel[],
  part: Part | undefined,
): readonly Part[] | undefined {
  if (part === undefined) return undefined;
  const has = (wanted: readonly Part[]) =>
    panels.filter((known) => known.meanings.some((m) => m.part && wanted.includes(m.part)));
  if (part === 'closure') return rearClosures;
  if (part === 'boot' || part === 'tailgate') {
    return has(rearClosures).length === 1 ? rearClosures : [part];
  }
  return part === 'quarter' && has(['quarter']).length === 0 ? ['bedside'] : [part];
}
