/** What commands write for people, by the heading that a page begins with: told where one lies among readings. */

/** The whole of a heading with its counts: no words that somebody else's file may begin with by chance. */
const headings: readonly { readonly called: string; readonly heading: RegExp }[] = [
  { called: 'a survey', heading: ofVehicle('Survey') },
  { called: 'a plan', heading: ofVehicle('Plan|Work card') },
  { called: 'a quote', heading: ofVehicle('Estimate|Quotation') },
  {
    called: 'a list of readings',
    heading: /^Readings of .+?: \d+ on (?:\d+ panel|no panel named)/,
  },
  { called: 'a comparison', heading: /^Comparison(?: of .+?)?: \S+, \d+ panels? read before and/ },
  { called: 'a page of test spots', heading: /^Test spots(?: of .+?)?: \d+ trials? on / },
  { called: 'a grading', heading: /^Grading(?: on .+?)?: \d+ trainees?, / },
  { called: 'a check of a gauge', heading: /^Gauge check(?: of .+?)?: (?:pass|fail|undecided)\b/ },
  {
    called: 'a page of a batch',
    heading: /^(?:Surveys|Plans|Quotes, from the mildest aim to the strongest): \d+ jobs?\b/,
  },
];

function ofVehicle(what: string): RegExp {
  return new RegExp(`^(?:${what})(?: of .+?)?: \\S+, \\d+ panels?, \\d+ points?\\b`);
}

/** Characters that hold the longest heading. */
const HEADING = 600;

/** Which page of ours a text is, be it text, Markdown or HTML; nothing of any other text. */
export function ownPage(beginning: string): string | undefined {
  if (isOurHtml(beginning)) return 'a page in HTML';
  // A long heading goes on in the next line.
  const text = beginning.slice(0, HEADING).replace(/^# /, '').replaceAll(/\s+/g, ' ');
  return headings.find(({ heading }) => heading.test(text))?.called;
}

const isOurHtml = (text: string): boolean =>
  text.startsWith('<!doctype html>') && text.includes('<meta name="generator" content="leastcut">');
