/**
 * Text in signs of ASCII, for terminals and logs that know no others. Each sign that we write has its
 * spelling; any other letter that ASCII lacks, as in somebody's own label, is shown as `\u{…}`:
 * nothing is guessed into another alphabet.
 */

const SIGNS: Readonly<Record<string, string>> = {
  µ: 'u',
  μ: 'u',
  '±': '+/-',
  '∓': '-/+',
  '×': 'x',
  '÷': '/',
  '·': '*',
  '−': '-',
  '–': '-',
  '—': '-',
  '…': '...',
  '→': '->',
  '←': '<-',
  '↑': '^',
  '≤': '<=',
  '≥': '>=',
  '∞': 'infinity',
  '√': 'sqrt ',
  '∫': 'integral ',
  '∏': 'product ',
  '∂': 'd',
  '°': ' deg',
  '½': '1/2',
  '⅔': '2/3',
  '‘': "'",
  '’': "'",
  '‚': ',',
  '“': '"',
  '”': '"',
  '„': '"',
  '′': "'",
  '″': '"',
  '‹': '<',
  '›': '>',
  '«': '<<',
  '»': '>>',
  '┊': '|',
  '○': 'o',
  '●': '*',
  '⌈': 'ceil(',
  '⌉': ')',
  '£': 'GBP',
  '€': 'EUR',
  // Over the letter before it.
  '\u0302': '_hat',
  '\u0303': '_tilde',
  '\u0304': '_bar',
  ȳ: 'y_bar',
  Γ: 'Gamma',
  Δ: 'Delta',
  Σ: 'Sum',
  Φ: 'Phi',
  α: 'alpha',
  β: 'beta',
  γ: 'gamma',
  δ: 'delta',
  ζ: 'zeta',
  κ: 'kappa',
  λ: 'lambda',
  ν: 'nu',
  π: 'pi',
  ρ: 'rho',
  σ: 'sigma',
  τ: 'tau',
  φ: 'phi',
  χ: 'chi',
  ψ: 'psi',
  ω: 'omega',
};

/** Above and below the line: `10⁻³` is 10^-3, `x₁₂` is x_12. */
const RAISED = '⁰¹²³⁴⁵⁶⁷⁸⁹⁻ⁿᵃᵇˣᵀᵗᵏ';
const RAISED_AS = '0123456789-nabxTtk';
const LOWERED = '₀₁₂₃₄₅₆₇₈₉ₐᵢₖ';
const LOWERED_AS = '0123456789aik';

/** What a page is drawn with: one column each, as it was. */
const DRAWN: Readonly<Record<string, string>> = {
  '·': '.',
  '⁝': '#',
  '○': 'o',
  '‹': '<',
  '«': '{',
  '»': '}',
  '┊': '|',
  '│': '|',
  '└': '+',
  '─': '-',
  '−': '-',
  '→': '>',
  '←': '<',
  '↑': '^',
};

const BEYOND = /[^\p{ASCII}\u00a0]/gu;
const RAISED_RUN = new RegExp(`[${RAISED}]+`, 'gu');
const LOWERED_RUN = new RegExp(`[${LOWERED}]+`, 'gu');

const spelled = (run: string, signs: string, as: string): string =>
  [...run].map((sign) => as[signs.indexOf(sign)] ?? sign).join('');

const codePoint = (sign: string): string => `\\u{${(sign.codePointAt(0) ?? 0).toString(16)}}`;

/** No-break blanks stay: it is for the renderer to keep together what belongs together. */
export const asciiText = (text: string): string =>
  text
    // The one word of ours with a letter of its own; some write it so in English anyway.
    .replaceAll('coupé', 'coupe')
    .replaceAll(/ ?°C/g, ' deg C')
    .replace(RAISED_RUN, (run) => `^${spelled(run, RAISED, RAISED_AS)}`)
    .replace(LOWERED_RUN, (run) => `_${spelled(run, LOWERED, LOWERED_AS)}`)
    .replace(BEYOND, (sign) => SIGNS[sign] ?? codePoint(sign));

/** A page drawn from blocks that are ASCII: what it is drawn with. */
export const asciiDrawing = (page: string): string =>
  page.replace(BEYOND, (sign) => DRAWN[sign] ?? codePoint(sign));
