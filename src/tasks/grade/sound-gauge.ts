/** A gauge as far as it widens what counts as satisfactory: one that failed its check, or was never checked, widens nothing. */
import type { NamedGauge } from '../settings/gauge-in-use.ts';

export function whyUnsound({ file }: NamedGauge): string | null {
  const { verdict, checks } = file.value;
  if (verdict === 'fail') return 'failed its check';
  return verdict === null && checks.length === 0 ? 'was never checked' : null;
}

export const soundGauge = (gauge: NamedGauge | undefined): NamedGauge | undefined =>
  gauge === undefined || whyUnsound(gauge) !== null ? undefined : gauge;
