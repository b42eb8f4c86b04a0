/** The stages of the whole job by name, filled with the numbers in force. */
import { minutes } from '../../base/units.ts';
import type { JobStage, StageUse, WorkModel } from '../../work/work-model.ts';
import type { Values } from '../default.ts';
import { stagePairs, stageRules } from './stage-rules.ts';
import { type StageFacts, stageFacts } from './stages.ts';
import type { workDefaults } from './work-defaults.ts';

type Numbers = Values<ReturnType<typeof workDefaults>>;

/** The areas worked at a time are those that the correction reckons with. */
export const workModelOf = (
  numbers: Numbers,
  areas: Pick<WorkModel, 'section' | 'localSection'>,
): WorkModel => ({
  ...numbers,
  ...areas,
  stages: stageFacts.map((stage) => jobStage(stage, numbers)),
  rules: stageRules,
  pairs: stagePairs,
});

const jobStage = (
  { uses = [], ...facts }: StageFacts,
  { stages, wait, materials }: Numbers,
): JobStage => ({
  ...facts,
  name: facts.name ?? facts.text,
  needs: facts.needs ?? {},
  soils: facts.soils ?? false,
  alone: facts.alone ?? false,
  time: numberOf(stages, facts.id) ?? null,
  wait: numberOf(wait, facts.id) ?? minutes(0),
  uses: uses.map(
    ({ of, ...use }): StageUse => ({ ...use, quantity: of === null ? 1 : materials[of] }),
  ),
});

/** What the numbers say of a stage, if anything. */
const numberOf = <T>(numbers: Readonly<Record<string, T>>, id: string): T | undefined =>
  numbers[id];
