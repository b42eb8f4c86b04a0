/** What a survey has to say of the car as a whole, for every page that rests on it. */
import { counted } from '../../base/counted.ts';
import { groupBy } from '../../base/group-by.ts';
import { textIn } from '../../base/remark.ts';
import type { LengthUnit } from '../../base/units.ts';
import type { Survey } from '../../film/survey.ts';
import type { SurveyResult } from '../../tasks/survey/survey-vehicle.ts';
import { joined, remarkFacts } from '../facts.ts';
import { type Block, notice, paragraph } from '../model.ts';

/** Said before anything else of a page that has `warningsFirst`, and not at its end again. */
export const FILES_DOUBTED = 'files-doubted';

/** What puts every panel in doubt: no page may give an answer before it. */
const WARNINGS: ReadonlyMap<string, string> = new Map([
  ['spot-overrun', 'Too much came off'],
  ['spot-perhaps-overrun', 'Perhaps too much came off'],
  ['thick-baseline', 'Before any work'],
  ['thin-or-painted', 'Before any work'],
]);

const labelOf = ({ code }: Survey['notes'][number]): string | undefined => WARNINGS.get(code);

/** Whether the car is in doubt as a whole. */
export const hasWarning = ({ notes }: Survey): boolean =>
  notes.some((note) => labelOf(note) !== undefined);

export const warningsFirst = (
  { survey: { notes }, assumptions }: Pick<SurveyResult, 'survey' | 'assumptions'>,
  unit: LengthUnit,
): readonly Block[] => [
  ...doubtedFiles(assumptions, unit),
  ...failedGauge(assumptions, unit),
  ...notes.flatMap((note) => {
    const label = labelOf(note);
    return label === undefined ? [] : [notice(label, remarkFacts(note, unit))];
  }),
];

/** Of two cars read as one every mean is between the two. */
function doubtedFiles(
  assumptions: SurveyResult['assumptions'],
  unit: LengthUnit,
): readonly Block[] {
  const told = assumptions
    .filter(({ code }) => code === FILES_DOUBTED)
    .map((one) => textIn(one, unit));
  return told.length === 0
    ? []
    : [
        notice(
          'Before any work',
          `${told.join('; ')}: be sure that the files are of one car on one visit; if not, survey each alone`,
        ),
      ];
}

/** For paper that goes to the car: of which files the readings are, where several were taken as one. */
export function filesTaken(assumptions: SurveyResult['assumptions']): readonly Block[] {
  const [first, ...others] = assumptions.filter(({ code }) => code === 'files-one-vehicle');
  if (first === undefined || assumptions.some(({ code }) => code === FILES_DOUBTED)) return [];
  const also = others.length === 0 ? '' : `; so ${counted(others.length, 'more pair')} of files`;
  return [paragraph('Readings', `${first.text}${also}`)];
}

export const GAUGE_WIDENED = 'gauge-widened';
/** Where no figure says how far off it is, nothing is widened: all the more it leads the page. */
export const GAUGE_FAILED_UNSAID = 'gauge-failed-unsaid';

/** What a gauge is off by that failed on its shims bears on every reading. */
const failedGauge = (
  assumptions: SurveyResult['assumptions'],
  unit: LengthUnit,
): readonly Block[] =>
  assumptions
    .filter(({ code }) => code === GAUGE_WIDENED || code === GAUGE_FAILED_UNSAID)
    .map((one) =>
      notice(
        'Before any work',
        `the gauge failed its check on shims, ${textIn(one, unit)}: adjust it or take another, and read the car again`,
      ),
    );

/** How the survey came about: no doubt of what it says. */
const OF_THE_WAY: ReadonlySet<string> = new Set(['record-put-back', 'layer-readings']);

export const doubtBlocks = ({ notes }: Survey, unit: LengthUnit): readonly Block[] =>
  noteBlocks({ notes: notes.filter(({ code }) => !OF_THE_WAY.has(code)) }, unit);

/** The others; of several that begin alike, what they have in common once. */
export function noteBlocks({ notes }: Pick<Survey, 'notes'>, unit: LengthUnit): readonly Block[] {
  const told = notes
    .filter((note) => labelOf(note) === undefined)
    .map((note) => remarkFacts(note, unit).facts);
  return [...groupBy(told, ([, ...rest]) => rest.join('; ')).values()].map((group) => {
    const [[, ...rest]] = group;
    const first = group.map(([one = '']) => one);
    return paragraph('Note', joined([joined(first, ', '), ...rest], '; '));
  });
}
