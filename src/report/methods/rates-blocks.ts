/** A shop's own rates on a page: what they rest on, how well they foretell, and each observation. */

import { counted } from '../../base/counted.ts';
import { thicknessText, unitName } from '../../base/sentence.ts';
import type { LengthUnit } from '../../base/units.ts';
import {
  type ForetellingRecord,
  LEAST_READINGS,
  LEAST_VEHICLES,
} from '../../correction/rates/rate-foretelling.ts';
import type { RatesReport, ReportedReading } from '../../tasks/methods/rates-report.ts';
import { column, figures } from '../columns.ts';
import { joined } from '../facts.ts';
import { factorText } from '../log-factor.ts';
import { type Block, cell, paragraph, type Said } from '../model.ts';

export const ratesBlocks = (rates: RatesReport | null, unit: LengthUnit): readonly Block[] =>
  rates === null
    ? []
    : [
        paragraph('Own rates', restsOn(rates)),
        paragraph('Foretelling', foretellingText(rates.foretelling, unit)),
        ...unlikeOthers(rates, unit),
      ];

function restsOn({ name, readings, vehicles, usualPaint, byEye, unknown }: RatesReport): Said {
  const others = [
    ...(byEye === 0 ? [] : [`${byEye} by eye alone`]),
    ...(unknown === 0 ? [] : [`${unknown} with what is not known here`]),
  ];
  return joined(
    [
      `${counted(readings.length, 'observation')} of ${counted(vehicles, 'vehicle')} in ${name}.`,
      `Paint as it comes here gives way ${factorText(usualPaint)} as fast as usual paint.`,
      ...(others.length === 0 ? [] : [`Not used: ${others.join(', ')}.`]),
    ],
    ' ',
  );
}

/** So few vehicles prove nothing. */
const FEW_VEHICLES = 6;

function foretellingText(record: ForetellingRecord | null, unit: LengthUnit): Said {
  if (record === null) {
    return `too few to say how well they foretell: that takes ${LEAST_READINGS} observations of ${LEAST_VEHICLES} vehicles.`;
  }
  const { readings, vehicles, error, builtInError, noise, within, nearer } = record;
  const um = (value: number): string => thicknessText(value, unit, unit === 'um' ? 2 : 3);
  const told = [
    `each vehicle by the others alone is ${um(error)} ${unitName(unit)} a set off, by the built-in rates ${um(builtInError)}; of either, ${um(noise)} is the gauge’s own noise.`,
    `${within} of ${readings} lie in the range that is to hold nine of ten, and ${nearer} of ${vehicles} vehicles nearer than by the built-in rates.`,
    ...(error < builtInError ? [] : ['So far they foretell no better than the built-in ones.']),
    ...(vehicles < FEW_VEHICLES ? ['From so few vehicles that is a hint, no proof.'] : []),
  ];
  return joined(told, ' ');
}

/** Chance that any of the observations lies so far out, either way, by itself. */
const ODD = 0.01;

/** Worth a second look. */
const oddOnes = ({ readings }: RatesReport): readonly ReportedReading[] =>
  readings.filter(({ place }) => Math.min(place, 1 - place) < ODD / 2 / readings.length);

function unlikeOthers(rates: RatesReport, unit: LengthUnit): readonly Block[] {
  const odd = oddOnes(rates).map((one) => {
    const { at, evidence, byOthers } = one;
    const line = at.line === undefined ? at.file : `${at.file}:${at.line}`;
    return `${line} took ${thicknessText(evidence.removed.value, unit, 1)} where the others let expect ${thicknessText(byOthers.median, unit, 1)} ${unitName(unit)}`;
  });
  return odd.length === 0
    ? []
    : [
        paragraph(
          'Unlike the others',
          joined([joined(odd, '; ', '.'), 'Look for a slip there.'], ' '),
        ),
      ];
}

/** The observations in which a combination was worked, beside what the other vehicles foretell. */
export function observationTable(
  rates: RatesReport,
  combination: string,
  unit: LengthUnit,
): readonly Block[] {
  const odd = oddOnes(rates);
  const of = rates.readings.filter(({ evidence }) =>
    evidence.steps.some((step) => step.combination === combination),
  );
  if (of.length === 0) return [];
  const um = (value: number): string => thicknessText(value, unit, unit === 'um' ? 1 : 2);
  return [
    {
      kind: 'table',
      columns: [
        column('date'),
        column('vehicle'),
        column('panel'),
        figures('sets'),
        figures(`took (${unitName(unit)})`),
        figures('foretold'),
        figures('built in'),
      ],
      rows: of.map((one) => {
        const { observation, evidence, byOthers, builtIn } = one;
        const several = observation.steps.length > 1 ? ' in all' : '';
        const { value, standardError } = evidence.removed;
        return [
          cell(observation.date),
          cell(observation.vehicle ?? '–'),
          cell(observation.panel ?? '–'),
          cell(`${evidence.sets}${several}`),
          cell(`${um(value)} ± ${um(standardError)}`, odd.includes(one) ? 'binding' : 'strong'),
          cell(um(byOthers.median)),
          cell(um(builtIn.median)),
        ];
      }),
    },
    paragraph(
      null,
      joined(
        ['Took: all sets, with its standard error.', 'Foretold: by the other vehicles alone.'],
        ' ',
      ),
    ),
  ];
}
