/**
 * The models of the trade rooms with the numbers that a shop set in place of the built-in ones. Each is made when it
 * is asked for: together they take two milliseconds, and no command asks for all.
 */
import { once } from '../base/kept.ts';
import type { CorrectionModel } from '../correction/removal/catalogue.ts';
import type { FilmModel } from '../film/film-model.ts';
import type { TrainingModel } from '../training/training-model.ts';
import type { QuoteModel } from '../work/quote-model.ts';
import type { WorkModel } from '../work/work-model.ts';
import { defaultId, type Section } from './data/all-defaults.ts';
import { correctionDefaults } from './data/correction-defaults.ts';
import { correctionModelOf } from './data/correction-model.ts';
import { filmDefaults } from './data/film-defaults.ts';
import { priceDefaults } from './data/price-defaults.ts';
import { type TemplateRules, templateDefaults } from './data/template-defaults.ts';
import { trainingDefaults } from './data/training-defaults.ts';
import { workDefaults } from './data/work-defaults.ts';
import { workModelOf } from './data/work-model.ts';
import { type DefaultTree, type Values, values } from './default.ts';

export type Models = {
  readonly film: FilmModel;
  readonly correction: CorrectionModel;
  readonly work: WorkModel;
  readonly price: QuoteModel;
  readonly template: TemplateRules;
  readonly training: TrainingModel;
};

/** `numbers` by the ids of `listAllDefaults`; what is not among them keeps its built-in value. */
export const modelsWith = (numbers: ReadonlyMap<string, number>): Models =>
  numbers.size === 0 ? builtIn : modelsBy(numbers);

function modelsBy(numbers: ReadonlyMap<string, number> | undefined): Models {
  const inForce = <Tree extends DefaultTree>(section: Section, tree: Tree): Values<Tree> =>
    values(tree, numbers && ((path, unit) => numbers.get(defaultId(section, path, unit))));
  const correction = once(() => correctionModelOf(inForce('correction', correctionDefaults)));
  const film = once(() => inForce('film', filmDefaults));
  return madeWhenAsked<Models>({
    film,
    correction,
    work: () =>
      workModelOf(inForce('work', workDefaults()), {
        section: correction().removal.section,
        localSection: correction().correction.localSection,
      }),
    price: () => inForce('price', priceDefaults),
    template: () => inForce('template', templateDefaults),
    training: () => ({
      ...inForce('training', trainingDefaults()),
      farBetter: film().compare.farBetter,
    }),
  });
}

/** A thing whose values are each worked out once, when they are first asked for. */
function madeWhenAsked<Thing extends object>(
  makers: {
    readonly [Key in keyof Thing]: () => Thing[Key];
  },
): Thing {
  const thing = {};
  for (const key of Object.keys(makers) as (keyof Thing)[])
    Object.defineProperty(thing, key, { get: once(makers[key]), enumerable: true });
  return thing as Thing;
}

const builtIn: Models = modelsBy(undefined);
