/**
 * What the mark of `1.155` means where no reading proves it and the file states a mean of its readings: of the two
 * ways to read them only one gives `1165,0`.
 *
 * The statistic itself must be readable in one way, and all of them must speak for the same way.
 */
import { type DecimalDecision, nameOfMark, otherMark } from '../cells/decimal.ts';
import { type DecimalMark, maySeparateThousands, numberShape } from '../cells/numbers.ts';
import { quoted } from '../cells/quoted.ts';
import { agrees, type Claim } from './statistics-check.ts';

/** A least or largest value is some reading, read in either way; these are of all of them. */
const telling: ReadonlySet<Claim['statistic']> = new Set(['mean', 'sum', 'deviation']);

/** The decision with what the statistics settle; undefined where they settle nothing. */
export function marksByStatistics(
  decision: DecimalDecision,
  claims: readonly Claim[],
): DecimalDecision | undefined {
  if (decision.given !== undefined || decision.proven || decision.thousands !== '')
    return undefined;
  const own = claims.filter(
    ({ statistic, text, groups }) =>
      telling.has(statistic) && !isOpen(text) && groups.some((group) => group.some(isOpen)),
  );
  const mark = markOf(own);
  const [first] = own;
  if (mark === undefined || first === undefined) return undefined;
  const [asGroups, asDecimals] = [
    own.map((claim) => agrees(withoutMark(claim, mark))),
    own.map(agrees),
  ];
  const grouped = asGroups.every((answer) => answer === true);
  const decimal = asDecimals.every((answer) => answer === true);
  if (grouped === decimal) return undefined;
  const says = `the ${first.statistic} ${quoted(first.text)} in line ${first.row.line}`;
  const told = own.length > 1 ? `${says} and ${own.length - 1} more` : says;
  const name = nameOfMark[mark];
  return grouped
    ? {
        ...{ ...decision, mark: otherMark(mark), thousands: mark },
        evidence: `${name} between thousands: so the readings give ${told}`,
      }
    : {
        ...{ ...decision, mark, proven: true, threes: true },
        evidence: `decimal ${name}: so the readings give ${told}`,
      };
}

const isOpen = (text: string): boolean => {
  const shape = numberShape(text);
  return shape !== undefined && maySeparateThousands(shape);
};

/** The one mark of all numbers that may be grouped. */
function markOf(claims: readonly Claim[]): DecimalMark | undefined {
  const texts = claims.flatMap(({ groups }) => groups.flat()).filter(isOpen);
  const marks = new Set(texts.map((text) => numberShape(text)?.mark));
  const [mark] = marks;
  return marks.size === 1 && mark !== '' ? mark : undefined;
}

const joinedText = (text: string, mark: DecimalMark): string =>
  isOpen(text) ? text.replace(mark, '') : text;

const withoutMark = (claim: Claim, mark: DecimalMark): Claim => ({
  ...claim,
  groups: claim.groups.map((group) => group.map((text) => joinedText(text, mark))),
});

/** The claims as they are once it is decided that a mark stands between thousands. */
export function withThousandsJoined(
  claims: readonly Claim[],
  { thousands }: DecimalDecision,
): readonly Claim[] {
  if (thousands !== '.' && thousands !== ',') return claims;
  return claims.map((claim) => ({
    ...withoutMark(claim, thousands),
    text: joinedText(claim.text, thousands),
  }));
}
