/**
 * What is asked inside a page: each function is sent to the browser as its own text, so it uses nothing
 * that stands outside it.
 */
import type { Box, PageDocument, PageElement, PageStyle } from './dom.ts';

declare const document: PageDocument;
declare const getComputedStyle: (element: PageElement) => PageStyle;

/** A colour upon another, of which an example is given. */
export type Painted = {
  readonly what: 'text' | 'drawing';
  /** The words, or the classes of the drawing's part. */
  readonly of: string;
  /** `rgb(…)`, of a part of a drawing its filling and its line. */
  readonly colours: readonly string[];
  readonly paper: string;
};

/** Every pair of colours on the page, once. */
export function paintedPairs(): readonly Painted[] {
  const paperOf = (element: PageElement): string => {
    for (let at: PageElement | null = element; at !== null; at = at.parentElement) {
      const { backgroundColor } = getComputedStyle(at);
      if (!/, 0\)$|^transparent$/.test(backgroundColor)) return backgroundColor;
    }
    return 'rgb(255, 255, 255)';
  };
  const found = new Map<string, Painted>();
  const add = (one: Painted): void => {
    const key = [one.what, one.what === 'drawing' ? one.of : '', ...one.colours, one.paper].join();
    if (!found.has(key)) found.set(key, one);
  };
  for (const element of Array.from(document.querySelectorAll('body, body *'))) {
    const style = getComputedStyle(element);
    const isSvg = element.closest('svg') !== null;
    if (isSvg && /^(path|circle|ellipse|rect)$/.test(element.tagName)) {
      const colours = [style.fill, style.stroke].filter((one) => one !== 'none');
      const of = [element.closest('svg'), element]
        .map((one) => one?.attributes)
        .flatMap((all) => Array.from(all ?? []).filter(({ name }) => name === 'class'))
        .map(({ value }) => value)
        .join(' ');
      add({ what: 'drawing', of: of || element.tagName, colours, paper: paperOf(element) });
    }
    const words = Array.from(element.childNodes)
      .filter(({ nodeType }) => nodeType === 3)
      .map(({ textContent }) => textContent?.trim() ?? '')
      .join(' ');
    if (words.trim() === '' || /^(title|desc)$/.test(element.tagName)) continue;
    const colours = [isSvg ? style.fill : style.color];
    add({ what: 'text', of: words.trim().slice(0, 40), colours, paper: paperOf(element) });
  }
  return [...found.values()];
}

/** What sticks out of the page to the right, or of its cell; what scrolls by itself may be wider inside. */
export function tooWide(): readonly string[] {
  const { scrollWidth, clientWidth } = document.documentElement;
  const out = Array.from(document.querySelectorAll('body *')).filter(
    (element) =>
      element.closest('.wide') === null && element.getBoundingClientRect().right > clientWidth + 1,
  );
  const spilt = Array.from(document.querySelectorAll('th, td')).filter(
    (cell) => cell.scrollWidth > cell.clientWidth + 1,
  );
  const named = [
    ...out.map(({ tagName, textContent }) => `${tagName}: ${textContent?.slice(0, 40)}`),
    ...spilt.map(
      ({ textContent }) => `a cell runs into the next one: ${textContent?.slice(0, 40)}`,
    ),
  ];
  return scrollWidth > clientWidth
    ? [`the page is ${scrollWidth} wide on ${clientWidth}`, ...named]
    : named;
}

/** Tables that are wider than the paper, where nothing scrolls. */
export function wideTables(): readonly string[] {
  const { clientWidth } = document.documentElement;
  return Array.from(document.querySelectorAll('table'))
    .map((table) => table.getBoundingClientRect().right - clientWidth)
    .filter((over) => over > 1)
    .map((over) => `a table sticks out by ${Math.round(over)} px`);
}

/** Words of a drawing that leave it, lie on each other, or are too small to be read (7 px high). */
export function badlyDrawn(): readonly string[] {
  const faults: string[] = [];
  const apart = (one: Box, other: Box): boolean =>
    Math.min(one.right, other.right) - Math.max(one.left, other.left) < 2 ||
    Math.min(one.bottom, other.bottom) - Math.max(one.top, other.top) < 4;
  for (const [at, svg] of Array.from(document.querySelectorAll('svg')).entries()) {
    const frame = svg.getBoundingClientRect();
    const texts = Array.from(svg.querySelectorAll('text')).map((text) => ({
      words: text.textContent ?? '',
      box: text.getBoundingClientRect(),
    }));
    for (const [i, { words, box }] of texts.entries()) {
      const name = `"${words}" in drawing ${at + 1}`;
      if (box.left < frame.left - 1 || box.right > frame.right + 1)
        faults.push(`${name} leaves it`);
      if (box.height < 7) faults.push(`${name} is ${box.height.toFixed(1)} px high`);
      const under = texts.slice(i + 1).find((other) => !apart(box, other.box));
      if (under !== undefined) faults.push(`${name} lies on "${under.words}"`);
    }
  }
  return faults;
}

/** What could run, or could be fetched or sent. */
export function foreignParts(): readonly string[] {
  const faults = Array.from(
    document.querySelectorAll('script, iframe, object, embed, form, link, base, img'),
  ).map(({ tagName }) => `<${tagName.toLowerCase()}>`);
  for (const { tagName, attributes } of Array.from(document.querySelectorAll('*'))) {
    for (const { name } of Array.from(attributes)) {
      if (/^on|^(src|srcset|href|xlink:href|action|data|poster|background)$/.test(name)) {
        faults.push(`${name} of <${tagName.toLowerCase()}>`);
      }
    }
  }
  if (document.documentElement.lang === '') faults.push('no language is named');
  return faults;
}
