/** What a colleague would say of the test spots: one sentence a finding, most pressing first. */
import { counted } from '../../base/counted.ts';
import { type Remark, remark } from '../../base/remark.ts';
import { figure, shown } from '../../base/rounding.ts';
import { says, um } from '../../base/sentence.ts';
import { normalQuantile } from '../../base/stats/normal.ts';
import type { CorrectionModel } from '../removal/catalogue.ts';
import type { Offer } from './more-evidence.ts';
import { hasCleared } from './spot-ladder.ts';
import { type HeldHaze, isThroughClear, type NextCase, type NextStep } from './spot-next.ts';
import { overrunStop } from './spot-overrun.ts';
import { hasRisen, onlyGained, type RemovedFilm, type SpotTrial } from './spot-trial.ts';

export type ReadTrial = { readonly trial: SpotTrial; readonly removed: RemovedFilm | null };

type Asked = Pick<NextCase, 'trials' | 'finishOf' | 'model' | 'aim' | 'overruns'> & {
  /** Whether a limit may be passed where the next step goes on at the same place. */
  readonly isPlaceShort?: boolean;
};

/** What to do next, in words. */
export function nextRemark({ code, combination, haze }: NextStep, asked: Asked): Remark {
  const { trials, finishOf, model, aim, overruns } = asked;
  const first = asked.isPlaceShort === true ? 'once survey --spots lets more go there, ' : '';
  const id = combination?.id ?? '';
  const share = `${shown(100 * aim, 0)} %`;
  switch (code) {
    case 'start':
      return remark(
        'spot-start',
        `start with ${id}: the mildest that may do within ${sets(model)}`,
      );
    case 'again':
      return remark(
        'spot-again',
        `${first}one more set of ${id} on the same place: it may still reach ${share}, and two sets tell more than one`,
      );
    case 'step-up':
      return remark(
        'spot-step-up',
        `not cleared: next rung ${id}, on a fresh place, and wipe before you look`,
      );
    case 'refine':
      return remark(
        'spot-refine',
        `cleared but hazy: ${first}refine with ${id} on the same place, then look again; that is no trial of its own, and gets no row`,
      );
    case 'done':
      return remark(
        'spot-done',
        `${doneText(id, asked)}${haze === undefined ? '' : hazeText(haze)}`,
      );
    case 'stop-colour':
      return remark(
        'spot-stop-colour',
        trials.some((one) => isThroughClear(one, finishOf) && finishOf(one.panel) === 'unknown')
          ? 'stop: colour on the pad means single-stage paint, or that you are through the clear; find out which first; nothing is learnt from such a trial'
          : 'stop: colour on the pad under clear over base means that you are through the clear, or that the finish is not what was said; nothing is learnt from such a trial',
      );
    case 'stop-overrun':
      return overrunStop(
        overruns.reduce((most, one) => (one.removed.mean > most.removed.mean ? one : most)),
      );
    case 'stop-risk':
      return remark(
        'spot-stop-risk',
        `stop: the next rung, ${id}, takes more in one set than may go here; leave the rest, or settle for a lower aim`,
      );
    case 'stop-ladder':
      return remark(
        'spot-stop-ladder',
        `stop: no combination of the shop is likely to reach ${share} within ${sets(model)}`,
      );
  }
}

/** A chance beside it is of as many sets as are granted: of more the ladder says nothing. */
function doneText(id: string, { trials, aim, model }: Asked): string {
  const did = trials.filter((one) => one.combination.id === id && hasCleared(one, aim));
  const fewest = Math.min(...did.map((one) => one.sets));
  const beyond = fewest > model.spot.sets ? ` (its chance below is of ${sets(model)})` : '';
  return `${id} did it in ${counted(fewest, 'set')}: no need for a stronger one${beyond}`;
}

/** As the plan has it: one who stops here, and one who follows the plan, are told the same. */
function hazeText({ seen, held, allowed, follows }: HeldHaze): string {
  if (seen > allowed) {
    return `; its haze of grade ${figure(seen)} stays, as the shop has no step that would refine it`;
  }
  const why = `; seen clean here, it is held to leave haze of grade ${figure(held)} all the same, as one clean spot may be so by its light or its luck, and the aim lets ${figure(allowed)} stand`;
  return follows === null
    ? `${why}: the shop has no step that would refine it, so a plan takes another way or none`
    : `${why}: a plan has a refining step follow (${follows.id}); where good light shows neither haze nor marks before it, leave it out`;
}

const sets = ({ spot }: CorrectionModel): string => counted(spot.sets, 'set');

const DUST = /\b(?:dust|powder|staub)/i;

/** What single trials give occasion to. */
export function trialAdvice(
  trials: readonly ReadTrial[],
  model: CorrectionModel,
): readonly Remark[] {
  return trials.flatMap((one) => [
    ...filmAdvice(one),
    ...heatAdvice(one.trial, model),
    ...dustAdvice(one.trial),
    ...(one.trial.cleared === null
      ? [
          remark(
            'spot-not-judged',
            `${one.trial.spot}: nobody judged by eye what went, so the ladder stays where it is`,
          ),
        ]
      : []),
  ]);
}

function filmAdvice({ trial, removed }: ReadTrial): readonly Remark[] {
  if (removed === null && onlyGained(trial)) {
    return [
      remark(
        'spot-film-gained',
        `${trial.spot}: what was read rose, so nothing is learnt from it of paint or rates, and it frees no panel: check the gauge, wipe off polish and wax, let it cool, read again`,
      ),
    ];
  }
  if (removed === null) {
    return [
      remark(
        'spot-no-film',
        `${trial.spot}: no film was read, so it says nothing of the rate: read marks before and after`,
      ),
    ];
  }
  const { mean, resolvable, sure } = removed;
  if (hasRisen(trial, removed)) {
    return [
      remark(
        'spot-film-gained',
        says`${trial.spot}: the film reads ${um(-mean)} more than before, so nothing is learnt from it of paint or rates: check the gauge, wipe off polish and wax, let it cool, read again`,
        mean,
      ),
    ];
  }
  return mean < resolvable
    ? [
        remark(
          'spot-unresolved',
          says`${trial.spot}: what went is lost in the gauge's noise, ${um(resolvable)} can be told from nothing at best, ${um(sure)} for sure`,
          mean,
        ),
      ]
    : [];
}

function heatAdvice(
  { spot, temperature }: SpotTrial,
  { heat }: CorrectionModel,
): readonly Remark[] {
  if (temperature === null || temperature <= heat.caution) return [];
  const text =
    temperature > heat.stop
      ? `${spot}: ${shown(temperature, 0)} °C is over the ${heat.stop} °C to stop at: let it cool, move faster, fewer passes at a time`
      : `${spot}: ${shown(temperature, 0)} °C is over the caution of ${heat.caution} °C: move the arm faster, or rest between passes`;
  return [remark('spot-heat', text, temperature)];
}

const dustAdvice = ({ spot, notes }: SpotTrial): readonly Remark[] =>
  notes.some((note) => DUST.test(note))
    ? [
        remark(
          'spot-dusting',
          `${spot}: it dusted: clean the pad, take less product and stop a pass earlier, before it runs dry`,
        ),
      ]
    : [];

/** What would tell more of a rate, best first in what it costs. */
export function evidenceRemark(combination: string, now: number, offers: readonly Offer[]): Remark {
  const range = (logSd: number): string =>
    `×/÷ ${shown(Math.exp(normalQuantile(0.95) * logSd), 1)}`;
  const list = offers.map(
    ({ marks, repeats, sets: count, logSd }) =>
      `${marks} marks${repeats > 1 ? ` read ${repeats} times` : ''} and ${count} ${count === 1 ? 'set' : 'stacked sets'} ${range(logSd)}`,
  );
  return remark(
    'spot-more-evidence',
    `the rate of ${combination} is known ${range(now)} (90 %); one more trial would make it: ${list.join(', ')}`,
  );
}
