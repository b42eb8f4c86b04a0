/**
 * Invented paint film, and what a gauge reads on it.
 *
 * A car has a level of its own (clear and everything under it); each panel departs from it, each
 * point from its panel, and the gauge from the truth:
 *
 *     clear of a panel   = car's clear + 3 · z      under of a panel = car's under + 4 · z
 *     clear at a point   = panel's clear + σ/√2 · z      under at a point = panel's under + σ/√2 · z
 *     reading            = (clear + under + local) · (1 + gain) + offset + 1.5 · z
 *
 * with independent standard normal z. Half of the variance over a panel lies in the clear. The 1.5 µm
 * of a repeated reading is the built-in assumption; gain within ±2 % and offset within ±1 µm are one
 * draw per car, uniform, as common practice states the accuracy of gauges. Panel means are rounded
 * to 0.01 µm before points are drawn, so that the recorded truth is the truth. All lengths in µm.
 *
 * Left out: drift along a panel and thinner film at its edges; every point lies on the face.
 */
import { builtInTemplates } from '../../src/formats/data/templates.ts';
import { normal } from './seeded-random.ts';

export type LayerName = 'clear' | 'under';

/** More (or less) film at one point of a panel, such as filler or a spot polished through. */
export type LocalFilm = {
  readonly point: string;
  readonly layer: LayerName;
  readonly by: number;
};

export type PanelTruth = {
  /** The template's id. */
  readonly panel: string;
  readonly condition: 'original' | 'thin' | 'refinished' | 'filler';
  /** Means over the panel, apart from local film. */
  readonly clear: number;
  readonly under: number;
  /** Standard deviation of the total over the panel. */
  readonly sd: number;
  readonly local: readonly LocalFilm[];
};

export type CarLevel = { readonly clear: number; readonly under: number; readonly sd: number };
export type Gauge = { readonly gain: number; readonly offset: number };
export type InventedReading = {
  readonly panel: string;
  readonly point: string;
  readonly repeat: number;
  readonly reading: number;
  /** What is truly there. */
  readonly film: number;
};

export type InventedCar = {
  readonly seed: number;
  readonly gauge: Gauge;
  readonly panels: readonly PanelTruth[];
};

/** What one folder of samples holds, and what was true of its car. */
export type Sample = {
  readonly folder: string;
  readonly files: Readonly<Record<string, string>>;
  readonly car: InventedCar;
};

const PANEL_SD = { clear: 3, under: 4 } as const;
const REPEATABILITY = 1.5;

const templateNamed = (id: string) => {
  const template = builtInTemplates.find((one) => one.id === id);
  if (template === undefined) throw new Error(`no template ${id}`);
  return template;
};

/** Sills, mirrors and roof rails are seldom read. */
const seldomRead = /^(sill|mirror|rail)-/;
export const panelsToRead = (templateId: string): readonly string[] =>
  templateNamed(templateId)
    .panels.map(({ id }) => id)
    .filter((id) => !seldomRead.test(id));

const pointsOf = (templateId: string, panelId: string): readonly string[] =>
  templateNamed(templateId)
    .panels.filter(({ id }) => id === panelId)
    .flatMap(({ points }) => points.map(({ point }) => point));

const hundredths = (value: number): number => Math.round(value * 100) / 100;

export function drawGauge(random: () => number): Gauge {
  const gain = Math.round((2 * random() - 1) * 0.02 * 10_000) / 10_000;
  return { gain, offset: hundredths(2 * random() - 1) };
}

export function drawFactoryPanel(random: () => number, panel: string, level: CarLevel): PanelTruth {
  const clear = hundredths(level.clear + PANEL_SD.clear * normal(random));
  const under = hundredths(level.under + PANEL_SD.under * normal(random));
  return { panel, condition: 'original', clear, under, sd: level.sd, local: [] };
}

export function readPanel(
  random: () => number,
  truth: PanelTruth,
  gauge: Gauge,
  { template, repeats }: { readonly template: string; readonly repeats: number },
): readonly InventedReading[] {
  const layerSd = truth.sd * Math.SQRT1_2;
  return pointsOf(template, truth.panel).flatMap((point) => {
    const clear = truth.clear + layerSd * normal(random);
    const under = truth.under + layerSd * normal(random);
    const local = truth.local.filter((one) => one.point === point);
    const total = clear + under + local.reduce((sum, { by }) => sum + by, 0);
    return Array.from({ length: repeats }, (_, k) => ({
      panel: truth.panel,
      point,
      repeat: k + 1,
      reading: total * (1 + gauge.gain) + gauge.offset + REPEATABILITY * normal(random),
      film: total,
    }));
  });
}

/** The same places read once more by the same gauge, when so much has come off the panel. */
export const readAgain = (
  random: () => number,
  readings: readonly InventedReading[],
  gauge: Gauge,
  removedFrom: (panel: string) => number,
): readonly InventedReading[] =>
  readings.map((one) => {
    const film = one.film - removedFrom(one.panel);
    const reading = film * (1 + gauge.gain) + gauge.offset + REPEATABILITY * normal(random);
    return { ...one, film, reading };
  });
