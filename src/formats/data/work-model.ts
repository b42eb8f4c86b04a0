/** The stages of the whole job by name, filled with the numbers in force. */
import type { SquareMetres } from '../../base/units.ts';
import type { JobStage, WorkModel } from '../../work/work-model.ts';
import type { Values } from '../default.ts';
import type { workDefaults } from './work-defaults.ts';

type Numbers = Values<typeof workDefaults>;

/** `section` is the area worked at a time, which the removal of a set rests on too. */
export const workModelOf = ({ stages, ...numbers }: Numbers, section: SquareMetres): WorkModel => ({
  ...numbers,
  section,
  stages: jobStages(stages),
});

/** The whole job in the order it is done (common practice). */
function jobStages(times: Numbers['stages']): readonly JobStage[] {
  const stage = (id: string, text: string): JobStage => ({
    id,
    text,
    time: Object.hasOwn(times, id) ? times[id as keyof typeof times] : null,
  });
  return [
    stage('record', 'record the condition'),
    stage('wheels', 'wheels: barrel, face, then tyre'),
    stage('shuts', 'door shuts'),
    stage('pre-wash', 'pre-wash the dirtiest lower parts, foam over all, rinse'),
    stage('wash', 'two-bucket wash from the top down, rinse'),
    stage('iron', 'iron remover, rinse'),
    stage('tar', 'tar remover low and rear'),
    stage('wash-again', 'wash again: solvent off before clay'),
    stage('clay', 'clay, rinse'),
    stage('dry', 'dry, blow out the gaps'),
    stage('inspect', 'inspect by light'),
    stage('read', 'verify the gauge, read'),
    stage('mask', 'mask the trim'),
    stage('test-spot', 'test spot: wipe, inspect'),
    stage('cut', 'cut: roof, horizontals, upper sides, low'),
    stage('check', 'wipe, inspect, re-read marked points cool'),
    stage('refine', 'refine'),
    stage('finish', 'finish'),
    stage('unmask-dust', 'unmask, dust out'),
    stage('details', 'engine bay, small metal and trim, interior'),
    stage('panel-wipe', 'panel wipe'),
    stage('remeasure', 'remeasure, verify the gauge: never after protection'),
    stage('glass-first', 'glass first pass, tyres, wheels'),
    stage('protect', 'protection: wax or coating, the owner’s choice'),
    stage('glass-last', 'glass, last'),
    stage('final', 'final inspection by eye'),
  ];
}
