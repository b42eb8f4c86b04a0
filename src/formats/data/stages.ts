/**
 * The stages of the whole job in the usual order (common practice): what each is, when it is done, what
 * it takes longer with and what it uses up. How long it takes stands among the numbers.
 */
import type { StageNeeds } from '../../work/job-scope.ts';
import type { JobStage, StageUse } from '../../work/work-model.ts';
import type { workDefaults } from './work-defaults.ts';

/** `of` names the number of how much; null is one for one, as tape for trim. */
type UseFacts = Omit<StageUse, 'quantity'> & {
  readonly of: keyof ReturnType<typeof workDefaults>['materials'] | null;
};

export type StageFacts = Pick<JobStage, 'id' | 'text' | 'part' | 'skill' | 'scalesWith'> & {
  /** Where the text is longer than a name. */
  readonly name?: string;
  readonly needs?: StageNeeds;
  readonly soils?: boolean;
  readonly alone?: boolean;
  readonly uses?: readonly UseFacts[];
};

const ml = (
  id: string,
  of: NonNullable<UseFacts['of']>,
  per: StageUse['per'],
  material = id.replaceAll('-', ' '),
): UseFacts => ({ id, material, unit: 'ml', of, per });

type Rest = Omit<StageFacts, 'id' | 'text' | 'scalesWith' | 'part' | 'skill'>;

const stage =
  (part: JobStage['part'], skill: JobStage['skill']) =>
  (id: string, text: string, scalesWith: JobStage['scalesWith'], rest: Rest = {}): StageFacts => ({
    id,
    text,
    part,
    skill,
    scalesWith,
    ...rest,
  });
const washing = stage('rest', 'wash');
const looking = stage('rest', 'survey');
const inside = stage('rest', 'interior');
const protecting = stage('rest', 'protect');
const surveying = stage('correction', 'survey');
const polishing = stage('correction', 'polish');

const iron: StageNeeds = { decontamination: ['full', 'chemical'] };
const clay: StageNeeds = { decontamination: ['full', 'clay'] };
const alone = { alone: true };

export const stageFacts: readonly StageFacts[] = [
  looking('record', 'take in, record the condition', 'job', { ...alone, name: 'take in' }),
  washing('wheels', 'wheels: barrel, face, then tyre', 'wheels', {
    name: 'wheels',
    needs: { wheels: ['on'] },
    soils: true,
    uses: [ml('wheel-cleaner', 'wheelCleaner', 'wheels')],
  }),
  washing('wheels-off', 'wheels off, cleaned, back on to torque', 'wheels', {
    name: 'wheels off and back on',
    needs: { wheels: ['off'] },
    soils: true,
    uses: [ml('wheel-cleaner', 'wheelCleaner', 'wheels')],
  }),
  washing('shuts', 'door shuts', 'size', { needs: { shuts: [true] }, soils: true }),
  washing('pre-wash', 'pre-wash the dirtiest lower parts, foam over all, rinse', 'vehicle-area', {
    name: 'pre-wash',
    soils: true,
    uses: [ml('pre-wash', 'preWash', 'vehicle-area', 'pre-wash foam')],
  }),
  washing('wash', 'two-bucket wash from the top down, rinse', 'vehicle-area', {
    name: 'wash',
    soils: true,
    uses: [ml('shampoo', 'shampoo', 'vehicle-area')],
  }),
  washing('iron', 'iron remover, rinse', 'vehicle-area', {
    name: 'iron remover',
    needs: iron,
    uses: [ml('iron-remover', 'ironRemover', 'vehicle-area')],
  }),
  washing('tar', 'tar remover low and rear', 'vehicle-area', {
    name: 'tar remover',
    needs: iron,
    soils: true,
    uses: [ml('tar-remover', 'tarRemover', 'vehicle-area')],
  }),
  washing('wash-again', 'wash again: solvent off before clay', 'vehicle-area', {
    name: 'wash again',
    needs: iron,
    uses: [ml('shampoo', 'shampoo', 'vehicle-area')],
  }),
  washing('clay', 'clay, rinse', 'vehicle-area', {
    name: 'clay',
    needs: clay,
    soils: true,
    uses: [{ id: 'clay', material: 'clay blocks', unit: 'pieces', of: 'clay', per: 'job' }],
  }),
  washing('dry', 'dry, blow out the gaps', 'vehicle-area', { name: 'dry' }),
  surveying('inspect', 'inspect by light', 'vehicle-area'),
  surveying('read', 'verify the gauge, read', 'vehicle-area', { ...alone, name: 'readings' }),
  polishing('mask', 'mask the trim', 'worked-trim', {
    uses: [
      { id: 'masking-tape', material: 'masking tape', unit: 'm', of: null, per: 'worked-trim' },
    ],
  }),
  polishing('test-spot', 'test spot: wipe, inspect', 'job', { ...alone, name: 'test spot' }),
  polishing('cut', 'cut: roof, horizontals, upper sides, low', 'polishing', { name: 'cut' }),
  polishing('check', 'wipe, inspect, re-read marked points cool', 'polishing', { name: 'check' }),
  polishing('refine', 'refine', 'polishing'),
  polishing('finish', 'finish', 'polishing'),
  polishing('unmask-dust', 'unmask, dust out', 'worked-trim', { name: 'unmask and dust out' }),
  inside('engine-bay', 'engine bay', 'size', {
    needs: { engineBay: [true] },
    soils: true,
    uses: [ml('engine-cleaner', 'engineCleaner', 'job')],
  }),
  inside('trim', 'small metal and trim', 'size', {
    needs: { trim: [true] },
    uses: [ml('trim-dressing', 'trimDressing', 'job')],
  }),
  inside('interior', 'interior: vacuum, leather, belts, roof lining, plastics', 'size', {
    name: 'interior',
    needs: { interior: [true] },
    soils: true,
    uses: [ml('interior-cleaner', 'interiorCleaner', 'job')],
  }),
  polishing('panel-wipe', 'panel wipe', 'worked-area', {
    uses: [ml('panel-wipe', 'panelWipe', 'worked-area')],
  }),
  surveying('remeasure', 'remeasure, verify the gauge: never after protection', 'worked-area', {
    ...alone,
    name: 'readings after',
  }),
  washing('glass-first', 'glass first pass, tyres, wheels', 'size', {
    name: 'glass and tyres',
    needs: { glass: [true] },
    uses: [
      ml('glass-cleaner', 'glassCleaner', 'job'),
      ml('tyre-dressing', 'tyreDressing', 'wheels'),
    ],
  }),
  protecting('wax', 'protection: wax', 'vehicle-area', {
    name: 'wax',
    needs: { protection: ['wax'] },
    uses: [ml('wax', 'wax', 'vehicle-area')],
  }),
  protecting('sealant', 'protection: sealant', 'vehicle-area', {
    name: 'sealant',
    needs: { protection: ['sealant'] },
    uses: [ml('sealant', 'sealant', 'vehicle-area')],
  }),
  protecting('coating', 'protection: coating, then left to cure', 'vehicle-area', {
    name: 'coating',
    needs: { protection: ['coating'] },
    uses: [ml('coating', 'coating', 'vehicle-area')],
  }),
  washing('glass-last', 'glass, last', 'size', {
    name: 'glass again',
    needs: { glass: [true] },
    uses: [ml('glass-cleaner', 'glassCleaner', 'job')],
  }),
  looking('final', 'final inspection by eye', 'job', { ...alone, name: 'final look' }),
  looking('hand-over', 'hand over', 'job', alone),
];
