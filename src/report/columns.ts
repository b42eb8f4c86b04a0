/** Columns of a table by what stands in them: words, figures, or film in the unit that is shown. */
import { unitName } from '../base/sentence.ts';
import type { LengthUnit } from '../base/units.ts';
import type { Column } from './model.ts';

export const column = (title: string): Column => ({ title, align: 'left' });

export const figures = (title: string): Column => ({ title, align: 'right' });

/** A title that ends in a unit: `pad mm`. */
export const measures = (said: string, unit: string): Column => ({
  ...figures(`${said} ${unit}`),
  said,
  unit,
});

export const filmFigures = (title: string, unit: LengthUnit): Column => ({
  ...figures(title),
  unit: unitName(unit),
});
