/** A gauge's check as a page: whether it is in order, what that means, and what to do about it. */

import { counted } from '../../base/counted.ts';
import { shown } from '../../base/rounding.ts';
import {
  nextFact,
  nextSentence,
  says,
  tell,
  thicknessText,
  um,
  unitName,
} from '../../base/sentence.ts';
import { uncertaintyBudget } from '../../base/uncertainty.ts';
import type { LengthUnit } from '../../base/units.ts';
import type { Drift, GaugeVerdict } from '../../film/gauge/gauge-check.ts';
import type { CheckedGauge, GaugeAdjusted } from '../../tasks/gauge/check-gauge.ts';
import { adjustmentText, permittedText } from '../../tasks/gauge/gauge-words.ts';
import { assumedBlocks } from '../assumption-blocks.ts';
import { column, figures, filmFigures } from '../columns.ts';
import { joined, toldFacts } from '../facts.ts';
import { type Block, type Column, cell, gap, paragraph, type Said, title } from '../model.ts';
import { type CheckedShim, checkedShims } from './gauge-record.ts';

export const gaugeBlocks = (checked: CheckedGauge, unit: LengthUnit): readonly Block[] => [
  title(heading(checked)),
  paragraph(null, meaningOf(checked, unit)),
  gap,
  shimTable(checked, unit),
  gap,
  paragraph(
    'MPE',
    joined(
      [
        `the largest error permitted is ${tell(permittedText(checked.permitted), unit)}.`,
        'Pass: what it is off by and its uncertainty U (95\u00a0%) together keep within that.',
        'Fail: even with U taken off, it is off by more.',
        'Between the two nobody can tell: undecided.',
      ],
      ' ',
    ),
  ),
  paragraph('Readings', scatterText(checked, unit)),
  ...driftBlocks(checked, unit),
  ...adjustmentBlocks(checked.adjustment, checked.verdict, unit),
  paragraph('What to do', joined([...whatToDo(checked, unit), ...whenToCheck(checked)], ' ')),
  ...assumedBlocks(checked.assumptions, unit),
];

const VERDICTS: Readonly<Record<GaugeVerdict, string>> = {
  pass: 'pass',
  fail: 'FAIL',
  undecided: 'undecided',
};

const heading = ({ gauge, verdict, adjustment }: CheckedGauge): string => {
  const name = [gauge?.instrument, gauge?.serial].filter((part) => part !== undefined).join(', ');
  const needless = adjustment !== null && verdict === 'pass' ? ', no adjustment needed' : '';
  return `Gauge check${name === '' ? '' : ` of ${name}`}: ${VERDICTS[verdict]}${needless}`;
};

const MEANINGS: Readonly<Record<GaugeVerdict, string>> = {
  pass: 'On every shim the gauge keeps within what its maker permits.',
  fail: 'On at least one shim the gauge is off by more than its maker permits.',
  undecided: 'On at least one shim the check cannot tell whether the gauge is in order.',
};

/** Every shim within what is permitted, and none as thick as a film. */
const isUntested = ({ verdict, reached, runs }: CheckedGauge): boolean =>
  verdict === 'undecided' && !reached && runs.every(({ result }) => result.verdict === 'pass');

const meaningOf = (checked: CheckedGauge, unit: LengthUnit): string =>
  isUntested(checked)
    ? `No shim of ${tell([um(checked.filmShim, 0)], unit)} or more was read: what the gauge is off by on a film was not tested.`
    : MEANINGS[checked.verdict];

function shimTable(checked: CheckedGauge, unit: LengthUnit): Block {
  const shims = checkedShims(checked);
  const both = shims.some(({ check }) => check !== null);
  const adjusted = checked.adjustment !== null;
  const film = (title: string): Column => filmFigures(title, unit);
  return {
    kind: 'table',
    columns: [
      { ...film(`shim (${unitName(unit)})`), said: 'shim' },
      ...(both ? [column('check')] : []),
      figures('readings'),
      film('mean'),
      film('off by'),
      film('± U'),
      film('MPE'),
      figures('conforms'),
      column('verdict'),
      ...(adjusted ? [film('remains')] : []),
    ],
    rows: shims.map((one) => shimRow(one, { unit, both, adjusted })),
  };
}

function shimRow(
  { check, shim, left: adjusted }: CheckedShim,
  columns: { readonly unit: LengthUnit; readonly both: boolean; readonly adjusted: boolean },
) {
  const { unit } = columns;
  const thick = (value: number) => cell(thicknessText(value, unit, 2));
  return [
    cell(shim.shim === 0 ? 'plate' : thicknessText(shim.shim, unit, 1)),
    ...(columns.both ? [cell(check ?? '')] : []),
    cell(String(shim.count)),
    thick(shim.mean),
    thick(shim.error.value),
    thick(shim.expanded),
    thick(shim.permitted),
    cell(chanceText(shim.conformance)),
    cell(shim.verdict, shim.verdict === 'fail' ? 'binding' : 'plain'),
    ...(columns.adjusted ? [adjusted === undefined ? cell('') : thick(adjusted.residual)] : []),
  ];
}

/** Chance that the error is within what is permitted: never told as certain. */
function chanceText(probability: number): string {
  if (probability > 0.999) return '> 99.9 %';
  return probability < 0.001 ? '< 0.1 %' : `${shown(100 * probability, 1)} %`;
}

function scatterText({ repeatability, step }: CheckedGauge, unit: LengthUnit): Said {
  const scatter =
    repeatability === undefined
      ? 'No shim was read twice, so how far readings repeat is not known.'
      : `Read again, a shim comes out ${tell([um(repeatability.sd, 2)], unit)} differently (SD, ${repeatability.dof} degrees of freedom).`;
  return step === 0
    ? scatter
    : joined([scatter, `The display moves in steps of ${tell([um(step, 2)], unit)}.`], ' ');
}

function driftBlocks({ runs, drift }: CheckedGauge, unit: LengthUnit): readonly Block[] {
  if (runs.length < 2) return [];
  if (drift.length === 0) {
    return [
      paragraph('Drift', 'No shim was read before and after: whether it moved is not known.'),
    ];
  }
  const moved = drift.filter(({ proved }) => proved);
  const text =
    moved.length === 0
      ? [`${driftList(drift, unit)}: no more than readings scatter.`, 'It held still.']
      : [
          `${driftList(moved, unit)}: more than readings scatter.`,
          'It moved between the checks, so what was read before does not compare with what was read after.',
          'Read both anew.',
        ];
  return [paragraph('Drift', joined(text, ' '))];
}

const driftList = (drift: readonly Drift[], unit: LengthUnit): string =>
  drift
    .map(({ shim, change, expanded }) => {
      const sign = change > 0 ? '+' : '';
      const at = shim === 0 ? 'plate' : thicknessText(shim, unit, 1);
      return `${at}: ${sign}${thicknessText(change, unit, 2)} ± ${thicknessText(expanded, unit, 2)}`;
    })
    .join(', ')
    .concat(` ${unitName(unit)} (95\u00a0%)`);

function adjustmentBlocks(
  adjustment: GaugeAdjusted | null,
  found: GaugeVerdict,
  unit: LengthUnit,
): readonly Block[] {
  if (adjustment === null) return [];
  const { line, shims, left: after } = adjustment;
  const head =
    found === 'pass'
      ? says`none is needed, the gauge passes without one.${nextSentence}Worked out, as asked`
      : says`ADJUSTED, as asked`;
  const text = toldFacts(
    says`${head}: ${adjustmentText(line)}.${nextSentence}Least squares on ${counted(shims, 'shim')}${nextFact}the last column is what remains of each error.${nextSentence}With it the check says: ${after.verdict}.`,
    unit,
  );
  return [
    paragraph('Adjustment', joined([text, ...adjustmentCaution(shims, after.verdict, found)], ' ')),
  ];
}

const adjustmentCaution = (
  shims: number,
  after: GaugeVerdict,
  found: GaugeVerdict,
): readonly string[] => [
  ...(after === 'undecided' && shims <= 2
    ? ['So few shims always fit their own line: read another one to prove it.']
    : []),
  ...(found === 'pass' ? ['It would add an error of its own.'] : []),
  'A gauge file written with it changes every reading of a survey that is given that file.',
];

function whatToDo(checked: CheckedGauge, unit: LengthUnit): readonly string[] {
  const { verdict, runs, drift, adjustment, keyed } = checked;
  if (keyed !== null) return [tell(keyed, unit)];
  if (isUntested(checked))
    return ['Read shims on either side of the film as well, one under it and one above.'];
  if (verdict === 'pass') {
    return drift.some(({ proved }) => proved)
      ? ['It may be used, and is not to be trusted for small differences until it holds still.']
      : [
          adjustment === null
            ? 'Use the gauge.'
            : 'Use the gauge as it is: write its gauge file without --adjust.',
        ];
  }
  if (verdict === 'fail') {
    return adjustment === null
      ? [
          'Set it to zero on the bare plate and to its shim, as its manual says, and check again; if it still fails, have it serviced.',
          'A survey with its gauge file trusts its readings that much less.',
        ]
      : ['Have it serviced; until then the adjustment stands in for it.'];
  }
  const [worst] = runs
    .flatMap(({ result }) => result.shims)
    .filter((shim) => shim.verdict === 'undecided')
    .sort((a, b) => a.conformance - b.conformance);
  const [largest] = worst === undefined ? [] : uncertaintyBudget(worst.error);
  return [remedyFor(largest?.source ?? '')];
}

/** What would make an undecided check decide, by the largest source of its uncertainty. */
function remedyFor(source: string): string {
  if (source === 'repeatability') return 'Read each shim more often, five to ten times.';
  return source === 'resolution'
    ? 'The display is too coarse to tell: check a finer gauge, or let it show another digit.'
    : 'The shims are not known well enough: use some with a better certificate.';
}

const whenToCheck = ({ verdict, runs }: CheckedGauge): readonly string[] =>
  verdict !== 'pass' || runs.length > 1
    ? []
    : ['Check it again after the car is read: only two checks show that it held still.'];
