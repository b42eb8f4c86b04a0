/** The parts of a header from one column of panels to the next. */
import type { GaugeRole } from './gauge-vocabulary.ts';
import type { HeaderCell } from './header.ts';

export type Span = { readonly from: number; readonly to: number };

export const spansOf = (panels: readonly number[], width: number): readonly Span[] =>
  panels.map((from, k) => ({ from, to: panels[k + 1] ?? width }));

/** What the columns of each part are called, that of its panels apart. */
export const namesInSpans = (
  header: readonly HeaderCell<GaugeRole>[],
  panels: readonly number[],
): readonly string[] =>
  spansOf(panels, header.length).map(({ from, to }) =>
    header
      .slice(from + 1, to)
      .map(({ text }) => text)
      .join('\n')
      .trimEnd(),
  );
