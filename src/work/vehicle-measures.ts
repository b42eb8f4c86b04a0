/** How large the vehicle is and how much of it is worked, and by how much that stretches each stage. */
import type { Metres, SquareMetres } from '../base/units.ts';
import type { JobScope } from './job-scope.ts';
import type { JobStage, WorkModel } from './work-model.ts';

export type Measures = {
  readonly vehicleArea: SquareMetres;
  readonly workedArea: SquareMetres;
  readonly workedTrim: Metres;
};

type Model = Pick<WorkModel, 'usual' | 'size' | 'soiling'>;

/** By how much the time of a stage is longer than that of a usual saloon, of usual dirt. */
export function stretch(
  { scalesWith, soils }: Pick<JobStage, 'scalesWith' | 'soils'>,
  measures: Measures,
  scope: Pick<JobScope, 'soiling'>,
  model: Model,
): number {
  return sizeFactor(scalesWith, measures, model) * (soils ? dirt(scope, model) : 1);
}

function sizeFactor(
  scalesWith: JobStage['scalesWith'],
  { vehicleArea, workedArea, workedTrim }: Measures,
  { usual, size }: Model,
): number {
  switch (scalesWith) {
    case 'vehicle-area':
      return vehicleArea / usual.area;
    case 'worked-area':
      return workedArea / usual.area;
    case 'worked-trim':
      return workedTrim / usual.trim;
    case 'wheels':
      return usual.wheels;
    case 'size':
      return classFactor(vehicleArea, size);
    default:
      return 1;
  }
}

function classFactor(area: SquareMetres, size: WorkModel['size']): number {
  if (area > size.vanOver) return size.van;
  if (area > size.largeOver) return size.large;
  return area < size.smallUnder ? size.small : 1;
}

const dirt = ({ soiling }: Pick<JobScope, 'soiling'>, { soiling: factors }: Model): number =>
  soiling === 'usual' ? 1 : factors[soiling];
