/** What a grading rests on that nobody stated. */
import { spoken } from '../../base/remark.ts';
import { figure, shown } from '../../base/rounding.ts';
import { type Sentence, says, um } from '../../base/sentence.ts';
import type { SigmaPt } from '../../training/panel-score.ts';
import type { Marking } from '../../training/training-model.ts';
import { adjustmentText, permittedText } from '../gauge/gauge-words.ts';
import type { Assumption } from '../settings/assumption.ts';
import { mostDrifted, type NamedGauge, withGauge } from '../settings/gauge-in-use.ts';
import type { Entry } from './grade-hand-in.ts';
import type { GradeFilesRequest } from './grade-request.ts';
import { soundGauge, whyUnsound } from './sound-gauge.ts';

/** What a grading turned out to be about. */
type About = {
  readonly sigmaPt: SigmaPt;
  readonly marking: Marking;
  readonly entries: readonly Entry[];
  /** One gauge is taken to have read the reference and every survey. */
  readonly oneGauge: boolean;
  /** For somebody at least nobody said which gauge it was. */
  readonly unnamedGauge: boolean;
  /** No mark of the expert’s was read by anybody as the same. */
  readonly ownPoints: boolean;
  /** There are marks, and a consensus, which has none. */
  readonly marksUnused: boolean;
};

export const gradeAssumptions = (
  request: GradeFilesRequest,
  about: About,
): readonly Assumption[] => [
  // What the survey assumes of the paint decides no grade.
  ...request.settings.assumptions.filter(({ code }) => code === 'settings-file'),
  ...usualRubric(request, about),
  ...sigmaTaken(request, about),
  ...usualRepeats(request),
  ...ownPoints(about),
  ...marksUnused(about),
  ...gaugeOfAll(request),
  ...about.entries.flatMap(ownGauge),
  ...oneGauge(request, about),
];

const usualRubric = ({ rubric }: GradeFilesRequest, { marking }: About): readonly Assumption[] => {
  const passMark = shown(100 * marking.passMark, 0);
  const text = `the usual weights and a pass mark of ${passMark} %`;
  return rubric === undefined ? [{ code: 'rubric', text, origin: 'built-in' }] : [];
};

/** The σ_pt that nobody stated, or that stands in for one of the class. */
function sigmaTaken(
  { rubric, settings }: GradeFilesRequest,
  { sigmaPt }: About,
): readonly Assumption[] {
  const stated = rubric?.value.sigmaPt;
  if (sigmaPt.from === 'class') return [];
  if (stated === 'class') {
    const said = says`too few surveys for a σ_pt of the class: ${um(sigmaPt.value)} instead`;
    return [{ code: 'sigma-pt-class', ...spoken(said), origin: 'readings' }];
  }
  if (stated !== undefined) return [];
  const origin = settings.numbers.get('training.scores.sigma_pt_um')?.origin ?? 'built-in';
  return [
    { code: 'sigma-pt', ...spoken(says`scores measured by σ_pt ${um(sigmaPt.value)}`), origin },
  ];
}

/** By what repeats, ζ and copies are judged, where no gauge file says that the gauge repeats worse. */
function usualRepeats({ settings, gauge }: GradeFilesRequest): readonly Assumption[] {
  const usual = settings.film.measurement.repeatability;
  const ofGauge =
    withGauge(settings, soundGauge(gauge)).value?.film.measurement.repeatability ?? usual;
  if (ofGauge > usual) return [];
  const origin = settings.numbers.get('film.measurement.repeatability_um')?.origin ?? 'built-in';
  return [
    {
      code: 'usual-repeats',
      ...spoken(says`repeats on a car usually differ by ${um(usual)} (SD)`),
      origin,
    },
  ];
}

const ownPoints = ({ ownPoints: areOwn }: About): readonly Assumption[] =>
  areOwn
    ? [
        {
          code: 'own-points',
          text: 'each read points of their own, as no marks are shared: --marked if names alike are one place',
          origin: 'readings',
        },
      ]
    : [];

const marksUnused = ({ marksUnused: areUnused }: About): readonly Assumption[] =>
  areUnused
    ? [
        {
          code: 'consensus-marks',
          text: 'panels compared by their means, as a consensus has no marks, so no drift and no mark that reads off is looked for: the file of an expert as reference compares mark by mark',
          origin: 'built-in',
        },
      ]
    : [];

/** What is held of the gauge of everybody; none is no gauge that nobody verified. */
function gaugeOfAll({ settings, gauge }: GradeFilesRequest): readonly Assumption[] {
  if (gauge === undefined) return [];
  const why = whyUnsound(gauge);
  const all = withGauge(settings, gauge).value?.assumptions ?? [];
  if (why === null) return all.filter(({ code }) => code.startsWith('gauge'));
  const text = `the gauge of everybody, ${gauge.name}, ${why} on shims, and widens nothing: scored as by the usual gauge`;
  return [
    { code: 'gauge', text, origin: 'flag' },
    ...all.filter(({ code }) => code === 'gauge-adjusted'),
  ];
}

export const ownGauge = ({ name, gauge }: Entry): readonly Assumption[] =>
  gaugeOf(gauge, `${name} has a gauge of their own`);

/** The same as it is said to the trainee. */
export const yourGauge = ({ gauge }: Pick<Entry, 'gauge'>): readonly Assumption[] =>
  gaugeOf(gauge, 'you have a gauge of your own');

function gaugeOf(gauge: NamedGauge | undefined, who: string): readonly Assumption[] {
  if (gauge === undefined) return [];
  const permitted = permittedText(gauge.file.value.permitted);
  const why = whyUnsound(gauge);
  const said =
    why === null
      ? says`${who}: ${permitted}`
      : says`${who} that ${why} on shims: whether it is ${permitted} is not shown, and it widens nothing; scored as by the usual gauge`;
  return [
    {
      code: 'own-gauge',
      ...spoken(says`${said}${movedText(gauge)}${putRight(gauge)}`),
      origin: 'flag',
    },
  ];
}

function movedText({ file: { value } }: NamedGauge): Sentence {
  const most = mostDrifted(value);
  return most === undefined
    ? says``
    : says`; it moved by ${um(Math.abs(most.change))} at ${um(most.shim, null)} between its two checks`;
}

/** Whoever is graded by other readings than the display showed must see it. */
const putRight = ({ file: { value } }: NamedGauge): Sentence =>
  value.adjustment === null
    ? says``
    : says`; every reading put right by its gauge’s check: ${adjustmentText(value.adjustment)}`;

function oneGauge(request: GradeFilesRequest, about: About): readonly Assumption[] {
  if (request.gauge !== undefined || !about.oneGauge) return [];
  const cancels = about.entries.some((one) => one.gauge !== undefined)
    ? 'compared as if one gauge had read all, so what it is off by cancels'
    : 'one gauge for everybody, so what it is off by cancels';
  const said = says`${cancels}${about.unnamedGauge ? butOnThickFilm(request.settings) : says``}`;
  return [{ code: 'one-gauge', ...spoken(said), origin: 'built-in' }];
}

const butOnThickFilm = ({ film, models: { training } }: GradeFilesRequest['settings']): Sentence =>
  says`, but for ± ${figure(100 * film.measurement.proportional)} % of what film is over ${um(training.scores.sigmaPtFilm, null)}, as nobody named it`;
