/** What marks and panels that both read show together: where and when a trainee reads off, and whether values follow the car. */
import { valueAt } from '../base/at.ts';
import { groupBy } from '../base/group-by.ts';
import { ENOUGH_FOR_ALGORITHM_A, robustSummary } from '../base/stats/robust-summary.ts';
import { mean, sampleVariance } from '../base/stats/summary.ts';
import { sum } from '../base/sum.ts';
import type { Panel } from '../film/template/template.ts';
import { type GaugeDrift, gaugeDrift } from './gauge-drift.ts';
import { readPanels } from './graded-survey.ts';
import { type MarkCompared, marksCompared } from './marks-compared.ts';
import { type MarksOff, marksOff } from './marks-off.ts';
import { compared, type Scoring } from './panel-score.ts';
import { areFollowed, type NotFollowed, notFollowed, type PlaceGroup } from './places-followed.ts';
import type { TrainingModel } from './training-model.ts';

/** Null where they show nothing. */
export type MarksPattern = {
  readonly drift: GaugeDrift | null;
  readonly marksOff: MarksOff | null;
  readonly notFollowed: NotFollowedAt | null;
};

export type NotFollowedAt = NotFollowed & {
  readonly at: 'marks' | 'panels';
  /** Where they do up to a panel of the file, that panel and all after it; none where it is the whole survey. */
  readonly from: readonly Panel[];
};

type Request = Scoring & { readonly model: TrainingModel };

/** `slipped` panels, and points by `pointKey` that are keyed wrongly, are left out. */
export function patternOf(
  request: Request,
  slipped: ReadonlySet<string>,
  keyed: ReadonlySet<string>,
): MarksPattern {
  const { trainee, reference, sigmaPt, model } = request;
  const marks = marksCompared(trainee, reference, keyed).filter(
    ({ panel }) => !slipped.has(panel.id),
  );
  const { falseAlarm } = model.slips;
  const { driftMarks, offPanels, offMarks, levelsChance, levelSd } = model.patterns;
  const { value } = sigmaPt;
  const drift = gaugeDrift(marks, {
    ...{ falseAlarm, sigmaPt: value, leastMarks: driftMarks },
    ...{ levelsChance, levelSd },
  });
  const off = marksOff(marks, {
    falseAlarm,
    leastPanels: offPanels,
    leastMarks: offMarks,
    agrees: value,
    off: model.scores.questionable * value,
  });
  return {
    drift,
    marksOff: off,
    notFollowed: notFollowedBy(marks, drift === null ? panelGroup(request, slipped) : [], request, {
      inPart: off === null,
    }),
  };
}

/** At marks; where these show nothing by the panels, whose few pairs have longer tails than the normal law. */
function notFollowedBy(
  marks: readonly MarkCompared[],
  panels: readonly PlaceGroup[],
  request: Request,
  { inPart }: { readonly inPart: boolean },
): NotFollowedAt | null {
  const { slips, patterns } = request.model;
  const { followedChance, panelsAlarm } = patterns;
  const groups = markGroups(marks, request);
  const atMarks = isEnough(groups, patterns)
    ? notFollowed(groups, { falseAlarm: slips.falseAlarm, followedChance })
    : null;
  if (atMarks !== null) return { ...atMarks, at: 'marks', from: [] };
  // Marks that read off follow less in some part as well.
  const toTheEnd = inPart ? notFollowedToTheEnd(groups, request) : null;
  if (toTheEnd !== null) return toTheEnd;
  const byPanels = notFollowed(panels, { falseAlarm: panelsAlarm, followedChance });
  return byPanels === null ? null : { ...byPanels, at: 'panels', from: [] };
}

type MarkGroup = PlaceGroup & { readonly panel: Panel };

const isEnough = (
  groups: readonly PlaceGroup[],
  { driftMarks, offPanels }: TrainingModel['patterns'],
): boolean =>
  groups.length >= offPanels && sum(groups.map(({ places }) => places.length)) >= driftMarks;

/**
 * Who reads the car up to a panel and makes up the rest: of all panels to begin with, the one from which on the values
 * follow least, the false alarm shared by as many. Up to it they must be followed as is usual: who reads unsteadily does
 * so all over the car.
 */
function notFollowedToTheEnd(
  groups: readonly MarkGroup[],
  { model: { slips, patterns } }: Request,
): NotFollowedAt | null {
  const ends = groups
    .map((_, k) => ({ before: groups.slice(0, k), after: groups.slice(k) }))
    .filter(({ before, after }) => before.length > 0 && isEnough(after, patterns));
  const limits = { ...patterns, falseAlarm: slips.falseAlarm / ends.length };
  const found = ends
    .filter(({ before }) => areFollowed(before, patterns.followedUsual))
    .flatMap(({ after }): readonly NotFollowedAt[] => {
      const one = notFollowed(after, limits);
      return one === null ? [] : [{ ...one, at: 'marks', from: after.map(({ panel }) => panel) }];
    });
  return found.toSorted((one, other) => one.chance - other.chance)[0] ?? null;
}

/** A group for each panel: how film goes up and down over it. */
const markGroups = (
  marks: readonly MarkCompared[],
  { trainee, reference, model }: Request,
): readonly MarkGroup[] =>
  [...groupBy(marks, ({ panel }) => panel.id)].flatMap(([id, own]): readonly MarkGroup[] => {
    const { panel, points } = valueAt(reference.panels, id);
    if (own.length < 2) return [];
    const places = own.flatMap(({ point, difference }) =>
      points
        .filter((theirs) => theirs.point === point)
        .map(({ thickness }) => ({ own: thickness + difference, theirs: thickness })),
    );
    return [
      {
        panel,
        places,
        ofOwn: (model.copies.setDownBeside * trainee.repeatability) ** 2,
        ofReference: mean(
          points.map(({ repeats }) => reference.repeatability ** 2 / repeats.length),
        ),
        spread: Math.min(
          sampleVariance(places.map(({ theirs }) => theirs)),
          reference.film.variance,
        ),
      },
    ];
  });

/** One group of the panels: who makes up one film for all of the car does not follow them. */
function panelGroup(request: Request, slipped: ReadonlySet<string>): readonly PlaceGroup[] {
  const { trainee, reference, sigmaPt, model } = request;
  const both = readPanels(trainee).flatMap((read) => {
    const panel = reference.panels.get(read.panel.id);
    if (panel === undefined || slipped.has(read.panel.id)) return [];
    return [{ panel, ...compared(read, panel, request, model.scores.sharedMarks) }];
  });
  // How far panels of this car lie apart is not known from fewer.
  if (both.length < ENOUGH_FOR_ALGORITHM_A) return [];
  return [
    {
      places: both.map(({ panel, difference }) => ({
        own: panel.mean + difference,
        theirs: panel.mean,
      })),
      ofOwn: sigmaPt.value ** 2 + mean(both.map(({ ofSampling }) => ofSampling)),
      ofReference: mean(both.map(({ ofReference }) => ofReference)),
      spread: robustSummary(both.map(({ panel }) => panel.mean)).sd ** 2,
    },
  ];
}
