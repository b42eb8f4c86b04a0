/** `leastcut/rates/1`, the file: an observation on each line, so that what was added is seen at a glance. */
import type { RateObservation, RatesFile } from '../../formats/rates.ts';
import { recorded } from '../recorded.ts';

export function ratesFileText({ observations, note }: RatesFile): string {
  const lines = observations.map((one) => `    ${onOneLine(observationKeys(one))}`);
  return [
    '{',
    '  "schema": "leastcut/rates/1",',
    ...(note === undefined ? [] : [`  "note": ${JSON.stringify(note)},`]),
    ...(lines.length === 0
      ? ['  "observations": []']
      : ['  "observations": [', lines.join(',\n'), '  ]']),
    '}',
    '',
  ].join('\n');
}

/** As the file has them; one step stands without a list. */
function observationKeys(one: RateObservation): Readonly<Record<string, unknown>> {
  const { date, vehicle, panel, steps, removed, cleared, hazeGrade, note } = one;
  const [step, ...others] = steps;
  return {
    date,
    ...(vehicle === undefined ? {} : { vehicle }),
    ...(panel === undefined ? {} : { panel }),
    ...(others.length === 0 ? step : { steps }),
    ...(removed === undefined
      ? {}
      : { removed_um: recorded(removed.mean), standard_error_um: recorded(removed.standardError) }),
    ...(cleared === undefined ? {} : { cleared_pct: recorded(100 * cleared) }),
    ...(hazeGrade === undefined ? {} : { haze_grade: hazeGrade }),
    ...(note === undefined ? {} : { note }),
  };
}

const onOneLine = (keys: Readonly<Record<string, unknown>>): string =>
  `{ ${Object.entries(keys)
    .map(([key, value]) => `${JSON.stringify(key)}: ${JSON.stringify(value)}`)
    .join(', ')} }`;
