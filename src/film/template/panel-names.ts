/**
 * Which panel of a template a label means: `LF fender`, `Left Rear Quarter Panel`, `door_front_left`.
 *
 * A label matches when exactly one panel is consistent with one of its readings; anything else is
 * handed back as ambiguous or unknown, with what would help, and never guessed. The id, the name and
 * the other labels of a panel always match, also where the vocabulary does not know them.
 */

import { keptWith, once, remembered } from '../../base/kept.ts';
import { hasLetter, wordsOf } from '../../base/letters.ts';
import { kerbHint, suggestionFor, whyUndecided } from './panel-advice.ts';
import { type KnownPanel, knownPanel, panelsThatFit } from './panel-fit.ts';
import { type LabelMeaning, labelWords, meanings } from './panel-label.ts';
import type { Side } from './panel-sense.ts';
import type { Panel, VehicleTemplate } from './template.ts';

export type PanelMatch =
  | { readonly kind: 'match'; readonly panel: Panel }
  | { readonly kind: 'ambiguous'; readonly panels: readonly Panel[]; readonly why: string }
  | { readonly kind: 'unknown'; readonly suggestion?: string };

type PanelMatcher = (label: string) => PanelMatch;

export function panelMatcher(template: VehicleTemplate): PanelMatcher {
  return matchersOf(template).match;
}

/** Whether a label names one panel of any of the templates; quick, since it gives no advice. */
export const panelRecogniser = keptWith((templates: readonly VehicleTemplate[]) => {
  const matchers = templates.map(matchersOf);
  return remembered(
    (label) => hasLetter(label) && matchers.some(({ meant }) => meant(label)?.kind === 'match'),
  );
});

/** Whether a label names a panel of some template, or says where on the car and leaves several open: `LF`. */
export const placeRecogniser = keptWith((templates: readonly VehicleTemplate[]) => {
  const matchers = templates.map(matchersOf);
  return remembered(
    (label) => hasLetter(label) && matchers.some(({ meant }) => meant(label) !== undefined),
  );
});

/** The panels that a label leaves open, and why: those of the first template on which it may be several. */
export const openRecogniser = keptWith((templates: readonly VehicleTemplate[]) => {
  const matchers = templates.map(matchersOf);
  return remembered((label): LeftOpen | undefined => {
    const answers = hasLetter(label) ? matchers.map(({ meant }) => meant(label)) : [];
    const open = answers.find((answer) => answer?.kind === 'ambiguous');
    return open?.kind === 'ambiguous'
      ? { names: open.panels.map(({ name }) => name), why: open.why }
      : undefined;
  });
});

export type LeftOpen = { readonly names: readonly string[]; readonly why: string };

type Matchers = {
  /** What a label means here, without advice for one that means nothing. */
  readonly meant: (label: string) => PanelMatch | undefined;
  readonly match: PanelMatcher;
};

const matchersByTemplate = new WeakMap<VehicleTemplate, Matchers>();

/** Answers for one template; each template and each label is worked out once. */
export function matchersOf(template: VehicleTemplate): Matchers {
  const matchers = matchersByTemplate.get(template) ?? createMatchers(template);
  matchersByTemplate.set(template, matchers);
  return matchers;
}

function createMatchers({ panels, nearside }: VehicleTemplate): Matchers {
  const known = once(() => panels.map(knownPanel));
  const meant = remembered(
    (label: string) =>
      exactMatch(exactIndex(panels), label) ?? matchByMeaning(known(), label, nearside),
  );
  const match = remembered(
    (label: string) => meant(label) ?? unknownLabel(known(), label, nearside),
  );
  return { meant, match };
}

/** Kept, for templates have most of their names in common. */
const plainKey = remembered((label) => label.normalize('NFKC').trim().toLowerCase());
const spacedKey = remembered((label) => wordsOf(label.normalize('NFKC').toLowerCase()).join(' '));
const gluedKey = remembered((label) => spacedKey(label).replaceAll(' ', ''));

/** As written, then without its separators: in this order a label is looked up. */
const EXACT_KEYS = [plainKey, spacedKey, gluedKey] as const;

/** Ids, then names, then what the template says a panel is also called. */
const EXACT_TEXTS: readonly ((panel: Panel) => readonly string[])[] = [
  ({ id }) => [id],
  ({ name }) => [name],
  ({ also = [] }) => also,
];

/** The panels that have a key, and what it is of them: one of `EXACT_TEXTS`. */
type Keyed = { readonly kind: number; readonly panels: Panel[] };

/** The panels of a template by each kind of key, built once; most labels are found by the first. */
type ExactIndex = readonly (() => ReadonlyMap<string, Keyed>)[];

const indices = new WeakMap<readonly Panel[], ExactIndex>();

function exactIndex(panels: readonly Panel[]): ExactIndex {
  const index =
    indices.get(panels) ?? EXACT_KEYS.map((keyOf) => once(() => panelsByKey(panels, keyOf)));
  indices.set(panels, index);
  return index;
}

/** A key that is one panel's id leads to that, whatever others are called. */
function panelsByKey(
  panels: readonly Panel[],
  keyOf: (text: string) => string,
): ReadonlyMap<string, Keyed> {
  const byKey = new Map<string, Keyed>();
  EXACT_TEXTS.forEach((textsOf, kind) => {
    for (const panel of panels) {
      for (const text of textsOf(panel)) {
        const key = keyOf(text);
        const before = byKey.get(key);
        if (before === undefined) byKey.set(key, { kind, panels: [panel] });
        else if (before.kind === kind && before.panels.at(-1) !== panel) before.panels.push(panel);
      }
    }
  });
  return byKey;
}

/** The panel whose id, else whose name, else one of whose other labels, is the label. */
function exactMatch(index: ExactIndex, label: string): PanelMatch | undefined {
  for (const [i, keyOf] of EXACT_KEYS.entries()) {
    const key = keyOf(label);
    const same = key === '' ? undefined : index[i]?.().get(key);
    if (same !== undefined)
      return answerWith(same.panels, () => 'more than one panel has this name');
  }
  return undefined;
}

function matchByMeaning(
  panels: readonly KnownPanel[],
  label: string,
  nearside: Side | undefined,
): PanelMatch | undefined {
  const { words, meanings } = readLabel(label);
  const said = meanings.flatMap((meaning) => placed(meaning, nearside));
  const named = said.filter(({ part }) => part !== undefined);
  for (const weak of [false, true]) {
    const read = named.filter((meaning) => (meaning.weak ?? false) === weak);
    const fitting = panelsThatFit(panels, read);
    if (fitting.length === 0) continue;
    const kerb = read.find((meaning) => meaning.kerb !== undefined)?.kerb;
    if (kerb !== undefined) return { kind: 'ambiguous', panels: fitting, why: kerbHint(kerb) };
    return answerWith(fitting, () => whyUndecided(panels, fitting, words));
  }
  const whereOnly = said.filter(({ part, end, side }) => part === undefined && (end ?? side));
  const there = panelsThatFit(panels, whereOnly);
  if (there.length > 0) {
    return { kind: 'ambiguous', panels: there, why: 'it says where and not which panel' };
  }
  return undefined;
}

function unknownLabel(
  panels: readonly KnownPanel[],
  label: string,
  nearside: Side | undefined,
): PanelMatch {
  const { words, meanings } = readLabel(label);
  const named = meanings
    .flatMap((meaning) => placed(meaning, nearside))
    .filter(({ part }) => part !== undefined);
  const suggestion = suggestionFor(panels, words, named);
  return suggestion === undefined ? { kind: 'unknown' } : { kind: 'unknown', suggestion };
}

const answerWith = (panels: readonly Panel[], why: () => string): PanelMatch => {
  const [panel, second] = panels;
  if (panel !== undefined && second === undefined) return { kind: 'match', panel };
  return { kind: 'ambiguous', panels, why: why() };
};

/**
 * Nearside and offside as left or right, where the label or the user says which; else kept as they are. So are
 * driver's and passenger's: a car driven on the other side of the road has them the other way round.
 */
function placed(
  { kerb, ...meaning }: LabelMeaning,
  nearside: Side | undefined,
): readonly LabelMeaning[] {
  if (kerb === undefined) return [meaning];
  if (nearside === undefined || kerb === 'driver' || kerb === 'passenger') {
    return [meaning.side === undefined ? { ...meaning, kerb } : meaning];
  }
  const side = (kerb === 'nearside') === (nearside === 'left') ? 'left' : 'right';
  return meaning.side === undefined || meaning.side === side ? [{ ...meaning, side }] : [];
}

/** A label without a template: each is read once, and held against many of them. */
export const readLabel = remembered((label) => {
  const words = labelWords(label);
  return { words, meanings: meanings(words) };
});
