/** What must hold of any input at all. */
import { panelRecogniser } from '../../src/film/template/panel-names.ts';
import { builtInTemplates } from '../../src/formats/data/templates.ts';
import { readGaugeFile } from '../../src/intake/read-gauge-file.ts';
import { planFiles } from '../../src/tasks/plan/plan-files.ts';
import { resolveSettings } from '../../src/tasks/settings/settings.ts';
import { surveyFiles } from '../../src/tasks/survey/survey-files.ts';
import type { FuzzCase } from './cases.ts';

export type Depth = 'read' | 'survey' | 'plan';

const isPanel = panelRecogniser(builtInTemplates);
const settings = resolveSettings({ typed: {}, job: undefined, shops: [] });
const plausible = settings.film.measurement;
const name = 'export.csv';

/** Words that a program says by mistake; the input may hold them, and then they may be quoted. */
const slips = ['NaN', 'undefined', '[object Object]', 'Infinity'];

/** The count that ends a long list of one kind needs no place: those before it have theirs. */
const counted = /^and \d+ more of this kind$/;

/** An assumed spread rests on no readings: it has degrees of freedom without end. */
const isUnlimited = (value: number, path: string): boolean =>
  value === Number.POSITIVE_INFINITY && /\.dof(?:Ceiling)?$/u.test(path);

/** The first thing in a result that no record may hold. */
export function slipIn(value: unknown, input: string, path = ''): string | undefined {
  if (typeof value === 'number') {
    return Number.isFinite(value) || isUnlimited(value, path) ? undefined : `${path} is ${value}`;
  }
  if (typeof value === 'string') {
    const slip = slips.find((word) => value.includes(word) && !input.includes(word));
    return slip === undefined ? undefined : `${path} says "${slip}": ${value.slice(0, 120)}`;
  }
  if (value instanceof Map) return slipIn([...value], input, path);
  if (typeof value !== 'object' || value === null) return undefined;
  for (const [key, part] of Object.entries(value)) {
    const slip = slipIn(part, input, `${path}.${key}`);
    if (slip !== undefined) return slip;
  }
  return undefined;
}

function read({ bytes, unit }: FuzzCase): string | undefined {
  const outcome = readGaugeFile(
    { name, bytes },
    { isPanel, plausible, ...(unit === undefined ? {} : { unit }) },
  );
  const errors = outcome.diagnostics.filter(({ severity }) => severity === 'error');
  if (outcome.value === undefined && errors.length === 0) return 'refused without a word';
  if (outcome.value !== undefined && errors.length > 0)
    return `read in spite of ${errors[0]?.code}`;
  const lost = errors.find(
    ({ at, code, message }) =>
      !counted.test(message) &&
      (at?.file !== name || (at.line === undefined && code !== 'file-empty')),
  );
  if (lost !== undefined) return `no place: ${lost.code} ${lost.message}`;
  return slipIn(outcome, Buffer.from(bytes).toString('latin1') + quotable(bytes));
}

/** As it stands, and without the signs nobody sees, which no message repeats. */
function quotable(bytes: Uint8Array): string {
  const text = Buffer.from(bytes).toString('utf8');
  return `${text}\n${text.replace(/\p{Cf}/gu, '')}`;
}

function deeper({ bytes, unit }: FuzzCase, depth: 'survey' | 'plan'): string | undefined {
  const request = {
    files: [{ name, bytes, sha256: '' }],
    templates: builtInTemplates,
    templateId: undefined,
    intake: { plausible, ...(unit === undefined ? {} : { unit }) },
    vehicle: undefined,
    keepUnknownPanels: false,
    settings,
    job: undefined,
    filmRecord: undefined,
    templateRules: settings.templateRules,
    size: undefined,
    panels: [],
  };
  const outcome =
    depth === 'survey' ? surveyFiles(request) : planFiles({ ...request, defects: undefined });
  return slipIn(outcome.value, quotable(bytes), depth);
}

/** What is wrong with how a case was taken; nothing if all is well. */
export function faultOf(one: FuzzCase, depth: Depth): string | undefined {
  try {
    const fault = read(one);
    return fault ?? (depth === 'read' ? undefined : deeper(one, depth));
  } catch (problem) {
    return `threw ${problem instanceof Error ? problem.stack : String(problem)}`;
  }
}

/** Surveys and plans take far longer than reading: a share of the cases goes so deep. */
export const depthOf = (number: number): Depth => {
  if (number % 500 === 0) return 'plan';
  return number % 20 === 0 ? 'survey' : 'read';
};
