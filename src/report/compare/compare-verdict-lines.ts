/**
 * Who may take one more set, in words: each once for the panels it is of. What is allowed is told, never what is to
 * be done: whether a panel needs more, no reading says. Without a plan a set is one of the mildest combination there is.
 */
import { groupBy } from '../../base/group-by.ts';
import { type Remark, textIn } from '../../base/remark.ts';
import { thicknessText, unitName } from '../../base/sentence.ts';
import type { LengthUnit } from '../../base/units.ts';
import type { GoOnVerdict } from '../../correction/go-on.ts';
import type { CompareResult } from '../../tasks/compare/compare-files.ts';
import type { PanelLeft } from '../../tasks/compare/compare-left-parts.ts';
import { LESS_BECAUSE, type LessCode } from '../../tasks/compare/compare-left-reasons.ts';
import { isOver, isOverUnknown, isPerhapsOver } from '../../tasks/compare/compare-overrun.ts';
import { pointsApart } from '../../tasks/compare/odd-readings.ts';
import type { OneMoreSet, PartLeft } from '../../tasks/compare/part-left.ts';
import { joined, remarkFacts } from '../facts.ts';
import { type Block, notice, paragraph } from '../model.ts';
import { partNameOf, partsLeft } from './compare-words.ts';

const WORDS: Readonly<Record<GoOnVerdict, string>> = {
  'go-on': 'Allowed, not asked for',
  stop: 'Stop',
  unresolved: 'Cannot tell',
};

/** Where too much came off somewhere, or the gauge is to be checked, no panel is worked before it is known what took it. */
const ONCE_KNOWN = 'Allowed once that is known, not asked for';

/**
 * Each word once for the panels it is of, with what one more set is, or the limit that binds; by their names where some
 * panel that was read is none of them.
 */
export function verdictLines(
  panels: readonly PanelLeft[],
  { areAll, inDoubt }: { readonly areAll: boolean; readonly inDoubt: boolean },
  unit: LengthUnit,
): readonly Block[] {
  const parts = partsLeft(panels);
  const groups = groupBy(parts, (part) => JSON.stringify([part.verdict, groundOf(part, unit)]));
  const order: readonly GoOnVerdict[] = ['go-on', 'stop', 'unresolved'];
  const isOverrun = inDoubt || parts.some(({ overruns }) => isOver(overruns));
  const wordOf = (verdict: GoOnVerdict): string =>
    isOverrun && verdict === 'go-on' ? ONCE_KNOWN : WORDS[verdict];
  return order.flatMap((verdict) =>
    [...groups.values()].flatMap((group) => {
      const [first] = group;
      if (first === undefined || first.verdict !== verdict) return [];
      const isEach = areAll && group.length === parts.length && group.length > 2;
      const on = isEach ? 'all panels' : names(group);
      const ground = groundOf(first, unit);
      const text = verdict === 'go-on' ? `${ground} on ${on}` : `${on}: ${ground}`;
      return [paragraph(wordOf(verdict), `${text}.`)];
    }),
  );
}

/** The mildest step is a measure of what is left: read as advice, it would be work that nobody planned. */
export function mildestLine(
  panels: readonly PanelLeft[],
  { planned }: Pick<CompareResult, 'planned'>,
): readonly Block[] {
  const isAllowed = partsLeft(panels).some(
    ({ verdict, oneMore }) => verdict === 'go-on' && oneMore?.from === 'mildest',
  );
  if (!isAllowed) return [];
  const without = planned ? 'The plan works nothing on some of them' : 'No plan is named';
  const how = planned
    ? 'plan them again before more comes off'
    : 'make one before more comes off, and name it with --plan';
  return [
    paragraph(
      'Mind',
      joined(
        [
          `${without}: the mildest combination of the ladder only measures what is left, and is no step to take.`,
          `What a panel needs, a plan says: ${how}.`,
        ],
        ' ',
      ),
    ),
  ];
}

/** The caution of the card, which is finished by then. */
export function unknownRiskLine(panels: readonly PanelLeft[]): readonly Block[] {
  const some = partsLeft(panels).filter(
    ({ verdict, isRiskUnknown }) => verdict === 'go-on' && isRiskUnknown,
  );
  return some.length === 0
    ? []
    : [
        notice(
          'Mind',
          `${names(some)}: risk not known, the clear there cannot be read: look at the pad, first colour: stop.`,
        ),
      ];
}

const names = (parts: readonly PartLeft[]): string =>
  parts.map(({ comparison }) => partNameOf(comparison)).join(', ');

function groundOf(part: PartLeft, unit: LengthUnit): string {
  const { verdict, oneMore, left, comparison, overruns } = part;
  if (oneMore === null) return 'no machine to go on with';
  const set = setText(oneMore, unit);
  if (verdict === 'go-on') {
    if (left?.boundBy.code === 'readings')
      return `${set} is within what might go, less what came off,`;
    return oneMore.from === 'plan'
      ? `${set} would keep every limit`
      : `${set} fits the budget left`;
  }
  if (verdict === 'stop') {
    if (left !== null && left.budget === 0) return `nothing may go: ${textIn(left.boundBy, unit)}`;
    return isOver(overruns) ? 'more came off than might go' : `${set} takes more than may go`;
  }
  const doubt = doubtOf(part);
  if (doubt !== null) return doubt;
  const how = comparison.by === 'pairs' ? 'read more marked points' : 'mark points before the work';
  return `${set} may be too much, and the readings do not say: ${how}`;
}

/** What is first to be settled, whatever one more set would take. */
function doubtOf({
  comparison,
  rise,
  allowed,
  overruns,
  reasons,
  left,
  places,
}: PartLeft): string | null {
  if (comparison.gained) return 'reads more film than before: first find out why';
  if (rise !== null)
    return 'read more film at one visit than at the one before: first find out why';
  if (comparison.apart !== null) {
    return `first read point ${pointsApart(comparison)
      .map(({ point }) => point)
      .join(', ')} again`;
  }
  if (isPerhapsOver(overruns)) {
    return 'perhaps more came off than might go: first read the same points again';
  }
  if (isOverUnknown(comparison, allowed, overruns)) {
    return 'perhaps more came off than might go, and means do not tell: mark points before more comes off';
  }
  if (left?.boundBy.code === 'readings' && left.budget === 0) {
    return 'marks alone are no survey, so nobody can say what may go: name the plan with --plan, or read at least 3 points';
  }
  if (left?.boundBy.code === 'place' && !reasons.some(isMoreThanBefore)) {
    return places.some(({ read }) => read === null)
      ? 'a place of it was to be worked deeper: first read that place'
      : 'a place of it was worked deeper, and has no room for one more set: keep off that place';
  }
  return reasons.some(isMoreThanBefore)
    ? 'before the work less might go than one more set takes: first read it again'
    : null;
}

const isMoreThanBefore = ({ code }: Remark): boolean => code === 'more-than-before';

/** `one more set of da/foam-medium/fine (the step that was to take most, about 0.52 µm)` */
function setText({ combination, from, removal }: OneMoreSet, unit: LengthUnit): string {
  const about = `about ${thicknessText(removal.median, unit, 2)} ${unitName(unit)}`;
  return from === 'plan'
    ? `one more set of ${combination} (the step that was to take most, ${about})`
    : `a set of the mildest combination there is (${combination}, ${about})`;
}

export const gainedLines = (panels: readonly PanelLeft[], unit: LengthUnit): readonly Block[] =>
  panels
    .filter(({ comparison }) => comparison.gained)
    .flatMap((panel) => reasonLines(panel, ['film-gained'], unit));

/** Why less may go than a survey of the later readings says, cause by cause, or more than before the work. */
export function leftLines(panels: readonly PanelLeft[], unit: LengthUnit): readonly Block[] {
  const parts = partsLeft(panels);
  const codes = Object.keys(LESS_BECAUSE) as readonly LessCode[];
  const less = codes.flatMap((code) => {
    const some = parts.flatMap((part) =>
      part.reasons
        .filter((one) => one.code === code)
        .map(({ value }) => lessText(part, value, unit)),
    );
    return some.length === 0
      ? []
      : [
          paragraph(
            'Less may go',
            `than a survey of the later readings says, ${some.join(', ')}: ${LESS_BECAUSE[code]}.`,
          ),
        ];
  });
  return [...less, ...parts.flatMap((part) => reasonLines(part, ['more-than-before'], unit))];
}

/** `roof (2.29 for 2.40 µm)` */
const lessText = (
  { comparison, left }: PartLeft,
  asked: number | undefined,
  unit: LengthUnit,
): string =>
  `${partNameOf(comparison)} (${thicknessText(left?.budget ?? 0, unit, 2)} for ${thicknessText(asked ?? 0, unit, 2)} ${unitName(unit)})`;

const reasonLines = (
  { comparison, reasons }: PartLeft,
  codes: readonly string[],
  unit: LengthUnit,
): readonly Block[] =>
  reasons
    .filter(({ code }) => codes.includes(code))
    .map((reason) => paragraph(partNameOf(comparison), remarkFacts(reason, unit)));
