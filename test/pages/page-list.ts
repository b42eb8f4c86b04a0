/** The pages that are looked at: every command that gives one, where it counts for 1, 12 and 60 panels. */
export const panelCounts = [1, 12, 60] as const;

export type PageWords = {
  readonly name: string;
  readonly words: readonly string[];
  /** Sheets of either paper that a vehicle of a usual size may take, where somebody carries them. */
  readonly most?: number;
};

const own = ['--job', 'job.json'];
const defects = ['--defects', 'defects.csv'];
const shop = ['--shop', 'samples/shop.json'];
const classOf = ['grade', 'readings.csv', 'anneke.csv', 'bram.csv', 'elif.csv'];
const template = ['--template', 'template.json'];

/** Run in the folder of a vehicle, of every number of panels. */
export const vehiclePages: readonly PageWords[] = [
  { name: 'survey', words: ['survey', 'readings.csv', ...own] },
  { name: 'plan', words: ['plan', 'readings.csv', ...own, ...defects] },
  { name: 'plan --card', words: ['plan', 'readings.csv', ...own, ...defects, '--card'], most: 3 },
  { name: 'quote', words: ['quote', 'readings.csv', ...own, ...defects, ...shop] },
  { name: 'compare', words: ['compare', 'readings.csv', 'after.csv', ...own, '--marked'] },
  { name: 'grade', words: [...classOf, ...template] },
  { name: 'template sheet', words: ['template', 'sheet', 'template.json'], most: 1 },
];

/** What is told in more detail: of a vehicle of a usual size. */
export const detailPages: readonly PageWords[] = [
  { name: 'read', words: ['read', 'readings.csv', ...template] },
  { name: 'survey -v', words: ['survey', 'readings.csv', ...own, '-v'] },
  { name: 'survey --why', words: ['survey', 'readings.csv', ...own, '--why', 'bonnet'] },
  { name: 'plan -v', words: ['plan', 'readings.csv', ...own, ...defects, '-v'] },
  { name: 'plan --why', words: ['plan', 'readings.csv', ...own, ...defects, '--why', 'bonnet'] },
  { name: 'compare unmarked', words: ['compare', 'readings.csv', 'after.csv', ...own] },
  { name: 'grade --trainee', words: [...classOf, ...template, '--trainee', 'bram'] },
  { name: 'template show', words: ['template', 'show', 'template.json'] },
];
export const usualCount = 12;

/** Run among the samples: their length does not follow from a vehicle's panels. */
export const samplePages: readonly PageWords[] = [
  {
    name: 'spot',
    words: ['spot', 'samples/older-coupe/spots.csv', '--job', 'samples/older-coupe/job.json'],
  },
  { name: 'gauge', words: ['gauge', 'samples/gauge-checks.csv', '--adjust'] },
  { name: 'methods list', words: ['methods', 'list'] },
  { name: 'methods show', words: ['methods', 'show', 'da/foam-medium/medium'] },
  { name: 'template list', words: ['template', 'list'] },
  { name: 'explain', words: ['explain', 'film.limits', 'baseline', 'reading-ambiguous'] },
  { name: 'doctor', words: ['doctor', ...shop] },
  {
    name: 'compare gloss',
    words: [
      'compare',
      'samples/sound-saloon/readings.csv',
      'samples/sound-saloon/after.csv',
      '--marked',
      '--job',
      'samples/sound-saloon/job.json',
      '--gloss',
      'samples/sound-saloon/gloss.csv',
    ],
  },
];
