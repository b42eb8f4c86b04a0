/** Quotes for tests, from readings and the keys of a job and a shop file as a user writes them. */
import { builtInTemplates } from '../../src/formats/data/templates.ts';
import { quoteFiles } from '../../src/tasks/quote/quote-files.ts';
import type { QuoteResult } from '../../src/tasks/quote/quote-vehicle.ts';
import { resolveSettings, type Settings } from '../../src/tasks/settings/settings.ts';
import type { Layers, TypedSettings } from '../../src/tasks/settings/settings-layers.ts';
import { layersOf } from './layers.ts';

type Said = {
  readonly readings: string;
  readonly defects?: string;
  readonly spots?: string;
  readonly job?: object;
  readonly shop?: object;
  readonly project?: object;
  readonly typed?: TypedSettings;
  /** Those asked about; all without. */
  readonly panels?: readonly string[];
  readonly date?: string | undefined;
};

const file = (name: string, text: string) => ({
  name,
  bytes: new TextEncoder().encode(text),
  sha256: '',
});

type InForce = { readonly layers: Layers; readonly settings: Settings };
const known = new Map<string, InForce>();

/** The same settings for the same files, as in one run: what is searched under them is searched once. */
function inForce(said: Omit<Said, 'readings' | 'defects' | 'spots' | 'panels' | 'date'>): InForce {
  const key = JSON.stringify(said);
  const before = known.get(key);
  if (before !== undefined) return before;
  const layers = layersOf(said);
  const found = { layers, settings: resolveSettings(layers) };
  known.set(key, found);
  return found;
}

export function quoteOutcome({ readings, defects, spots, panels = [], date, ...said }: Said) {
  const { layers, settings } = inForce(said);
  return quoteFiles({
    files: [file('readings.csv', readings)],
    templates: builtInTemplates,
    templateId: 'saloon',
    intake: { plausible: settings.film.measurement },
    vehicle: undefined,
    keepUnknownPanels: false,
    templateRules: settings.templateRules,
    size: undefined,
    settings,
    job: layers.job?.file,
    filmRecord: undefined,
    panels,
    date,
    defects: defects === undefined ? undefined : file('defects.csv', defects),
    ...(spots === undefined ? {} : { spots: [file('spots.csv', spots)] }),
  });
}

export function quoteOf(said: Said): QuoteResult {
  const { value, diagnostics } = quoteOutcome(said);
  const [first] = value ?? [];
  if (first === undefined) throw new Error(diagnostics.map(({ message }) => message).join('; '));
  return first.result;
}

/** Five points around a mean on each panel named. */
export const readingsOf = (means: Readonly<Record<string, number>>, spread = 3): string =>
  `panel,point,reading_um\n${Object.entries(means)
    .flatMap(([panel, mean]) =>
      [-1.2, -0.4, 0.1, 0.5, 1].map(
        (step, i) => `${panel},${i + 1},${Math.round(10 * (mean + spread * step)) / 10}`,
      ),
    )
    .join('\n')}\n`;
