/** What commands write for people, by the heading that a page begins with: told where one lies among readings. */

/** How a heading begins, which needs no pattern, and how it goes on: each pattern takes V8 long to make. */
type Heading = {
  readonly called: string;
  readonly begins: readonly string[];
  readonly goesOn: RegExp;
};

const ofVehicle = /^(?: of .+?)?: .+?, \d+ panels?, \d+ points?\b/;

/** The whole of a heading with its counts: no words that somebody else's file may begin with by chance. */
const ofVehicles: readonly Heading[] = [
  { called: 'a survey', begins: ['Survey'], goesOn: ofVehicle },
  { called: 'a plan', begins: ['Plan', 'Work card'], goesOn: ofVehicle },
  { called: 'a quote', begins: ['Estimate', 'Quotation'], goesOn: ofVehicle },
  {
    called: 'a list of readings',
    begins: ['Readings of '],
    goesOn: /^.+?: \d+ on (?:\d+ panel|no panel named)/,
  },
  {
    called: 'a comparison',
    begins: ['Comparison'],
    goesOn: /^(?: of .+?)?: .+?, \d+ panels? read before and/,
  },
  {
    called: 'a page of test spots',
    begins: ['Test spots'],
    goesOn: /^(?: of .+?)?: \d+ trials? on /,
  },
  { called: 'a grading', begins: ['Grading'], goesOn: /^(?: on .+?)?: \d+ trainees?, / },
  { called: 'a sheet of a trainee', begins: ['Sheet of '], goesOn: /^.+?: .+? read from / },
  {
    called: 'a check of a gauge',
    begins: ['Gauge check'],
    goesOn: /^(?: of .+?)?: (?:pass|fail|undecided)\b/i,
  },
  {
    called: 'a page of a batch',
    begins: ['Surveys', 'Plans', 'Quotes, least to most over the aims of each'],
    goesOn: /^: \d+ jobs?\b/,
  },
];

/** What no vehicle has a part in. */
const ofTheTool: readonly Heading[] = [
  {
    called: 'a list of templates',
    begins: ['Vehicle templates '],
    goesOn: /^(?:id body panels |\S+: body )/,
  },
  {
    called: 'a template',
    begins: [''],
    goesOn: /^.+?: \d+ panels? in walking order, [\d.]+ m/,
  },
  {
    called: 'a check of a template',
    begins: [''],
    goesOn: /^.+?: \d+ panels?, [\d.]+ m\S{1,3}, nothing wrong /,
  },
  {
    called: 'a list of methods',
    begins: ['Methods: '],
    goesOn: /^\d+ machines?, \d+ pads?, \d+ products?/,
  },
  {
    called: 'a page of a method',
    begins: ['Machine ', 'Pad ', 'Product ', 'Combination '],
    goesOn: /^\S.*? (?:setting value |\S[^:]*: value |Takes [\d.]+\S+ )/,
  },
  {
    called: 'a list of materials',
    begins: ['Materials: '],
    goesOn: /^\d+ that a job may use up/,
  },
  {
    called: 'a list of what can be explained',
    begins: ['What can be explained leastcut explain '],
    goesOn: /^/,
  },
  { called: 'an explanation', begins: [''], goesOn: /^\S+: \d+ numbers (?:id value|\S+: value) / },
  {
    called: 'a page of the settings',
    begins: ['leastcut '],
    goesOn: /^\d+\.\d+\.\d+\S*(?: Node: | ?$)/,
  },
  {
    called: 'a check of settings files',
    begins: ['Sound'],
    goesOn: /^:? (?:- )?\S.*?: [a-z ]+ file\b/,
  },
  {
    called: 'a list of files written',
    begins: ['Written'],
    goesOn: /^:? (?:- )?\S.*?: what the workshop has\b/,
  },
  {
    called: 'a completion',
    begins: [''],
    goesOn: /^(?:compdef leastcut )?\w+ completion for leastcut, written by/,
  },
  {
    called: 'a page of help',
    begins: ['leastcut: paint-thickness readings into'],
    goesOn: /^/,
  },
  { called: 'a page of help', begins: ['Usage: leastcut '], goesOn: /^[a-z]+ / },
];

const headings = [...ofVehicles, ...ofTheTool];

const heads = (text: string, { begins, goesOn }: Heading): boolean =>
  begins.some((words) => text.startsWith(words) && goesOn.test(text.slice(words.length)));

/** A heading that says what kind of word it is, in a line of its own, and a sentence below. */
const explanation =
  /^[^\n]{1,100}\s+\((?:word|heading|value|default|diagnostic|option|key|record key|column|condition|verdict|remark|defect|stage|basis|exit code)\)\n+[^\s\d][\s\S]*?\.(?:\s|$)/;

/** Characters that hold the longest heading. */
const HEADING = 600;

/** Which page of ours a text is, be it text, Markdown or HTML; nothing of any other text. */
export function ownPage(beginning: string): string | undefined {
  if (isOurHtml(beginning)) return 'a page in HTML';
  const text = unadorned(beginning.slice(0, HEADING));
  // A long heading goes on in the next line.
  const inOne = text.replaceAll(/\s+/g, ' ');
  const page = headings.find((heading) => heads(inOne, heading));
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
