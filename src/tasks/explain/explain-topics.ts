/** Everything that can be asked for, gathered from where it lives. */
import { type DiagnosticCode, diagnosticCatalogue } from '../../base/catalogue.ts';
import { shown } from '../../base/rounding.ts';
import type { DefectKind } from '../../correction/removal/catalogue.ts';
import { listAllDefaults, type NamedDefault } from '../../formats/data/all-defaults.ts';
import { diagnosticExamples } from '../../formats/data/diagnostic-examples.ts';
import { diagnosticRemedies } from '../../formats/data/diagnostic-remedies.ts';
import { type DefaultUse, defaultUses } from '../../formats/data/formulas.ts';
import { type GlossaryEntry, glossary } from '../../formats/data/glossary.ts';
import { type KeyMeaning, keyMeanings } from '../../formats/data/key-meanings.ts';
import { type RemarkMeaning, remarkMeanings } from '../../formats/data/remark-meanings.ts';
import { stageRules } from '../../formats/data/stage-rules.ts';
import { type StageFacts, stageFacts } from '../../formats/data/stages.ts';
import {
  basisMeanings,
  conditionMeanings,
  exitCodeMeanings,
  gaugeVerdictMeanings,
  goOnMeanings,
  gradeVerdictMeanings,
  nextMeanings,
  rungMeanings,
  verdictGroundMeanings,
  verdictMeanings,
} from '../../formats/data/state-meanings.ts';
import { valueWords } from '../../formats/data/value-words.ts';
import { correctionModel } from '../../formats/models.ts';
import { builtIn, type Effective } from '../settings/setting-origin.ts';
import type { ExplainedNumber, Explanation, OptionTopic, TopicKind } from './explanation.ts';
import { allWritten, inRecords, recordTopics, type Written } from './record-topics.ts';

export type TopicSources = {
  readonly options: readonly OptionTopic[];
  /** Numbers that are not the built-in ones, by id. */
  readonly numbers: ReadonlyMap<string, Effective<number>>;
};

export const allTopics = (
  { options, numbers }: TopicSources,
  written: Written = allWritten(),
): readonly Explanation[] => [
  ...[...glossary, ...valueWords].map(wordTopic),
  ...pairs('condition', conditionMeanings),
  ...pairs('verdict', verdictMeanings),
  ...pairs('verdict', gaugeVerdictMeanings),
  ...pairs('verdict', gradeVerdictMeanings),
  ...pairs('verdict', verdictGroundMeanings),
  ...pairs('verdict', goOnMeanings),
  ...pairs('verdict', rungMeanings),
  ...pairs('verdict', nextMeanings),
  ...correctionModel.defects.map(defectTopic),
  ...stageFacts.map(stageTopic),
  ...remarkMeanings.map(remarkTopic),
  ...(Object.keys(diagnosticCatalogue) as DiagnosticCode[]).map(diagnosticTopic),
  ...options.map(optionTopic),
  ...keyTopics(written),
  ...recordTopics(written),
  ...exitCodeMeanings.map(exitTopic),
  ...pairs('basis', basisMeanings),
  ...listAllDefaults().map((one) => defaultTopic(one, numbers)),
];

const topic = (
  kind: TopicKind,
  id: string,
  meaning: string,
  rest: Partial<Explanation> = {},
): Explanation => ({
  kind,
  id,
  also: [],
  meaning,
  details: [],
  number: null,
  example: null,
  ...rest,
});

const detail = (label: string, text: string): Explanation['details'] =>
  text === '' ? [] : [{ label, text }];

const pairs = (
  kind: TopicKind,
  meanings: Readonly<Record<string, string>>,
): readonly Explanation[] =>
  Object.entries(meanings).map(([id, meaning]) => topic(kind, id, meaning));

const wordTopic = ({ term, also, meaning, kind }: GlossaryEntry): Explanation =>
  topic(kind, term, meaning, { also });

const SCOPES: Readonly<Record<DefectKind['scope'], string>> = {
  general: 'A general defect: it decides what is done to the whole panel.',
  local: 'A local defect: worked at its place, or left.',
  'not-polishing': 'It does not go away by polishing.',
  refinish: 'The panel wants new paint.',
};

const defectTopic = ({ id, name, aliases, medians, scope }: DefectKind): Explanation =>
  topic('defect', id, SCOPES[scope], {
    also: name === id ? aliases : [name, ...aliases],
    details: detail(
      'Median depth at grades 1 to 5',
      medians.length === 0 ? '' : `${medians.map((depth) => shown(depth, 1)).join(', ')} µm`,
    ),
  });

const REMARKS: Readonly<Record<RemarkMeaning['kind'], string>> = {
  assumption: 'an assumption: assumptions[] of a record, Assumed on the page',
  advice: 'advice: advice[] of a panel, What would help on the page',
  reason: 'a reason: reasons[] of a panel',
  caution: 'a caution: cautions[] of a panel or a plan',
  limit: 'a limit: limits[] and bound_by of a panel',
  note: 'a note of the survey',
  exclusion: 'what a quote does not promise',
};

const remarkTopic = ({ code, kind, meaning, remedy }: RemarkMeaning): Explanation =>
  topic('remark', code, meaning, {
    details: [...detail('Stands as', REMARKS[kind]), ...detail('What to do', remedy)],
  });

function diagnosticTopic(code: DiagnosticCode): Explanation {
  const { kind, meaning } = diagnosticCatalogue[code];
  const exit = exitCodeMeanings.find((one) => one.kind === kind);
  return topic('diagnostic', code, meaning, {
    details: [
      ...detail('Exit code', exit === undefined ? '' : exitText(exit.code, kind)),
      ...detail('What to do', diagnosticRemedies[code]),
    ],
    example: diagnosticExamples[code],
  });
}

const KINDS = {
  usage: 'the command line was not understood',
  data: 'an input is refused',
  'input-file': 'a file is missing or cannot be read',
  output: 'the output is not written',
  settings: 'a settings file is refused',
  remark: 'a remark, which stops nothing',
} as const;

const exitText = (code: number, kind: keyof typeof KINDS): string => `${code}: ${KINDS[kind]}`;

const optionTopic = ({
  name,
  also,
  summary,
  takes,
  commands,
  variable,
}: OptionTopic): Explanation =>
  topic('option', name, sentence(summary), {
    also: variable === null ? also : [...also, variable],
    details: [
      ...detail('Takes', takes),
      ...detail('Commands', commands.join(', ')),
      ...detail('In the environment', variable ?? ''),
    ],
  });

function keyTopics(written: Written): readonly Explanation[] {
  const ofRecords = inRecords(written);
  return keyMeanings.map((one) => keyTopic(one, ofRecords.get(one.key) ?? []));
}

const keyTopic = (
  { key, files, meaning, example }: KeyMeaning,
  ofRecords: Explanation['details'],
): Explanation =>
  topic('key', key, meaning, {
    details: [
      ...detail('Stands in', files.map((file) => `${file} file`).join(', ')),
      ...detail('For example', example),
      ...ofRecords,
    ],
  });

/** A stage of the job with what must come before it, and why. */
const stageTopic = ({ id, text, needs = {} }: StageFacts): Explanation =>
  topic('stage', id, sentence(text), {
    details: [
      ...detail(
        'Done where',
        Object.entries(needs)
          .map(
            ([part, values]) =>
              `${part === 'engineBay' ? 'engine_bay' : part} is ${values.join(' or ')}`,
          )
          .join(', '),
      ),
      ...stageRules
        .filter(({ after }) => after.includes(id))
        .flatMap(({ before, reason }) =>
          detail('Comes after', `${before.filter((one) => one !== id).join(', ')}: ${reason}`),
        ),
    ],
  });

const exitTopic = ({ code, meaning }: (typeof exitCodeMeanings)[number]): Explanation =>
  topic('exit code', String(code), meaning, { also: [`exit ${code}`, `exit code ${code}`] });

const defaultTopic = (one: NamedDefault, numbers: TopicSources['numbers']): Explanation =>
  topic('default', one.id, sentence(one.meaning), { number: explainedNumber(one, numbers) });

/** A default with the value in force, its use and how to change it. */
export function explainedNumber(
  { id, value, unit, basis, source, range }: NamedDefault,
  numbers: TopicSources['numbers'],
): ExplainedNumber {
  const inForce = numbers.get(id) ?? builtIn(value);
  const { formula, used } = useOf(id);
  return {
    ...inForce,
    unit,
    builtIn: value,
    range,
    basis,
    source,
    formula,
    used,
    change: `"numbers": { "${id}": ${inForce.value} }`,
  };
}

const longestFirst = [...defaultUses].sort((a, b) => b.prefix.length - a.prefix.length);

/** The longest beginning that fits. */
function useOf(id: string): DefaultUse {
  const best = longestFirst.find(({ prefix }) => id.startsWith(prefix));
  if (best === undefined) throw new Error(`nothing says how ${id} is used`);
  return best;
}

/** As a sentence: a capital at its head and a stop at its end. */
export const sentence = (text: string): string => {
  const [first = '', ...rest] = text;
  return `${first.toUpperCase()}${rest.join('')}${text.endsWith('.') ? '' : '.'}`;
};
