/** The first thing to be said: who lost more than might go, or is beyond a limit, and what follows. */
import { textIn } from '../../base/remark.ts';
import { thicknessText, unitName } from '../../base/sentence.ts';
import type { LengthUnit } from '../../base/units.ts';
import type { PanelLeft } from '../../tasks/compare/compare-left-parts.ts';
import {
  isOver,
  isOverUnknown,
  isPerhapsOver,
  type OverrunCode,
} from '../../tasks/compare/compare-overrun.ts';
import type { PartLeft } from '../../tasks/compare/part-left.ts';
import { about, joined } from '../facts.ts';
import { type Block, notice, paragraph, type Said } from '../model.ts';
import { coatName } from '../survey/coat-name.ts';
import { changeText, partNameOf, partsLeft } from './compare-words.ts';

export const overrunLines = (panels: readonly PanelLeft[], unit: LengthUnit): readonly Block[] => [
  ...overLines(panels, unit),
  ...perhapsLines(panels, unit),
  ...notKnownLines(panels, unit),
];

/** One or two panels or zones by all their figures; more of them with what came off, and by limit. */
function overLines(panels: readonly PanelLeft[], unit: LengthUnit): readonly Block[] {
  const over = partsLeft(panels).filter(({ overruns }) => isOver(overruns));
  if (over.length === 0) return [];
  const told =
    over.length <= FEW
      ? over.map((part) => about(partNameOf(part.comparison), figuresOf(part, unit)))
      : [
          `for what might go: ${over.map((part) => nameWithLoss(part, unit)).join(', ')}.`,
          ...byLimit(over),
        ];
  return [notice('Too much came off', joined([...told, ...whatFollows(over)], ' '))];
}

/** Between what might go and more than that, by what the readings may be off by. */
function perhapsLines(panels: readonly PanelLeft[], unit: LengthUnit): readonly Block[] {
  const some = partsLeft(panels).filter(({ overruns }) => isPerhapsOver(overruns));
  if (some.length === 0) return [];
  const told = some.map((part) => about(partNameOf(part.comparison), figuresOf(part, unit)));
  const it = some.length === 1 ? 'it' : 'them';
  return [
    notice(
      'Perhaps too much came off',
      joined([...told, `Read the same points again before more comes off ${it}.`], ' '),
    ),
  ];
}

function notKnownLines(panels: readonly PanelLeft[], unit: LengthUnit): readonly Block[] {
  const some = partsLeft(panels).filter(({ comparison, allowed, overruns }) =>
    isOverUnknown(comparison, allowed, overruns),
  );
  return some.length === 0
    ? []
    : [
        paragraph(
          'Not known',
          joined(
            [
              `whether too much came off: ${some.map((part) => nameWithLoss(part, unit)).join(', ')}.`,
              'Means of panels do not tell: mark points before the work.',
            ],
            ' ',
          ),
        ),
      ];
}

const FEW = 2;

const figuresOf = ({ overruns }: PartLeft, unit: LengthUnit): Said =>
  joined(
    overruns.map((one) => textIn(one, unit)),
    '; ',
    '.',
  );

/** `roof (36.0 ± 0.9 for 4.84 µm)`: what came off, and what might go. */
function nameWithLoss({ comparison, allowed }: PartLeft, unit: LengthUnit): string {
  const came = comparison.change === null ? '' : changeText(comparison.change, unit);
  const might = allowed === null ? '' : ` for ${thicknessText(allowed.most, unit, 2)}`;
  return `${partNameOf(comparison)} (${came}${might} ${unitName(unit)})`;
}

/** `COAT` is the clear, or the topcoat of paint that has none. */
const LIMITS: readonly (readonly [OverrunCode, string])[] = [
  ['life-passed', 'More is gone than may come off over a life'],
  ['total-passed', 'The smallest point reads less than must stay'],
  ['clear-passed', 'Less COAT is expected than must stay'],
  ['clear-at-risk', 'The COAT is under its floor with more than the chance accepted'],
];

const byLimit = (over: readonly PartLeft[]): readonly string[] =>
  LIMITS.flatMap(([code, said]) => {
    const some = over.filter(({ overruns }) => overruns.some((one) => one.code === code));
    if (some.length === 0) return [];
    const on =
      some.length === over.length
        ? 'on each'
        : `on ${some.map(({ comparison }) => partNameOf(comparison)).join(', ')}`;
    const coat = coatName(some.flatMap(({ left }) => left ?? []));
    return [`${said.replace('COAT', coat)} ${on}.`];
  });

const whatFollows = ({ length }: readonly PartLeft[]): readonly string[] => [
  `Do not work ${length === 1 ? 'it' : 'them'} further.`,
  'Wipe, let cool and read the same points again; if that stands, find out what took it (sets, pad, pressure) before the next panel.',
];
