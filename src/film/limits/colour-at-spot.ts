/**
 * Colour on the pad at a test spot. Paint without a clear gives colour; under a clear it is the base coat, or the finish
 * is not what was said.
 */
import { hasNoClear } from '../coat-of.ts';
import { type Condition, isFactoryFilm } from '../condition/condition.ts';
import type { Finish, PanelFacts } from '../film-model.ts';

export const isColourNormal = (finish: Finish): boolean => hasNoClear(finish);

/**
 * What the car left the factory with says nothing of repaint: a base coat may lie there under a clear. What is stated of
 * the panel itself is what is on it.
 */
export const isRepaintSaidWithoutClear = ({
  facts,
  film,
  condition,
  also,
}: {
  readonly facts: Pick<PanelFacts, 'finish' | 'isOwnFinish'>;
  /** Null where none was read. */
  readonly film: unknown;
  readonly condition: Condition;
  readonly also: readonly Condition[];
}): boolean =>
  isColourNormal(facts.finish) &&
  facts.isOwnFinish !== true &&
  film !== null &&
  ![condition, ...also].every(isFactoryFilm);

/** Test spots of a panel that left colour which its paint is not known to give. */
export const coloursAt = ({ recorded }: Pick<PanelFacts, 'recorded'>): readonly string[] =>
  recorded?.colourAt ?? [];

/**
 * Test spots of other panels that put the clear of this one in doubt: one paint job has one finish. A clear that was read
 * or stated of the panel itself is there; of film that is not the factory's they say nothing.
 */
export const coloursElsewhere = (
  { finish, clear, colourElsewhere = [] }: PanelFacts,
  isFactory: boolean,
): readonly string[] =>
  isFactory && !isColourNormal(finish) && clear?.of !== 'panel' ? colourElsewhere : [];

/** `test spot B`, `test spots R, S`. */
export const spotsNamed = (spots: readonly string[]): string =>
  `test spot${spots.length === 1 ? '' : 's'} ${spots.join(', ')}`;

/** Whether colour on it puts the clear, or the finish that was said, in doubt for the whole car. */
export const doubtsFinish = ({ facts }: { readonly facts: PanelFacts }): boolean =>
  (facts.colourOfCar ?? []).length > 0;
