/** Every kind of spoiled file. */
import { dialectKinds } from './dialect-kinds.ts';
import { encodingKinds } from './encoding-kinds.ts';
import type { Kind } from './kind.ts';
import { labelDateSizeKinds } from './label-kinds.ts';
import { layoutKinds } from './layout-kinds.ts';
import { mixedKinds } from './mixed-kinds.ts';
import { notReadingKinds } from './not-reading-kinds.ts';
import { numberKinds } from './number-kinds.ts';
import { preambleKinds } from './preamble-kinds.ts';
import { statisticsKinds } from './statistics-kinds.ts';
import { trapKinds } from './trap-kinds.ts';

export const allKinds: readonly Kind[] = [
  ...encodingKinds,
  ...dialectKinds,
  ...numberKinds,
  ...notReadingKinds,
  ...layoutKinds,
  ...preambleKinds,
  ...statisticsKinds,
  ...trapKinds,
  ...mixedKinds,
  ...labelDateSizeKinds,
];
