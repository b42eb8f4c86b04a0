/** One stage of this job: how long, how sure, and what it uses up. */
import { groupBy } from '../base/group-by.ts';
import { type Minutes, minutes, scale } from '../base/units.ts';
import { STAGES } from '../correction/removal/catalogue.ts';
import type { JobScope } from './job-scope.ts';
import { addedMoments, type Moments, threePointMoments } from './job-time.ts';
import { type Amounts, type Material, polishingMaterials, suppliesOf } from './materials.ts';
import type { Pace } from './pace.ts';
import type { Polishing } from './polishing.ts';
import { type Measures, stretch } from './vehicle-measures.ts';
import type { JobStage, ThreePoint, WorkModel } from './work-model.ts';

export type StageWork = Moments & {
  readonly stage: JobStage;
  /** Likely minutes of one person's hands. */
  readonly likely: Minutes;
  /** Of those, minutes of the plan's steps and their set-up. */
  readonly polishingTime: Minutes;
  /** Time on the clock that passes after it, with no hands on the vehicle. */
  readonly wait: Minutes;
  readonly materials: readonly Material[];
};

type Terms = {
  readonly measures: Measures;
  readonly scope: JobScope;
  readonly pace: Pace;
  readonly model: WorkModel;
};

/** The stages that have something to do, in the order given: without a step to polish, no correction. */
export function stageWorks(
  order: readonly JobStage[],
  polishing: readonly Polishing[],
  terms: Terms,
): readonly StageWork[] {
  const used = polishingMaterials(polishing, terms.model);
  const setUps = setUpStages(polishing);
  const byStage = groupBy<string, Polishing>(polishing, ({ stage }) => stage);
  const amounts = amountsOf(terms);
  return order
    .filter(({ part }) => part === 'rest' || polishing.length > 0)
    .filter(({ id }) => !isStep(id) || byStage.has(id))
    .map((stage) => {
      const own = byStage.get(stage.id) ?? [];
      const likely = [
        ...own.map((one) => one.likely),
        ...setUps.filter((first) => first === stage.id).map(() => terms.model.setUp),
      ];
      return {
        stage,
        ...timesOf(stage, likely, terms),
        wait: stage.wait,
        materials: [...(used.get(stage.id) ?? []), ...suppliesOf(stage, amounts)],
      };
    });
}

/** A refining step, say, that this plan has none of is no stage of the job. */
const isStep = (id: string): boolean => STAGES.some((step) => step === id);

/** Its polishing and what the stage takes besides, as this shop takes for it. */
function timesOf(stage: JobStage, polishing: readonly Minutes[], terms: Terms) {
  const { model, pace, measures, scope } = terms;
  const factor = Math.exp(pace.stages.get(stage.id) ?? 0);
  const steps = polishing.map((likely) => spreadTime(scale(likely, factor), model.polishing));
  const by = factor * stretch(stage, measures, scope, model);
  const besides = stage.time === null ? [] : [stretched(stage.time, by)];
  const times = [...steps, ...besides];
  const { mean, variance } = addedMoments(times.map(threePointMoments));
  return { mean, variance, likely: likelyOf(times), polishingTime: likelyOf(steps) };
}

const spreadTime = (likely: Minutes, { least, most }: WorkModel['polishing']): ThreePoint => ({
  least: scale(likely, least),
  likely,
  most: scale(likely, most),
});

const stretched = ({ least, likely, most }: ThreePoint, by: number): ThreePoint => ({
  least: scale(least, by),
  likely: scale(likely, by),
  most: scale(most, by),
});

const likelyOf = (times: readonly ThreePoint[]): Minutes =>
  minutes(times.reduce((sum, { likely }) => sum + likely, 0));

/** A combination is set up once, in the stage that first asks for it. */
function setUpStages(polishing: readonly Polishing[]): readonly Polishing['stage'][] {
  const first = new Map<string, Polishing['stage']>();
  for (const { step, stage } of polishing) {
    const { id } = step.combination;
    if (!first.has(id)) first.set(id, stage);
  }
  return [...first.values()];
}

const amountsOf = ({ measures, model }: Terms): Amounts => ({
  job: 1,
  'vehicle-area': measures.vehicleArea,
  'worked-area': measures.workedArea,
  'worked-trim': measures.workedTrim,
  wheels: model.usual.wheels,
});
