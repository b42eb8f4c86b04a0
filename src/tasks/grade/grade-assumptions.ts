/** What a grading rests on that nobody stated. */
import { spoken } from '../../base/remark.ts';
import { shown } from '../../base/rounding.ts';
import { says, um } from '../../base/sentence.ts';
import type { SigmaPt } from '../../training/panel-score.ts';
import type { Marking } from '../../training/training-model.ts';
import { permittedText } from '../gauge/gauge-words.ts';
import type { Assumption } from '../settings/assumption.ts';
import { withGauge } from '../settings/gauge-in-use.ts';
import type { Entry } from './grade-hand-in.ts';
import type { GradeFilesRequest } from './grade-request.ts';

export function gradeAssumptions(
  { settings, rubric, gauge }: GradeFilesRequest,
  about: {
    readonly sigmaPt: SigmaPt;
    readonly marking: Marking;
    readonly entries: readonly Entry[];
    /** One gauge is taken to have read the reference and every survey. */
    readonly oneGauge: boolean;
    /** No mark of the expert’s was read by anybody as the same. */
    readonly ownPoints: boolean;
  },
): readonly Assumption[] {
  const { sigmaPt, marking, entries, oneGauge, ownPoints } = about;
  return [
    // What the survey assumes of the paint decides no grade.
    ...settings.assumptions.filter(({ code }) => code === 'settings-file'),
    ...(rubric === undefined
      ? [
          {
            code: 'rubric',
            text: `the usual weights and a pass mark of ${shown(100 * marking.passMark, 0)} %`,
            origin: 'built-in' as const,
          },
        ]
      : []),
    ...(sigmaPt.from === 'class' || rubric?.value.sigmaPt !== undefined
      ? []
      : [
          {
            code: 'sigma-pt',
            ...spoken(says`scores measured by σ_pt ${um(sigmaPt.value)}`),
            origin: settings.numbers.get('training.scores.sigma_pt_um')?.origin ?? 'built-in',
          },
        ]),
    ...(rubric?.value.sigmaPt === 'class' && sigmaPt.from !== 'class'
      ? [
          {
            code: 'sigma-pt-class',
            ...spoken(says`too few surveys for a σ_pt of the class: ${um(sigmaPt.value)} instead`),
            origin: 'readings' as const,
          },
        ]
      : []),
    ...(ownPoints
      ? [
          {
            code: 'own-points',
            text: 'each read points of their own, as no marks are shared: --marked if names alike are one place',
            origin: 'readings' as const,
          },
        ]
      : []),
    ...gaugeAssumptions(settings, gauge),
    ...entries.flatMap((entry) =>
      entry.gauge === undefined
        ? []
        : [
            {
              code: 'own-gauge',
              ...spoken(
                says`${entry.name} has a gauge of their own: ${permittedText(entry.gauge.file.value.permitted)}`,
              ),
              origin: 'flag' as const,
            },
          ],
    ),
    ...(gauge === undefined && oneGauge
      ? [
          {
            code: 'one-gauge',
            text: 'one gauge for everybody, so what it is off by cancels',
            origin: 'built-in' as const,
          },
        ]
      : []),
  ];
}

/** What is held of the gauge of everybody; none is no gauge that nobody verified. */
const gaugeAssumptions = (
  settings: GradeFilesRequest['settings'],
  gauge: GradeFilesRequest['gauge'],
): readonly Assumption[] =>
  gauge === undefined
    ? []
    : (withGauge(settings, gauge).value?.assumptions ?? []).filter(({ code }) =>
        code.startsWith('gauge'),
      );
