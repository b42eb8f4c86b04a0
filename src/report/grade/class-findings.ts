/** What all surveys of a class show together: what was found, which panels were hard, how far they agree. */
import { counted } from '../../base/counted.ts';
import { tell, um } from '../../base/sentence.ts';
import type { LengthUnit } from '../../base/units.ts';
import type { GradedClass, GradedTrainee } from '../../tasks/grade/grade-request.ts';
import type { FoundByClass } from '../../training/class-view.ts';
import { together } from '../../training/reasons.ts';
import { joined, ofEach } from '../facts.ts';
import { type Block, paragraph } from '../model.ts';
import { heldAgainst, intervalText, isOfOne, percentText, signed } from './grade-words.ts';

/** Two who handed in one file are one witness. */
const onceText = (copied: GradedClass['copied']): string =>
  copied.some((pair) => pair.identical !== null && pair.trainees.length === 2 && !isOfOne(pair))
    ? ', copies of one file once'
    : '';

/** How many of the low spots and repairs the class found, all surveys together. */
export function foundBlocks({
  view: { lowSpots, repairs },
  copied,
}: Pick<GradedClass, 'view' | 'copied'>): readonly Block[] {
  const part = (what: string, { found, of, interval }: FoundByClass): readonly string[] =>
    interval === null ? [] : [`${found} of ${of} ${what} (${intervalText(interval)})`];
  const parts = [...part('low spots', lowSpots), ...part('repaired panels', repairs)];
  return parts.length === 0
    ? []
    : [
        paragraph(
          'Found',
          ofEach(parts, `, all surveys together${onceText(copied)}; 95 % intervals, exact.`),
        ),
      ];
}

const MOST_HARD = 3;

/** Trainees at least who do not read a hard panel satisfactorily: what is hard for one is no matter of the panel. */
const LEAST_OFF = 2;

type Hard = Pick<GradedClass, 'view' | 'settings'>;

/**
 * Those that fewer read satisfactorily than is usual of those who read them: who is off everywhere makes no panel hard. Where
 * there is none, the one that scatters most.
 */
export function hardPanels({ view, settings }: Hard, unit: LengthUnit): readonly Block[] {
  const { leastSurveys } = settings.models.training.class;
  const panels = view.panels.filter(({ count }) => count >= leastSurveys);
  const wrong = panels
    .flatMap(({ reference, satisfactory, usual, count }) =>
      satisfactory === null || usual === null || satisfactory >= usual
        ? []
        : [{ name: reference.panel.name, satisfactory, count }],
    )
    .filter(({ satisfactory, count }) => Math.round((1 - satisfactory) * count) >= LEAST_OFF)
    .sort((a, b) => a.satisfactory - b.satisfactory);
  if (wrong.length > 0) {
    const names = wrong.map(
      ({ name, satisfactory, count }) =>
        `${name} (${Math.round(satisfactory * count)} of ${count})`,
    );
    const shownNames = names.slice(0, names.length > MOST_HARD + 1 ? MOST_HARD : names.length);
    const more = names.length - shownNames.length;
    const rest = more === 0 ? '' : `, and fewer than usual on ${more} more`;
    return [paragraph('Hard panels', `fewest satisfactory on ${shownNames.join(', ')}${rest}`)];
  }
  const widest = panels
    .flatMap(({ reference, robust }) =>
      robust === null ? [] : [{ name: reference.panel.name, sd: robust.sd }],
    )
    .sort((a, b) => b.sd - a.sd);
  const [first] = widest;
  return first === undefined
    ? []
    : [
        paragraph(
          'Hard panels',
          `none; the class differs most on the ${first.name} (SD ${tell([um(first.sd)], unit)})`,
        ),
      ];
}

/** All surveys together, and who has the fewest right. */
export function conditionBlocks({
  view,
  trainees,
  copied,
  reference,
}: GradedClass): readonly Block[] {
  if (view.conditions === null) return [];
  const { of, alike, kappa } = view.conditions;
  const beyond = kappa === null ? '' : `, kappa ${signed(kappa, 2)}`;
  return [
    paragraph(
      'Conditions',
      joined(
        [
          `${alike} of ${counted(of, 'panel')} as ${heldAgainst({ reference })} says, all surveys together${onceText(copied)} (${percentText(alike / of)}${beyond})`,
          ...fewestAlike(trainees),
        ],
        '; ',
        '.',
      ),
    ),
  ];
}

/** `fewest: dov, 2 of 3`, with everybody who shares that place. */
function fewestAlike(trainees: readonly GradedTrainee[]): readonly string[] {
  const own = trainees
    .filter(({ attempt, attempts }) => attempt === attempts)
    .flatMap(({ name, grade }) =>
      grade === null || grade.conditions === null ? [] : [{ name, ...grade.conditions }],
    );
  const share = ({ alike, of }: (typeof own)[number]): number => alike / of;
  const least = Math.min(...own.map(share));
  const fewest = own.filter((one) => share(one) === least);
  const [first] = fewest;
  if (first === undefined || least === 1 || fewest.length === own.length) return [];
  const ofThem = fewest.every(({ of }) => of === first.of)
    ? `${first.alike} of ${first.of}`
    : percentText(least);
  return [
    `fewest: ${together(fewest.map(({ name }) => name))}, ${ofThem}${fewest.length > 1 ? ' each' : ''}`,
  ];
}
