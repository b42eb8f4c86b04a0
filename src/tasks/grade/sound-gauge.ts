/** A trainee’s own gauge as far as it widens what counts as satisfactory: one that failed its check widens nothing. */
import type { NamedGauge } from '../settings/gauge-in-use.ts';

export const hasFailed = ({ file }: NamedGauge): boolean => file.value.verdict === 'fail';

export const soundGauge = (gauge: NamedGauge | undefined): NamedGauge | undefined =>
  gauge === undefined || hasFailed(gauge) ? undefined : gauge;
