/** One defect of a panel in two rows that grade it differently: the worse counts, and it is said. */
import { type Diagnostic, warning } from '../../base/diagnostics.ts';
import { groupBy } from '../../base/group-by.ts';
import { type Defect, medianDepth } from '../../correction/defects.ts';
import type { DefectRow } from '../../intake/read-defects-file.ts';
import { rowPlace } from './defect-row-place.ts';

type Recorded = { readonly defect: Defect; readonly row: DefectRow };

/** Local marks are several, each with its own grade; so are rows that say where each is: but not word for word alike. */
export const gradedTwice = (ofPanel: readonly Recorded[]): readonly Diagnostic[] => [
  ...unlike(ofPanel),
  ...copied(ofPanel),
];

/** A row that was copied makes a second spot, its film and its hours. */
function copied(ofPanel: readonly Recorded[]): readonly Diagnostic[] {
  const local = ofPanel.filter(({ defect: { kind } }) => kind.scope === 'local');
  const alike = groupBy(local, ({ defect: { kind, grade, depth, extent = '' }, row: { note } }) =>
    JSON.stringify([kind.id, grade, depth, extent, note]),
  );
  return [...alike.values()].flatMap(([first, ...others]) =>
    others.map(({ defect, row }) =>
      warning(
        'defect-graded-twice',
        `${defect.kind.name} of ${JSON.stringify(row.panel)} stand here as in line ${first.row.origin.line}, word for word: each row is a mark of its own, with its own spot`,
        {
          at: rowPlace(row, row.defect),
          hint: 'one mark: remove this row; two: say under extent where each is',
        },
      ),
    ),
  );
}

function unlike(ofPanel: readonly Recorded[]): readonly Diagnostic[] {
  const general = ofPanel.filter(({ defect: { kind } }) => kind.scope === 'general');
  const same = groupBy(general, ({ defect: { kind, extent = '' } }) => `${kind.id} ${extent}`);
  return [...same.values()].flatMap((rows) => {
    const [worst, ...others] = [...rows].sort((one, other) => depthOf(other) - depthOf(one));
    const other = others.find((one) => worst !== undefined && depthOf(one) < depthOf(worst));
    if (worst === undefined || other === undefined) return [];
    const { row } = rows.findLast((one) => one === worst || one === other) ?? worst;
    const message = `${worst.defect.kind.name} of ${JSON.stringify(row.panel)} stand in two rows: ${said(worst)} and ${said(other)}; the worse counts`;
    return [
      warning('defect-graded-twice', message, {
        at: rowPlace(row, row.defect),
        hint: 'keep the row that holds, or say under extent where each is',
      }),
    ];
  });
}

const depthOf = ({ defect }: Recorded): number => medianDepth(defect);

const said = ({ defect: { grade, depth }, row: { origin } }: Recorded): string =>
  `${depth === null ? `grade ${grade}` : `${depth}\u00a0µm deep`} in line ${origin.line}`;
