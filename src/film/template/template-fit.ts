/** Which template a set of labels is of. */
import { at } from '../../base/at.ts';
import { keptWith, once, remembered } from '../../base/kept.ts';
import { knownPanel } from './panel-fit.ts';
import { matchersOf, readLabel } from './panel-names.ts';
import type { Part } from './panel-sense.ts';
import type { Panel, VehicleTemplate } from './template.ts';

/** How well a template fits a set of labels. */
export type TemplateFit = {
  readonly template: VehicleTemplate;
  /** Labels that match one panel each. */
  readonly matched: number;
  readonly unmatched: readonly string[];
  /** Labels that name no panel, nor one of several: such a vehicle has nothing of that name. */
  readonly strange: number;
  /** Panels of the template that no label names. */
  readonly unlabelled: number;
  /** Labels that name a panel in its own words: `boot` for a boot lid, not for a tailgate. */
  readonly ownWords: () => number;
};

export type BestTemplate = TemplateFit & {
  /** Templates the labels cannot tell from the best one; not empty means it is an assumption. */
  readonly tied: readonly VehicleTemplate[];
  /** All the others, best first; the tied ones lead. */
  readonly runnersUp: readonly TemplateFit[];
};

/**
 * The template whose panels the labels name: the fewest labels that it has nothing for (`left door` beside `rear left
 * door` is of a car with four), the most labels matched, then the fewest panels left without a label, then the most
 * panels named in their own words. Among templates the labels cannot tell apart one that was read from a file goes
 * first, for somebody made it for such a vehicle; then the one of middling total area (the lower of two). None when
 * fewer than half of the labels match, or there are no labels.
 */
export const bestTemplate = (
  labels: readonly string[],
  templates: readonly VehicleTemplate[],
): BestTemplate | undefined => bestAmong(templates)(JSON.stringify([...new Set(labels)]));

/** Kept: the vehicles of a batch bear few sets of labels. */
const bestAmong = keptWith((templates: readonly VehicleTemplate[]) =>
  remembered((labels) => fittingBest(JSON.parse(labels), templates), 64),
);

function fittingBest(
  distinct: readonly string[],
  templates: readonly VehicleTemplate[],
): BestTemplate | undefined {
  const fits = templates.map((template) => fitOf(template, distinct));
  const ranked = fits.sort((a, b) => Number(isOf(b)) - Number(isOf(a)) || betterFit(a, b));
  const [first] = ranked;
  if (first === undefined || !isOf(first)) return undefined;
  const equal = ranked
    .filter((fit) => betterFit(fit, first) === 0)
    .sort((a, b) => totalArea(a.template) - totalArea(b.template));
  const own = equal.filter(({ template }) => template.origin !== undefined);
  const likely = own.length > 0 ? own : equal;
  const best = at(likely, Math.floor((likely.length - 1) / 2));
  return {
    ...best,
    tied: equal.filter((fit) => fit !== best).map(({ template }) => template),
    runnersUp: ranked.filter((fit) => fit !== best),
  };
}

/** Whether the labels may be of such a vehicle: at least half of them match. */
const isOf = ({ matched, unmatched }: TemplateFit): boolean =>
  matched > 0 && matched >= unmatched.length;

function fitOf(template: VehicleTemplate, labels: readonly string[]): TemplateFit {
  const { meant } = matchersOf(template);
  const answers = labels.map((label) => ({ label, answer: meant(label) }));
  const matches = answers.flatMap(({ label, answer }) =>
    answer?.kind === 'match' ? [{ label, panel: answer.panel }] : [],
  );
  const matchedLabels = new Set(matches.map(({ label }) => label));
  return {
    template,
    matched: matches.length,
    unmatched: labels.filter((label) => !matchedLabels.has(label)),
    strange: answers.filter(({ answer }) => answer === undefined).length,
    unlabelled: template.panels.length - new Set(matches.map(({ panel }) => panel.id)).size,
    // Few labels leave it to this, and it asks what each of them may mean.
    ownWords: once(
      () => matches.filter(({ label, panel }) => namesOwnPart(partsNamed(label), panel)).length,
    ),
  };
}

const namesOwnPart = (parts: readonly Part[], panel: Panel): boolean =>
  knownPanel(panel).meanings.some(({ part }) => part !== undefined && parts.includes(part));

/** The parts that a label may name. */
const partsNamed = (label: string): readonly Part[] =>
  readLabel(label).meanings.flatMap(({ part }) => part ?? []);

/** Panels that the labels name: two labels are of two panels rather than of one. */
const panelsNamed = ({ template, unlabelled }: TemplateFit): number =>
  template.panels.length - unlabelled;

const betterFit = (a: TemplateFit, b: TemplateFit): number =>
  a.strange - b.strange ||
  b.matched - a.matched ||
  panelsNamed(b) - panelsNamed(a) ||
  a.unlabelled - b.unlabelled ||
  b.ownWords() - a.ownWords();

const totalArea = ({ panels }: VehicleTemplate): number =>
  panels.reduce((sum, { area }) => sum + area, 0);
