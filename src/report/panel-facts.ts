/** What is held of each panel's paint besides its readings, with where that is from. */
import { groupBy } from '../base/group-by.ts';
import { bare, says, tell, um } from '../base/sentence.ts';
import type { LengthUnit } from '../base/units.ts';
import type { PanelFacts, RecordedRemoval, StatedLayer } from '../film/film-model.ts';
import type { PanelSurvey } from '../film/survey.ts';
import type { EffectiveFacts } from '../tasks/settings/panel-facts.ts';
import type { Effective } from '../tasks/settings/setting-origin.ts';
import type { SurveyResult } from '../tasks/survey/survey-vehicle.ts';
import { about, joined } from './facts.ts';
import { type Block, list, paragraph } from './model.ts';

/**
 * As the survey used them: no zinc where the panel is not steel, and the clear that was read where
 * nothing better was stated.
 */
function factsUsed({ panel, facts }: PanelSurvey, said: EffectiveFacts): EffectiveFacts {
  const read = facts.clear !== null && facts.clear !== said.clear.value;
  const noZinc = said.galvanised.value && !facts.galvanised;
  return {
    ...said,
    ...(noZinc
      ? { galvanised: { ...said.galvanised, value: false, where: `no zinc on ${panel.substrate}` } }
      : {}),
    ...(read
      ? { clear: { value: facts.clear, origin: 'readings', where: 'readings of the layer' } }
      : {}),
  };
}

export const factsOf = (survey: PanelSurvey, { facts, settings }: SurveyResult): EffectiveFacts =>
  factsUsed(survey, facts.get(survey.panel.id) ?? settings.facts);

/**
 * What is held of most panels on one line, then what is different on some: panels that differ in the
 * same way share a line.
 */
export function factsList(
  read: readonly PanelSurvey[],
  result: SurveyResult,
  unit: LengthUnit,
): readonly Block[] {
  if (read.length === 0) return [];
  const panels = read.map((survey) => ({
    name: survey.panel.name,
    texts: factTexts(factsOf(survey, result), unit),
  }));
  const most = panels[0]?.texts.map((_, i) => usualOf(panels.map(({ texts }) => texts[i]))) ?? [];
  const differing = panels.flatMap(({ name, texts }) => {
    const text = texts.filter((one, i) => one.text !== most[i]?.text).map(({ text: own }) => own);
    return text.length === 0 ? [] : [{ name, text: joined(text, '; ') }];
  });
  const rest = differing.length === 0 ? 'every panel' : 'panels, if nothing else is said';
  const common = most.filter(({ worthSaying }) => worthSaying).map(({ text }) => text);
  return [
    list('What is held of the paint, and where it is said', [
      about(rest, joined(common, '; ')),
      ...[...groupBy(differing, ({ text }) => text.text).values()].map((of) =>
        about(of.map(({ name }) => name).join(', '), of[0].text),
      ),
    ]),
  ];
}

/**
 * What somebody stated of the paint, in a line or two: of most panels, then what is different of others. What stands
 * on record is of its panel alone, and never of most.
 */
export function statedBlock(
  read: readonly PanelSurvey[],
  result: SurveyResult,
  unit: LengthUnit,
): readonly Block[] {
  const panels = read.map((survey) => {
    const stated = statedFacts(factsOf(survey, result), unit);
    const material = materialWords(survey, result);
    const shared = stated.filter(({ isOfOnePanel }) => !isOfOnePanel).map(({ words }) => words);
    return {
      name: survey.panel.name,
      shared: [...material, ...shared],
      words: [...material, ...stated.map(({ words }) => words)],
    };
  });
  const [most] = largestFirst(groupBy(panels, ({ shared }) => shared.join(', ')));
  const usual = most?.[0].shared ?? [];
  const groups = largestFirst(groupBy(panels, ({ words }) => words.join(', ')));
  const others = groups.filter(([{ words }]) => words.join(', ') !== usual.join(', '));
  const silent = panels.filter(({ words }) => words.length === 0).length;
  const told = [
    others.length > 0 && 2 * silent > panels.length ? 'nothing of most panels' : usual.join(', '),
    ...others.map((of) => {
      const own = of[0].words.filter((word) => !usual.includes(word));
      return `${of.map(({ name }) => name).join(', ')}: ${own.join(', ') || 'nothing else'}`;
    }),
  ].filter((text) => text !== '');
  return told.length === 0 ? [] : [paragraph('Stated', joined(told, '; ', '.'))];
}

const largestFirst = <T>(groups: ReadonlyMap<string, readonly [T, ...T[]]>) =>
  [...groups.values()].sort((one, other) => other.length - one.length);

const statedFacts = (facts: EffectiveFacts, unit: LengthUnit): readonly FactText[] =>
  factTexts(facts, unit).filter(({ stated, words }) => stated && !isOfMetal(facts, words));

/** What a panel is said to be made of, or a template of metal without zinc where zinc is spoken of. */
function materialWords(
  { panel, facts }: PanelSurvey,
  { substrates, facts: held, settings }: SurveyResult,
): readonly string[] {
  const { galvanised } = held.get(panel.id) ?? settings.facts;
  const noZinc = galvanised.value && !facts.galvanised;
  if (noZinc) return [`${panel.substrate}, so no zinc`];
  return substrates.has(panel.id) ? [panel.substrate] : [];
}

/** What nobody stated but the metal does. */
const isOfMetal = ({ galvanised }: EffectiveFacts, word: string): boolean =>
  word === NO_ZINC && galvanised.where.startsWith('no zinc on ');

const NO_ZINC = 'not galvanised';

/** A fact in words; one that nobody stated and that changes nothing is only said beside another. */
type FactText = {
  readonly text: string;
  readonly worthSaying: boolean;
  /** The same without where it is said, and whether a file or an option says it. */
  readonly words: string;
  readonly stated: boolean;
  /** True of what nobody can say of the whole car. */
  readonly isOfOnePanel?: boolean;
};

const NOTHING: FactText = { text: '', worthSaying: false, words: '', stated: false };

const NOTHING_ON_RECORD: FactText = { ...NOTHING, text: 'nothing on record' };

/** What holds where nothing else is said: a record is of its panel, so there is none to go by. */
const usualOf = (texts: readonly (FactText | undefined)[]): FactText =>
  texts.some((one) => one?.isOfOnePanel) ? NOTHING_ON_RECORD : mostFrequent(texts);

function mostFrequent(texts: readonly (FactText | undefined)[]): FactText {
  const groups = [...groupBy(texts, (one) => one?.text ?? '').values()];
  const largest = groups.reduce<readonly (FactText | undefined)[]>(
    (most, one) => (one.length > most.length ? one : most),
    [],
  );
  return largest[0] ?? NOTHING;
}

/** The same facts in the same order for every panel. */
const factTexts = (facts: EffectiveFacts, unit: LengthUnit): readonly FactText[] => [
  said(facts.finish, (value) => value),
  takenFact(facts, unit),
  recordFact(facts, unit),
  said(facts.galvanised, (value) => (value ? 'galvanised' : NO_ZINC)),
  unlessNone(facts.clear, 'no clear stated', (value) => `clear ${layerText(value, unit)}`),
  unlessNone(
    facts.under,
    'nothing stated under it',
    (value) => `under the clear ${layerText(value, unit)}`,
  ),
  unlessNone(facts.paintedDaysAgo, 'not painted of late', (value) => `painted ${value} days ago`),
  unlessNone(facts.covered, 'not covered', () => 'covered'),
  unlessNone(facts.clearCoatFailure, 'no clear coat failure', () => 'clear coat failure'),
];

function recordFact({ taken, recorded }: EffectiveFacts, unit: LengthUnit): FactText {
  if (recorded.value === null) return NOTHING_ON_RECORD;
  const value = `${plusMinus(recorded.value, unit)} on record`;
  const fact = said(recorded, () =>
    taken.value === 0 ? `nothing taken before but ${value}` : value,
  );
  return { ...fact, isOfOnePanel: true };
}

/** What the record says of earlier work stands before `never`, and a new coat of paint before both. */
function takenFact(
  { taken, takenSd, recorded, paintedDaysAgo }: EffectiveFacts,
  unit: LengthUnit,
): FactText {
  const fact = said(taken, (value) => takenText(value, takenSd.value, unit));
  if (paintedDaysAgo.value !== null) {
    return { ...fact, text: 'painted since any earlier work', stated: false };
  }
  return taken.value === 0 && recorded.value !== null ? { ...fact, stated: false } : fact;
}

function takenText(
  value: PanelFacts['taken'],
  sd: PanelFacts['takenSd'],
  unit: LengthUnit,
): string {
  if (value === null) return 'earlier work unknown';
  if (sd > 0) return `${plusMinus({ mean: value, sd }, unit)} taken before`;
  return value === 0 ? 'never worked before' : tell(says`${um(value)} taken before`, unit);
}

const plusMinus = ({ mean, sd }: RecordedRemoval, unit: LengthUnit): string =>
  tell(says`${bare(mean)} ± ${um(sd)} (SD)`, unit);

const layerText = (layer: StatedLayer, unit: LengthUnit): string =>
  `${plusMinus(layer, unit)}${layer.of === 'car' ? ' on this car' : ''}`;

const said = <T>(
  { value, where, origin }: Effective<T>,
  textOf: (value: T) => string,
): FactText => ({
  text: `${textOf(value)} (${fileAndLine(where)})`,
  worthSaying: true,
  words: textOf(value),
  stated: origin !== 'built-in' && origin !== 'readings',
});

const unlessNone = <T>(
  fact: Effective<T | null | false>,
  none: string,
  textOf: (value: T) => string,
): FactText =>
  fact.value === null || fact.value === false
    ? { ...NOTHING, text: none }
    : said({ ...fact, value: fact.value as T }, textOf);

/** The folder is left to the record: a page has 80 columns. */
const fileAndLine = (where: string): string => where.replace(/^.*[/\\]/, '');
