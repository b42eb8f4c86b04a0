/** Everything that is checked of one page in a browser. */
import axe from 'axe-core';
import { contrast, hexOf } from '../render/contrast.ts';
import type { Tab, Values } from './browser.ts';
import {
  badlyDrawn,
  foreignParts,
  type Painted,
  paintedPairs,
  tooWide,
  wideTables,
} from './in-page.ts';
import { printFaults } from './print-faults.ts';
import { type PrintedPage, readTaggedPdf } from './tagged-pdf.ts';

export const widths = [360, 800, 1280] as const;
const HEIGHT = 900;

/** WCAG 2.2: 1.4.3 for text, 1.4.11 for what a drawing says. */
const LEAST_CONTRAST = { text: 4.5, drawing: 3 };
/** Lines that guide the eye: nothing is to be read from them. */
const DECORATION = /\b(base|grid)$/;

/** Sizes in inches, and the width in CSS pixels that the margins of 13 mm leave. */
const INCH_MM = 25.4;
const MARGIN_MM = 13;
const papers = [
  { name: 'A4', width: 210 / INCH_MM, height: 297 / INCH_MM },
  { name: 'Letter', width: 8.5, height: 11 },
] as const;
const pixelsOf = (inches: number): number => Math.floor(96 * (inches - (2 * MARGIN_MM) / INCH_MM));

export type Checked = {
  readonly faults: readonly string[];
  /** Sheets of A4 and of Letter. */
  readonly sheets: readonly number[];
};

export async function checkPage(tab: Tab, address: string): Promise<Checked> {
  tab.events();
  await tab.ask('Emulation.setEmulatedMedia', { media: 'screen', features: [] });
  await tab.ask('Page.navigate', { url: address });
  await loaded(tab);
  const faults = [
    ...(await evaluate(tab, foreignParts)),
    ...(await screenFaults(tab)),
    ...(await accessFaults(tab)),
  ];
  const printed: PrintedPage[] = [];
  for (const paper of papers) {
    faults.push(...(await paperFaults(tab, paper)));
    const page = await print(tab, paper);
    printed.push(page);
    faults.push(...printFaults(page).map((fault) => `on ${paper.name}: ${fault}`));
  }
  faults.push(...outside(tab, address));
  return { faults, sheets: printed.map(({ sheets }) => sheets) };
}

async function loaded(tab: Tab): Promise<void> {
  await tab.ask('Runtime.evaluate', {
    expression:
      'new Promise((done) => document.readyState === "complete" ? done() : addEventListener("load", done))',
    awaitPromise: true,
  });
}

async function evaluate<T>(tab: Tab, ask: () => T): Promise<T> {
  return (await evaluated(tab, `(${ask})()`)) as T;
}

async function evaluated(tab: Tab, expression: string): Promise<unknown> {
  const { result, exceptionDetails } = await tab.ask('Runtime.evaluate', {
    expression,
    awaitPromise: true,
    returnByValue: true,
  });
  if (exceptionDetails !== undefined) throw new Error(JSON.stringify(exceptionDetails));
  return (result as Values)['value'];
}

const show = (tab: Tab, width: number): Promise<Values> =>
  tab.ask('Emulation.setDeviceMetricsOverride', {
    width,
    height: HEIGHT,
    deviceScaleFactor: 1,
    mobile: false,
  });

const emulate = (tab: Tab, media: 'screen' | 'print', theme: 'light' | 'dark'): Promise<Values> =>
  tab.ask('Emulation.setEmulatedMedia', {
    media,
    features: [{ name: 'prefers-color-scheme', value: theme }],
  });

async function screenFaults(tab: Tab): Promise<readonly string[]> {
  const faults: string[] = [];
  for (const width of widths) {
    await show(tab, width);
    const found = [...(await evaluate(tab, tooWide)), ...(await evaluate(tab, badlyDrawn))];
    faults.push(...found.map((fault) => `at ${width} px: ${fault}`));
  }
  for (const theme of ['light', 'dark'] as const) {
    await emulate(tab, 'screen', theme);
    const pale = (await evaluate(tab, paintedPairs)).filter(isPale);
    faults.push(...pale.map((one) => `${theme}: ${paleText(one)}`));
  }
  return faults;
}

const contrastOf = ({ colours, paper }: Painted): number =>
  Math.max(1, ...colours.map((colour) => contrast(hexOf(colour), hexOf(paper))));

const isPale = (one: Painted): boolean =>
  !(one.what === 'drawing' && DECORATION.test(one.of)) &&
  contrastOf(one) < LEAST_CONTRAST[one.what];

const paleText = (one: Painted): string =>
  `contrast ${contrastOf(one).toFixed(2)} of "${one.of}": ${one.colours.join()} on ${one.paper}`;

type Finding = {
  readonly id: string;
  readonly impact: string | null;
  readonly nodes: readonly { readonly target: readonly unknown[] }[];
};

/** What axe-core calls serious or critical. */
async function accessFaults(tab: Tab): Promise<readonly string[]> {
  await emulate(tab, 'screen', 'light');
  await evaluated(tab, `${axe.source}; undefined`);
  const found = (await evaluated(
    tab,
    `axe.run(document, { resultTypes: ['violations'] }).then(({ violations }) =>
      violations.map(({ id, impact, nodes }) => ({ id, impact, nodes: nodes.slice(0, 3).map(({ target }) => ({ target })) })))`,
  )) as readonly Finding[];
  return found
    .filter(({ impact }) => impact === 'serious' || impact === 'critical')
    .map(
      ({ id, impact, nodes }) =>
        `axe: ${id} (${impact}) at ${nodes.map(({ target }) => target.join(' ')).join(', ')}`,
    );
}

type Paper = (typeof papers)[number];

async function paperFaults(tab: Tab, { name, width }: Paper): Promise<readonly string[]> {
  await show(tab, pixelsOf(width));
  await emulate(tab, 'print', 'dark');
  const found = [
    ...(await evaluate(tab, wideTables)),
    ...(await evaluate(tab, tooWide)),
    ...(await evaluate(tab, badlyDrawn)),
    ...(await evaluate(tab, paintedPairs)).filter(isPale).map(paleText),
  ];
  return found.map((fault) => `on ${name}: ${fault}`);
}

async function print(tab: Tab, { width, height }: Paper): Promise<PrintedPage> {
  const { data } = await tab.ask('Page.printToPDF', {
    paperWidth: width,
    paperHeight: height,
    printBackground: false,
    generateTaggedPDF: true,
  });
  return readTaggedPdf(Buffer.from(String(data), 'base64'));
}

/** Requests for anything but the page itself, and what the browser had to complain of. */
function outside(tab: Tab, address: string): readonly string[] {
  return tab.events().flatMap(({ method, params }) => {
    const { url } = (params['request'] ?? {}) as Values;
    if (method === 'Network.requestWillBeSent' && url !== address) return [`asks for ${url}`];
    const { text } = (params['entry'] ?? {}) as Values;
    return method === 'Log.entryAdded' ? [`the browser says: ${text}`] : [];
  });
}
