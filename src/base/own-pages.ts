/** What commands write for people, by the heading that a page begins with: told where one lies among readings. */

type Heading = { readonly called: string; readonly heading: RegExp };

/** The whole of a heading with its counts: no words that somebody else's file may begin with by chance. */
const ofVehicles: readonly Heading[] = [
  { called: 'a survey', heading: ofVehicle('Survey') },
  { called: 'a plan', heading: ofVehicle('Plan|Work card') },
  { called: 'a quote', heading: ofVehicle('Estimate|Quotation') },
  {
    called: 'a list of readings',
    heading: /^Readings of .+?: \d+ on (?:\d+ panel|no panel named)/,
  },
  { called: 'a comparison', heading: /^Comparison(?: of .+?)?: .+?, \d+ panels? read before and/ },
  { called: 'a page of test spots', heading: /^Test spots(?: of .+?)?: \d+ trials? on / },
  { called: 'a grading', heading: /^Grading(?: on .+?)?: \d+ trainees?, / },
  { called: 'a sheet of a trainee', heading: /^Sheet of .+?: .+? read from / },
  { called: 'a check of a gauge', heading: /^Gauge check(?: of .+?)?: (?:pass|fail|undecided)\b/i },
  {
    called: 'a page of a batch',
    heading: /^(?:Surveys|Plans|Quotes, least to most over the aims of each): \d+ jobs?\b/,
  },
];

/** What no vehicle has a part in. */
const ofTheTool: readonly Heading[] = [
  { called: 'a list of templates', heading: /^Vehicle templates (?:id body panels |\S+: body )/ },
  { called: 'a template', heading: /^.+?: \d+ panels? in walking order, [\d.]+ m/ },
  {
    called: 'a check of a template',
    heading: /^.+?: \d+ panels?, [\d.]+ m\S{1,3}, nothing wrong /,
  },
  { called: 'a list of methods', heading: /^Methods: \d+ machines?, \d+ pads?, \d+ products?/ },
  {
    called: 'a page of a method',
    heading:
      /^(?:Machine|Pad|Product|Combination) \S.*? (?:setting value |\S[^:]*: value |Takes [\d.]+\S+ )/,
  },
  { called: 'a list of materials', heading: /^Materials: \d+ that a job may use up/ },
  {
    called: 'a list of what can be explained',
    heading: /^What can be explained leastcut explain /,
  },
  { called: 'an explanation', heading: /^\S+: \d+ numbers (?:id value|\S+: value) / },
  { called: 'a page of the settings', heading: /^leastcut \d+\.\d+\.\d+\S*(?: Node: | ?$)/ },
  { called: 'a check of settings files', heading: /^Sound:? (?:- )?\S.*?: [a-z ]+ file\b/ },
  {
    called: 'a list of files written',
    heading: /^Written:? (?:- )?\S.*?: what the workshop has\b/,
  },
  {
    called: 'a completion',
    heading: /^(?:compdef leastcut )?\w+ completion for leastcut, written by/,
  },
  {
    called: 'a page of help',
    heading: /^(?:leastcut: paint-thickness readings into|Usage: leastcut [a-z]+ )/,
  },
];

const headings = [...ofVehicles, ...ofTheTool];

/** A heading that says what kind of word it is, in a line of its own, and a sentence below. */
const explanation =
  /^[^\n]{1,100}\s+\((?:word|heading|value|default|diagnostic|option|key|record key|column|condition|verdict|remark|defect|stage|basis|exit code)\)\n+[^\s\d][\s\S]*?\.(?:\s|$)/;

function ofVehicle(what: string): RegExp {
  return new RegExp(`^(?:${what})(?: of .+?)?: .+?, \\d+ panels?, \\d+ points?\\b`);
}

/** Characters that hold the longest heading. */
const HEADING = 600;

/** Which page of ours a text is, be it text, Markdown or HTML; nothing of any other text. */
export function ownPage(beginning: string): string | undefined {
  if (isOurHtml(beginning)) return 'a page in HTML';
  const text = unadorned(beginning.slice(0, HEADING));
  // A long heading goes on in the next line.
  const inOne = text.replaceAll(/\s+/g, ' ');
  const page = headings.find(({ heading }) => heading.test(inOne));
  return page?.called ?? (explanation.test(text) ? 'an explanation' : undefined);
}

/** Without colours, and without the signs of Markdown and the labels of `--plain` before words. */
const unadorned = (text: string): string =>
  text
    // biome-ignore lint/suspicious/noControlCharactersInRegex: colours begin with one.
    .replaceAll(/\u001b\[[\d;]*m/g, '')
    .replaceAll(/^#+ ?/gm, '')
    .replaceAll(/^(?:Note: |\| )/gm, '')
    .replaceAll(/\*\*| \|(?= |$)/gm, '');

const isOurHtml = (text: string): boolean =>
  text.startsWith('<!doctype html>') && text.includes('<meta name="generator" content="leastcut">');
