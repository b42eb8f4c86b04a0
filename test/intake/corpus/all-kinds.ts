/** Every kind of spoiled file. */
import { borrowedKinds } from './borrowed-kinds.ts';
import { dialectKinds } from './dialect-kinds.ts';
import { drawerKinds } from './drawer-kinds.ts';
import { dressedKinds } from './dressed-kinds.ts';
import { encodingKinds } from './encoding-kinds.ts';
import { explainedKinds } from './explained-kinds.ts';
import { foundKinds } from './found-kinds.ts';
import { keyedKinds } from './keyed-kinds.ts';
import type { Kind } from './kind.ts';
import { labelDateSizeKinds } from './label-kinds.ts';
import { layoutKinds } from './layout-kinds.ts';
import { memoryKinds } from './memory-kinds.ts';
import { mixedKinds } from './mixed-kinds.ts';
import { needlessKinds } from './needless-kinds.ts';
import { notReadingKinds } from './not-reading-kinds.ts';
import { numberKinds } from './number-kinds.ts';
import { pocketKinds } from './pocket-kinds.ts';
import { preambleKinds } from './preamble-kinds.ts';
import { printedKinds } from './printed-kinds.ts';
import { quietKinds } from './quiet-kinds.ts';
import { settledKinds } from './settled-kinds.ts';
import { sheetKinds } from './sheet-kinds.ts';
import { statisticsKinds } from './statistics-kinds.ts';
import { summaryKinds } from './summary-kinds.ts';
import { trapKinds } from './trap-kinds.ts';
import { twiceNamedKinds } from './twice-named-kinds.ts';
import { unitKinds } from './unit-kinds.ts';

export const allKinds: readonly Kind[] = [
  ...encodingKinds,
  ...dialectKinds,
  ...printedKinds,
  ...numberKinds,
  ...dressedKinds,
  ...unitKinds,
  ...notReadingKinds,
  ...explainedKinds,
  ...foundKinds,
  ...needlessKinds,
  ...layoutKinds,
  ...borrowedKinds,
  ...settledKinds,
  ...twiceNamedKinds,
  ...keyedKinds,
  ...preambleKinds,
  ...statisticsKinds,
  ...summaryKinds,
  ...trapKinds,
  ...quietKinds,
  ...mixedKinds,
  ...labelDateSizeKinds,
  ...memoryKinds,
  ...sheetKinds,
  ...pocketKinds,
  ...drawerKinds,
];
