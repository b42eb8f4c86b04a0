/** What a panel is: the first condition that applies, the others beside it, each with its evidence. */
import { type Remark, remark } from '../../base/remark.ts';
import { type Sentence, says, um } from '../../base/sentence.ts';
import type { Micrometres } from '../../base/units.ts';
import type { FilmModel, PanelFacts } from '../film-model.ts';
import type { Panel } from '../template/template.ts';

/** In order of precedence. */
export type Condition =
  | 'unread'
  | 'covered'
  | 'filler'
  | 'mixed'
  | 'refinished'
  | 'thin'
  | 'cut-back'
  | 'original';

/** Paint on metal that left the factory, whatever was polished off since. */
export const isFactoryFilm = (condition: Condition): boolean =>
  condition === 'original' || condition === 'thin' || condition === 'cut-back';

export type ConditionEvidence = {
  readonly panel: Panel;
  readonly facts: PanelFacts;
  readonly median: Micrometres;
  readonly mean: Micrometres;
  readonly smallest: Micrometres;
  readonly largest: Micrometres;
  readonly baseline: Micrometres | null;
};

export type Finding = { readonly condition: Condition; readonly evidence: Remark };

/** Conditions that the readings alone decide, before any spread is known; strongest first. */
export function filmFindings(
  { facts, median, mean, largest, baseline }: ConditionEvidence,
  model: FilmModel['conditions'],
): readonly Finding[] {
  const findings: Finding[] = [];
  if (facts.covered) {
    findings.push(finding('covered', 'declared as covered by film, wrap or coating'));
  }
  if (largest > model.filler) {
    findings.push(
      finding('filler', says`a point reads ${um(largest)}, over ${um(model.filler)}`, largest),
    );
  }
  const refinished = refinishedEvidence(median, baseline, model);
  if (refinished !== undefined) findings.push(finding('refinished', refinished, median));
  if (refinished === undefined && baseline !== null && mean < baseline - model.cutBack) {
    findings.push(
      finding(
        'cut-back',
        says`mean ${um(mean)} is ${um(baseline - mean)} under the car's baseline: likely cut before`,
        mean,
      ),
    );
  }
  return findings;
}

function refinishedEvidence(
  median: Micrometres,
  baseline: Micrometres | null,
  model: FilmModel['conditions'],
): Sentence | undefined {
  if (median > model.refinished) return says`median ${um(median)} is over ${um(model.refinished)}`;
  return baseline !== null && median > baseline + repaintReach(baseline, model)
    ? says`median ${um(median)} is ${um(median - baseline)} over the car's baseline`
    : undefined;
}

/** How far over the car's baseline a median is that of a repaint. */
export const repaintReach = (
  baseline: Micrometres,
  { refinishedAbove, refinishedAboveShare }: FilmModel['conditions'],
): number => Math.max(refinishedAbove, refinishedAboveShare * baseline);

/** A point under the floor is thin; a credible minimum under it may be. */
export function thinFinding(
  smallest: Micrometres,
  thinnest: Micrometres | null,
  floor: Micrometres,
): Finding | undefined {
  if (smallest < floor) {
    return finding(
      'thin',
      says`a point reads ${um(smallest)}, under the floor of ${um(floor)}`,
      smallest,
    );
  }
  return thinnest !== null && thinnest < floor
    ? finding('thin', says`may be thin: ${um(thinnest)} is credible somewhere on it`, thinnest)
    : undefined;
}

/** `read` is where points were read; those off the face do not speak for it. */
export function unreadFinding(
  panel: Panel,
  read: { readonly onFace: boolean; readonly offFace: boolean },
): Finding {
  if (read.onFace) {
    return finding(
      'unread',
      `on ${panel.substrate} a magnetic or eddy-current gauge reads no film`,
    );
  }
  if (needsUltrasound(panel)) return finding('unread', `no reading (${panel.substrate})`);
  return finding('unread', read.offFace ? 'no reading on its face, only off it' : 'no reading');
}

/** An electromagnetic gauge needs metal under the paint (ISO 2178, ISO 2360; ASTM D6132 for others). */
export const needsUltrasound = ({ substrate }: Panel): boolean =>
  substrate === 'plastic' || substrate === 'composite';

export const PRECEDENCE: readonly Condition[] = [
  'unread',
  'covered',
  'filler',
  'mixed',
  'refinished',
  'thin',
  'cut-back',
  'original',
];

/** Findings in order of precedence; a panel without any is original. */
export const byPrecedence = (findings: readonly Finding[]): readonly [Finding, ...Finding[]] => {
  const [first, ...rest] = [...findings].sort(
    (a, b) => PRECEDENCE.indexOf(a.condition) - PRECEDENCE.indexOf(b.condition),
  );
  return first === undefined
    ? [finding('original', 'in line with factory film')]
    : [first, ...rest];
};

const finding = (condition: Condition, text: string | Sentence, value?: number): Finding => ({
  condition,
  evidence: remark(condition, text, value),
});
