/** The panels of a trainee beside those of the reference. */
import { thicknessText, unitName } from '../../base/sentence.ts';
import type { LengthUnit } from '../../base/units.ts';
import type { GradedClass } from '../../tasks/grade/grade-request.ts';
import type { Grade } from '../../training/grade-trainee.ts';
import { isByMarksAlone, type PanelScore } from '../../training/panel-score.ts';
import { together } from '../../training/reasons.ts';
import type { ReferencePanel } from '../../training/reference.ts';
import { type ScoreLimits, scoreText } from '../../training/scores.ts';
import { column, figures, filmFigures } from '../columns.ts';
import { type Block, type Cell, type Column, cell, paragraph } from '../model.ts';
import type { GradePage } from './grade-blocks.ts';
import { type CountedAs, countedAs, signed, signedText } from './grade-words.ts';

/** Above means that are not of the points that are scored stands why. */
export function panelBlocks(grade: Grade, graded: GradedClass, page: GradePage): readonly Block[] {
  const names = grade.scores.filter(isByMarksAlone).map(({ panel }) => panel.name);
  const table = panelTable(grade, graded, page);
  return names.length === 0
    ? [table]
    : [
        table,
        paragraph(
          'Differs',
          `for ${together(names)} by the marks that both read; the means are over all points.`,
        ),
      ];
}

function panelTable(grade: Grade, { reference, settings }: GradedClass, page: GradePage): Block {
  const { unit, verbose } = page;
  const limits = settings.models.training.scores;
  const film = (title: string): Column => filmFigures(title, unit);
  return {
    kind: 'table',
    columns: [
      column(`panel (${unitName(unit)})`),
      { ...figures('n'), said: 'points' },
      film('mean'),
      film(reference.kind === 'expert' ? 'reference' : 'class'),
      { ...film('differs'), leads: true },
      figures('z'),
      ...(verbose ? [figures('ζ'), figures('E_n')] : []),
      { ...column('verdict'), leads: true },
    ],
    rows: [...reference.panels.values()].map((panel) => {
      const score = grade.scores.find((one) => one.panel.id === panel.panel.id);
      if (score === undefined) return unreadRow(panel, unit, verbose);
      const voided = grade.voided.find((one) => one.panel.id === panel.panel.id);
      return panelRow(score, voided && countedAs(voided, grade), { unit, verbose, limits });
    }),
  };
}

const unreadRow = (
  { panel, mean }: ReferencePanel,
  unit: LengthUnit,
  verbose: boolean,
): readonly Cell[] => [
  cell(panel.name),
  cell('–'),
  cell('–'),
  cell(thicknessText(mean, unit)),
  ...Array.from({ length: verbose ? 4 : 2 }, () => cell('–')),
  cell('not read', 'binding'),
];

const VOID: Readonly<Record<CountedAs, string>> = {
  unread: 'not counted',
  wrong: 'slip',
  turned: 'numbers turned',
  either: 'name or numbers',
};

/** Numbers from the other end make no panel better than its mean is. */
const shownVoid = (verdict: PanelScore['verdict'], as: CountedAs | undefined): string | null =>
  as === undefined || ((as === 'turned' || as === 'either') && verdict !== 'satisfactory')
    ? null
    : VOID[as];

function panelRow(
  score: PanelScore,
  voided: CountedAs | undefined,
  { unit, verbose, limits }: GradePage & { readonly limits: ScoreLimits },
): readonly Cell[] {
  const { panel, count, mean, reference, difference, kind, z, zeta, en, verdict } = score;
  const plain = (value: number | null): Cell => cell(value === null ? '–' : signed(value));
  return [
    cell(panel.name),
    cell(String(count)),
    cell(thicknessText(mean, unit)),
    cell(thicknessText(reference.mean, unit)),
    cell(signedText(difference, unit)),
    cell(`${scoreText(z, limits)}${kind === 'z' ? '' : '′'}`),
    ...(verbose ? [plain(zeta), plain(en)] : []),
    cell(
      shownVoid(verdict, voided) ?? verdict,
      voided === undefined && verdict === 'satisfactory' ? 'plain' : 'binding',
    ),
  ];
}
