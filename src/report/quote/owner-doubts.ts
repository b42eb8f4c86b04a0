/** What the owner of the car is told before any choice: what must be settled before a panel is polished. */
import { says, tell, um } from '../../base/sentence.ts';
import type { LengthUnit } from '../../base/units.ts';
import { doubtsFinish } from '../../film/limits/colour-at-spot.ts';
import type { PanelSurvey } from '../../film/survey.ts';
import { panelNames } from '../../film/template/side-names.ts';
import type { QuoteResult } from '../../tasks/quote/quote-vehicle.ts';
import { asksToReadAgain } from '../../tasks/survey/read-again.ts';
import { isClearShown } from '../../work/exclusions.ts';
import { joined } from '../facts.ts';
import { type Block, notice } from '../model.ts';
import { FILES_DOUBTED, GAUGE_FAILED_UNSAID, GAUGE_WIDENED } from '../survey/note-blocks.ts';
import { namesAnd } from '../words.ts';

export const ownerDoubts = (result: QuoteResult, unit: LengthUnit): readonly Block[] => {
  const { panels, notes } = result.survey;
  return [
    ...(result.assumptions.some(({ code }) => code === FILES_DOUBTED) ? [before(TWO_CARS)] : []),
    ...failedGauge(result, unit),
    ...(result.assumptions.some(({ code }) => code === GAUGE_FAILED_UNSAID)
      ? [before(UNSAID_GAUGE)]
      : []),
    ...notes.flatMap(({ code, value }) => {
      const told = DOUBTS[code];
      if (told === undefined || value === undefined) return [];
      return [before(told(tell(says`${um(value, 0)}`, unit)))];
    }),
    ...firstBlocks(panels.filter(isClearShown), (where) => [
      `At a trial on the ${where} no colour came off with the polish.`,
      'Paint without a clear top layer, as was stated, gives colour: so there is such a layer, or nobody looked at the pad.',
      'Which of the two it is must be settled before any panel is polished; until then no more is planned than either allows.',
    ]),
    ...firstBlocks(panels.filter(doubtsFinish), (where) => [
      `At a trial on the ${where} colour came off with the polish: the clear top layer is gone there, or the paint of this car is not what was thought.`,
      'Which of the two it is must be settled before any panel is polished.',
    ]),
    ...firstBlocks(readAgain(result), (where) => [
      `Readings on the ${where} do not fit the rest: they are taken again before any panel is polished.`,
      'What this page says of the paint there may change with them.',
    ]),
  ];
};

/** Which files they are is the shop's to know. */
const TWO_CARS: readonly string[] = [
  'The readings that this page rests on may be of two cars, or of two days.',
  'Which they are must be known before any panel is polished.',
  'What this page says of the paint, and what it costs, may change with it.',
];

const failedGauge = ({ assumptions }: QuoteResult, unit: LengthUnit): readonly Block[] =>
  assumptions
    .filter(({ code }) => code === GAUGE_WIDENED)
    .map(({ sentence = [] }) => {
      const by = sentence.filter((piece) => typeof piece !== 'string');
      return before([
        `The gauge that measured this car failed its check: it may be off by ${tell(by, unit)}, or by more.`,
        ...READ_ANEW,
      ]);
    });

const READ_ANEW: readonly string[] = [
  'The car is read again by a sound gauge before any panel is polished.',
  'What this page says of the paint, and what it costs, may change with that.',
];

const UNSAID_GAUGE: readonly string[] = [
  'The gauge that measured this car failed its check, and nobody says by how much it is off.',
  ...READ_ANEW,
];

/** By the code of what the survey warns of, with the film that it is about. */
const DOUBTS: Readonly<Record<string, (film: string) => readonly string[]>> = {
  'thick-baseline': (film) => [
    `All that was measured is thick, about ${film}: far more than factories paint.`,
    'A car painted again all over reads so, and so does one under a film or a wrap.',
    'Which of the two it is must be settled, and a trial made, before any panel is polished.',
  ],
  'side-painted': (film) => [
    `One side of the car measures about ${film} more than the other.`,
    'It may have been painted again; nothing is polished there until that is known.',
    'Whoever knows of a repair of that side: please say so, as it may change what can be done and what it costs.',
  ],
  'spot-overrun': (film) => [
    `At a trial about ${film} of paint came off, more than was meant to go.`,
    'Why must be known before any panel is polished.',
  ],
  'spot-perhaps-overrun': (film) => [
    `At a trial about ${film} of paint came off, perhaps more than was meant to go.`,
    'It is measured again before any panel is polished.',
  ],
};

/** Panels of the quote with a value that looks keyed wrongly, a point that shows a 0, or one beyond the range. */
const readAgain = ({ plan, leftOut }: QuoteResult): readonly PanelSurvey[] =>
  plan.panels.flatMap(({ survey }) => (asksToReadAgain(survey, leftOut) ? [survey] : []));

const firstBlocks = (
  shown: readonly PanelSurvey[],
  told: (where: string) => readonly string[],
): readonly Block[] =>
  shown.length === 0 ? [] : [before(told(namesAnd(panelNames(shown.map(({ panel }) => panel)))))];

const before = (told: readonly string[]): Block => notice('Before any work', joined(told, ' '));
