/**
 * The templates that a class is read by where none is named: a reference of few panels fits many, and what the trainees
 * read besides tells these apart. How a panel of the reference itself is called stays the first word.
 */
import type { VehicleTemplate } from '../../film/template/template.ts';
import { bestTemplate, type TemplateFit } from '../../film/template/template-fit.ts';
import type { ReadRequest, VehicleReadings } from '../read/read-request.ts';
import type { HandedFile } from './grade-request.ts';
import { readOfClass } from './read-of-class.ts';

/** The best of them, and those that all files together cannot tell from it; as asked where the reference leaves none open. */
export function classTemplates(
  read: ReadRequest,
  reference: VehicleReadings,
  files: readonly HandedFile[],
): readonly VehicleTemplate[] {
  const alike = read.templateId === undefined ? alikeFor(reference, read.templates) : [];
  if (alike.length < 2) return read.templates;
  const names = [reference, ...files.flatMap((file) => surveysIn(file, read, reference))];
  const best = bestTemplate(names.flatMap(panelsOf), alike);
  return best === undefined ? read.templates : [best.template, ...best.tied];
}

/** Templates that name the panels of the reference as well as the one it was read by, whatever panels they have besides. */
function alikeFor(
  reference: VehicleReadings,
  templates: readonly VehicleTemplate[],
): readonly VehicleTemplate[] {
  const best = bestTemplate(panelsOf(reference), templates);
  if (best === undefined) return [];
  const asWell = (fit: TemplateFit): boolean =>
    fit.matched === best.matched && fit.ownWords() === best.ownWords();
  return [best, ...best.runnersUp.filter(asWell)].map(({ template }) => template);
}

function surveysIn(
  file: HandedFile,
  read: ReadRequest,
  { vehicle }: VehicleReadings,
): readonly VehicleReadings[] {
  if (file.notLoaded !== undefined) return [];
  const { value } = readOfClass({ ...read, files: [file], keepUnknownPanels: true });
  return (value?.vehicles ?? []).filter(
    (one) => vehicle === null || one.vehicle === null || one.vehicle === vehicle,
  );
}

const panelsOf = ({ readings }: VehicleReadings): readonly string[] => [
  ...new Set(readings.map(({ panel }) => panel)),
];
