/** What was read at the points of each panel, as a table: for whoever cannot or need not see it drawn. */
import { type Block, type Cell, cell, type FacePoint } from '../report/model.ts';

type Faces = Extract<Block, { kind: 'faces' }>;
type Table = Extract<Block, { kind: 'table' }>;

export const facesTable = ({ values, faces }: Faces): Table => ({
  kind: 'table',
  columns: [
    { title: 'panel', align: 'left' },
    { title: values, said: 'points', align: 'left' },
  ],
  rows: faces.map(({ name, points }): readonly Cell[] => [
    cell(name),
    cell(points.map(pointText).join(', ')),
  ]),
});

/** `2: 104.5 low`. */
const pointText = ({ name, value, sign }: FacePoint): string =>
  `${name}: ${value}${sign === 'none' ? '' : ` ${sign}`}`;
