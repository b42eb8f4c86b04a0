/** What must come before what in a job, and why (common practice unless the reason says more). */
import type { StagePair, StageRule } from '../../work/work-model.ts';

const polishing = ['cut', 'refine', 'finish'] as const;
const protection = ['wax', 'sealant', 'coating'] as const;
const washes = ['pre-wash', 'wash', 'iron', 'tar', 'wash-again', 'clay'] as const;

const rule = (before: readonly string[], after: readonly string[], reason: string): StageRule => ({
  before,
  after,
  reason,
});

export const stageRules: readonly StageRule[] = [
  rule(
    ['record'],
    ['wheels', 'wheels-off', 'shuts', ...washes, 'inspect', 'read', 'test-spot', ...polishing],
    'the condition is recorded before anything is touched',
  ),
  rule(['wheels', 'wheels-off', 'shuts'], ['wash', 'dry'], 'their dirt would land on washed paint'),
  rule(['pre-wash'], ['wash'], 'loose grit is off before a mitt touches the paint'),
  rule(
    ['wash'],
    ['iron', 'tar', 'clay'],
    'dirt in the way keeps them from working, and clay drags it',
  ),
  rule(['iron'], ['clay'], 'clay would drag the iron over the paint'),
  rule(['tar'], ['wash-again'], 'the second wash is there to take the solvent off'),
  rule(['tar', 'wash-again'], ['clay'], 'the solvent must be off the paint before clay'),
  rule([...washes], ['dry'], 'they are wet work'),
  rule(
    ['dry'],
    ['inspect', 'read', 'mask', 'test-spot'],
    'water hides defects and tape will not hold',
  ),
  rule(
    ['iron', 'tar', 'clay'],
    ['test-spot', ...polishing],
    'a machine would grind in what is not off yet',
  ),
  rule(['inspect', 'read'], ['test-spot', ...polishing], 'nobody polishes film that was not read'),
  rule(['mask'], [...polishing], 'trim and edges are taped before a machine comes near'),
  rule(['test-spot'], [...polishing], 'the mildest method is found on a spot first'),
  rule(['cut'], ['check', 'refine', 'finish'], 'each step is milder than the one before'),
  rule(['check'], ['refine', 'finish'], 'what the cut left and took is seen before going on'),
  rule(['refine'], ['finish'], 'each step is milder than the one before'),
  rule([...polishing], ['unmask-dust'], 'tape comes off when the machines are done'),
  rule(
    ['unmask-dust'],
    ['interior', 'panel-wipe', ...protection],
    'dust of polishing settles on it',
  ),
  rule(['panel-wipe'], ['remeasure'], 'residue reads as film'),
  rule(['remeasure'], [...protection], 'protection reads as film: never measure after it'),
  rule(
    ['panel-wipe', ...polishing],
    [...protection],
    'protection holds on bare, finished paint only',
  ),
  rule(
    ['engine-bay', 'trim', 'interior', 'glass-first', ...protection, 'unmask-dust'],
    ['glass-last'],
    'glass is cleaned last: all else smears it',
  ),
  rule(
    ['engine-bay', 'trim', 'interior', 'glass-first', 'glass-last', ...protection, 'remeasure'],
    ['final'],
    'the last look is at the finished vehicle',
  ),
  rule(['final'], ['hand-over'], 'nothing leaves unseen'),
];

export const stagePairs: readonly StagePair[] = [
  { stage: 'tar', with: 'wash-again', reason: 'the solvent must be washed off' },
  { stage: 'wash-again', with: 'dry', reason: 'paint is read and polished dry' },
  { stage: 'wash', with: 'dry', reason: 'paint is read and polished dry' },
  { stage: 'clay', with: 'wash', reason: 'clay drags what a wash leaves' },
  { stage: 'iron', with: 'wash', reason: 'dirt in the way keeps it from working' },
  { stage: 'cut', with: 'read', reason: 'nobody polishes film that was not read' },
  { stage: 'cut', with: 'mask', reason: 'trim and edges are taped before a machine comes near' },
  { stage: 'cut', with: 'unmask-dust', reason: 'tape comes off when the machines are done' },
  { stage: 'cut', with: 'panel-wipe', reason: 'oils hide what is left of the defects' },
];
